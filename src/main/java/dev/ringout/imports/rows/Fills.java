package dev.ringout.imports.rows;

import dev.ringout.imports.list.ColouredText;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the colours of a table's cells mean. A text in a colour, beside one, or that names one
 * explains it; a colour explained as deleted strikes a row as a pen does (common practice, no
 * source).
 */
final class Fills {
  private static final int SHORTEST_WORD = 4;
  private static final int CELLS_OF_A_LEGEND = 3;

  private final ListTable table;
  private final Words words;
  private final List<ListColumn> ends = new ArrayList<>();
  private final List<ListColumn> numbers = new ArrayList<>();
  private final Set<Integer> withoutHeading = new HashSet<>();
  private final Map<String, String> deleted = new LinkedHashMap<>();
  private final Map<String, String> deletedByName = new LinkedHashMap<>();
  private final Set<String> explained = new HashSet<>();
  private final Set<Integer> legendRows = new HashSet<>();
  private final Set<Integer> plainLegendRows = new HashSet<>();
  private final Map<String, List<Integer>> inPart = new LinkedHashMap<>();
  private final List<Integer> notExplained = new ArrayList<>();
  private int rows;

  Fills(ListTable table, Words words) {
    this.table = table;
    this.words = words;
    for (ListColumn column : table.columns()) {
      switch (column.role()) {
        case FROM, FROM_PIN, TO, TO_PIN, FAR, FAR_PIN, PIN, POINTS -> ends.add(column);
        case WIRE -> numbers.add(column);
        default -> {}
      }
      if (column.heading().isEmpty()) {
        withoutHeading.add(column.index());
      }
    }
    if (!table.grid().colouredTexts().isEmpty()) {
      readLegends();
    }
  }

  private void readLegends() {
    Map<Integer, Row> body = new HashMap<>();
    table.body().forEach(row -> body.put(row.number(), row));
    Map<Integer, Set<Integer>> coloured = new HashMap<>();
    for (ColouredText text : table.grid().colouredTexts()) {
      if (!text.fill().isEmpty()) {
        coloured.computeIfAbsent(text.row(), key -> new HashSet<>()).add(text.column());
        coloured.computeIfAbsent(text.row(), key -> new HashSet<>()).add(text.swatch());
      }
    }
    for (ColouredText text : table.grid().colouredTexts()) {
      Row row = body.get(text.row());
      Set<Integer> besides = coloured.getOrDefault(text.row(), Set.of());
      boolean ofWire = row != null && holdsEnds(row, text.column(), besides);
      boolean aside = text.isBeside() && withoutHeading.contains(text.swatch());
      if (!ofWire || aside) {
        explain(text, row != null);
      }
    }
  }

  /** Whether ends of a wire stand in a row besides what belongs to a legend. */
  private boolean holdsEnds(Row row, int ofText, Set<Integer> coloured) {
    return ends.stream()
        .map(ListColumn::index)
        .filter(column -> column != ofText && !coloured.contains(column))
        .anyMatch(column -> !row.cell(column).isBlank());
  }

  private void explain(ColouredText text, boolean withinTable) {
    boolean saysDeleted = saysDeleted(text.text());
    boolean sign = text.text().startsWith("=") || text.text().endsWith(":");
    if (text.fill().isEmpty()) {
      String name = colourNamed(text.text());
      if (!saysDeleted || name.isEmpty()) {
        return;
      }
      deletedByName.putIfAbsent(name, text.text());
    } else if (saysDeleted) {
      deleted.putIfAbsent(text.fill(), text.text());
    } else if (sign || !withinTable) {
      explained.add(text.fill());
    } else {
      return;
    }
    legendRows.add(text.row());
    if (text.isBeside() || words.is("deleted", text.text())) {
      plainLegendRows.add(text.row());
    }
  }

  /** Whether a word of a text is one for deleted; "del" is an article elsewhere. */
  private boolean saysDeleted(String text) {
    return words.parts(text).stream()
        .anyMatch(
            part -> part.kinds().contains("deleted") && part.phrase().length() >= SHORTEST_WORD);
  }

  private String colourNamed(String text) {
    for (String word : Words.tokens(text)) {
      String colour = word.length() > 2 ? words.color(word) : "";
      if (!colour.isEmpty()) {
        return colour;
      }
    }
    return "";
  }

  /**
   * Whether a row of the table is one of its legend's. Where two ends stand in it, it is a wire all
   * the same unless a colour stands alone beside its text, or the text says deleted and no more.
   */
  boolean isLegend(Row row) {
    if (!legendRows.contains(row.number())) {
      return false;
    }
    long filled = row.cells().stream().filter(cell -> !cell.isBlank()).count();
    List<String> ofEnds =
        ends.stream()
            .map(column -> row.cell(column.index()).text())
            .filter(text -> !text.isBlank())
            .toList();
    return filled <= CELLS_OF_A_LEGEND
        && ofEnds.stream().noneMatch(Ends::looksLikePoint)
        && (ofEnds.size() <= 1 || plainLegendRows.contains(row.number()));
  }

  /** Whether both ends of a row have a colour that means deleted; counts what has another. */
  boolean isDeleted(Row row) {
    int filled = 0;
    int out = 0;
    boolean strong = false;
    String legend = "";
    rows++;
    for (ListColumn column : ends) {
      Cell cell = row.cell(column.index());
      if (!cell.isBlank()) {
        String own = meaning(cell.fill());
        filled++;
        out += own.isEmpty() ? 0 : 1;
        legend = own.isEmpty() ? legend : own;
        strong |= own.isEmpty() && isNotExplained(cell.fill());
      }
    }
    if (out > 0 && out == filled) {
      return true;
    }
    for (ListColumn column : numbers) {
      Cell cell = row.cell(column.index());
      legend = legend.isEmpty() ? meaning(cell.fill()) : legend;
      strong |= meaning(cell.fill()).isEmpty() && isNotExplained(cell.fill());
    }
    if (!legend.isEmpty()) {
      inPart.computeIfAbsent(legend, key -> new ArrayList<>()).add(row.number());
    } else if (strong) {
      notExplained.add(row.number());
    }
    return false;
  }

  /** What the legend says of a colour that means deleted, or empty. */
  private String meaning(String fill) {
    if (fill.isEmpty()) {
      return "";
    }
    String legend = deleted.getOrDefault(fill, "");
    return legend.isEmpty() && !explained.contains(fill)
        ? deletedByName.getOrDefault(Shade.of(fill).name(), "")
        : legend;
  }

  private boolean isNotExplained(String fill) {
    return !fill.isEmpty() && !explained.contains(fill) && Shade.of(fill).isStrong();
  }

  /** Why a row is taken for deleted. */
  RowOddity asDeleted(Row row) {
    for (ListColumn column : ends) {
      String legend = meaning(row.cell(column.index()).fill());
      if (!legend.isEmpty()) {
        return new RowOddity.RowFilledAsDeleted(legend);
      }
    }
    return new RowOddity.RowSaysDeleted();
  }

  /** Says once what holds for the rows together. */
  void report(ListFindings findings) {
    inPart.forEach(
        (legend, found) ->
            findings.warning(
                table.grid().place(found.get(0), 0),
                new RowOddity.FilledAsDeletedInPart(legend, found)));
    if (!notExplained.isEmpty() && notExplained.size() < rows) {
      findings.warning(
          table.grid().place(notExplained.get(0), 0),
          new RowOddity.FillsNotExplained(notExplained, rows));
    }
  }
}
