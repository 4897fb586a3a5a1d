package dev.ringout.imports.find;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Grammar;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Judges by all texts of the ends together how they name points. */
final class Grammars {
  private static final List<String> SEPARATORS = List.of(":", "-", ".", "/", "_");

  /** A pin behind a separator that stands in no name. */
  private static final Pattern ANY_PIN = Pattern.compile("[A-Za-z0-9_/+-]{1,16}");

  private static final int ROWS_LOOKED_AT = 2000;

  private final Words words;
  private final Ends ends;

  Grammars(Words words) {
    this.words = words;
    this.ends = new Ends(words);
  }

  /**
   * How the ends are written.
   *
   * @param other what it may be as well, where the texts can't tell
   */
  record Judged(Grammar grammar, Optional<Grammar> other) {
    private static final Judged AS_IT_LOOKS = new Judged(Grammar.AS_IT_LOOKS, Optional.empty());
  }

  /** How the ends of a table are written that have no column of pins beside them. */
  Judged judge(List<ListColumn> columns, List<Row> body) {
    List<ListColumn> alone = withoutPins(columns, body);
    List<String> texts = texts(alone, body);
    if (texts.size() < 2) {
      return Judged.AS_IT_LOOKS;
    }
    for (String separator : List.of(":", ".")) {
      if (parted(texts, separator).size() * 100 >= texts.size() * 85) {
        return new Judged(Grammar.separatedBy(separator), Optional.empty());
      }
    }
    List<Ends.Text> lookLikePoints =
        texts.stream().map(ends::parse).filter(end -> !end.pin().isEmpty()).toList();
    if (lookLikePoints.size() * 10 >= texts.size() * 6) {
      List<Ends.Text> lettered =
          lookLikePoints.stream().filter(end -> !CellText.hasDigit(end.item())).toList();
      boolean mostlyLettered = lettered.size() * 10 >= texts.size() * 6;
      return mostlyLettered
          ? namesOrPins(lettered, Grammar.ITEM_ALONE, Grammar.AS_IT_LOOKS, false)
          : Judged.AS_IT_LOOKS;
    }
    long led = texts.stream().filter(Ends::isLedByDesignator).count();
    if (led * 10 >= texts.size() * 8L) {
      return new Judged(Grammar.separatedBy(" "), Optional.empty());
    }
    for (String separator : SEPARATORS) {
      List<Ends.Text> parted = parted(texts, separator);
      if (parted.size() * 10 >= texts.size() * 6) {
        Grammar separated = Grammar.separatedBy(separator);
        boolean named =
            parted.stream().filter(end -> !CellText.hasDigit(end.item())).count() * 10
                >= parted.size() * 6L;
        return named && !separator.equals(":")
            ? namesOrPins(parted, Grammar.ITEM_ALONE, separated, false)
            : new Judged(separated, Optional.empty());
      }
    }
    return numbered(texts, columns);
  }

  /** {@code Drive 1}: a name with a number after it, which may be a pin. */
  private Judged numbered(List<String> texts, List<ListColumn> columns) {
    List<Ends.Text> numbered = new ArrayList<>();
    texts.forEach(text -> Ends.numbered(text).ifPresent(numbered::add));
    if (numbered.size() * 3 < texts.size()) {
      return Judged.AS_IT_LOOKS;
    }
    boolean cored = columns.stream().anyMatch(column -> column.role() == Role.BOTH_PINS);
    return namesOrPins(numbered, Grammar.AS_IT_LOOKS, Grammar.separatedBy(" "), cored);
  }

  /**
   * Few items with many numbers, each once, are pins; many items, or numbers that come again, are
   * names.
   */
  private static Judged namesOrPins(
      List<Ends.Text> parted, Grammar asNames, Grammar asPins, boolean cored) {
    Set<Ends.Text> distinct = new HashSet<>(parted);
    Set<String> items = new HashSet<>();
    distinct.forEach(end -> items.add(end.item()));
    int texts = parted.size();
    boolean once = texts * 10 <= distinct.size() * 13;
    if (!cored && once && distinct.size() >= 3 * items.size() && distinct.size() >= 4) {
      return new Judged(asPins, Optional.empty());
    }
    boolean again = texts * 10 >= distinct.size() * 15;
    boolean many = items.size() * 10 >= distinct.size() * 7;
    if (cored || (again && distinct.size() <= 3 * items.size()) || many) {
      return new Judged(asNames, Optional.empty());
    }
    return new Judged(asNames, Optional.of(asPins));
  }

  private static List<Ends.Text> parted(List<String> texts, String separator) {
    List<Ends.Text> parted = new ArrayList<>();
    for (String text : texts) {
      int at = text.lastIndexOf(separator, text.length() - 2);
      String item = at > 0 ? text.substring(0, at).strip() : "";
      String pin = at > 0 ? text.substring(at + 1).strip() : "";
      boolean block = separator.equals(":") && item.matches("\\d{1,3}");
      boolean lettered = item.chars().anyMatch(Character::isLetter) && item.length() <= 30;
      boolean named = block || lettered;
      boolean wide = separator.equals(":") || separator.equals(".");
      Pattern pins = wide ? ANY_PIN : ColumnProfile.PIN;
      if (named && pins.matcher(pin).matches()) {
        parted.add(new Ends.Text(item, pin));
      }
    }
    return parted;
  }

  /** The columns of ends that have no column of pins with something in it. */
  private static List<ListColumn> withoutPins(List<ListColumn> columns, List<Row> body) {
    List<ListColumn> alone = new ArrayList<>();
    for (ListColumn column : columns) {
      Optional<Role> pin =
          switch (column.role()) {
            case FROM -> Optional.of(Role.FROM_PIN);
            case TO -> Optional.of(Role.TO_PIN);
            case FAR -> Optional.of(Role.FAR_PIN);
            default -> Optional.empty();
          };
      boolean hasPins =
          pin.isPresent()
              && columns.stream()
                  .filter(one -> one.role() == pin.get())
                  .anyMatch(one -> body.stream().anyMatch(row -> !row.cell(one.index()).isBlank()));
      if (pin.isPresent() && !hasPins) {
        alone.add(column);
      }
    }
    return alone;
  }

  private List<String> texts(List<ListColumn> columns, List<Row> body) {
    List<String> texts = new ArrayList<>();
    for (Row row : body.subList(0, Math.min(body.size(), ROWS_LOOKED_AT))) {
      for (ListColumn column : columns) {
        String text = column.textIn(row).replaceFirst("\\s+\\(.*\\)$", "");
        boolean names = !words.isNothing(text) && !words.isDitto(text);
        if (names && !words.mentions("joint", text)) {
          texts.addAll(List.of(text.split("\\s*[,;&\\n]\\s*", -1)));
        }
      }
    }
    return texts;
  }
}
