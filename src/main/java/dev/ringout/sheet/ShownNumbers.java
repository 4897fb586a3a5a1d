package dev.ringout.sheet;

import dev.ringout.units.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.DataFormatter;

/**
 * What a number format shows of a number: with letters of its own ({@code 0" kΩ"}, {@code "OL"}),
 * as nothing at all, or divided by thousands, a person reads something else than is stored
 * (ECMA-376 part 1, 18.8.31).
 */
final class ShownNumbers {
  private static final Pattern CURRENCY_CODE = Pattern.compile("[A-Z]{3}");
  private static final Pattern GENERAL =
      Pattern.compile("General|Standard", Pattern.CASE_INSENSITIVE);
  private static final Pattern EXPONENT = Pattern.compile("[Ee][+-]");
  private static final String PLACES = "0#?@";
  private static final String SIGNS = "-(\u2010\u2012\u2013\u2212";
  private static final String HARMLESS = "-+()[]{}<>=/:.,'%^~!&_*\u2013\u2212";

  private final String code;
  private final List<Boolean> differs = new ArrayList<>();
  private boolean conditional;

  private ShownNumbers(String code) {
    this.code = code;
    for (String section : sections(code)) {
      differs.add(differs(section, differs.size() != 1));
    }
  }

  /** What a format shows otherwise; empty where it shows every number as it is. */
  static Optional<ShownNumbers> of(String code) {
    ShownNumbers shown = new ShownNumbers(code);
    return shown.differs.contains(true) ? Optional.of(shown) : Optional.empty();
  }

  /** What is shown of a number, or the format itself; empty where it is shown as it is. */
  String of(double number) {
    if (!differsFor(number)) {
      return "";
    }
    try {
      String shown = new DataFormatter(Locale.ROOT).formatRawCellContents(number, -1, code).strip();
      return shown.isEmpty() || shown.equals(Numbers.plain(number)) ? code : shown;
    } catch (RuntimeException e) {
      // A format that the library can't follow is named itself.
      return code;
    }
  }

  private boolean differsFor(double number) {
    // A text's section comes fourth.
    int count = Math.min(differs.size(), 3);
    if (conditional) {
      return differs.subList(0, count).contains(true);
    }
    int section = number > 0 || count < 2 ? 0 : number < 0 ? 1 : count < 3 ? 0 : 2;
    return differs.get(section);
  }

  private static List<String> sections(String code) {
    List<String> sections = new ArrayList<>();
    StringBuilder section = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < code.length(); i++) {
      char c = code.charAt(i);
      quoted ^= c == '"';
      if (c == ';' && !quoted) {
        sections.add(section.toString());
        section.setLength(0);
        continue;
      }
      section.append(c);
      if (c == '\\' && !quoted && i + 1 < code.length()) {
        section.append(code.charAt(++i));
      }
    }
    sections.add(section.toString());
    return sections;
  }

  /**
   * Whether a section shows another number than is stored.
   *
   * @param notNegative whether it is for numbers of which none has a sign
   */
  private boolean differs(String section, boolean notNegative) {
    StringBuilder own = new StringBuilder();
    StringBuilder bare = new StringBuilder();
    boolean signed = false;
    boolean below = false;
    for (int i = 0; i < section.length(); i++) {
      char c = section.charAt(i);
      if (c == '"') {
        int end = section.indexOf('"', i + 1);
        end = end < 0 ? section.length() : end;
        own.append(section, i + 1, end);
        signed |=
            noPlaces(bare) && section.substring(i + 1, end).chars().anyMatch(ShownNumbers::isSign);
        i = end;
      } else if (c == '[') {
        int end = section.indexOf(']', i);
        end = end < 0 ? section.length() : end;
        below |= section.startsWith("<", i + 1);
        own.append(bracketed(section.substring(i + 1, end)));
        i = end;
      } else if (c == '\\' || c == '_' || c == '*') {
        i++;
        if (c == '\\' && i < section.length()) {
          own.append(section.charAt(i));
          signed |= noPlaces(bare) && isSign(section.charAt(i));
        }
      } else {
        signed |= noPlaces(bare) && isSign(c);
        bare.append(c);
      }
    }
    String left = EXPONENT.matcher(GENERAL.matcher(bare).replaceAll("0")).replaceAll("");
    boolean places = left.chars().anyMatch(c -> PLACES.indexOf(c) >= 0);
    return !places
        || (notNegative && signed && !below)
        || isScaled(left)
        || own.chars().anyMatch(ShownNumbers::saysMore)
        || left.chars().anyMatch(c -> PLACES.indexOf(c) < 0 && saysMore(c));
  }

  private static boolean noPlaces(CharSequence text) {
    return text.chars().noneMatch(c -> PLACES.indexOf(c) >= 0);
  }

  private static boolean isSign(int c) {
    return SIGNS.indexOf(c) >= 0;
  }

  /** A colour and a locale show nothing; {@code [$kΩ-409]} shows its text. */
  private String bracketed(String inside) {
    if (inside.startsWith("$")) {
      String text = inside.substring(1).split("-", -1)[0];
      return CURRENCY_CODE.matcher(text).matches() ? "" : text;
    }
    conditional |= inside.startsWith("<") || inside.startsWith(">") || inside.startsWith("=");
    return "";
  }

  /** A comma behind the last place divides by a thousand. */
  private static boolean isScaled(String bare) {
    int comma = bare.lastIndexOf(',');
    return comma > 0
        && bare.substring(comma + 1).chars().noneMatch(c -> PLACES.indexOf(c) >= 0)
        && bare.substring(0, comma).chars().anyMatch(c -> PLACES.indexOf(c) >= 0);
  }

  private static boolean saysMore(int c) {
    return !Character.isWhitespace(c)
        && !Character.isSpaceChar(c)
        && Character.getType(c) != Character.CURRENCY_SYMBOL
        && HARMLESS.indexOf(c) < 0;
  }
}
