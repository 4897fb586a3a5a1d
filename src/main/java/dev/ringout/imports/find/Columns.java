package dev.ringout.imports.find;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.ColumnCertainty;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;

/** Settles what the columns of one table are: by headings, then by cells, then by position. */
final class Columns {
  /** A connector's designator beside other words in a heading (ASME Y14.44, from memory). */
  private static final Pattern CONNECTOR = Pattern.compile("[JPX]\\d{1,3}");

  private final List<ListColumn> columns;
  private final Map<Integer, ColumnProfile> profiles;

  /** The designator in the sheet's name, or empty. */
  private final String sheetItem;

  private final List<Row> body;
  private Layout layout = Layout.NONE;

  private Columns(Region region, Map<Integer, ColumnProfile> profiles) {
    this.columns = new ArrayList<>(region.columns());
    this.profiles = profiles;
    this.sheetItem = region.item();
    this.body = region.body();
  }

  /** Settles the columns, and how they tell wires. */
  static Columns settle(Region region, Map<Integer, ColumnProfile> profiles) {
    Columns settled = byHeadings(region, profiles);
    settled.layout = settled.decide();
    return settled;
  }

  private static Columns byHeadings(Region region, Map<Integer, ColumnProfile> profiles) {
    Columns settled = new Columns(region, profiles);
    settled.arrowsGo();
    settled.portsOfItems();
    settled.byTwins();
    settled.byNeighbours();
    settled.byStrips();
    settled.byContent();
    settled.dropRepeatedRoles();
    return settled;
  }

  /** Settles the columns so that they tell wires in one way, or nothing where they can't. */
  static Optional<Columns> settle(
      Region region, Map<Integer, ColumnProfile> profiles, Layout wanted) {
    Columns settled = byHeadings(region, profiles);
    settled.layout = wanted;
    return settled.serves(wanted) ? Optional.of(settled) : Optional.empty();
  }

  /**
   * Of three ends and more in a row, each with its pins, every two that follow one another as the
   * ends of a wire: which two are meant nobody can tell.
   */
  static List<Columns> ofEachTwoEnds(Region region, Map<Integer, ColumnProfile> profiles) {
    List<EndColumns> ends =
        byHeadings(region, profiles).endColumns(true).stream()
            .filter(end -> !end.isHeaded() && end.pin().isPresent())
            .toList();
    List<Columns> each = new ArrayList<>();
    for (int i = 0; ends.size() > 2 && i + 1 < ends.size(); i++) {
      Columns settled = byHeadings(region, profiles);
      settled.layout = Layout.FROM_TO;
      settled.forgetsEndsAlone();
      settled.become(ends.get(i), Role.FROM, Role.FROM_PIN);
      settled.become(ends.get(i + 1), Role.TO, Role.TO_PIN);
      each.add(settled);
    }
    return each;
  }

  private void forgetsEndsAlone() {
    for (ListColumn column : List.copyOf(columns)) {
      Role role = column.role();
      boolean end = role.isEnd() || role.isPinOfEnd() || role == Role.PIN || role == Role.ITEM;
      if (end || role == Role.POINTS) {
        set(column, Role.KEEP, ColumnCertainty.POSSIBLE);
      }
    }
  }

  private boolean serves(Layout wanted) {
    return switch (wanted) {
      case FROM_TO -> servesFromTo();
      case BLOCK -> servesBlock();
      case TERMINALS -> servesTerminals();
      case ROW_NETS -> servesRowNets();
      case NET_LIST -> servesNetList();
      case PATHS -> servesPaths();
      case ITEM_TO_POINTS -> isOfDevices() && has(Role.PIN);
      case MARKS -> marks() == Layout.MARKS;
      case WIRE_ENDS -> has(Role.PIN) && has(Role.WIRE) && keepsOnePin();
      case OPEN_ENDED, PIN_NAMES -> has(Role.PIN) && keepsOnePin();
      case NONE -> forgetsEnds();
      case CONNECTIONS -> false;
    };
  }

  private boolean forgetsEnds() {
    List.copyOf(columns).forEach(column -> set(column, Role.KEEP, ColumnCertainty.POSSIBLE));
    return true;
  }

  private boolean keepsOnePin() {
    pinsAfterTheFirstBecomeNotes();
    return true;
  }

  private boolean servesFromTo() {
    boolean from = has(Role.FROM) || has(Role.FROM_PIN);
    boolean to = has(Role.TO) || has(Role.TO_PIN);
    if (!from || !to) {
      endsByCells();
    }
    pinBehindSaid(Role.FROM, Role.FROM_PIN);
    pinBehindSaid(Role.TO, Role.TO_PIN);
    if (has(Role.FAR)) {
      first(Role.FAR).ifPresent(column -> set(column, Role.KEEP, ColumnCertainty.LIKELY));
    }
    pinsBecomeNotes();
    for (ListColumn column : List.copyOf(columns)) {
      if (column.role() == Role.ITEM || column.role() == Role.POINTS) {
        set(column, Role.KEEP, ColumnCertainty.LIKELY);
      }
    }
    return (has(Role.FROM) || has(Role.FROM_PIN)) && (has(Role.TO) || has(Role.TO_PIN));
  }

  /** Behind an end that the user names, whose cells are items, a column of pins is its pins. */
  private void pinBehindSaid(Role item, Role pin) {
    Optional<ListColumn> said =
        first(item).filter(column -> column.isSaid() && !has(pin)).filter(this::mayBeItems);
    said.flatMap(column -> pinAfter(columns.indexOf(column)))
        .filter(column -> !column.isSaid() && (column.role() == Role.PIN || !column.known()))
        .ifPresent(column -> set(column, pin, ColumnCertainty.LIKELY));
  }

  /** {@code ZS-101} comes again, each time with another pin beside it: an item and no point. */
  private boolean mayBeItems(ListColumn column) {
    boolean worded = pinAfter(columns.indexOf(column)).filter(Columns::isWordedPin).isPresent();
    return !isOfPoints(column) || (worded && profile(column).comesAgain());
  }

  /** One end as its cells show it: a column of points or items, and the pins beside it. */
  private record EndColumns(ListColumn item, Optional<ListColumn> pin) {
    /** {@code Mega pin}: pins of the item that the heading names, without a column of items. */
    boolean isHeaded() {
      return item.role() == Role.PIN;
    }
  }

  /** The first two ends that the cells show; what a heading says of one side stays. */
  private void endsByCells() {
    List<EndColumns> found = new ArrayList<>(endColumns());
    if (has(Role.FROM)) {
      found.removeIf(end -> end.item().role() == Role.FROM);
      found.stream().limit(1).forEach(end -> become(end, Role.TO, Role.TO_PIN));
      pinBeside(Role.FROM, Role.FROM_PIN);
    } else if (has(Role.TO)) {
      found.removeIf(end -> end.item().role() == Role.TO);
      found.stream().limit(1).forEach(end -> become(end, Role.FROM, Role.FROM_PIN));
      pinBeside(Role.TO, Role.TO_PIN);
    } else if (found.size() >= 2) {
      become(found.get(0), Role.FROM, Role.FROM_PIN);
      become(found.get(1), Role.TO, Role.TO_PIN);
    }
  }

  private void pinBeside(Role item, Role pin) {
    for (int i = 0; i < columns.size() && !has(pin); i++) {
      if (columns.get(i).role() == item) {
        pinAfter(i).ifPresent(column -> set(column, pin, ColumnCertainty.LIKELY));
      }
    }
  }

  private void become(EndColumns end, Role item, Role pin) {
    if (end.isHeaded()) {
      set(end.item(), pin, ColumnCertainty.LIKELY);
      return;
    }
    set(end.item(), item, ColumnCertainty.LIKELY);
    end.pin().ifPresent(column -> set(column, pin, ColumnCertainty.LIKELY));
  }

  /** Every column that can name one end, points before items, with the pins on its right. */
  private List<EndColumns> endColumns() {
    return endColumns(false);
  }

  /**
   * As above.
   *
   * @param mixed whether full points and items with their pins may stand in one row
   */
  private List<EndColumns> endColumns(boolean mixed) {
    List<EndColumns> withPins = new ArrayList<>();
    List<EndColumns> points = new ArrayList<>();
    List<EndColumns> items = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      ListColumn column = columns.get(i);
      if (!mayNameAnEnd(column) || namesPinsBeside(column)) {
        continue;
      }
      ColumnProfile cells = profile(column);
      if (isHeadedPin(column)) {
        withPins.add(new EndColumns(column, Optional.empty()));
        continue;
      }
      int before = i;
      Optional<ListColumn> pin = pinAfter(i).or(() -> wordedPinBefore(before, lastPinOf(withPins)));
      // DO16-3 in front of a column of terminals is a module and no point.
      boolean module =
          !isOneMore(column, points)
              && !cells.mostly(cells.inWords())
              && pin.isPresent()
              && isWordedPin(pin.get())
              && (pin.get().index() > column.index() || cells.comesAgain());
      boolean ofPoints =
          cells.points() * 10 >= cells.filled() * 7
              || cells.mostly(cells.inWords())
              || isOneMore(column, points);
      if (!module && ofPoints) {
        points.add(new EndColumns(column, Optional.empty()));
      } else if (pin.isPresent() && cells.canBeItems()) {
        withPins.add(new EndColumns(column, pin));
        i = Math.max(i, columns.indexOf(pin.get()));
      } else if (cells.canBeItems()) {
        items.add(new EndColumns(column, Optional.empty()));
      }
    }
    List<EndColumns> best = points.size() >= 2 ? points : withPins;
    if (best.size() >= 2 && !mixed) {
      return best;
    }
    List<EndColumns> all = new ArrayList<>(points);
    all.addAll(withPins);
    all.addAll(mixed ? List.of() : items);
    all.sort(Comparator.comparingInt(end -> end.item().index()));
    return all;
  }

  /** Under the heading of the points before it: {@code to}, {@code to}, {@code to}. */
  private static boolean isOneMore(ListColumn column, List<EndColumns> points) {
    return !points.isEmpty()
        && points.get(points.size() - 1).item().key().equals(column.key())
        && !column.heading().isEmpty();
  }

  private boolean mayNameAnEnd(ListColumn column) {
    return switch (column.role()) {
      case FROM, TO, FAR, ITEM, POINTS, PIN -> !profile(column).isEmpty();
      case KEEP ->
          // Beside the pins of two items a column without a heading is no end.
          !profile(column).isEmpty()
              && !isOld(column)
              && !column.isBridge()
              && !(column.heading().isEmpty() && itemsOfPins(columns) > 1);
      default -> false;
    };
  }

  /** Of how many items headings name pins: {@code Box pin | Bridge pin} of two. */
  static long itemsOfPins(List<ListColumn> columns) {
    return columns.stream()
        .filter(column -> column.role() == Role.PIN && !column.item().isEmpty())
        .map(column -> column.item().toLowerCase(Locale.ROOT))
        .distinct()
        .count();
  }

  private Optional<ListColumn> pinAfter(int index) {
    int at = index + 1;
    while (at < columns.size() && isOld(columns.get(at))) {
      at++;
    }
    if (at >= columns.size()) {
      return Optional.empty();
    }
    ListColumn next = columns.get(at);
    boolean worded = isWordedPin(next);
    boolean alike = next.role() == Role.KEEP && !next.known() && profile(next).looksLikePins();
    return worded || alike ? Optional.of(next) : Optional.empty();
  }

  /** {@code Box name} beside {@code Box pin}: what the pins are called, and no items. */
  private boolean namesPinsBeside(ListColumn column) {
    return column.role() == Role.KEEP
        && !column.isSaid()
        && !column.item().isEmpty()
        && !column.item().equalsIgnoreCase(column.heading())
        && profile(column).distinct() * 2 > profile(column).filled()
        && columns.stream()
            .filter(other -> Math.abs(other.index() - column.index()) == 1)
            .anyMatch(
                other -> other.role() == Role.PIN && other.item().equalsIgnoreCase(column.item()));
  }

  /** A column of pins whose heading names their item, and no item stands beside it. */
  private boolean isHeadedPin(ListColumn column) {
    boolean beside =
        columns.stream()
            .filter(other -> Math.abs(other.index() - column.index()) == 1)
            .filter(other -> !namesPinsBeside(other))
            .anyMatch(
                other ->
                    other.role() == Role.ITEM
                        || (other.role() == Role.KEEP
                            && profile(other).canBeItems()
                            && (profile(other).comesAgain() || isDesignated(other))));
    boolean named = has(Role.FROM) || has(Role.TO) || has(Role.FAR);
    return column.role() == Role.PIN && !column.item().isEmpty() && !beside && !named;
  }

  private static boolean isWordedPin(ListColumn column) {
    return column.role() == Role.PIN
        || column.role() == Role.FROM_PIN
        || column.role() == Role.TO_PIN;
  }

  /** What a heading says was before, or a hidden column says otherwise than a visible one. */
  private static boolean isOld(ListColumn column) {
    return column.role() == Role.KEEP && column.certainty() == ColumnCertainty.CERTAIN;
  }

  /** The mirrored half of a list: {@code Drive terminal | Drive}. */
  private Optional<ListColumn> wordedPinBefore(int index, int taken) {
    return index == 0
        ? Optional.empty()
        : Optional.of(columns.get(index - 1))
            .filter(column -> column.role() == Role.PIN && column.index() > taken);
  }

  private static int lastPinOf(List<EndColumns> ends) {
    return ends.stream()
        .flatMap(end -> end.pin().stream())
        .mapToInt(ListColumn::index)
        .max()
        .orElse(0);
  }

  private boolean servesBlock() {
    boolean far = has(Role.FAR) || has(Role.TO) || has(Role.FROM);
    if (!far) {
      Optional<EndColumns> end =
          endColumns().stream()
              .filter(one -> one.item().role() != Role.PIN && one.item().role() != Role.ITEM)
              .findFirst();
      if (end.isEmpty()) {
        return false;
      }
      become(end.get(), Role.FAR, Role.FAR_PIN);
    }
    Layout layout = block(columns.stream().filter(this::canBePoints).toList());
    if (layout == Layout.BLOCK && sheetItem.isEmpty() && !has(Role.ITEM)) {
      itemBesidePin();
    }
    return layout == Layout.BLOCK;
  }

  /** Where no heading or title says whose pins they are: devices in a column beside them do. */
  private void itemBesidePin() {
    Optional<ListColumn> pin = first(Role.PIN).filter(column -> column.item().isEmpty());
    columns.stream()
        .filter(column -> column.role() == Role.KEEP && !column.known())
        .filter(column -> pin.isPresent() && Math.abs(column.index() - pin.get().index()) == 1)
        .filter(column -> profile(column).canBeItems() && profile(column).comesAgain())
        .findFirst()
        .ifPresent(column -> set(column, Role.ITEM, ColumnCertainty.LIKELY));
  }

  /** A terminal with what comes from the left and what goes to the right. */
  private boolean servesTerminals() {
    sidesByCells();
    pinsOfSides();
    boolean sides = (has(Role.FROM) || has(Role.FROM_PIN)) && (has(Role.TO) || has(Role.TO_PIN));
    if (!sides) {
      return isOfBridges();
    }
    Optional<ListColumn> own =
        columns.stream()
            .filter(column -> column.role() == Role.PIN)
            .findFirst()
            .or(this::numbersBetween)
            .or(() -> ownTerminal(Role.FROM, Role.FROM_PIN))
            .or(() -> ownTerminal(Role.TO, Role.TO_PIN));
    if (own.isEmpty()) {
      return false;
    }
    set(own.get(), Role.PIN, ColumnCertainty.LIKELY);
    pinsAfterTheFirstBecomeNotes();
    bridges();
    return true;
  }

  /** Rows of joined terminals, as the user says: the strip, and no terminal of the row's own. */
  private boolean isOfBridges() {
    boolean said = first(Role.BRIDGE).filter(ListColumn::isSaid).isPresent();
    if (!has(Role.ITEM) && sheetItem.isEmpty()) {
      return false;
    }
    if (said) {
      pinsBecomeNotes();
      return true;
    }
    // Terminals and what they are bridged with, and nothing else.
    bridges();
    boolean others = columns.stream().anyMatch(column -> column.role().isEnd());
    return has(Role.BRIDGE) && has(Role.PIN) && !others && keepsOnePin();
  }

  /**
   * {@code Inside | Terminal | No | Terminal | Outside}: of three columns, each side's is beside
   * it.
   */
  private void pinsOfSides() {
    List<ListColumn> pins = columns.stream().filter(one -> one.role() == Role.PIN).toList();
    if (pins.size() != 3 || has(Role.FROM_PIN) || has(Role.TO_PIN)) {
      return;
    }
    List<ListColumn> beside = pins.stream().filter(this::isBesideEnd).toList();
    Optional<ListColumn> from = first(Role.FROM);
    Optional<ListColumn> to = first(Role.TO);
    if (beside.size() == 2 && from.isPresent() && to.isPresent()) {
      boolean before = from.get().index() < to.get().index();
      set(beside.get(before ? 0 : 1), Role.FROM_PIN, ColumnCertainty.LIKELY);
      set(beside.get(before ? 1 : 0), Role.TO_PIN, ColumnCertainty.LIKELY);
    }
  }

  private boolean isBesideEnd(ListColumn column) {
    return columns.stream()
        .filter(one -> one.role() == Role.FROM || one.role() == Role.TO)
        .anyMatch(one -> Math.abs(one.index() - column.index()) == 1);
  }

  /** On both sides of a column of terminals devices with their pins, which no heading names. */
  private void sidesByCells() {
    List<ListColumn> own =
        columns.stream()
            .filter(one -> one.role() == Role.PIN && one.known() && one.item().isEmpty())
            .filter(one -> profile(one).isDistinct())
            .toList();
    if (own.size() != 1 || has(Role.FROM) || has(Role.TO) || has(Role.FAR)) {
      return;
    }
    int at = own.get(0).index();
    List<EndColumns> ends =
        endColumns(true).stream()
            .filter(end -> end.item().index() != at)
            .filter(end -> end.pin().filter(pin -> pin.index() == at).isEmpty())
            .toList();
    List<EndColumns> left = ends.stream().filter(end -> end.item().index() < at).toList();
    List<EndColumns> right = ends.stream().filter(end -> end.item().index() > at).toList();
    if (left.size() == 1 && right.size() == 1) {
      become(left.get(0), Role.FROM, Role.FROM_PIN);
      become(right.get(0), Role.TO, Role.TO_PIN);
    }
  }

  /** Numbers of terminals, or marks that some of them share, under a heading of bridges. */
  private void bridges() {
    columns.stream()
        .filter(column -> column.isBridge() && !column.isSaid() && !profile(column).isEmpty())
        .filter(
            column ->
                profile(column).mostly(profile(column).bridges()) || profile(column).marksBridges())
        .findFirst()
        .ifPresent(column -> set(column, Role.BRIDGE, ColumnCertainty.LIKELY));
  }

  /** Under {@code #} or a name that says nothing, between both sides: the strip's terminals. */
  private Optional<ListColumn> numbersBetween() {
    int from = lastIndex(Role.FROM, Role.FROM_PIN);
    int to = lastIndex(Role.TO, Role.TO_PIN);
    return columns.stream()
        .filter(column -> column.role() == Role.KEEP && !column.isSaid())
        .filter(column -> !column.known())
        .filter(
            column -> column.index() > Math.min(from, to) && column.index() < Math.max(from, to))
        .filter(column -> profile(column).looksLikePins() && profile(column).isDistinct())
        .findFirst();
  }

  private int lastIndex(Role item, Role pin) {
    return columns.stream()
        .filter(column -> column.role() == item || column.role() == pin)
        .mapToInt(ListColumn::index)
        .max()
        .orElse(0);
  }

  /** A column of pins beside an end whose cells are full points: the strip's own terminals. */
  private Optional<ListColumn> ownTerminal(Role item, Role pin) {
    boolean full = first(item).filter(this::isOfPoints).isPresent();
    return full ? first(pin).filter(one -> profile(one).isDistinct()) : Optional.empty();
  }

  private boolean servesRowNets() {
    List<ListColumn> said =
        columns.stream().filter(one -> one.isSaid() && one.role() == Role.POINTS).toList();
    if (said.size() > 1) {
      return rowNets(said) == Layout.ROW_NETS;
    }
    List<ListColumn> points = ofRow();
    return points.size() >= 2 && rowNets(points) == Layout.ROW_NETS;
  }

  /**
   * The columns of a row that is a net: each pin once, or where designators head several columns
   * any column of pins.
   */
  private List<ListColumn> ofRow() {
    List<ListColumn> points = columns.stream().filter(this::canBePoints).toList();
    long designated = points.stream().filter(column -> Ends.isDesignator(column.heading())).count();
    if (designated >= 2) {
      return columns.stream().filter(this::canBeOfRow).filter(this::isNoCount).toList();
    }
    List<ListColumn> across = columns.stream().filter(this::canBeOfDevice).toList();
    boolean plain =
        columns.stream()
            .allMatch(column -> !column.known() || across.contains(column) || isRemark(column));
    boolean more = across.size() > Math.max(1, points.size());
    return more && plain && arePinsOfDevices(across) ? across : withNumberedAlike(points);
  }

  /** {@code Node 3} beside {@code Node 1} and {@code Node 2}, however few its cells are. */
  private List<ListColumn> withNumberedAlike(List<ListColumn> points) {
    return columns.stream()
        .filter(
            column ->
                points.contains(column)
                    || (column.role() == Role.KEEP
                        && !column.isSaid()
                        && !profile(column).isEmpty()
                        && points.stream().filter(other -> areNumberedAlike(other, column)).count()
                            > 1))
        .toList();
  }

  private boolean areNumberedAlike(ListColumn one, ListColumn other) {
    return one.isNumberedLike(other) && isOfPoints(one) && isOfPoints(other);
  }

  private static boolean isRemark(ListColumn column) {
    return column.role() == Role.NOTE || column.role() == Role.KEEP;
  }

  /** The numbers of the rows under a heading without a letter are no pins. */
  private boolean isNoCount(ListColumn column) {
    boolean lettered = column.heading().chars().anyMatch(Character::isLetter);
    return lettered || !profile(column).running();
  }

  /** A column under a name that no word of the trade is: a device across, its pins down. */
  private boolean canBeOfDevice(ListColumn column) {
    boolean named =
        column.role() == Role.PIN
            ? column.known()
            : column.role() == Role.KEEP && !column.known() && !column.isSaid();
    ColumnProfile cells = profile(column);
    return canBePoints(column)
        || (named
            && isNoCount(column)
            && column.heading().length() > 1
            && !cells.isEmpty()
            && !cells.isMarks()
            && !cells.mostly(cells.colors())
            && (cells.distinct() * 2 > cells.filled() || cells.filled() < 4)
            && cells.prose() == 0);
  }

  private boolean arePinsOfDevices(List<ListColumn> across) {
    int filled = across.stream().mapToInt(column -> profile(column).filled()).sum();
    int names = across.stream().mapToInt(column -> profile(column).pinNames()).sum();
    return names * 10 >= filled * 8;
  }

  /** Pins of one item among several; a supply's pin may stand on many rows. */
  private boolean canBeOfRow(ListColumn column) {
    boolean open =
        column.role() == Role.KEEP
            && !column.isSaid()
            && !column.heading().isEmpty()
            && !column.known();
    ColumnProfile cells = profile(column);
    boolean named = cells.mostly(cells.pinNames()) && !cells.mostly(cells.colors());
    return canBePoints(column)
        || (open && (cells.looksLikePins() || (named && first(Role.SIGNAL).isEmpty())));
  }

  private boolean servesPaths() {
    Optional<ListColumn> path =
        first(Role.PATH)
            .or(
                () ->
                    columns.stream()
                        .filter(column -> profile(column).mostly(profile(column).paths()))
                        .findFirst());
    path.ifPresent(column -> set(column, Role.PATH, ColumnCertainty.LIKELY));
    if (path.isEmpty()) {
      return servesChain();
    }
    pinsBecomeNotes();
    return true;
  }

  /** Three points and more in a row, each in a column of its own or an item with its pin. */
  private boolean servesChain() {
    List<EndColumns> ends = pairsOfChain();
    if (ends.size() < 3) {
      ends =
          endColumns(true).stream()
              .filter(
                  end -> end.pin().isPresent() || isOfPoints(end.item()) || comesBefore(end.item()))
              .toList();
    }
    if (ends.size() < 3) {
      ends = itemsOfChain();
    }
    if (ends.size() < 3) {
      return false;
    }
    pinsBecomeNotes();
    for (ListColumn column : List.copyOf(columns)) {
      if (column.role().isEnd() || column.role() == Role.ITEM || column.role() == Role.POINTS) {
        set(column, Role.KEEP, ColumnCertainty.LIKELY);
      }
    }
    for (EndColumns end : ends) {
      set(end.item(), end.pin().isPresent() ? Role.ITEM : Role.POINTS, ColumnCertainty.LIKELY);
      end.pin().ifPresent(column -> set(column, Role.POINTS, ColumnCertainty.LIKELY));
    }
    return true;
  }

  /** Whether a column of points bears the same heading. */
  private boolean comesBefore(ListColumn column) {
    return columns.stream()
        .filter(other -> other.index() < column.index() && other.key().equals(column.key()))
        .anyMatch(this::isOfPoints);
  }

  /** {@code Item | Pin} again and again, each under the word for its place in the chain. */
  private List<EndColumns> pairsOfChain() {
    for (int first = 0; first + 5 < columns.size(); first++) {
      int pairs = 1;
      while (first + 2 * pairs + 1 < columns.size()
          && endAlike(columns.get(first), columns.get(first + 2 * pairs))
          && endAlike(columns.get(first + 1), columns.get(first + 2 * pairs + 1))) {
        pairs++;
      }
      if (pairs >= 3 && !endAlike(columns.get(first), columns.get(first + 1))) {
        List<EndColumns> found = new ArrayList<>();
        for (int i = 0; i < pairs; i++) {
          found.add(
              new EndColumns(
                  columns.get(first + 2 * i), Optional.of(columns.get(first + 2 * i + 1))));
        }
        return found;
      }
    }
    return List.of();
  }

  /** {@code Start Item} and {@code Via 1 Item}: two words of which the last is the same. */
  private static boolean endAlike(ListColumn one, ListColumn other) {
    List<String> words = Words.tokens(one.heading());
    List<String> others = Words.tokens(other.heading());
    return words.size() > 1
        && others.size() > 1
        && words.get(words.size() - 1).equals(others.get(others.size() - 1));
  }

  /** Columns of names, {@code SOL B}, that may be points in words. */
  private List<EndColumns> itemsOfChain() {
    return columns.stream()
        .filter(column -> mayNameAnEnd(column) && profile(column).canBeItems())
        .map(column -> new EndColumns(column, Optional.empty()))
        .toList();
  }

  private boolean isOfPoints(ListColumn column) {
    return profile(column).mostly(profile(column).points());
  }

  private boolean servesNetList() {
    Optional<ListColumn> net = first(Role.NET).or(() -> first(Role.SIGNAL));
    boolean lists = columns.stream().anyMatch(column -> profile(column).listsPoints());
    // A name that holds for the rows below it stands once as well.
    boolean once =
        net.filter(column -> column.role() == Role.SIGNAL && profile(column).isDistinct())
            .filter(column -> !profile(column).isSparse())
            .isPresent();
    if (net.isEmpty() || (once && !lists)) {
      return false;
    }
    Optional<ListColumn> listing =
        columns.stream()
            .filter(column -> column.index() != net.get().index() && !column.isSaid())
            .filter(column -> profile(column).listsPoints())
            .findFirst();
    if (listing.isPresent()) {
      // What else is headed as pins is how many there are.
      pinsBecomeNotes();
      set(listing.get(), Role.PIN, ColumnCertainty.LIKELY);
    } else if (!has(Role.PIN)) {
      columns.stream()
          .filter(column -> column.index() != net.get().index())
          .filter(this::mayBePointsOfNets)
          .findFirst()
          .ifPresent(column -> set(column, Role.PIN, ColumnCertainty.LIKELY));
    }
    set(net.get(), Role.NET, ColumnCertainty.LIKELY);
    if (has(Role.PIN) && !has(Role.ITEM) && sheetItem.isEmpty()) {
      // Their marks, {@code K1}, beside their pins: a mark may also be a wire's.
      first(Role.WIRE)
          .filter(this::isDesignated)
          .ifPresent(column -> set(column, Role.ITEM, ColumnCertainty.LIKELY));
    }
    return has(Role.PIN) && keepsOnePin();
  }

  private boolean mayBePointsOfNets(ListColumn column) {
    boolean open = column.role() == Role.KEEP || column.role() == Role.ITEM;
    return open && isOfPoints(column);
  }

  List<ListColumn> list() {
    return List.copyOf(columns);
  }

  Layout layout() {
    return layout;
  }

  private ColumnProfile profile(ListColumn column) {
    return Objects.requireNonNull(profiles.get(column.index()));
  }

  private boolean has(Role role) {
    return columns.stream().anyMatch(column -> column.role() == role);
  }

  private Optional<ListColumn> first(Role role) {
    return columns.stream().filter(column -> column.role() == role).findFirst();
  }

  private void set(ListColumn column, Role role, ColumnCertainty certainty) {
    if (column.isSaid()) {
      return;
    }
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).index() == column.index()) {
        columns.set(i, columns.get(i).as(role, certainty));
      }
    }
  }

  /** "Connector 1" and "Connector 2", "Pin A" and "Pin B" are the two ends. */
  private void byTwins() {
    for (String[] twin : new String[][] {{"1", "2"}, {"a", "b"}}) {
      Map<String, ListColumn> firsts = new HashMap<>();
      for (ListColumn column : List.copyOf(columns)) {
        List<String> tokens = new ArrayList<>(Words.tokens(column.heading()));
        if (tokens.remove(twin[0])) {
          firsts.putIfAbsent(String.join(" ", tokens), column);
          continue;
        }
        ListColumn other = tokens.remove(twin[1]) ? firsts.get(String.join(" ", tokens)) : null;
        if (other != null && other.role() == column.role() && columns.contains(other)) {
          boolean behind = isBehindEnd(other) || isBehindEnd(column);
          if (column.role() == Role.PIN && !behind && pinsStandBehindEnds()) {
            set(other, Role.FROM_CONTACT, ColumnCertainty.LIKELY);
            set(column, Role.TO_CONTACT, ColumnCertainty.LIKELY);
          } else if (column.role() == Role.PIN) {
            set(other, Role.FROM_PIN, other.certainty());
            set(column, Role.TO_PIN, column.certainty());
          } else if (column.role() == Role.ITEM) {
            set(other, Role.FROM, other.certainty());
            set(column, Role.TO, column.certainty());
          }
        }
      }
    }
  }

  /** {@code From | Cavity | To | Cavity}: what else is called so at both ends is no pin. */
  private boolean pinsStandBehindEnds() {
    return columns.stream()
            .filter(column -> column.role() == Role.PIN && isBehindEnd(column))
            .count()
        == 2;
  }

  private boolean isBehindEnd(ListColumn column) {
    return columns.stream()
        .filter(one -> one.index() == column.index() - 1)
        .anyMatch(one -> one.role() == Role.FROM || one.role() == Role.TO);
  }

  /** A column of nothing but arrows is drawn, whatever stands over it. */
  private void arrowsGo() {
    for (ListColumn column : List.copyOf(columns)) {
      if (profile(column).areArrows()) {
        set(column, Role.KEEP, ColumnCertainty.CERTAIN);
      }
    }
  }

  /**
   * A port beside an end or an item is its pin: {@code Source | O/P}, {@code Device A | Port A}.
   */
  private void portsOfItems() {
    for (int i = 1; i < columns.size(); i++) {
      ListColumn column = columns.get(i);
      ListColumn before = columns.get(i - 1);
      boolean ofEnd =
          before.role() == Role.FROM || before.role() == Role.TO || before.role() == Role.FAR;
      boolean ofItem = before.role() == Role.ITEM && !before.isPort();
      if (column.isPort() && column.role() == Role.ITEM && (ofEnd || ofItem)) {
        set(column, Role.PIN, column.certainty());
      }
    }
  }

  /** A pin belongs to the end on its left; two connectors in a row are the two ends. */
  private void byNeighbours() {
    long ends = columns.stream().filter(column -> column.role() == Role.ITEM).count();
    boolean sided =
        has(Role.FROM) || has(Role.TO) || has(Role.FAR) || has(Role.FROM_PIN) || has(Role.TO_PIN);
    if (ends == 2 && !sided && !describeOneItem() && !listsPinsOfNets()) {
      List<ListColumn> items =
          columns.stream().filter(column -> column.role() == Role.ITEM).toList();
      set(items.get(0), Role.FROM, ColumnCertainty.LIKELY);
      set(items.get(1), Role.TO, ColumnCertainty.LIKELY);
    }
    tagsOfTerminals();
    if (pinsStandBefore()) {
      return;
    }
    Role side = Role.KEEP;
    int at = 0;
    for (ListColumn column : List.copyOf(columns)) {
      if (column.role() == Role.FROM || column.role() == Role.TO || column.role() == Role.FAR) {
        // Between both sides of a strip stands its own terminal.
        side = column.isSide() ? Role.KEEP : column.role();
        at = column.index();
      } else if (column.role() == Role.ITEM && column.index() > at + 1) {
        side = Role.KEEP;
      } else if (column.role() == Role.ITEM) {
        at = column.index();
      } else if (column.role() == Role.KEEP
          && column.index() == at + 1
          && (isDesignated(column) || isOld(column))) {
        at = column.index();
      } else if (column.role() == Role.PIN && column.index() > at + 1) {
        // A column of counts at the end of the row is no pin of the end further left.
        side = Role.KEEP;
      } else if (column.role() == Role.PIN
          && side != Role.KEEP
          && (column.item().isEmpty() || isUnderOneHeading(column, at))) {
        Role pin = side.pinOfEnd();
        boolean ownPinRemains =
            side != Role.FAR || columns.stream().filter(one -> one.role() == Role.PIN).count() > 1;
        if (!has(pin) && ownPinRemains) {
          set(column, pin, ColumnCertainty.LIKELY);
        }
        side = Role.KEEP;
      }
    }
  }

  /** {@code Hut} over {@code Strip | Term.}: what the pins are of is the end beside them. */
  private boolean isUnderOneHeading(ListColumn pin, int end) {
    String over = pin.item().toLowerCase(Locale.ROOT) + " ";
    return pin.key().startsWith(over)
        && columns.stream()
            .filter(column -> column.index() == end)
            .anyMatch(column -> column.key().startsWith(over));
  }

  /** {@code Component | Reference | Pin}: what it is and what it is called, with one pin. */
  private boolean describeOneItem() {
    List<ListColumn> items = columns.stream().filter(one -> one.role() == Role.ITEM).toList();
    long designated = items.stream().filter(this::isDesignated).count();
    long pins = columns.stream().filter(one -> one.role() == Role.PIN).count();
    return designated == 1 && pins == 1;
  }

  /** {@code Net | Reference | Pin | Part}: a point of a net, and what its item is. */
  private boolean listsPinsOfNets() {
    long designated =
        columns.stream().filter(one -> one.role() == Role.ITEM && isDesignated(one)).count();
    return designated == 1
        && has(Role.PIN)
        && first(Role.SIGNAL).filter(ListColumn::isOfNets).isPresent();
  }

  /** {@code From | Tag | To | Tag}: the same heading behind each end is its terminal. */
  private void tagsOfTerminals() {
    Optional<ListColumn> one = behind(Role.FROM);
    Optional<ListColumn> other = behind(Role.TO);
    boolean alike =
        one.isPresent() && other.isPresent() && one.get().key().equals(other.get().key());
    if (alike && mayBeTag(one.get()) && mayBeTag(other.get())) {
      set(one.get(), Role.FROM_PIN, ColumnCertainty.LIKELY);
      set(other.get(), Role.TO_PIN, ColumnCertainty.LIKELY);
    }
  }

  private Optional<ListColumn> behind(Role end) {
    return first(end)
        .flatMap(
            column ->
                columns.stream().filter(one -> one.index() == column.index() + 1).findFirst());
  }

  private boolean mayBeTag(ListColumn column) {
    boolean strip =
        columns.stream()
            .filter(one -> one.index() == column.index() + 1)
            .anyMatch(one -> one.role() == Role.PIN);
    boolean open =
        column.role() == Role.KEEP && !column.known() && !column.heading().isEmpty() && !strip;
    return column.role() == Role.WIRE || (open && profile(column).looksLikePins());
  }

  /** {@code Pin | From | Pin | To}: each pin before its end; whether the columns stand so. */
  private boolean pinsStandBefore() {
    List<ListColumn> ends =
        columns.stream().filter(one -> one.role() == Role.FROM || one.role() == Role.TO).toList();
    List<ListColumn> pins = columns.stream().filter(one -> one.role() == Role.PIN).toList();
    boolean alternate = ends.size() == 2 && pins.size() == 2;
    for (int i = 0; alternate && i < 2; i++) {
      alternate = pins.get(i).index() + 1 == ends.get(i).index();
    }
    for (int i = 0; alternate && i < 2; i++) {
      boolean from = ends.get(i).role() == Role.FROM;
      set(pins.get(i), from ? Role.FROM_PIN : Role.TO_PIN, ColumnCertainty.LIKELY);
    }
    return alternate;
  }

  /** Between an item and its pin: the strip within a panel. */
  private void byStrips() {
    for (int i = 1; i + 1 < columns.size(); i++) {
      ListColumn strip = columns.get(i);
      Role before = columns.get(i - 1).role();
      Role after = columns.get(i + 1).role();
      boolean second =
          (strip.role() == Role.FROM && before == Role.FROM)
              || (strip.role() == Role.TO && (before == Role.TO || after == Role.TO));
      boolean named = strip.role() == Role.KEEP && isDesignated(strip);
      boolean open = second || named || strip.role() == Role.ITEM;
      if (open && !strip.heading().isEmpty() && profile(strip).canBePins()) {
        if (before == Role.FROM && after == Role.FROM_PIN) {
          set(strip, Role.FROM_STRIP, ColumnCertainty.LIKELY);
        } else if ((before == Role.TO && after == Role.TO_PIN)
            || (before == Role.TO_PIN && after == Role.TO)) {
          // The far end may be the near one mirrored: pin, connector, device.
          set(strip, Role.TO_STRIP, ColumnCertainty.LIKELY);
        }
      }
    }
  }

  private void byContent() {
    long ofPoints = columns.stream().filter(this::mayNameAnEnd).filter(this::isOfPoints).count();
    for (ListColumn column : List.copyOf(columns)) {
      ColumnProfile cells = profile(column);
      boolean end =
          switch (column.role()) {
            case FROM, FROM_PIN, TO, TO_PIN, FAR, FAR_PIN, ITEM, PIN -> true;
            default -> false;
          };
      boolean colorsUnderWire = column.role() == Role.WIRE && cells.mostly(cells.colors());
      // "section" is of a wire, or of the list.
      boolean names = column.role() == Role.GAUGE && !column.isSaid() && !holdsDigits(column);
      if ((end && cells.isEmpty()) || colorsUnderWire || names) {
        set(column, Role.KEEP, ColumnCertainty.LIKELY);
        continue;
      }
      if (column.role() == Role.ITEM && cells.isNumeric() && !has(Role.PIN)) {
        // "Item" heads the row numbers of many lists.
        set(column, Role.KEEP, ColumnCertainty.LIKELY);
      }
      if (column.role() != Role.KEEP || cells.isEmpty()) {
        continue;
      }
      if (!has(Role.GAUGE) && cells.mostly(cells.gauges())) {
        set(column, Role.GAUGE, ColumnCertainty.LIKELY);
      } else if (!has(Role.COLOR) && cells.mostly(cells.colors())) {
        set(column, Role.COLOR, ColumnCertainty.LIKELY);
      } else if (!has(Role.LENGTH) && cells.mostly(cells.lengths()) && !cells.isMarks()) {
        set(column, Role.LENGTH, ColumnCertainty.LIKELY);
      } else if (!has(Role.FROM)
          && !has(Role.FAR)
          && !has(Role.PIN)
          && ofPoints <= 2
          && cells.mostly(cells.points())) {
        set(column, Role.FROM, ColumnCertainty.LIKELY);
      } else if (has(Role.FROM) && !has(Role.TO) && ofPoints <= 2 && cells.mostly(cells.points())) {
        set(column, Role.TO, ColumnCertainty.LIKELY);
      }
    }
  }

  private boolean holdsDigits(ListColumn column) {
    return body.stream().map(column::textIn).anyMatch(CellText::hasDigit)
        || body.stream().allMatch(row -> row.cell(column.index()).isBlank());
  }

  private void dropRepeatedRoles() {
    boolean coded =
        has(Role.FAR)
            && first(Role.FROM).filter(column -> isCodes(column)).isPresent()
            && first(Role.TO).filter(column -> isCodes(column)).isPresent();
    if (coded) {
      first(Role.FROM).ifPresent(column -> set(column, Role.FROM_CODE, ColumnCertainty.LIKELY));
      first(Role.TO).ifPresent(column -> set(column, Role.TO_CODE, ColumnCertainty.LIKELY));
    }
    Map<Role, ListColumn> kept = new EnumMap<>(Role.class);
    for (ListColumn column : List.copyOf(columns)) {
      Role role = column.role();
      if (role == Role.KEEP || role == Role.NOTE || role == Role.POINTS || role == Role.PIN) {
        continue;
      }
      if (role == Role.SIGNAL && !column.item().isEmpty() && has(Role.SIGNAL)) {
        continue;
      }
      ListColumn other = kept.get(role);
      if (other == null) {
        kept.put(role, column);
      } else if (((role == Role.FROM || role == Role.TO)
              && profile(column).distinct() > profile(other).distinct())
          || (role == Role.ITEM && isDesignated(column) && !isDesignated(other))) {
        set(other, Role.KEEP, ColumnCertainty.LIKELY);
        kept.put(role, column);
      } else {
        set(column, Role.KEEP, ColumnCertainty.LIKELY);
      }
    }
  }

  private boolean isDesignated(ListColumn column) {
    return profile(column).mostly(profile(column).designators());
  }

  private boolean isCodes(ListColumn column) {
    ColumnProfile cells = profile(column);
    return cells.filled() > 0
        && cells.numbers() * 10 >= cells.filled() * 7
        && cells.distinct() * 3 <= cells.filled();
  }

  private Layout decide() {
    if (has(Role.FROM) && has(Role.TO)) {
      pinsBecomeNotes();
      return Layout.FROM_TO;
    }
    if (has(Role.FROM_PIN) && has(Role.TO_PIN) && columns.stream().noneMatch(this::canBePoints)) {
      return Layout.FROM_TO;
    }
    List<ListColumn> points = columns.stream().filter(this::canBePoints).toList();
    long marked =
        columns.stream()
            .filter(column -> column.role() == Role.KEEP || column.role() == Role.POINTS)
            .filter(column -> profile(column).isMarks())
            .count();
    if (marked >= 3 && marked > points.size()) {
      return marks();
    }
    boolean far = has(Role.FAR) || has(Role.TO) || has(Role.FROM);
    if (far) {
      return block(points);
    }
    long pins = columns.stream().filter(column -> column.role() == Role.PIN).count();
    if (pins == 1 && isOfDevices()) {
      return Layout.ITEM_TO_POINTS;
    }
    return points.size() >= 2 ? rowNets(ofRow()) : ofPins(pins);
  }

  /** Whether a column of devices has one column of terminals beside it; both get their roles. */
  private boolean isOfDevices() {
    Optional<ListColumn> devices = devices();
    List<ListColumn> others =
        columns.stream()
            .filter(column -> column.role() == Role.KEEP || column.role() == Role.POINTS)
            .filter(column -> !column.heading().isEmpty() && !column.known())
            .filter(column -> profile(column).canBePins())
            .toList();
    if (devices.isEmpty() || others.size() != 1) {
      return false;
    }
    set(devices.get(), Role.ITEM, ColumnCertainty.LIKELY);
    set(others.get(0), Role.POINTS, ColumnCertainty.LIKELY);
    return true;
  }

  /** A table of pins without their far ends. */
  private Layout ofPins(long pins) {
    if (pins >= 1 && first(Role.WIRE).filter(column -> !profile(column).isSparse()).isPresent()) {
      pinsAfterTheFirstBecomeNotes();
      return Layout.WIRE_ENDS;
    }
    if (pins >= 1 && has(Role.COLOR)) {
      pinsAfterTheFirstBecomeNotes();
      return Layout.OPEN_ENDED;
    }
    if (pins >= 1 && (has(Role.SIGNAL) || has(Role.ITEM))) {
      pinsAfterTheFirstBecomeNotes();
      return Layout.PIN_NAMES;
    }
    return Layout.NONE;
  }

  private boolean canBePoints(ListColumn column) {
    if (column.isSaid() && column.role() != Role.POINTS && column.role() != Role.PIN) {
      return false;
    }
    ColumnProfile cells = profile(column);
    boolean designated = column.role() == Role.KEEP && Ends.isDesignator(column.heading());
    return column.role() == Role.POINTS
        || (designated && !cells.isEmpty() && cells.mostly(cells.shortTexts()))
        || (mayHoldPins(column)
            && cells.canBePins()
            && (cells.isDistinct() || cells.mostly(cells.points())));
  }

  /** A column with a heading of its own that no word of the trade takes for something else. */
  private boolean mayHoldPins(ListColumn column) {
    return switch (column.role()) {
      case KEEP -> !column.heading().isEmpty() && !column.known();
      case PIN -> true;
      case ITEM -> profile(column).isNumeric() || isOfPoints(column);
      default -> false;
    };
  }

  private Layout marks() {
    for (ListColumn column : List.copyOf(columns)) {
      if (column.role() == Role.KEEP && (profile(column).isMarks() || profile(column).isEmpty())) {
        set(column, Role.POINTS, ColumnCertainty.LIKELY);
      }
    }
    if (!has(Role.ITEM) && !has(Role.PIN)) {
      set(columns.get(0), Role.ITEM, ColumnCertainty.LIKELY);
    }
    itemsOfCorner();
    return Layout.MARKS;
  }

  /** {@code P1 \\ J2} in the corner: the pins of P1 down, those of J2 across. */
  private void itemsOfCorner() {
    String[] items = columns.get(0).heading().split("\\s*[\\\\|/\u2192\u2198]\\s*", -1);
    if (items.length != 2 || columns.get(0).isSaid()) {
      return;
    }
    columns.set(0, columns.get(0).as(Role.PIN, ColumnCertainty.LIKELY).of(items[0].strip()));
    for (int i = 1; i < columns.size(); i++) {
      if (columns.get(i).role() == Role.POINTS) {
        columns.set(i, columns.get(i).of(items[1].strip()));
      }
    }
  }

  /** The column that names the devices: an item, or a text that holds for the rows below it. */
  private Optional<ListColumn> devices() {
    Optional<ListColumn> item = first(Role.ITEM);
    return item.isPresent()
        ? item
        : columns.stream()
            .filter(column -> column.role() == Role.NOTE || column.role() == Role.KEEP)
            .filter(column -> column.role() == Role.NOTE || !isOld(column))
            .filter(column -> profile(column).filled() > 0 && !profile(column).isDistinct())
            .findFirst()
            .or(
                () ->
                    columns.stream()
                        .filter(column -> column.role() == Role.NOTE)
                        .filter(column -> profile(column).isSparse())
                        .findFirst());
  }

  private Layout block(List<ListColumn> points) {
    boolean ownPin =
        columns.stream().anyMatch(one -> one.role() == Role.PIN && one.item().isEmpty());
    long designated =
        points.stream()
            .filter(column -> Words.tokens(column.heading()).stream().anyMatch(this::isShortName))
            .count();
    if (!ownPin && designated >= 2) {
      first(Role.FAR).ifPresent(column -> set(column, Role.KEEP, ColumnCertainty.LIKELY));
      return rowNets(points);
    }
    for (Role role : List.of(Role.TO, Role.FROM)) {
      if (!has(Role.FAR)) {
        first(role).ifPresent(column -> set(column, Role.FAR, column.certainty()));
        Role pin = role == Role.TO ? Role.TO_PIN : Role.FROM_PIN;
        first(pin).ifPresent(column -> set(column, Role.FAR_PIN, column.certainty()));
      }
    }
    return ownPin || findsOwnPins(points) ? Layout.BLOCK : Layout.NONE;
  }

  /**
   * Finds the column of the table's own pins. Several columns that name pins are names of the same
   * ones: the fullest comes first.
   */
  private boolean findsOwnPins(List<ListColumn> points) {
    List<ListColumn> candidates =
        points.isEmpty() ? columns.stream().filter(this::canHoldSomePins).toList() : points;
    Optional<ListColumn> best =
        candidates.stream()
            .max(
                Comparator.<ListColumn>comparingInt(
                        column -> column.role() == Role.PIN && !column.item().isEmpty() ? 1 : 0)
                    .thenComparingInt(
                        column -> profile(column).distinct() == profile(column).filled() ? 1 : 0)
                    .thenComparingInt(column -> profile(column).filled())
                    .thenComparingInt(ListColumn::index));
    if (best.isEmpty()) {
      return false;
    }
    int enough = profile(best.get()).filled() / 2;
    for (ListColumn column : candidates) {
      ColumnCertainty certainty =
          column.role() == Role.PIN ? column.certainty() : ColumnCertainty.LIKELY;
      Role role = profile(column).filled() > enough ? Role.POINTS : Role.KEEP;
      set(column, column.equals(best.get()) ? Role.PIN : role, certainty);
    }
    return true;
  }

  /** Pins of which several are used more than once, as a supply's. */
  private boolean canHoldSomePins(ListColumn column) {
    ColumnProfile cells = profile(column);
    return mayHoldPins(column) && cells.canBePins() && cells.distinct() * 2 >= cells.filled();
  }

  private boolean isShortName(String token) {
    return token.matches("[a-z]{1,2}\\d{1,2}");
  }

  /** Of a pin and its name, columns of one item beside each other, the pin is the point. */
  private List<ListColumn> withoutNamesOfPins(List<ListColumn> points) {
    List<ListColumn> kept = new ArrayList<>();
    for (ListColumn column : points) {
      boolean named =
          points.stream()
              .anyMatch(
                  other ->
                      other.role() == Role.PIN
                          && column.role() != Role.PIN
                          && Math.abs(other.index() - column.index()) == 1
                          && !column.item().isEmpty()
                          && other.item().equalsIgnoreCase(column.item()));
      if (!named) {
        kept.add(column);
      }
    }
    return kept;
  }

  /** A heading of pins that names no item, beside items: what each row is called. */
  private List<ListColumn> withoutNamesOfRows(List<ListColumn> points) {
    List<ListColumn> kept =
        points.stream()
            .filter(column -> column.role() != Role.PIN || column.isSaid() || isOfAnItem(column))
            .toList();
    if (kept.size() == points.size() || kept.size() < 2 || !sheetItem.isEmpty()) {
      return points;
    }
    long several = rowsOf(kept, 2);
    if (has(Role.SIGNAL) || several * 10 < rowsOf(kept, 1) * 8) {
      return points;
    }
    points.stream()
        .filter(column -> !kept.contains(column))
        .forEach(column -> set(column, Role.SIGNAL, ColumnCertainty.LIKELY));
    return kept;
  }

  private static boolean isOfAnItem(ListColumn column) {
    return !column.item().isEmpty() || column.namesItem();
  }

  private long rowsOf(List<ListColumn> points, int least) {
    return body.stream()
        .filter(
            row ->
                points.stream().filter(column -> !row.cell(column.index()).isBlank()).count()
                    >= least)
        .count();
  }

  private Layout rowNets(List<ListColumn> all) {
    List<ListColumn> points = withoutNamesOfRows(withoutNamesOfPins(all));
    for (ListColumn column : points) {
      boolean own = column.known() && column.item().isEmpty() && !sheetItem.isEmpty();
      boolean itemSaid = column.namesItem();
      String item = itemSaid ? column.item() : own ? sheetItem : itemOf(column);
      ColumnCertainty sure = column.isSaid() ? column.certainty() : ColumnCertainty.LIKELY;
      ListColumn named = column.as(Role.POINTS, sure).of(item.replaceAll("\\s+", " "));
      columns.set(columns.indexOf(column), named);
    }
    pinsBecomeNotes();
    for (ListColumn column : List.copyOf(columns)) {
      if (column.role() == Role.ITEM) {
        set(column, Role.KEEP, ColumnCertainty.LIKELY);
      }
    }
    return Layout.ROW_NETS;
  }

  /** The item of a column of pins: the one designator in its heading, else what it says. */
  private static String itemOf(ListColumn column) {
    String said = column.item().isEmpty() ? column.heading() : column.item();
    List<String> designators =
        Arrays.stream(said.split("[\\s_]+", -1)).filter(CONNECTOR.asMatchPredicate()).toList();
    return designators.size() == 1 ? designators.get(0) : said;
  }

  private void pinsBecomeNotes() {
    for (ListColumn column : List.copyOf(columns)) {
      if (column.role() == Role.PIN) {
        set(column, Role.KEEP, ColumnCertainty.LIKELY);
      }
    }
  }

  private void pinsAfterTheFirstBecomeNotes() {
    boolean seen = false;
    for (ListColumn column : List.copyOf(columns)) {
      if (column.role() == Role.PIN) {
        if (seen) {
          set(column, Role.KEEP, ColumnCertainty.LIKELY);
        }
        seen = true;
      }
    }
  }
}
