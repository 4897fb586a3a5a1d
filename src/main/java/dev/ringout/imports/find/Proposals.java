package dev.ringout.imports.find;

import dev.ringout.imports.list.ColumnCertainty;
import dev.ringout.imports.list.Grammar;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Every way in which a table may tell its wires; which one it is, is weighed elsewhere. */
public final class Proposals {
  private static final Set<Layout> BY_CELLS =
      EnumSet.of(
          Layout.FROM_TO,
          Layout.BLOCK,
          Layout.TERMINALS,
          Layout.ROW_NETS,
          Layout.NET_LIST,
          Layout.PATHS,
          Layout.WIRE_ENDS,
          Layout.OPEN_ENDED,
          Layout.PIN_NAMES);

  private final Region region;
  private final Words words;
  private final Map<Integer, ColumnProfile> profiles;
  private final List<Proposal> proposals = new ArrayList<>();
  private boolean misfit;

  /**
   * One way to read a table.
   *
   * @param said whether the user said that it is this way
   * @param byHeadings whether it is what the headings say first
   * @param doubt what in it may be otherwise
   */
  public record Proposal(ListTable table, boolean said, boolean byHeadings, Doubt doubt) {}

  /** What in one way of reading a table may be otherwise, and is another proposal. */
  public enum Doubt {
    NONE,
    /** Whether a number after a name is its pin. */
    NUMBER_MAY_BE_PIN,
    /** Whether named cores land on terminals of their own name. */
    CORES_MAY_BE_PINS,
    /** Whether the names of pins are what these go to; it is shown, and never taken. */
    NAMES_MAY_BE_ENDS,
    /** Which two of several ends in a row are meant; it is shown, and never taken. */
    OTHER_ENDS,
    /** Whether two columns are ends by their cells alone; it is shown last, and never taken. */
    ENDS_BY_CELLS
  }

  /**
   * All ways.
   *
   * @param misfit whether the layout that the user says does not fit the table
   */
  public record Ways(List<Proposal> proposals, boolean misfit) {}

  private Proposals(Region region, Words words) {
    this.region = region;
    this.words = words;
    this.profiles =
        ColumnProfile.of(
            region.body().stream().filter(row -> !region.isHeadingAgain(row)).toList(),
            region.firstColumn(),
            region.lastColumn(),
            words);
  }

  /**
   * Every way to read a table, the one that its headings say first.
   *
   * @param layout the layout that the user says
   * @param grammar how the user says points are written
   */
  public static Ways of(
      Region region, Words words, Optional<Layout> layout, Optional<Grammar> grammar) {
    Proposals proposals = new Proposals(region, words);
    proposals.propose(layout, grammar);
    return new Ways(List.copyOf(proposals.proposals), proposals.misfit);
  }

  private void propose(Optional<Layout> layout, Optional<Grammar> grammar) {
    if (layout.isPresent()) {
      Columns.settle(region, profiles, layout.get())
          .ifPresent(columns -> add(columns, true, true, grammar));
      if (!proposals.isEmpty()) {
        return;
      }
      // The layout that is said does not fit: what fits is shown, and nothing is taken.
      propose(Optional.empty(), grammar);
      misfit = true;
      return;
    }
    Columns first = Columns.settle(region, profiles);
    if (region.headingRow() == 0 && !region.columns().isEmpty()) {
      headless(first, grammar);
    } else {
      add(first, false, true, grammar);
    }
    boolean plain =
        first.layout() == Layout.FROM_TO
            && endsSaid(first.list())
            && first.list().stream().noneMatch(column -> isPinBeside(column));
    for (Layout other : BY_CELLS) {
      boolean makes =
          !plain
              || other == Layout.TERMINALS
              || (other == Layout.PATHS && hasPointsBeside(first.list()));
      if (other != first.layout() && makes) {
        Columns.settle(region, profiles, other)
            .ifPresent(columns -> add(columns, false, false, grammar));
      }
    }
    for (Columns ends : plain ? List.<Columns>of() : Columns.ofEachTwoEnds(region, profiles)) {
      add(ends, written(ends.list(), Grammar.AS_IT_LOOKS), false, false, Doubt.OTHER_ENDS);
    }
    if (!plain && region.headingRow() > 0) {
      for (List<ListColumn> ends : new TwoColumns(first.list(), profiles).asEnds()) {
        Grammar judged = new Grammars(words).judge(ends, region.body()).grammar();
        ListTable table = region.settled(written(ends, judged), Layout.FROM_TO);
        proposals.add(new Proposal(table, false, false, Doubt.ENDS_BY_CELLS));
      }
    }
    Columns.settle(region, profiles, Layout.PIN_NAMES)
        .flatMap(listed -> new NamedPins(region, profiles).asEnds(listed.list()))
        .ifPresent(this::addNamesAsEnds);
    if (proposals.stream().noneMatch(one -> one.table().layout() == Layout.NONE)) {
      Columns.settle(region, profiles, Layout.NONE)
          .ifPresent(columns -> add(columns, false, false, Optional.empty()));
    }
  }

  /** A column of points that is no end: the wire may go past them. */
  private boolean hasPointsBeside(List<ListColumn> columns) {
    return columns.stream()
        .filter(column -> column.role() == Role.KEEP && !column.isSaid())
        .anyMatch(column -> profile(column).mostly(profile(column).points()));
  }

  private void headless(Columns first, Optional<Grammar> grammar) {
    boolean block = region.columns().stream().anyMatch(column -> column.role() == Role.FAR);
    Columns.settle(region, profiles, block ? Layout.BLOCK : Layout.FROM_TO)
        .ifPresentOrElse(
            columns -> add(columns, false, true, grammar), () -> add(first, false, true, grammar));
  }

  private static boolean isPinBeside(ListColumn column) {
    return column.role() == Role.PIN || (column.role() == Role.KEEP && column.known());
  }

  private static boolean endsSaid(List<ListColumn> columns) {
    return columns.stream()
        .filter(
            column ->
                column.role() == Role.FROM
                    || column.role() == Role.TO
                    || column.role() == Role.FROM_PIN
                    || column.role() == Role.TO_PIN)
        .allMatch(ListColumn::known);
  }

  private void add(
      Columns settled, boolean said, boolean byHeadings, Optional<Grammar> saidGrammar) {
    List<ListColumn> columns = settled.list();
    if (saidGrammar.isPresent()) {
      add(settled, written(columns, saidGrammar.get()), said, byHeadings, Doubt.NONE);
      return;
    }
    Grammars.Judged judged = new Grammars(words).judge(columns, region.body());
    boolean doubtful = judged.other().isPresent() && settled.layout().tellsWires();
    add(
        settled,
        written(columns, judged.grammar()),
        said,
        byHeadings,
        doubtful ? Doubt.NUMBER_MAY_BE_PIN : Doubt.NONE);
    if (doubtful) {
      add(
          settled,
          written(columns, judged.other().orElseThrow()),
          said,
          byHeadings,
          Doubt.NUMBER_MAY_BE_PIN);
    }
    if (settled.layout() == Layout.FROM_TO) {
      cored(columns)
          .ifPresent(
              with ->
                  add(
                      settled,
                      written(with, Grammar.AS_IT_LOOKS),
                      said,
                      byHeadings,
                      Doubt.CORES_MAY_BE_PINS));
    }
  }

  private void add(
      Columns settled, List<ListColumn> columns, boolean said, boolean byHeadings, Doubt doubt) {
    proposals.add(new Proposal(region.settled(columns, settled.layout()), said, byHeadings, doubt));
  }

  private void addNamesAsEnds(List<ListColumn> columns) {
    Grammars.Judged judged = new Grammars(words).judge(columns, region.body());
    Stream.concat(Stream.of(judged.grammar()), judged.other().stream())
        .map(grammar -> region.settled(written(columns, grammar), Layout.BLOCK))
        .forEach(
            table -> proposals.add(new Proposal(table, false, false, Doubt.NAMES_MAY_BE_ENDS)));
  }

  private static List<ListColumn> written(List<ListColumn> columns, Grammar grammar) {
    return columns.stream().map(column -> column.written(grammar)).toList();
  }

  /** Items without pins and a column of cores that look like terminals: these may be the pins. */
  private Optional<List<ListColumn>> cored(List<ListColumn> columns) {
    boolean pins =
        columns.stream()
            .anyMatch(
                column ->
                    column.role() == Role.FROM_PIN
                        || column.role() == Role.TO_PIN
                        || column.role() == Role.BOTH_PINS);
    Optional<ListColumn> core =
        columns.stream()
            .filter(column -> column.role() == Role.WIRE || column.role() == Role.KEEP)
            .filter(column -> words.mentions("core", column.heading()))
            .filter(column -> profile(column).looksLikePins())
            .findFirst();
    boolean whole =
        columns.stream()
            .filter(column -> column.role() == Role.FROM || column.role() == Role.TO)
            .noneMatch(column -> profile(column).mostly(profile(column).points()));
    if (pins || core.isEmpty() || !whole || !nameCores(columns, core.get())) {
      return Optional.empty();
    }
    return Optional.of(
        columns.stream()
            .map(
                column ->
                    column.index() == core.get().index()
                        ? column.as(Role.BOTH_PINS, ColumnCertainty.POSSIBLE)
                        : column)
            .toList());
  }

  /**
   * Whether rows of one cable, between the same two ends, have three cores and more: they are no
   * counts.
   */
  private boolean nameCores(List<ListColumn> columns, ListColumn core) {
    List<ListColumn> ends =
        columns.stream().filter(one -> one.role() == Role.FROM || one.role() == Role.TO).toList();
    Map<List<String>, Set<String>> cores = new HashMap<>();
    List<String> above = new ArrayList<>(Collections.nCopies(ends.size(), ""));
    for (Row row : region.body()) {
      for (int i = 0; i < ends.size(); i++) {
        String text = ends.get(i).textIn(row);
        above.set(i, text.isEmpty() || words.isDitto(text) ? above.get(i) : text);
      }
      String text = core.textIn(row);
      if (!text.isEmpty()) {
        cores.computeIfAbsent(List.copyOf(above), key -> new HashSet<>()).add(text);
      }
    }
    return cores.values().stream().anyMatch(own -> own.size() > 2);
  }

  private ColumnProfile profile(ListColumn column) {
    return Objects.requireNonNull(profiles.get(column.index()));
  }
}
