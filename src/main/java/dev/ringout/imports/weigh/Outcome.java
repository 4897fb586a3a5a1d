package dev.ringout.imports.weigh;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Understanding;
import dev.ringout.imports.list.Words;
import dev.ringout.imports.rows.TableReader;
import dev.ringout.imports.rows.Tally;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** What came out when a table was read in one way for a trial, counted. */
final class Outcome {
  static final int ROWS_TRIED = 1000;
  private static final int FAR_ENDS_OF_A_FEW = 2;

  private static final Pattern QUANTITY =
      Pattern.compile(
          "[-+]?\\d*[.,]\\d+|\\d+([.,]\\d+)?\\s*(mA|kW|Hz|kHz|MHz|%|\u20ac|\\$)"
              // 1A may be a building's wing or a pin; 16A is amperes.
              + "|(\\d{2,}|\\d+[.,]\\d+|\\d+ )(A|W)");

  private static final Pattern TERMINALS =
      Pattern.compile("\\d*[A-Z]?\\d*(TB|TS|XT|X|SP|E|L|BB|GND|PE)\\d+");

  private static final Pattern DECIMAL = Pattern.compile("\\d{1,2}\\.\\d{1,3}");

  private final Understanding understood = new Understanding();
  private final Tally tally;
  private final Map<String, Integer> marks = new TreeMap<>();
  private final Words words;
  private final List<Draft> wires = new ArrayList<>();

  private Outcome(Tally tally, Words words) {
    this.tally = tally;
    this.words = words;
  }

  /** Reads the first rows of a table for a trial; nothing of it is kept but the counts. */
  static Outcome of(ListTable table, Words words, ImportOptions options) {
    ListTable some =
        new ListTable(
            table.grid(),
            table.headingRow(),
            table.firstColumn(),
            table.lastColumn(),
            table.columns(),
            table.layout(),
            table.sheetItem(),
            table.body().subList(0, Math.min(ROWS_TRIED, table.body().size())));
    Understanding into = new Understanding();
    Tally tally =
        TableReader.of(some, words, new Ends(words), options, new ListFindings(), into).read();
    Outcome outcome = new Outcome(tally, words);
    outcome.take(into, table.layout());
    if (table.layout() == Layout.MARKS) {
      outcome.takeMarks(some);
    }
    return outcome;
  }

  private void takeMarks(ListTable table) {
    for (Row row : table.body()) {
      for (ListColumn column : table.columns()) {
        String mark = column.textIn(row);
        if (column.role() == Role.POINTS && !mark.isEmpty() && !CellText.isDigits(mark)) {
          marks.merge(mark, 1, Integer::sum);
        }
      }
    }
  }

  private void take(Understanding into, Layout layout) {
    wires.addAll(into.drafts());
    into.named().forEach((net, ends) -> ends.forEach(end -> understood.onNet(net, end)));
    into.halves().forEach((name, halves) -> halves.forEach(understood::wireEnd));
    if (layout == Layout.WIRE_ENDS) {
      into.halves()
          .values()
          .forEach(
              halves -> {
                for (int i = 0; i + 1 < halves.size(); i++) {
                  End next = halves.get(i + 1).from();
                  wires.add(halves.get(i).with(halves.get(i).from(), next, List.of()));
                }
              });
    }
  }

  /** The marks of a matrix that stand most often: others may say "not yet", or count. */
  List<String> marks() {
    int most = marks.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    return marks.entrySet().stream()
        .filter(mark -> mark.getValue() == most)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Whether marks of a matrix were taken as wires. */
  boolean isMarked() {
    return !wires.isEmpty();
  }

  /** Whether rows could not be read that probably are wires. */
  boolean losesRows() {
    return tally.skipped().stream().anyMatch(row -> row.why().lost());
  }

  Tally tally() {
    return tally;
  }

  List<Draft> wires() {
    return wires;
  }

  /** Points by the net on which they are. */
  Map<String, List<End>> nets() {
    return understood.named();
  }

  /** Pins by the number of the wire that ends there. */
  Map<String, List<Draft>> halves() {
    return understood.halves();
  }

  private List<End> ends() {
    List<End> ends = new ArrayList<>();
    for (Draft wire : wires) {
      ends.add(wire.from());
      ends.add(wire.to());
    }
    understood.named().values().forEach(ends::addAll);
    return ends;
  }

  /** How many of how many. */
  record Share(int count, int of) {
    int percent() {
      return of == 0 ? 0 : count * 100 / of;
    }
  }

  /**
   * Ends that look like a point or the name of a thing.
   *
   * @param named whether the headings say that these are ends, so that any short text can be one
   */
  Share wellFormed(boolean named) {
    return share(
        ends(),
        end -> {
          boolean shortText = end.item().length() <= 40 && end.pin().length() <= 30;
          return isWellFormed(end) || (named && shortText && end.hasPin());
        });
  }

  /** How many of the wires' ends are such. */
  Share endsThat(Predicate<End> such) {
    List<End> ends = new ArrayList<>();
    wires.forEach(wire -> ends.addAll(List.of(wire.from(), wire.to())));
    return share(ends, such);
  }

  private static Share share(List<End> ends, Predicate<End> such) {
    return new Share((int) ends.stream().filter(such).count(), ends.size());
  }

  private static boolean isWellFormed(End end) {
    boolean numbered = end.hasPin() && end.item().length() <= 4;
    boolean named =
        numbered || (end.item().chars().anyMatch(Character::isLetter) && end.item().length() <= 40);
    boolean decimal = DECIMAL.matcher(end.pin()).matches();
    boolean pin = end.pin().length() <= 14 && (decimal || !QUANTITY.matcher(end.pin()).matches());
    boolean phrase = end.item().chars().filter(c -> c == ' ').count() > 5;
    return named && pin && !phrase && !QUANTITY.matcher(end.item()).matches();
  }

  /** Ends whose item is a number alone. */
  Share itemless(boolean cored) {
    return share(
        ends(),
        end -> end.item().chars().noneMatch(Character::isLetter) && (cored || !end.hasPin()));
  }

  /**
   * Ends that are quantities.
   *
   * @param plain whether a plain decimal is one too, as where no heading says that these are pins
   */
  Share quantities(boolean plain) {
    return share(
        ends(),
        end -> {
          boolean pin = QUANTITY.matcher(end.pin()).matches();
          boolean decimal = DECIMAL.matcher(end.pin()).matches();
          return (pin && (plain || !decimal)) || QUANTITY.matcher(end.item()).matches();
        });
  }

  /** Points, joints left out, with more far ends than a contact or a terminal has. */
  Share manyFarEnds() {
    Map<String, Set<String>> farEnds = new HashMap<>();
    Set<String> points = new HashSet<>();
    for (Draft wire : wires) {
      points.add(wire.from().toString());
      points.add(wire.to().toString());
      count(farEnds, wire.from(), wire.to());
      count(farEnds, wire.to(), wire.from());
    }
    long many = farEnds.values().stream().filter(far -> far.size() > FAR_ENDS_OF_A_FEW).count();
    return new Share((int) many, points.size());
  }

  private void count(Map<String, Set<String>> farEnds, End end, End far) {
    boolean joins =
        words.mentions("joint", end.item())
            || words.mentions("joint", end.pin())
            || isTerminal(end);
    if (end.hasPin() && !joins) {
      farEnds.computeIfAbsent(end.toString(), key -> new HashSet<>()).add(far.toString());
    }
  }

  /** Terminals, studs and splices take several wires (ASME Y14.44 and common practice). */
  private static boolean isTerminal(End end) {
    return TERMINALS.matcher(end.item()).matches();
  }

  /** Whether the rows' own pins are mostly terminals. */
  boolean isOfTerminals() {
    long terminals = wires.stream().filter(wire -> isTerminal(wire.from())).count();
    return terminals * 2 > wires.size();
  }

  /** The items of the rows' own pins. */
  Set<String> ownItems() {
    Set<String> items = new HashSet<>();
    wires.stream().map(Draft::from).filter(End::own).map(End::item).forEach(items::add);
    understood.halves().values().forEach(halves -> items.add(halves.get(0).from().item()));
    return items;
  }

  Share self() {
    int self = 0;
    for (Draft wire : wires) {
      boolean same = wire.from().hasPin() && wire.from().toString().equals(wire.to().toString());
      self += same ? 1 : 0;
    }
    return new Share(self, wires.size());
  }

  /** Of the rows' own pins, how many stand once. */
  Share ownPinsOnce() {
    Map<String, Set<Integer>> rows = new HashMap<>();
    for (Draft wire : wires) {
      if (wire.from().own()) {
        rows.computeIfAbsent(wire.from().toString(), key -> new HashSet<>())
            .add(wire.place().row());
      }
    }
    understood
        .named()
        .values()
        .forEach(
            ends ->
                ends.forEach(
                    end ->
                        rows.computeIfAbsent(end.toString(), key -> new HashSet<>())
                            .add(end.place().row())));
    long once = rows.values().stream().filter(own -> own.size() == 1).count();
    return new Share((int) once, rows.size());
  }

  /** Points that stand on one wire only. */
  Share pointsOnce() {
    Map<String, Integer> uses = new HashMap<>();
    for (Draft wire : wires) {
      uses.merge(wire.from().toString(), 1, Integer::sum);
      uses.merge(wire.to().toString(), 1, Integer::sum);
    }
    long once = uses.values().stream().filter(count -> count == 1).count();
    return new Share((int) once, uses.size());
  }

  /** Wires of which the row at the far end leads back. */
  Share foundAtBothEnds() {
    Set<String> runs = new HashSet<>();
    for (Draft wire : wires) {
      runs.add(wire.from() + "\t" + wire.to());
    }
    int found = 0;
    for (Draft wire : wires) {
      found += runs.contains(wire.to() + "\t" + wire.from()) ? 1 : 0;
    }
    return new Share(found, wires.size());
  }

  Share numbersTwice(Map<String, Integer> everywhere) {
    int twice = 0;
    for (String number : understood.halves().keySet()) {
      twice += everywhere.getOrDefault(number, 0) >= 2 ? 1 : 0;
    }
    return new Share(twice, understood.halves().size());
  }

  Share netsOfSeveral() {
    int several = 0;
    for (List<End> ends : understood.named().values()) {
      several += ends.size() > 1 ? 1 : 0;
    }
    return new Share(several, understood.named().size());
  }

  /** What the wires join, whatever they are called and wherever they begin: for comparing. */
  Set<String> joins() {
    Set<String> joins = new HashSet<>();
    for (Draft wire : wires) {
      String one = wire.from().toString();
      String other = wire.to().toString();
      joins.add(one.compareTo(other) < 0 ? one + "\t" + other : other + "\t" + one);
    }
    understood.named().forEach((net, ends) -> ends.forEach(end -> joins.add(net + "\t\t" + end)));
    return joins;
  }
}
