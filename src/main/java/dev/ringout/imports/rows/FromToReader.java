package dev.ringout.imports.rows;

import dev.ringout.cells.CellText;
import dev.ringout.cells.PinList;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.SkipReason;
import dev.ringout.imports.list.SparePin;
import dev.ringout.imports.list.Understanding;
import dev.ringout.imports.list.Words;
import dev.ringout.imports.rows.Tally.RowKind;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Rows that are wires from one point to another. */
class FromToReader extends TableReader {
  /** {@code 1 (3V3)}: a pin with its name in brackets. */
  private static final Pattern NAMED =
      Pattern.compile("[A-Za-z]{0,3}\\d{1,3}[A-Za-z]? ?\\((?=[^()]*\\p{L})[^()]{2,20}\\)");

  /** {@code MUX0..MUX3}: the same pin of several items. */
  private static final Pattern ITEM_RANGE =
      Pattern.compile("([A-Z]{1,6})(\\d{1,3})\\s?\\.\\.+\\s?\\1?(\\d{1,3})");

  /** {@code VCC / GND}, with blanks around the stroke: two pins and no name of one. */
  private static final Pattern STROKE = Pattern.compile(" / ");

  private final PinRanges ranges;
  private final CountedRanges counted;
  private final Map<Integer, Boolean> byStroke = new HashMap<>();
  private List<End> last = List.of();

  FromToReader(ListTable table, Words words, Ends ends, ListFindings findings, Understanding into) {
    super(table, words, ends, findings, into);
    this.ranges = PinRanges.of(table);
    this.counted = new CountedRanges(table, words);
  }

  @Override
  void readRow(Row row) {
    String name = cells.text(row, Role.WIRE);
    Side from = unlessSpare(row, Role.FROM_PIN, side(row, Role.FROM, Role.FROM_PIN));
    Side to = unlessSpare(row, Role.TO_PIN, side(row, Role.TO, Role.TO_PIN));
    if (cells.rowIsLost()) {
      lose(row);
      return;
    }
    boolean wire = !name.isEmpty() && !isNothing(name);
    if (from.isNothing() && to.isNothing()) {
      if (isSpareAtBothEnds(row, from, to, wire)) {
        findings.note(cells.place(row, Role.FROM), new RowOddity.SpareAtBothEnds(name));
        tally.count(RowKind.SPARE);
      } else {
        withoutEnds(row, wire);
      }
      return;
    }
    if (goesOn(row, from, to, wire)) {
      from = before(row);
    }
    if (from.isNothing() || to.isNothing()) {
      oneEnd(row, name, from, to, wire);
      return;
    }
    List<End> starts = byStroke(from.points(), to.points());
    List<End> finishes = byStroke(to.points(), from.points());
    last = finishes.isEmpty() ? last : finishes;
    Optional<End> open = openByStroke(starts, finishes);
    if (open.isPresent()) {
      Role role = starts.contains(open.get()) ? Role.FROM_PIN : Role.TO_PIN;
      lose(row, role, new RowOddity.EndInDoubt(open.get().pin()), SkipReason.END_IN_DOUBT);
      return;
    }
    if (from.stowed()) {
      starts = List.of(stowed(row, Role.FROM, from.text(), endName(row, name, finishes)));
    }
    if (to.stowed()) {
      String end = endName(row, name, from.points());
      finishes = List.of(stowed(row, Role.TO, to.text(), from.stowed() ? end + "/2" : end));
    }
    wires(row, name, starts, finishes, to.joined());
  }

  /**
   * {@code VCC / GND} at one end and {@code 5V / GND} at the other: as many pins as at the other.
   */
  private static List<End> byStroke(List<End> own, List<End> others) {
    if (own.size() != 1 || others.size() != 1) {
      return own;
    }
    End end = own.get(0);
    List<String> pins = List.of(STROKE.split(end.pin(), -1));
    List<String> there = List.of(STROKE.split(others.get(0).pin(), -1));
    boolean plain =
        Stream.concat(pins.stream(), there.stream()).allMatch(pin -> pin.strip().indexOf(' ') < 0);
    // "TX / D0" to "RX / D1" may be one pin of two names: a name at both ends tells them apart.
    boolean shared =
        IntStream.range(0, Math.min(pins.size(), there.size()))
            .anyMatch(i -> pins.get(i).strip().equalsIgnoreCase(there.get(i).strip()));
    return pins.size() < 2 || pins.size() != there.size() || !plain || !shared
        ? own
        : pins.stream().map(pin -> end.with(end.item(), pin.strip())).toList();
  }

  /** {@code VCC / GND} to what is not two pins as well, where most pins are not written so. */
  private Optional<End> openByStroke(List<End> starts, List<End> finishes) {
    return starts.size() != 1 || finishes.size() != 1
        ? Optional.empty()
        : Stream.of(starts.get(0), finishes.get(0))
            .filter(end -> STROKE.matcher(end.pin()).find())
            .filter(end -> isUnderPins(end.place().column()))
            .filter(end -> !isWrittenByStroke(end.place().column()))
            .findFirst();
  }

  private boolean isUnderPins(int column) {
    return Stream.of(Role.FROM_PIN, Role.TO_PIN)
        .flatMap(role -> cells.column(role).stream())
        .anyMatch(pins -> pins.index() == column);
  }

  private boolean isWrittenByStroke(int column) {
    return byStroke.computeIfAbsent(
        column,
        index -> {
          List<String> texts =
              table.body().stream()
                  .map(row -> row.cell(index).text())
                  .filter(text -> !text.isBlank())
                  .toList();
          return texts.stream().filter(text -> STROKE.matcher(text).find()).count() * 2
              > texts.size();
        });
  }

  /**
   * Whether a row goes on from the point above: it has a far end, a remark and no near end. From
   * where in the row above makes no other net.
   */
  private boolean goesOn(Row row, Side from, Side to, boolean wire) {
    boolean open = !wire && from.text().isEmpty() && from.isNothing() && !to.isNothing();
    return open && !last.isEmpty() && !to.stowed() && says(row);
  }

  private boolean says(Row row) {
    for (ListColumn column : table.columns()) {
      String text = column.textIn(row);
      if (!text.isEmpty() && words.mentions("goes on", text)) {
        return true;
      }
    }
    return false;
  }

  private Side before(Row row) {
    findings.warning(
        cells.place(row, Role.FROM), new RowOddity.GoesOn(last.get(last.size() - 1).toString()));
    return new Side("", false, false, false, List.of(last.get(last.size() - 1)));
  }

  private void wires(Row row, String name, List<End> starts, List<End> finishes, boolean joined) {
    tally.count(RowKind.WIRE);
    if (starts.size() == 1 && finishes.size() == 1) {
      add(row, name, starts.get(0), finishes.get(0), List.of());
      return;
    }
    if (starts.size() == finishes.size()) {
      say(row, new RowOddity.AsManyAtBothEnds());
      List<String> cores = counted.are(row) ? CountedRanges.names(name) : List.of();
      for (int i = 0; i < starts.size(); i++) {
        String core = cores.size() == starts.size() ? cores.get(i) : Draft.numbered(name, i);
        add(row, core, starts.get(i), finishes.get(i), List.of());
      }
    } else if (starts.size() == 1 && joined) {
      say(row, new RowOddity.OneConductorOnSeveral());
      add(row, name, starts.get(0), finishes.get(0), finishes.subList(1, finishes.size()));
    } else if (starts.size() == 1 || finishes.size() == 1) {
      say(row, new RowOddity.WireToEach());
      int number = 0;
      for (End start : starts) {
        for (End finish : finishes) {
          add(row, Draft.numbered(name, number++), start, finish, List.of());
        }
      }
    } else {
      tally.count(RowKind.WIRE, -1);
      lose(row, Role.TO, new RowOddity.NotAsManyAtBothEnds(), SkipReason.SEVERAL_AT_BOTH_ENDS);
    }
  }

  private void say(Row row, RowOddity oddity) {
    findings.warning(cells.place(row, Role.TO), oddity);
  }

  /** One end of a row. */
  record Side(String text, boolean isNothing, boolean stowed, boolean joined, List<End> points) {}

  final Side side(Row row, Role item, Role pin) {
    String text = cells.text(row, item);
    String pinText = pinText(row, text, pin);
    String strip = cells.text(row, item == Role.FROM ? Role.FROM_STRIP : Role.TO_STRIP);
    boolean ofItemAbove = text.isEmpty() && (pinText.equals("-") || pinText.equalsIgnoreCase("NC"));
    boolean hasPin = !isNoPin(ofItemAbove ? cells.carried(row, item) : text, pinText);
    if (isStowed(text) || isStowed(pinText)) {
      return new Side(isStowed(text) ? text : pinText, false, true, false, List.of());
    }
    if (hasPin && cells.column(item).isEmpty()) {
      String said = itemOfPins(pin, pinText);
      String titled = said.isEmpty() ? titledEnd(item) : said;
      String known = titled.isEmpty() ? headed(pin, pinText) : titled;
      if (known.isEmpty()
          && cells.column(pin).filter(ListColumn::isSaid).isPresent()
          && CellText.isDigits(pinText)) {
        error(row, pin, new RowOddity.PinWithoutItem(pinText));
        cells.lose();
      }
      if (known.isEmpty() && isOpenUnderHeading(pin, pinText)) {
        error(row, pin, new RowOddity.EndInDoubt(pinText));
        cells.lose();
      }
      return known.isEmpty()
          ? oneColumn(row, pin, pinText)
          : new Side(
              known, false, false, false, pinsOf(row, pin, known, ends.withoutRemark(pinText)));
    }
    if (text.isEmpty() && hasPin) {
      text = cells.carried(row, item);
    }
    if (text.isEmpty() && hasPin) {
      Ends.Text whole = ends.parse(pinText, grammar(pin));
      if (!whole.pin().isEmpty()) {
        return new Side(pinText, false, false, false, ends(List.of(whole), row, pin));
      }
      text = section();
    }
    if (text.isEmpty() && hasPin && !cells.rowIsLost()) {
      error(row, pin, new RowOddity.PinWithoutItem(pinText));
      cells.lose();
    }
    if (isNothing(text) && !hasPin) {
      return new Side(text, true, false, false, List.of());
    }
    if (!hasPin) {
      return oneColumn(row, item, text);
    }
    if (isNothing(text)) {
      if (text.matches("[-.\u2026]+")) {
        // A dash over a pin may be "as above".
        error(row, item, new RowOddity.EndInDoubt(text));
        cells.lose();
      }
      return new Side(text, true, false, false, List.of());
    }
    String whole = isNothing(strip) ? text : text + " " + strip;
    return new Side(
        whole, false, false, pinText.indexOf('+') > 0, pinsOf(row, pin, whole, pinText));
  }

  /** The item of bare pins: as the user or a title says; empty where the texts are points. */
  private String itemOfPins(Role pin, String text) {
    Optional<ListColumn> column = cells.column(pin);
    if (column.isEmpty() || !column.get().isSaid()) {
      return "";
    }
    String own = column.get().item();
    if (column.get().namesItem()) {
      return own;
    }
    boolean bare = ends.parse(text, grammar(pin)).pin().isEmpty();
    boolean leads = leads(pin);
    // A title within the table names what the first pins are of, and never both ends.
    String first = leads ? titledItem() : own;
    String other = leads ? own : table.sheetItem();
    return bare ? (first.isEmpty() ? other : first) : "";
  }

  /** Whether a column of pins is the first: of two, the pins of what a title names. */
  private boolean leads(Role pin) {
    int own = cells.column(pin).map(ListColumn::index).orElse(0);
    Role there = pin == Role.FROM_PIN ? Role.TO_PIN : Role.FROM_PIN;
    return own < cells.column(there).map(ListColumn::index).orElse(Integer.MAX_VALUE);
  }

  /** The item that the heading of a column of pins names: {@code Mega pin}. */
  private String headed(Role pin, String text) {
    boolean several = STROKE.matcher(text).find();
    boolean bare =
        several || ends.isKindOfPin(text) || ends.parse(text, grammar(pin)).pin().isEmpty();
    String item = cells.column(pin).map(ListColumn::item).orElse("");
    // A title over the headings once more names what the rows below it are of.
    boolean titled = !item.isEmpty() && !section().isEmpty() && leads(pin);
    return bare ? (titled ? section() : item) : "";
  }

  /**
   * {@code Display pin 3} under {@code Board pin}: another item, or a pin of the board that is
   * called so. {@code Door sensor pin 3} under {@code Sensor pin} tells which sensor.
   */
  private boolean isOpenUnderHeading(Role pin, String text) {
    String item = cells.column(pin).map(ListColumn::item).orElse("");
    return !item.isEmpty()
        && ends.isPinOfWords(text)
        && !ends.isKindOfPin(text)
        && !text.toLowerCase(Locale.ROOT).contains(item.toLowerCase(Locale.ROOT));
  }

  /** One column an end, whatever its heading: a point, or an item alone. */
  private Side oneColumn(Row row, Role column, String said) {
    String text = counted.are(row) ? CountedRanges.dotted(said) : said;
    return new Side(
        text,
        false,
        false,
        Ends.isJoined(text),
        ends(ends.parseAll(text, grammar(column)), row, column));
  }

  /** The pin of an end; a core that lands on terminals of its own name gives both ends theirs. */
  private String pinText(Row row, String item, Role pin) {
    String own = cells.text(row, pin);
    if (!own.isEmpty() || cells.column(Role.BOTH_PINS).isEmpty() || isNothing(item)) {
      return own;
    }
    return cells.text(row, Role.BOTH_PINS);
  }

  /** The pins of a cell: one, several, or a range where it is plain that it is one. */
  private List<End> pinsOf(Row row, Role pin, String item, String pinText) {
    List<End> points = new ArrayList<>();
    List<String> pins = PinList.listed(pinText);
    List<String> items = pins.size() == 1 ? itemsOf(item) : List.of();
    if (items.size() > 1) {
      for (String one : items) {
        points.add(new End(one, ends.shell(pinText), cells.place(row, pin), false));
      }
      return points;
    }
    boolean byCores = pins.size() == 1 && counted.are(row);
    if (pins.size() == 1 && !byCores && ranges.isOpen(pinText)) {
      error(row, pin, new RowOddity.EndInDoubt(pinText));
      cells.lose();
    }
    boolean spans = byCores || (pins.size() == 1 && ranges.isRange(pinText));
    String dotted = spans ? CountedRanges.dottedPins(pinText) : pinText;
    List<String> range = pins.size() == 1 ? PinList.range(dotted) : List.of();
    pins = byCores && range.size() < 2 ? CountedRanges.apart(pinText) : pins;
    if (range.size() > 1 && (spans || isPlainRange(pinText))) {
      pins = range;
      findings.warning(cells.place(row, pin), new RowOddity.ReadAsRange(pinText, pins.size()));
    }
    for (String one : pins) {
      String bare = NAMED.matcher(one).matches() ? named(pin, one) : one;
      points.add(new End(item, ends.shell(bare), cells.place(row, pin), false));
    }
    return points;
  }

  private String named(Role pin, String text) {
    return cells
        .column(pin)
        .map(column -> heads.of(column, text))
        .orElseGet(() -> PinName.of(text))
        .pin();
  }

  /** The items of a range of them; none where it is none. */
  private static List<String> itemsOf(String item) {
    Matcher range = ITEM_RANGE.matcher(item);
    return range.matches()
        ? PinList.range(range.group(1) + range.group(2) + ".." + range.group(3))
        : List.of();
  }

  /** "1-2" may be a pin's own name; only letters before both numbers, or "thru", make a range. */
  private static boolean isPlainRange(String text) {
    return text.matches("(?i)([A-Z]+)\\d+\\s?-\\s?\\1\\d+|.*(\\.\\.|thru| to ).*");
  }

  /** A core that a word says is spare at either end; a dash alone or a blank does not say it. */
  private boolean isSpareAtBothEnds(Row row, Side from, Side to, boolean wire) {
    boolean words = isSpareWord(from.text()) && isSpareWord(to.text());
    boolean dashes = !from.text().isEmpty() && !to.text().isEmpty() && spareIsSaid(row);
    return wire && (words || dashes);
  }

  /** No end where a dash stands for its pin, and a remark says that the core is spare. */
  private Side unlessSpare(Row row, Role pin, Side side) {
    String text = cells.text(row, pin);
    boolean dash = !text.isEmpty() && isNothing(text);
    return dash && spareIsSaid(row) ? new Side(text, true, false, false, List.of()) : side;
  }

  /** A word for spare that is no item's: a plug is one in other lists. */
  private boolean isSpareWord(String text) {
    return words.is("spare", text) && !words.isAny("item", text);
  }

  private void withoutEnds(Row row, boolean wire) {
    boolean spareCore = wire && !spareWord(row).isEmpty();
    if (wire && !spareCore && !attributes(row).isEmpty()) {
      lose(row, Role.FROM, new RowOddity.NoEnds(), SkipReason.WIRE_WITHOUT_ENDS);
    } else {
      tally.count(RowKind.NOTE);
    }
  }

  /** Whether a remark or a name says that the pin is not used. */
  private boolean spareIsSaid(Row row) {
    for (ListColumn column : table.columns()) {
      boolean speaks =
          column.role() == Role.SIGNAL || column.role() == Role.NOTE || column.role() == Role.KEEP;
      String text = speaks ? column.textIn(row) : "";
      if (!text.isEmpty() && words.mentions("spare", text)) {
        return true;
      }
    }
    return false;
  }

  /** One end only: a spare pin; a spare wire where the row gives one; else a mistake. */
  private void oneEnd(Row row, String name, Side from, Side to, boolean wire) {
    Side there = from.isNothing() ? to : from;
    Side missing = from.isNothing() ? from : to;
    Role role = from.isNothing() ? Role.FROM : Role.TO;
    String spare = missing.text().isEmpty() ? spareWord(row) : missing.text();
    boolean said = !spare.isEmpty();
    boolean attributes =
        !cells.text(row, Role.GAUGE).isEmpty() || !cells.text(row, Role.LENGTH).isEmpty();
    if (there.stowed()) {
      tally.count(RowKind.NOTE);
    } else if (wire && said && attributes) {
      tally.count(RowKind.WIRE);
      End start = there.points().get(0);
      add(
          row,
          name,
          start,
          stowed(row, role, spare, endName(row, name, List.of(start))),
          List.of());
    } else if (said || !wire) {
      boolean nearMissing = from.isNothing() && !spareIsSaid(row);
      if (!said && (attributes || nearMissing)) {
        lose(row, role, new RowOddity.NoOtherEnd(), SkipReason.NO_OTHER_END);
        return;
      }
      tally.count(RowKind.SPARE);
      for (End end : there.points()) {
        into.add(
            new SparePin(
                end, spareNote(said ? spare : cells.text(row, Role.SIGNAL), wire ? name : "")));
      }
    } else {
      lose(row, role, new RowOddity.NamedWireWithoutOtherEnd(name), SkipReason.NO_OTHER_END);
    }
  }
}
