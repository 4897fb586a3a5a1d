package dev.ringout.imports.rows;

import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.Draft.Value;
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
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Rows that are the terminals of a strip, with what comes from the left and goes to the right. */
final class TerminalReader extends FromToReader {
  /** {@code 4/5}, {@code 6,7}: several terminals, or one of two. */
  private static final Pattern SEVERAL =
      Pattern.compile("[A-Za-z]{0,2}\\d{1,3}\\s*[-/,&+]\\s*[A-Za-z]{0,2}\\d{1,3}");

  private static final Pattern TERMINAL = Pattern.compile("[A-Za-z]{0,2}\\d{1,3}[A-Za-z]?");

  private static final Pattern CHAIN = Pattern.compile("\\d{1,3}(-\\d{1,3})+");

  /** What stands between the terminals that a bridge joins. */
  private static final String JOINS = "\\s*[,;+&]\\s*|\\s+";

  /** What bridges have joined. */
  private final Set<String> chains = new HashSet<>();

  /** Whether the column of bridges holds marks that terminals share, and no terminals. */
  private final boolean bridgesByMarks;

  /** The terminals that follow one another with the same mark, of each bridge. */
  private final List<List<End>> runs = new ArrayList<>();

  private String markOfRun = "";
  private final Set<String> ended = new HashSet<>();

  /** The terminal of the row above, on which a row without one goes on. */
  private Optional<End> above = Optional.empty();

  TerminalReader(
      ListTable table, Words words, Ends ends, ListFindings findings, Understanding into) {
    super(table, words, ends, findings, into);
    this.bridgesByMarks = cells.column(Role.BRIDGE).filter(this::holdsMarks).isPresent();
  }

  @Override
  void readRow(Row row) {
    if (cells.column(Role.PIN).isEmpty()) {
      joined(row);
      return;
    }
    String pin = cells.text(row, Role.PIN);
    String item = item(row, pin);
    Side left = side(row, Role.FROM, Role.FROM_PIN);
    Side right = side(row, Role.TO, Role.TO_PIN);
    if (cells.rowIsLost()) {
      lose(row);
      return;
    }
    if (isNoPin(item, pin) && (!pin.isEmpty() || above.isEmpty() || !goesOn(left, right))) {
      above = Optional.empty();
      withoutTerminal(row, left, right);
      return;
    }
    if (SEVERAL.matcher(pin).matches()) {
      lose(row, Role.PIN, new RowOddity.EndInDoubt(pin), SkipReason.END_IN_DOUBT);
      return;
    }
    End terminal = pin.isEmpty() ? above(row) : terminal(row, item, pin);
    above = Optional.of(terminal);
    into.ownPin(terminal.item(), terminal.pin(), List.of());
    Bridged bridged = bridgesByMarks ? marked(row, terminal) : bridged(row, terminal);
    if (left.isNothing() && right.isNothing() && bridged.isNone()) {
      tally.count(RowKind.SPARE);
      into.add(new SparePin(terminal, cells.text(row, Role.SIGNAL)));
      return;
    }
    tally.count(RowKind.WIRE);
    boolean both = !left.isNothing() && !right.isNothing();
    if (!isMergedWithAbove(row, Role.FROM, Role.FROM_PIN)) {
      onSide(row, terminal, left.points(), stands(Role.FROM, Role.FROM_PIN), both);
    }
    if (!isMergedWithAbove(row, Role.TO, Role.TO_PIN)) {
      onSide(row, terminal, right.points(), stands(Role.TO, Role.TO_PIN), both);
    }
    bridged.to().forEach(other -> into.add(wire(row, "", terminal, other, Map.of())));
  }

  /** A terminal and one of its sides in cells that span the row above: the wire is told there. */
  private boolean isMergedWithAbove(Row row, Role item, Role pin) {
    List<ListColumn> told =
        table.columns().stream()
            .filter(
                column ->
                    column.role() == Role.PIN || column.role() == item || column.role() == pin)
            .filter(column -> !column.textIn(row).isEmpty())
            .toList();
    return !told.isEmpty()
        && told.stream()
            .allMatch(column -> table.grid().isMergedWithAbove(row.number(), column.index()));
  }

  /** A row of a list of bridges: {@code X1 | 1-2-3}, its terminals joined from each to the next. */
  private void joined(Row row) {
    String text = cells.text(row, Role.BRIDGE);
    String item = item(row, text);
    if (cells.rowIsLost()) {
      lose(row);
      return;
    }
    if (isNothing(text)) {
      tally.count(RowKind.NOTE);
      return;
    }
    List<String> pins = List.of(text.split(CHAIN.matcher(text).matches() ? "-" : JOINS, -1));
    // 1-4 may be two terminals, or four.
    boolean range = CHAIN.matcher(text).matches() && pins.size() == 2 && !isPlainChain("", pins);
    if (range || pins.size() < 2 || !pins.stream().allMatch(this::isTerminal)) {
      lose(row, Role.BRIDGE, new RowOddity.EndInDoubt(text), SkipReason.END_IN_DOUBT);
      return;
    }
    tally.count(RowKind.WIRE);
    for (int i = 0; i + 1 < pins.size(); i++) {
      End from = bridgedTo(row, item, pins.get(i));
      into.add(wire(row, "", from, bridgedTo(row, item, pins.get(i + 1)), Map.of()));
    }
  }

  /**
   * What the cell of bridges gives a terminal.
   *
   * @param to the terminals to which a bridge leads from this one
   * @param chained whether the cell joins neighbours, this one among them
   */
  private record Bridged(List<End> to, boolean chained) {
    static final Bridged NONE = new Bridged(List.of(), false);

    boolean isNone() {
      return to.isEmpty() && !chained;
    }
  }

  /**
   * The wires on one side: where there are some on both, a number or a colour that stands on one is
   * of that side alone.
   */
  private void onSide(Row row, End terminal, List<End> far, boolean before, boolean both) {
    Map<Role, Value> own = new EnumMap<>(Role.class);
    attributes(row)
        .forEach(
            (role, value) -> {
              boolean ofRow = role == Role.SIGNAL || role == Role.NOTE;
              if (ofRow || !both || isBefore(value.column()) == before) {
                own.put(role, value);
              }
            });
    String ownNumber = nameOnSide(row, before);
    String name = ownNumber.isEmpty() && !both ? nameOnSide(row, !before) : ownNumber;
    int number = 0;
    for (End end : far) {
      End from = before ? end : terminal;
      End to = before ? terminal : end;
      into.add(wire(row, Draft.numbered(name, number++), from, to, own));
    }
  }

  private Draft wire(Row row, String name, End from, End to, Map<Role, Value> texts) {
    return new Draft(
        name, from, to, List.of(), texts, notes(row), table.place(row), table.layout());
  }

  private boolean isBefore(ListColumn column) {
    return column.index() < cells.column(Role.PIN).map(ListColumn::index).orElse(0);
  }

  /** Whether the columns of an end stand before the terminal's. */
  private boolean stands(Role item, Role pin) {
    return cells.column(item).or(() -> cells.column(pin)).filter(this::isBefore).isPresent();
  }

  /** The wire number on one side; the second column of numbers has the same heading again. */
  private String nameOnSide(Row row, boolean before) {
    Optional<ListColumn> first = cells.column(Role.WIRE);
    for (ListColumn column : first.isEmpty() ? List.<ListColumn>of() : table.columns()) {
      boolean numbers = column.role() == Role.WIRE || column.key().equals(first.get().key());
      if (numbers && isBefore(column) == before) {
        return cells.text(row, column);
      }
    }
    return "";
  }

  /** The terminals of the same strip to which a bridge leads from this one. */
  private Bridged bridged(Row row, End terminal) {
    String written = cells.text(row, Role.BRIDGE);
    String text = written.replaceFirst("^[-=>\u2192 ]+", "");
    if (isNothing(text)) {
      return Bridged.NONE;
    }
    if (CHAIN.matcher(text).matches()) {
      List<String> pins = List.of(text.split("-", -1));
      if (isPlainChain(terminal.pin(), pins)) {
        chained(row, terminal, pins);
      } else {
        error(row, Role.BRIDGE, new RowOddity.EndInDoubt(text));
      }
      return new Bridged(List.of(), true);
    }
    List<End> bridged = new ArrayList<>();
    for (String pin : text.split("\\s*[,;+]\\s*", -1)) {
      if (isTerminal(pin)) {
        bridged.add(bridgedTo(row, terminal.item(), pin));
      } else {
        error(row, Role.BRIDGE, new RowOddity.EndInDoubt(pin));
      }
    }
    return new Bridged(bridged, false);
  }

  /** A terminal of the strip, or one that may stand on its next page. */
  private boolean isTerminal(String text) {
    return TERMINAL.matcher(text).matches()
        || Ends.looksLikePoint(text)
        || table.body().stream().anyMatch(row -> plainPin(row).equals(text));
  }

  private String plainPin(Row row) {
    return cells.column(Role.PIN).map(column -> column.textIn(row)).orElse("");
  }

  private End bridgedTo(Row row, String item, String text) {
    Ends.Text whole = ends.parse(text);
    return Ends.looksLikePoint(text)
        ? new End(whole.item(), whole.pin(), cells.place(row, Role.BRIDGE), true)
        : new End(item, text, cells.place(row, Role.BRIDGE), true);
  }

  /** The terminal above where both have the same mark; a mark that comes back is in doubt. */
  private Bridged marked(Row row, End terminal) {
    String mark = cells.column(Role.BRIDGE).map(one -> mark(row, one)).orElse("");
    if (!mark.isEmpty() && mark.equals(markOfRun) && isBeside(terminal)) {
      List<End> run = runs.get(runs.size() - 1);
      run.add(terminal);
      return new Bridged(List.of(run.get(run.size() - 2)), false);
    }
    if (!markOfRun.isEmpty()) {
      ended.add(markOfRun);
    }
    if (ended.contains(mark) && ended.size() > 1) {
      error(row, Role.BRIDGE, new RowOddity.EndInDoubt(mark));
    }
    markOfRun = mark;
    if (!mark.isEmpty()) {
      runs.add(new ArrayList<>(List.of(terminal)));
    }
    return Bridged.NONE;
  }

  /** Marks, or a heading that comes again on the next page. */
  private boolean holdsMarks(ListColumn column) {
    return table.body().stream()
        .map(row -> mark(row, column))
        .filter(text -> !text.isEmpty() && !text.equals(column.heading().strip()))
        .allMatch(Ends::isMarkOfBridge);
  }

  private boolean isBeside(End terminal) {
    List<End> run = runs.get(runs.size() - 1);
    return run.get(run.size() - 1).item().equals(terminal.item());
  }

  private static String mark(Row row, ListColumn column) {
    return row.cell(column.index()).text().strip();
  }

  @Override
  void finish() {
    for (List<End> joined : runs) {
      if (joined.size() > 1) {
        findings.warning(
            joined.get(0).place(),
            new RowOddity.BridgedByMarks(
                String.join(", ", joined.stream().map(End::toString).toList())));
      }
    }
  }

  /** A further core on the terminal above: one side has an end with its pin. */
  private static boolean goesOn(Side left, Side right) {
    Side there = left.isNothing() ? right : left;
    return left.isNothing() != right.isNothing() && there.points().stream().anyMatch(End::hasPin);
  }

  private End above(Row row) {
    End terminal = above.orElseThrow();
    findings.warning(cells.place(row, Role.PIN), new RowOddity.GoesOn(terminal.toString()));
    return terminal;
  }

  private void withoutTerminal(Row row, Side left, Side right) {
    if (left.isNothing() && right.isNothing()) {
      tally.count(RowKind.NOTE);
    } else {
      Side there = left.isNothing() ? right : left;
      lose(row, Role.PIN, new RowOddity.NoPinHere(there.text()), SkipReason.NO_PIN_HERE);
    }
  }

  private End terminal(Row row, String item, String pin) {
    Ends.Text whole = ends.parse(pin, grammar(Role.PIN));
    boolean aspects = pin.matches("[=+-].+:.+");
    boolean full = !whole.pin().isEmpty() && (aspects || Ends.looksLikePoint(pin));
    return full
        ? new End(whole.item(), whole.pin(), cells.place(row, Role.PIN), true)
        : new End(item, ends.shell(pin), cells.place(row, Role.PIN), true);
  }

  private String item(Row row, String pin) {
    String item = cells.text(row, Role.ITEM);
    if (item.isEmpty() && !pin.isEmpty()) {
      item = cells.carried(row, Role.ITEM);
    }
    if (!item.isEmpty()) {
      return item;
    }
    String headed = cells.column(Role.PIN).map(ListColumn::item).orElse("");
    if (Ends.isDesignator(headed)) {
      return headed;
    }
    return titledItem().isEmpty() ? table.grid().name() : titledItem();
  }

  /** {@code 5-6-7}, which may stand on each of its rows: neighbours are joined, once. */
  private void chained(Row row, End terminal, List<String> pins) {
    for (int i = 0; i + 1 < pins.size(); i++) {
      End from = new End(terminal.item(), pins.get(i), cells.place(row, Role.BRIDGE), true);
      End to = new End(terminal.item(), pins.get(i + 1), cells.place(row, Role.BRIDGE), true);
      if (chains.add(from + " " + to)) {
        into.add(wire(row, "", from, to, Map.of()));
      }
    }
  }

  /** Neighbours in their order, the row's own terminal among them: no 1-3 that may leave out 2. */
  private static boolean isPlainChain(String own, List<String> pins) {
    for (int i = 0; i + 1 < pins.size(); i++) {
      if (Integer.parseInt(pins.get(i)) + 1 != Integer.parseInt(pins.get(i + 1))) {
        return false;
      }
    }
    return own.isEmpty() || pins.contains(own);
  }
}
