package dev.ringout.imports.list;

import dev.ringout.cells.CellText;
import dev.ringout.cells.PinList;
import dev.ringout.harness.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Understands the text of a wire's end. Long lists repeat their texts, so that each is read once.
 */
public final class Ends {
  private static final String DESIGNATOR = "\\d{0,2}[A-Z]{1,4}\\d{0,4}(?:[A-Z]\\d{1,3})?";
  private static final Pattern WHOLE_DESIGNATOR = Pattern.compile(DESIGNATOR);
  private static final Pattern OF_A_JOINT = Pattern.compile("(SP|E)\\d+|G\\d{3}");

  private static final String VOLTS = "\\d{1,2}(?:[.,]\\d)? ?V";

  private static final String SUPPLY =
      "(?:[-+]" + VOLTS + "|" + VOLTS + "[-+]|\\d{1,2}V\\d|[-+]V|V[-+]|VCC|VDD|VSS|VBUS)";

  /**
   * {@code PSU +5V}, {@code 5V rail}, {@code SMPS V+}, {@code Battery (-)}, {@code G3 (3V3)}, and
   * {@code 24V} alone; {@code Lamp 24V} is rated so, and has two terminals.
   */
  private static final Pattern OF_A_SUPPLY =
      Pattern.compile(
          String.join(
              "|",
              "(?i)(?:.*[\\s(-])?(?:[-+]|" + SUPPLY + ")\\)?",
              VOLTS,
              "(?:.*[\\s(])?(?:[-+]|" + VOLTS + "|" + SUPPLY + ")\\)?[\\s-](?:\\S+ )?rails?",
              "(?:.*\\s)?rail (?:" + VOLTS + "|" + SUPPLY + ")"));

  private static final Pattern LISTED = Pattern.compile("\\s*[,;&\\n]\\s*");

  /** A semicolon between blanks parts points whatever they are called. */
  private static final Pattern SET_APART = Pattern.compile("\\s+;\\s+");

  private static final Pattern ADDED = Pattern.compile("\\s*\\+\\s*");

  /** {@code I1.3}, {@code %QX0.1}: an input or an output with a dot in its number. */
  private static final String ADDRESS = "%?[A-Z]{1,2}\\d{1,3}\\.\\d{1,2}";

  private static final Pattern POINT =
      Pattern.compile(
          "(" + DESIGNATOR + ")\\s?[:./-]\\s?([A-Za-z0-9+]{1,5}[*']?|" + ADDRESS + "|-)");
  private static final Pattern NAMED = Pattern.compile("([^:]{2,40}):\\s*([^:]{1,40})");
  private static final Pattern PIN_PHRASE =
      Pattern.compile("(.{1,30}?)[ ,]+(\\p{L}+)\\.? ([A-Za-z0-9]{1,4})");
  private static final Pattern BRACKET_BEHIND = Pattern.compile("(?<=\\S)\\s+\\([^()]*\\)$");
  private static final Pattern REMARKED = Pattern.compile("(\\S+)\\s*\\(.*\\)");
  private static final Pattern SPACED = Pattern.compile("(.{1,40}\\S) (\\d{1,3}[A-Za-z]?)");
  private static final Pattern DESIGNATED =
      Pattern.compile("([A-Z]{1,4}\\d{1,4}) (\\d{1,3}[A-Za-z]?|[A-Za-z])");
  private static final Pattern NAME_DASH_PIN =
      Pattern.compile("([A-Z][A-Za-z ]{1,20}) - ([A-Za-z]{0,2}\\d{1,3})");
  private static final Pattern WORDED_PIN =
      Pattern.compile("(\\p{L}{3,8})\\.? ([A-Za-z]?\\d{1,3}[A-Za-z]?)");

  /** {@code Converter OUT+}, {@code J1 D-}: a terminal by its letters and its pole. */
  private static final Pattern POLED_PIN =
      Pattern.compile("(\\p{L}.{1,39}\\S|[A-Z]{1,3}\\d{1,3}) ([A-Z]{1,5}[+-])");

  /** {@code Supply + terminal}: a pole, and a word for it. */
  private static final Pattern POLE_IN_WORDS =
      Pattern.compile("(.{2,40}\\S) ([+-]) (\\p{L}{3,10})");

  private static final Pattern ARROW =
      Pattern.compile("\\s*(?:<?[-\u2013=]+>|>|\u2192|\u2194|\u27f6)\\s*");

  private static final Pattern ITEM =
      Pattern.compile("\\p{L}[\\p{L}\\d]{0,14}( \\p{L}[\\p{L}\\d]{0,14})?");

  private static final Pattern PARTS_POINTS = Pattern.compile("[\\s,;()]+");

  private static final Pattern FROM_FIRST_DIGIT = Pattern.compile("\\d.*$");

  /** {@code PCB-A1}, {@code SW1-COM}: an item in capitals and its pin. */
  private static final Pattern LETTERED =
      Pattern.compile("[A-Z]{2,8}\\d{0,3}[-:.][A-Za-z0-9+]{1,6}");

  private static final Pattern NET_POINT =
      Pattern.compile("([A-Z][A-Z0-9_]{0,20})[.:-]([A-Za-z0-9]{1,6}[+-]?|" + ADDRESS + "|[+-])");
  private static final Pattern BRACKETS = Pattern.compile("(?<=[^\\s,;])\\([^()]*\\)");
  private static final Pattern BETWEEN_POINTS = Pattern.compile("[\\s,;|&]+");
  private static final Pattern ITEMS =
      Pattern.compile("([A-Z]{1,4})(\\d{1,3})\\.\\.(\\d{1,3})[-:]([A-Za-z0-9+]{1,8})");
  private static final Pattern LED = Pattern.compile("[A-Z]{1,4}\\d{1,3} \\S.{0,30}");
  private static final Pattern MARK_OF_BRIDGE =
      Pattern.compile("\\p{L}{1,2}|[|\u2502\u2503\u25cf\u2022\u25cb\u25a0\u25aa*+]{1,2}");
  private static final Pattern BARE_PIN = Pattern.compile("[A-Za-z]?\\d{1,3}[A-Za-z]?|[A-Za-z]");

  private static final Pattern SIGN_BEFORE = Pattern.compile("^[/:]\\s+(?=\\S)");

  private static final Pattern PHASE = Pattern.compile("(\\p{L}{3,15}) ([LTUVW][1-3])");

  private final Words words;
  private final Map<Grammar, Map<String, Text>> read = new HashMap<>();

  /**
   * An end as its text gives it.
   *
   * @param pin empty where the text names an item alone
   */
  public record Text(String item, String pin) {}

  /** A letter or a drawn mark that the terminals of one bridge have: {@code a}, {@code |}. */
  public static boolean isMarkOfBridge(String text) {
    return MARK_OF_BRIDGE.matcher(text).matches();
  }

  /** Ends of a list that uses these words. */
  public Ends(Words words) {
    this.words = words;
  }

  /** A full point such as {@code J1-A} or {@code TB1:3}. */
  public static boolean looksLikePoint(String text) {
    return text.length() < 14
        && CellText.hasDigit(text)
        && (POINT.matcher(text).matches() || DESIGNATED.matcher(text).matches());
  }

  /** Whether a text is a full point, or one of its words is. */
  public static boolean holdsPoint(String text) {
    return PARTS_POINTS.splitAsStream(text).anyMatch(Ends::looksLikePoint);
  }

  /** What stands before the number of a designator: {@code TB} of {@code TB12}. */
  public static String lettersOf(String designator) {
    return FROM_FIRST_DIGIT.matcher(designator).replaceFirst("");
  }

  /** A point told in words: {@code J1 pin 4}. */
  public boolean isPhrase(String text) {
    Matcher phrase = PIN_PHRASE.matcher(text);
    return text.length() < 30
        && phrase.matches()
        && isDesignator(phrase.group(1).strip())
        && words.is("before pin", phrase.group(2));
  }

  /** {@code Display pin 4}: a point told in words whose item is no designator. */
  public boolean isPinOfWords(String text) {
    Matcher phrase = phrase(text);
    return phrase.matches()
        && words.is("before pin", phrase.group(2))
        && !isDesignator(phrase.group(1).strip());
  }

  /** {@code Digital Pin 2}: what kind of pin it is, and no item, stands before it. */
  public boolean isKindOfPin(String text) {
    Matcher phrase = phrase(text);
    return phrase.matches()
        && words.is("before pin", phrase.group(2))
        && words.is("kind of pin", phrase.group(1).strip());
  }

  /** {@code Digital Pin 2} of {@code Digital Pin 2 (receives)}; else the text as it is. */
  public String withoutRemark(String text) {
    return isKindOfPin(text) ? withoutBracketBehind(text) : text;
  }

  private static Matcher phrase(String text) {
    return PIN_PHRASE.matcher(withoutBracketBehind(text));
  }

  /** {@code GND rail} of {@code GND rail (-)}: what stands in brackets at the end is a remark. */
  public static String withoutBracketBehind(String text) {
    return BRACKET_BEHIND.matcher(text).replaceFirst("");
  }

  /** {@code Supply + terminal}: one pole, in words. */
  public boolean isPoleInWords(String text) {
    return poleInWords(text).isPresent();
  }

  private Optional<Text> poleInWords(String text) {
    Matcher pole = POLE_IN_WORDS.matcher(text);
    return pole.matches() && words.is("before pin", pole.group(3))
        ? Optional.of(new Text(pole.group(1).strip(), pole.group(2)))
        : Optional.empty();
  }

  /** A reference designator such as {@code J1} or {@code 12A05}. */
  public static boolean isDesignator(String text) {
    return text.length() < 10
        && CellText.hasDigit(text)
        && WHOLE_DESIGNATOR.matcher(text).matches();
  }

  /** An item with its pin, or an item alone, as the text looks. */
  public Text parse(String text) {
    return parse(text, Grammar.AS_IT_LOOKS);
  }

  /** An item with its pin, or an item alone, as the column writes them. */
  public Text parse(String text, Grammar grammar) {
    Map<String, Text> known = read.computeIfAbsent(grammar, key -> new HashMap<>());
    Text parsed = known.get(text);
    if (parsed == null) {
      parsed =
          switch (grammar.kind()) {
            case AS_IT_LOOKS -> parseNew(text);
            case ITEM_ALONE -> new Text(text, "");
            case SEPARATED -> separated(text, grammar.separator());
          };
      known.put(text, parsed);
    }
    return parsed;
  }

  /** {@code U1 GPIO6}, {@code SW1 contact 1}: a designator, a blank and what it is called there. */
  public static boolean isLedByDesignator(String text) {
    return LED.matcher(text).matches();
  }

  /** {@code X1 / 3} of {@code QE1 / X1 / 3}: the sign that parts a pin from its item goes. */
  private static String withoutSign(String pin) {
    return SIGN_BEFORE.matcher(pin.strip()).replaceFirst("");
  }

  /** Parted at the last separator; as it looks where there is none. */
  private Text separated(String whole, String separator) {
    if (separator.equals(" ") && isLedByDesignator(whole)) {
      Text looks = parseNew(whole);
      int blank = whole.indexOf(' ');
      return looks.pin().isEmpty() || !isDesignator(looks.item())
          ? new Text(whole.substring(0, blank), shell(withoutSign(whole.substring(blank + 1))))
          : looks;
    }
    // What stands in brackets behind a point is a remark.
    String text = whole.replaceFirst("(?<=\\S)\\s+\\(.*\\)$", "");
    int at = text.lastIndexOf(separator, text.length() - separator.length() - 1);
    // A pin may be a minus: BAT1--.
    while (at > 0 && text.startsWith(separator, at - separator.length())) {
      at -= separator.length();
    }
    String item = at > 0 ? text.substring(0, at).strip() : "";
    String pin = at > 0 ? text.substring(at + separator.length()).strip() : "";
    return item.isEmpty() || pin.isEmpty() ? parseNew(text) : new Text(item, shell(pin));
  }

  /** A name with a number after it, of which nobody can tell whether it is a pin: {@code Fan 2}. */
  public static Optional<Text> numbered(String text) {
    Matcher spaced = SPACED.matcher(text);
    if (!spaced.matches() || isDesignator(spaced.group(1)) || text.indexOf(':') >= 0) {
      return Optional.empty();
    }
    return Optional.of(new Text(spaced.group(1), spaced.group(2)));
  }

  private Text parseNew(String text) {
    int separator = plainSeparator(text);
    if (separator > 0) {
      return new Text(text.substring(0, separator), shell(text.substring(separator + 1)));
    }
    Matcher point = POINT.matcher(text);
    if (point.matches()) {
      return new Text(point.group(1), shell(point.group(2)));
    }
    Matcher remarked = REMARKED.matcher(text);
    if (remarked.matches() && looksLikePoint(remarked.group(1))) {
      return parseNew(remarked.group(1));
    }
    Optional<Text> phase = phase(text);
    if (phase.isPresent()) {
      return phase.get();
    }
    String bare = withoutItemWords(text);
    if (!bare.equals(text)) {
      return parseNew(bare);
    }
    // A remark behind "TB1-A borne 1": what it is for.
    Matcher phrase = phrase(text);
    boolean pin =
        phrase.matches() && (CellText.hasDigit(phrase.group(3)) || phrase.group(3).length() <= 2);
    if (pin && words.is("before pin", phrase.group(2))) {
      return new Text(phrase.group(1).strip(), phrase.group(3));
    }
    Optional<Text> pole = poleInWords(text);
    if (pole.isPresent()) {
      return pole.get();
    }
    Matcher poled = POLED_PIN.matcher(text);
    if (poled.matches()) {
      return new Text(poled.group(1), poled.group(2));
    }
    boolean signed = text.length() > 4 && (text.endsWith(" +") || text.endsWith(" -"));
    if (signed && !looksLikePoint(text.substring(0, text.length() - 2).strip())) {
      // Battery +: a pole and no dash.
      return new Text(
          text.substring(0, text.length() - 2).strip(), text.substring(text.length() - 1));
    }
    Matcher named = NAMED.matcher(text);
    if (named.matches()) {
      return new Text(named.group(1).strip(), shell(named.group(2).strip()));
    }
    Matcher dash = NAME_DASH_PIN.matcher(text);
    if (dash.matches()) {
      return new Text(dash.group(1).strip(), dash.group(2));
    }
    Matcher designated = DESIGNATED.matcher(text);
    if (designated.matches() && isDesignator(designated.group(1))) {
      return new Text(designated.group(1), shell(designated.group(2)));
    }
    return new Text(text, "");
  }

  /**
   * {@code SP3} of "SPLICE SP3", {@code J4-2} of "CONN J4-2": words before a designator go. A
   * ground M2 keeps its word: M2 may be a motor as well.
   */
  private String withoutItemWords(String text) {
    int at = text.indexOf(' ');
    int start = 0;
    boolean joint = false;
    while (at > 0 && isItemWord(text.substring(start, at))) {
      joint |= words.isAny("joint", text.substring(start, at));
      start = at + 1;
      String rest = text.substring(start).strip();
      boolean itself = !joint || OF_A_JOINT.matcher(rest).matches();
      if ((isDesignator(rest) && itself) || looksLikePoint(rest)) {
        return rest;
      }
      at = text.indexOf(' ', start);
    }
    return text;
  }

  /**
   * {@code Motor U1}, {@code Panel L1}: the terminal of a phase, and no designator (markings of IEC
   * 60445, from memory).
   */
  private Optional<Text> phase(String text) {
    Matcher phase = PHASE.matcher(text);
    return phase.matches() && words.isAny("phased", phase.group(1))
        ? Optional.of(new Text(phase.group(1), phase.group(2)))
        : Optional.empty();
  }

  /** A splice's or a ground's own designator, which says by itself that it is one point. */
  public static boolean isDesignatorOfJoint(String item) {
    return OF_A_JOINT.matcher(item).matches();
  }

  /**
   * Whether a name ends in the supply that the point holds. However many terminals have that name,
   * they have one potential.
   */
  public static boolean isNameOfSupply(String item) {
    return OF_A_SUPPLY.matcher(item).matches();
  }

  private boolean isItemWord(String word) {
    return words.isAny("item", word) || words.isAny("joint", word);
  }

  /**
   * Where {@code J1-12} parts, or 0 where the text is no such plain point: what nearly every cell
   * of a long list is, found without a pattern.
   */
  private static int plainSeparator(String text) {
    int length = text.length();
    int at = 0;
    while (at < length && at < 2 && CellText.isDigit(text.charAt(at))) {
      at++;
    }
    int letters = at;
    while (at < length && text.charAt(at) >= 'A' && text.charAt(at) <= 'Z') {
      at++;
    }
    boolean lettered = at > letters && at - letters <= 4;
    int digits = at;
    while (at < length && CellText.isDigit(text.charAt(at))) {
      at++;
    }
    boolean parts = at < length && (text.charAt(at) == '-' || text.charAt(at) == ':');
    if (!lettered || !parts || at - digits > 4 || length - at < 2 || length - at > 6) {
      return 0;
    }
    for (int i = at + 1; i < length; i++) {
      char c = text.charAt(i);
      if (!CellText.isDigit(c) && !(c >= 'A' && c <= 'Z') && !(c >= 'a' && c <= 'z')) {
        return 0;
      }
    }
    return at;
  }

  /** A pin as it is written; a word for the shell is the shell. */
  public String shell(String text) {
    Matcher worded = WORDED_PIN.matcher(text);
    boolean word = worded.matches() && words.is("before pin", worded.group(1));
    String pin = word ? worded.group(2) : text;
    return pin.length() > 3 && words.is("shell", pin) ? Point.SHELL : pin;
  }

  /**
   * The points of a cell that lists several: each text is a point, or after the first a pin of the
   * same item. One text where the cell names one point, or it is not plain that there are more.
   */
  public List<Text> parseAll(String text, Grammar grammar) {
    List<Text> range = rangeOf(text, grammar);
    if (!range.isEmpty()) {
      return range;
    }
    if (isSetApart(text)) {
      return Arrays.stream(SET_APART.split(text.strip(), -1))
          .map(piece -> parse(piece, grammar))
          .toList();
    }
    Text whole = parse(text, grammar);
    boolean polarity = whole.pin().equals("+") || whole.pin().equals("-");
    if (polarity || isPoleInWords(text) || !PinList.hasSeparator(text)) {
      return List.of(whole);
    }
    Pattern separator = isJoined(text) ? ADDED : LISTED;
    String[] pieces = separator.split(text, -1);
    List<Text> points = new ArrayList<>();
    for (String piece : pieces) {
      Text one = parse(piece, grammar);
      if (!points.isEmpty() && BARE_PIN.matcher(piece).matches()) {
        one = new Text(points.get(0).item(), piece);
      }
      if (one.pin().isEmpty() || piece.isEmpty()) {
        return List.of(whole);
      }
      points.add(one);
    }
    return points;
  }

  /**
   * The points of a net that stand in one cell, each as written; none where the text is no such
   * list. A port's name in brackets behind a pin is left out.
   */
  public static List<String> pointsOfNet(String text) {
    String bare = BRACKETS.matcher(text).replaceAll("");
    List<String> points = new ArrayList<>();
    int full = 0;
    for (String piece : BETWEEN_POINTS.split(bare.strip(), -1)) {
      if (piece.isEmpty()) {
        continue;
      }
      points.add(piece);
      full += isOfNet(piece) ? 1 : 0;
    }
    return full > 0 && full * 10 >= points.size() * 7 ? List.copyOf(points) : List.of();
  }

  /** Whether a piece of a net's cell is a point or an item, and no word between them. */
  public static boolean isOfNet(String piece) {
    return NET_POINT.matcher(piece).matches() || looksLikePoint(piece) || isDesignator(piece);
  }

  /** A point of a net: an item's name is parted from its pin by the last dot, colon or dash. */
  public Text ofNet(String piece, Grammar grammar) {
    Text parsed = parse(piece, grammar);
    Matcher point = NET_POINT.matcher(piece);
    return parsed.pin().isEmpty() && point.matches()
        ? new Text(point.group(1), shell(point.group(2)))
        : parsed;
  }

  /** Whether semicolons between blanks part the points of a cell, which need no pins then. */
  public static boolean isSetApart(String text) {
    return text.indexOf(';') > 0 && SET_APART.matcher(text.strip()).find();
  }

  /** Whether a cell's plus may join several points: where nothing else parts them. */
  public static boolean isJoined(String text) {
    return text.indexOf('+') > 0 && !LISTED.matcher(text).find();
  }

  /**
   * Points one after another in a cell.
   *
   * @param name what stands before the first, a wire's number, or empty
   * @param points as written, two at least
   * @param rest what stands after the last, a colour or a remark, or empty
   */
  public record Path(String name, List<String> points, String rest) {}

  /**
   * The path of a cell: with arrows, or a word, between its points: {@code J1-1 -> J2-3}, {@code
   * DIN1-1 to PCB-A1 red}.
   */
  public Optional<Path> path(String text) {
    if (text.length() < 5 || text.length() > 200) {
      return Optional.empty();
    }
    String[] pieces = ARROW.split(text, -1);
    if (pieces.length > 1) {
      return parted(List.of(pieces), false);
    }
    if (text.indexOf(' ') < 0) {
      return Optional.empty();
    }
    List<String> between = new ArrayList<>();
    List<String> all = List.of(text.split(" +", -1));
    int start = 0;
    for (int i = 1; i + 1 < all.size(); i++) {
      if (joins(all.get(i))
          && isPoint(all.get(i - 1))
          && (isPoint(all.get(i + 1).replaceFirst(",$", ""))
              || isItem(String.join(" ", all.subList(i + 1, all.size()))))) {
        between.add(String.join(" ", all.subList(start, i)));
        start = i + 1;
      }
    }
    between.add(String.join(" ", all.subList(start, all.size())));
    return between.size() > 1 ? parted(between, true) : Optional.empty();
  }

  private boolean joins(String word) {
    return word.equals("-")
        || words.is("to", word)
        || words.is("through", word)
        || words.is("to beside from", word);
  }

  private static boolean isPoint(String text) {
    return looksLikePoint(text) || isDesignator(text) || LETTERED.matcher(text).matches();
  }

  /** {@code GND STUD}: an item without a pin, in one or two words. */
  private static boolean isItem(String text) {
    return ITEM.matcher(text).matches();
  }

  /** The pieces as points; between words each must look like one, before the last and behind it. */
  private Optional<Path> parted(List<String> pieces, boolean strict) {
    List<String> points = new ArrayList<>();
    String name = "";
    String rest = "";
    for (int i = 0; i < pieces.size(); i++) {
      String piece = pieces.get(i).strip();
      int first = piece.indexOf(' ');
      int last = piece.lastIndexOf(' ');
      int comma = piece.indexOf(',');
      if (i == 0 && last > 0 && isPoint(piece.substring(last + 1))) {
        name = piece.substring(0, last).strip().replaceFirst("[:.]$", "");
        piece = piece.substring(last + 1);
      } else if (i == pieces.size() - 1 && first > 0 && isPoint(piece.substring(0, first))) {
        rest = piece.substring(first).strip();
        piece = piece.substring(0, first);
      } else if (i == pieces.size() - 1 && comma > 0 && isPoint(piece.substring(0, comma))) {
        rest = piece.substring(comma + 1).strip();
        piece = piece.substring(0, comma);
      }
      boolean item = i == pieces.size() - 1 && isItem(piece);
      if (piece.isEmpty() || (strict && !isPoint(piece) && !item)) {
        return Optional.empty();
      }
      points.add(piece);
    }
    return Optional.of(new Path(name, List.copyOf(points), rest));
  }

  /** The points of {@code J1-1..4}: what two dots part is a range and nothing else. */
  private List<Text> rangeOf(String text, Grammar grammar) {
    int dots = text.indexOf("..");
    if (dots < 1) {
      return List.of();
    }
    Text first = parse(text.substring(0, dots).strip(), grammar);
    Matcher items = ITEMS.matcher(text);
    if (items.matches()) {
      // MUX0..3-OUT: the same pin of several items.
      String range = items.group(1) + items.group(2) + ".." + items.group(3);
      return PinList.range(range).stream()
          .map(item -> new Text(item, shell(items.group(4))))
          .toList();
    }
    if (first.pin().isEmpty()) {
      return PinList.range(text).stream().map(one -> parse(one, grammar)).toList();
    }
    String last = text.substring(dots).replaceFirst("^\\.+\\s*", "");
    return PinList.range(first.pin() + ".." + last).stream()
        .map(pin -> new Text(first.item(), pin))
        .toList();
  }
}
