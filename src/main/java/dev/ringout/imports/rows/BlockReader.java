package dev.ringout.imports.rows;

import dev.ringout.cells.CellText;
import dev.ringout.cells.PinList;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.Layout;
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
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Rows that are the pins of one connector, each with the point that it goes to. */
final class BlockReader extends TableReader {
  /** A connector alone (reference designators of ASME Y14.44, from memory): which pin of it? */
  private static final Pattern CONNECTOR = Pattern.compile("[JPX]\\d{1,3}");

  private static final Pattern NUMBERS_APART =
      Pattern.compile("[A-Za-z]?\\d{1,3}(?:[\\s=|][A-Za-z]?\\d{1,3})+");

  private static final Pattern STROKE = Pattern.compile("[A-Z]{1,3}\\d{1,3}[-:.]\\w{1,3}/\\w{1,3}");

  private static final Pattern ITEMS =
      Pattern.compile("[A-Z]{1,3}\\d{1,3}(?:[\\s,/&+]+[A-Z]{1,3}\\d{1,3})+");

  private static final Pattern WORDS = Pattern.compile("\\p{L}{4,} \\S.*");

  private final ImportOptions options;
  private final Legend legend;
  private final boolean ownPinsAreWhole;
  private final NamesLikeSpare namesLikeSpare;
  private final Map<Integer, Map<String, Integer>> firstWords = new HashMap<>();

  BlockReader(
      ListTable table,
      Words words,
      Ends ends,
      ImportOptions options,
      ListFindings findings,
      Understanding into) {
    super(table, words, ends, findings, into);
    this.options = options;
    this.legend = Legend.of(table);
    this.namesLikeSpare = new NamesLikeSpare(table, words);
    this.ownPinsAreWhole = cells.column(Role.ITEM).isEmpty() && areWhole(table, cells);
    boolean named = table.grid().name().contains(table.sheetItem());
    if (!table.sheetItem().isEmpty() && named && table.layout() == Layout.BLOCK) {
      into.otherName(table.grid().name(), table.sheetItem());
    }
  }

  /** Whether the own pins are full points such as {@code J1-2}, each with its item. */
  private static boolean areWhole(ListTable table, TableCells cells) {
    int filled = 0;
    int whole = 0;
    for (Row row : table.body()) {
      String text = cells.column(Role.PIN).map(column -> column.textIn(row)).orElse("");
      filled += text.isEmpty() ? 0 : 1;
      whole += Ends.looksLikePoint(text) || Ends.pointsOfNet(text).size() > 1 ? 1 : 0;
    }
    return whole >= 2 && whole * 10 >= filled * 7;
  }

  @Override
  void readRow(Row row) {
    if (legend.isRow(row)) {
      tally.count(RowKind.NOTE);
      return;
    }
    String pinText = ownPinText(row);
    String item = ownItem(row, !pinText.isEmpty());
    String farText = cells.text(row, Role.FAR);
    if (cells.rowIsLost()) {
      lose(row);
      return;
    }
    if (table.layout() == Layout.BLOCK && cells.column(Role.FROM_CODE).isPresent()) {
      codedRow(row, pinText, farText);
      return;
    }
    List<End> own = ownPins(row, item, pinText);
    if (cells.rowIsLost()) {
      lose(row);
      return;
    }
    joinByNames(row, own);
    switch (table.layout()) {
      case ITEM_TO_POINTS -> conductor(row, own);
      case WIRE_ENDS -> wireEnd(row, own);
      case OPEN_ENDED -> openEnded(row, own);
      case PIN_NAMES -> spare(own, cells.text(row, Role.SIGNAL));
      case NET_LIST -> onNet(row, own);
      default -> {
        if (isToldElsewhere(row, farText)) {
          tally.count(RowKind.NOTE);
        } else {
          wire(row, own, farText);
        }
      }
    }
  }

  private String ownPinText(Row row) {
    String text = cells.text(row, Role.PIN);
    if (!text.isEmpty() || table.layout() != Layout.BLOCK) {
      return text;
    }
    for (ListColumn column : table.columns()) {
      if (column.role() == Role.POINTS && text.isEmpty()) {
        text = cells.text(row, column);
      }
    }
    return text;
  }

  private String ownItem(Row row, boolean hasPin) {
    Optional<ListColumn> said = cells.column(Role.PIN).filter(ListColumn::namesItem);
    if (said.isPresent()) {
      return said.get().item();
    }
    if (cells.column(Role.ITEM).isPresent()) {
      String item = cells.text(row, Role.ITEM);
      if (item.isEmpty() && hasPin) {
        item = cells.carried(row, Role.ITEM);
      }
      if (!item.isEmpty()) {
        return item.replace('\n', ' ').replaceAll(" +", " ");
      }
    }
    if (!titledItem().isEmpty()) {
      return titledItem();
    }
    return cells
        .column(Role.PIN)
        .map(column -> column.item().isEmpty() ? table.grid().name() : column.item())
        .orElse(table.grid().name());
  }

  /** The row's own pins with their names; a range where the cell gives one. */
  private List<End> ownPins(Row row, String item, String text) {
    if (isNoPin(item, text)) {
      return List.of();
    }
    if (table.layout() == Layout.NET_LIST && Ends.pointsOfNet(text).size() > 1) {
      return pointsOfNet(row, text);
    }
    if (table.layout() == Layout.NET_LIST && isNoPinOfNet(item, text)) {
      error(row, Role.PIN, new RowOddity.EndInDoubt(text));
      cells.lose();
      return List.of();
    }
    if (ownPinsAreWhole) {
      return wholeOwnPins(row, text);
    }
    List<String> range =
        table.layout() == Layout.NET_LIST && Ends.looksLikePoint(text)
            ? List.of()
            : PinList.range(text);
    List<String> pins = range.size() > 1 ? range : PinList.listed(text);
    List<End> own = new ArrayList<>();
    for (String one : pins) {
      PinName name = heads.of(cells.column(Role.PIN).orElseThrow(), one);
      List<String> names = new ArrayList<>(name.names());
      if (table.layout() == Layout.BLOCK) {
        for (ListColumn column : table.columns()) {
          String other = column.role() == Role.POINTS ? cells.text(row, column) : "";
          if (!other.isEmpty() && !other.equals(one)) {
            PinName also = PinName.of(other);
            names.add(also.pin());
            names.addAll(also.names());
          }
        }
      }
      into.ownPin(item, name.pin(), names);
      own.add(new End(item, ends.shell(name.pin()), cells.place(row, Role.PIN), true));
    }
    return own;
  }

  /** Several pins or items in a row of a net list that has one of each, or a sentence. */
  private boolean isNoPinOfNet(String item, String text) {
    boolean several = NUMBERS_APART.matcher(text).matches();
    boolean sentence = text.indexOf(' ') > 0 && Ends.holdsPoint(text);
    boolean alone = cells.column(Role.ITEM).isEmpty();
    boolean point = !ownPinsAreWhole && Ends.looksLikePoint(text);
    boolean open = sentence || point || STROKE.matcher(text).matches();
    return several || (alone && open) || ITEMS.matcher(item).matches();
  }

  /** All points of a net in one cell. */
  private List<End> pointsOfNet(Row row, String text) {
    List<End> points = new ArrayList<>();
    for (String piece : Ends.pointsOfNet(text)) {
      boolean pinMissing = CONNECTOR.matcher(piece).matches();
      if (piece.indexOf('?') >= 0 || piece.contains("..") || pinMissing || !Ends.isOfNet(piece)) {
        error(row, Role.PIN, new RowOddity.EndInDoubt(piece));
        cells.lose();
      }
      Ends.Text one = ends.ofNet(piece, grammar(Role.PIN));
      if (!one.pin().isEmpty()) {
        into.ownPin(one.item(), one.pin(), List.of());
      }
      points.add(new End(one.item(), one.pin(), cells.place(row, Role.PIN), true));
    }
    return points;
  }

  private List<End> wholeOwnPins(Row row, String text) {
    List<End> own = new ArrayList<>();
    for (Ends.Text one : ends.parseAll(text, grammar(Role.PIN))) {
      if (!one.pin().isEmpty()) {
        into.ownPin(one.item(), one.pin(), List.of());
      }
      own.add(new End(one.item(), one.pin(), cells.place(row, Role.PIN), true));
    }
    return own;
  }

  private void joinByNames(Row row, List<End> own) {
    for (ListColumn column : table.columns()) {
      if (!column.heading().isEmpty() && options.joinsBy(column.heading())) {
        String net = cells.text(row, column);
        if (!isNothing(net)) {
          own.forEach(end -> into.onNet(net, end));
        }
      }
    }
  }

  /** {@code PE BAR} with a wire and no terminal: where the wire ends is lost, and said. */
  private boolean isItemWithoutPin(Row row, List<End> own, String name) {
    String item = cells.text(row, Role.ITEM);
    boolean lost =
        own.isEmpty()
            && !isNothing(item)
            && !isNothing(name)
            && cells.text(row, Role.PIN).isEmpty();
    if (lost) {
      lose(row, Role.PIN, new RowOddity.EndInDoubt(item), SkipReason.END_IN_DOUBT);
    }
    return lost;
  }

  private void spare(List<End> own, String note) {
    tally.count(own.isEmpty() ? RowKind.NOTE : RowKind.SPARE);
    own.forEach(end -> into.add(new SparePin(end, note)));
  }

  private void wire(Row row, List<End> own, String listedFar) {
    String farPin = cells.text(row, Role.FAR_PIN);
    if (cells.rowIsLost()) {
      lose(row);
      return;
    }
    String name = cells.text(row, Role.WIRE);
    String farText = listedFar;
    boolean farIsNamed =
        cells.column(Role.FAR).filter(far -> namesLikeSpare.isOne(listedFar, far)).isPresent();
    if (farText.isEmpty() && !isNothing(farPin)) {
      farText = cells.carried(row, Role.FAR);
      if (farText.isEmpty()) {
        farText = cells.column(Role.FAR_PIN).map(ListColumn::item).orElse("");
      }
      if (farText.isEmpty()) {
        lose(
            row,
            Role.FAR_PIN,
            new RowOddity.PinWithoutItem(farPin),
            SkipReason.FAR_PIN_WITHOUT_ITEM);
        return;
      }
    }
    if (isNothing(farText) && !farIsNamed && isNoPin(farText, farPin)) {
      withoutFarEnd(row, name, own, farText);
    } else if (own.isEmpty()) {
      farAlone(row, farText, farPin);
    } else if (isStowed(farText) || isStowed(farPin)) {
      tally.count(RowKind.WIRE);
      End end = stowed(row, Role.FAR, farText, endName(row, name, own));
      add(row, name, own.get(0), end, List.of());
    } else {
      toFarEnd(row, name, own, farText, farPin);
    }
  }

  /** A pin to which no wire goes, or a wire of which the row gives neither end. */
  private void withoutFarEnd(Row row, String name, List<End> own, String farText) {
    if (!own.isEmpty()) {
      String said = said(farText, cells.text(row, Role.SIGNAL));
      spare(own, spareNote(said, isNothing(name) ? "" : name));
    } else if (!name.isEmpty() && !isNothing(name)) {
      lose(row, Role.FAR, new RowOddity.NamedWireWithoutEnds(name), SkipReason.WIRE_WITHOUT_ENDS);
    } else {
      tally.count(RowKind.NOTE);
    }
  }

  private static String said(String inPlaceOfFarEnd, String signal) {
    boolean both = !inPlaceOfFarEnd.isEmpty() && !signal.isEmpty();
    return both ? inPlaceOfFarEnd + "; " + signal : inPlaceOfFarEnd + signal;
  }

  private void toFarEnd(Row row, String name, List<End> own, String farText, String farPin) {
    List<End> far = far(row, farText, farPin);
    if (own.size() > 1 && PinList.range(cells.text(row, Role.PIN)).size() > 1) {
      lose(
          row,
          Role.PIN,
          new RowOddity.RangeWithOneEnd(own.size()),
          SkipReason.RANGE_WITH_ONE_FAR_END);
      return;
    }
    tally.count(RowKind.WIRE);
    connect(row, name, own, far, farText);
  }

  private void connect(Row row, String name, List<End> own, List<End> far, String farText) {
    if (own.size() > 1 || far.size() > 1) {
      findings.warning(
          cells.place(row, far.size() > 1 ? Role.FAR : Role.PIN),
          Ends.isJoined(farText)
              ? new RowOddity.OneConductorOnSeveral()
              : new RowOddity.WireToEach());
    }
    if (own.size() == 1 && Ends.isJoined(farText)) {
      add(row, name, own.get(0), far.get(0), far.subList(1, far.size()));
      return;
    }
    int number = 0;
    for (End start : own) {
      for (End finish : far) {
        add(row, Draft.numbered(name, number++), start, finish, List.of());
      }
    }
  }

  private List<End> far(Row row, String farText, String farPin) {
    if (isNoPin(farText, farPin)) {
      return ends(ends.parseAll(farText, grammar(Role.FAR)), row, Role.FAR);
    }
    List<End> far = new ArrayList<>();
    for (String pin : PinList.listed(farPin)) {
      far.add(new End(farText, ends.shell(pin), cells.place(row, Role.FAR_PIN), false));
    }
    return far;
  }

  /** A far end without a pin of the table's own: not connected here, or a pin that was left out. */
  private void farAlone(Row row, String farText, String farPin) {
    boolean said = hasWordForNothing(row);
    if (!said && !cells.text(row, Role.WIRE).isEmpty()) {
      lose(row, Role.PIN, new RowOddity.NoPinHere(farText), SkipReason.NO_PIN_HERE);
      return;
    }
    if (!said) {
      findings.warning(cells.place(row, Role.PIN), new RowOddity.BesideNoPin(farText));
    }
    List<End> named = far(row, farText, farPin).stream().filter(End::hasPin).toList();
    tally.count(named.isEmpty() ? RowKind.NOTE : RowKind.SPARE);
    named.forEach(
        end -> into.add(new SparePin(end, said("not connected", cells.text(row, Role.SIGNAL)))));
  }

  private boolean hasWordForNothing(Row row) {
    for (ListColumn column : table.columns()) {
      String text = column.textIn(row);
      if (!text.isEmpty() && isNothing(text)) {
        return true;
      }
    }
    return false;
  }

  /** A conductor of a device and the terminals that it lands on. */
  private void conductor(Row row, List<End> own) {
    ListColumn terminals = cells.column(Role.POINTS).orElseThrow();
    String text = cells.text(row, terminals);
    if (cells.rowIsLost()) {
      lose(row);
      return;
    }
    if (own.isEmpty() && isNothing(text)) {
      tally.count(RowKind.NOTE);
      return;
    }
    if (own.isEmpty()) {
      lose(row, Role.PIN, new RowOddity.NoConductor(text), SkipReason.NO_CONDUCTOR);
      return;
    }
    if (isNothing(text)) {
      spare(own, text);
      return;
    }
    if (isOfItsOwn(text, terminals)) {
      findings.warning(
          table.place(row, terminals), new RowOddity.ItemUnclear(text, terminals.heading()));
    }
    List<End> landing = new ArrayList<>();
    for (String pin : text.split("\\s*\\+\\s*(?=\\S)", -1)) {
      if (!pin.isEmpty()) {
        landing.add(new End(terminals.heading(), pin, table.place(row, terminals), false));
      }
    }
    if (text.startsWith("+") || landing.size() < 2 || text.matches(".*\\s\\+\\S.*")) {
      landing = List.of(new End(terminals.heading(), text, table.place(row, terminals), false));
    }
    tally.count(RowKind.WIRE);
    connect(row, cells.text(row, Role.WIRE), own, landing, text);
  }

  /** "External 5V" among {@code GPIO 5}, {@code GPIO 18}: words with which no other cell begins. */
  private boolean isOfItsOwn(String text, ListColumn column) {
    if (!WORDS.matcher(text).matches()) {
      return false;
    }
    return firstWords
            .computeIfAbsent(column.index(), this::firstWords)
            .getOrDefault(firstWord(text), 0)
        == 1;
  }

  /** How many cells of a column of several words begin with each. */
  private Map<String, Integer> firstWords(int column) {
    Map<String, Integer> found = new HashMap<>();
    for (Row row : table.body()) {
      found.merge(firstWord(CellText.clean(row.cell(column).text())), 1, Integer::sum);
    }
    return found;
  }

  /** The first word with the blank behind it; empty where there is but one. */
  private static String firstWord(String text) {
    return text.substring(0, text.indexOf(' ') + 1);
  }

  /** A pin on a net; the rows of one net are joined. */
  private void onNet(Row row, List<End> own) {
    String written = cells.text(row, Role.NET);
    if (written.startsWith("(") || (written.length() > 2 && words.is("furniture", written))) {
      // "(cont.)": the net above, or none.
      lose(row, Role.NET, new RowOddity.EndInDoubt(written), SkipReason.END_IN_DOUBT);
      return;
    }
    boolean carries = written.isEmpty() && !own.isEmpty() && table.isSparse(Role.NET);
    String net = carries ? cells.carried(row, Role.NET) : written;
    if (net.isEmpty() && own.size() > 1) {
      lose(row, Role.NET, new RowOddity.NoEnds(), SkipReason.NO_OTHER_END);
      return;
    }
    if (isItemWithoutPin(row, own, written)) {
      return;
    }
    boolean blank = written.isEmpty() && !carries;
    boolean named = isNameOfNet(row, net, own.size());
    boolean nothing = isNothing(net) && !named;
    boolean open = !isNothing(net) && (words.is("doubt", net) || words.is("no net", net));
    if ((blank || open) && !own.isEmpty()) {
      findings.warning(
          cells.place(row, Role.NET), new RowOddity.PointWithoutNet(own.get(0).toString()));
    }
    if (own.isEmpty() || nothing || open) {
      spare(own, net.isEmpty() ? cells.text(row, Role.SIGNAL) : net);
      return;
    }
    tally.count(RowKind.WIRE);
    own.forEach(end -> into.onNet(net, end));
  }

  /**
   * Whether a word for what is not connected is a net's name: beside its opposite, or where one
   * cell lists the points of the net, which is said.
   */
  private boolean isNameOfNet(Row row, String net, int points) {
    if (!namesLikeSpare.mayBe(net)) {
      return false;
    }
    boolean beside =
        cells.column(Role.NET).filter(column -> namesLikeSpare.isOne(net, column)).isPresent();
    if (!beside && points > 1) {
      findings.warning(cells.place(row, Role.NET), new RowOddity.RemarkMayChange(net));
    }
    return beside || points > 1;
  }

  /** One end of a wire; the other stands at another pin, under the same number. */
  private void wireEnd(Row row, List<End> own) {
    String name = cells.text(row, Role.WIRE);
    if (isItemWithoutPin(row, own, name)) {
      return;
    }
    if (own.isEmpty() || isNothing(name)) {
      spare(own, name.isEmpty() ? cells.text(row, Role.SIGNAL) : name);
      return;
    }
    tally.count(RowKind.WIRE);
    Draft half =
        new Draft(
            name,
            own.get(0),
            own.get(0),
            List.of(),
            attributes(row),
            notes(row),
            table.place(row),
            table.layout());
    into.wireEnd(half);
  }

  /** A pin and its wire; where the wire goes is not said. */
  private void openEnded(Row row, List<End> own) {
    String color = cells.text(row, Role.COLOR);
    if (own.isEmpty() || isNothing(color)) {
      spare(own, cells.text(row, Role.SIGNAL));
      return;
    }
    tally.count(RowKind.WIRE);
    End start = own.get(0);
    End far = new End(start.item() + " far end", start.pin(), table.place(row), false);
    add(row, cells.text(row, Role.WIRE), start, far, List.of());
  }

  @Override
  void finish() {
    if (table.layout() == Layout.OPEN_ENDED) {
      findings.warning(table.grid().place(table.headingRow(), 0), new RowOddity.FarEndsNotListed());
    }
    boolean joined =
        cells.column(Role.SIGNAL).map(ListColumn::heading).filter(options::joinsBy).isPresent();
    if (table.layout() == Layout.PIN_NAMES && tally.of(RowKind.SPARE) > 0 && !joined) {
      findings.warning(
          table.grid().place(table.headingRow(), 0),
          new RowOddity.NamesWithoutWires(cells.column(Role.SIGNAL).map(ListColumn::heading)));
    }
  }

  /** Source and destination given as numbers, which a legend explains. */
  private void codedRow(Row row, String pinText, String farText) {
    String fromCode = cells.text(row, Role.FROM_CODE);
    String toCode = cells.text(row, Role.TO_CODE);
    String from = legend.meaning(fromCode);
    String to = legend.meaning(toCode);
    if (fromCode.isEmpty() && isNothing(pinText) && !to.isEmpty()) {
      // The far end's own text is all that is said of the source.
      tally.count(RowKind.WIRE);
      End landing = new End(to, "", cells.place(row, Role.TO_CODE), false);
      connect(
          row,
          "",
          ends(List.of(ends.parse(farText, grammar(Role.FAR))), row, Role.FAR),
          List.of(landing),
          "");
      return;
    }
    if (isNothing(farText) && !isNothing(pinText)) {
      spare(ownPins(row, from.isEmpty() ? fromCode : from, pinText), farText);
      return;
    }
    if (from.isEmpty() || to.isEmpty()) {
      lose(
          row,
          from.isEmpty() ? Role.FROM_CODE : Role.TO_CODE,
          unexplained(from.isEmpty() ? fromCode : toCode),
          SkipReason.CODE_NOT_EXPLAINED);
      return;
    }
    List<End> own =
        isNothing(pinText)
            ? List.of(new End(from, "", cells.place(row, Role.FROM_CODE), false))
            : ownPins(row, from, within(from, pinText));
    tally.count(RowKind.WIRE);
    connect(row, cells.text(row, Role.WIRE), own, codedFar(row, to, farText), "");
  }

  private static RowOddity unexplained(String code) {
    if (code.isEmpty()) {
      return new RowOddity.CodeMissing();
    }
    return CellText.isDigits(code)
        ? new RowOddity.CodeNotInLegend(code)
        : new RowOddity.CodeOfSeveral(code);
  }

  private List<End> codedFar(Row row, String to, String farText) {
    List<End> far = new ArrayList<>();
    for (Ends.Text text : ends.parseAll(farText, grammar(Role.FAR))) {
      boolean designated = Ends.isDesignator(text.item()) && !text.pin().isEmpty();
      far.add(
          designated
              ? new End(text.item(), text.pin(), cells.place(row, Role.FAR), false)
              : new End(to, within(to, farText), cells.place(row, Role.FAR), false));
    }
    return far;
  }

  /** What an end's text says beyond the item's name: {@code Stop} of "Panel Stop". */
  private static String within(String item, String text) {
    boolean starts =
        text.length() > item.length() && text.regionMatches(true, 0, item, 0, item.length());
    String rest =
        starts ? text.substring(item.length()).strip().replaceFirst("^[:,-]\\s*", "") : "";
    return rest.isEmpty() ? text : rest;
  }
}
