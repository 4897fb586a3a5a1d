package dev.ringout.imports;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Grid;
import dev.ringout.imports.list.ImportOptions.Corrections;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.RowRange;
import dev.ringout.imports.list.Said;
import dev.ringout.imports.list.SheetOddity;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A list with what the user says of single cells and rows, counted so that none goes unseen. */
final class Corrected {
  /** What stands before and behind one of several points in a cell. */
  private static final String BEFORE = "(?<=^|[;,&\\n])(\\s*)";

  private static final String BEHIND = "(?=\\s*(?:[;,&(\\n]|$))";

  private final Corrections said;
  private final Map<String, String> texts = new LinkedHashMap<>();
  private final Map<String, Integer> counts = new LinkedHashMap<>();
  private final Map<String, Place> firsts = new HashMap<>();
  private final Map<String, Pattern> pieces = new LinkedHashMap<>();
  private final Map<Said<RowRange>, Integer> rows = new LinkedHashMap<>();

  Corrected(Corrections said) {
    this.said = said;
    said.texts().forEach((text, meant) -> texts.put(CellText.clean(text), meant));
    for (String text : texts.keySet()) {
      counts.put(text, 0);
      pieces.put(text, Pattern.compile(BEFORE + Pattern.quote(text) + BEHIND));
    }
    said.leftOut().forEach(one -> rows.put(one, 0));
  }

  Grid of(Grid grid) {
    Grid own = texts.isEmpty() ? grid : grid.with(row -> amended(row, grid));
    List<Said<RowRange>> ranges =
        said.leftOut().stream().filter(one -> one.isOfSheet(grid.name())).toList();
    for (Said<RowRange> range : ranges) {
      long held = own.rows().stream().filter(row -> range.value().holds(row.number())).count();
      rows.merge(range, (int) held, Integer::sum);
    }
    return ranges.isEmpty() ? own : own.without(ranges.stream().map(Said::value).toList());
  }

  private Row amended(Row row, Grid grid) {
    List<Cell> cells = new ArrayList<>();
    for (int column = 1; column <= row.cells().size(); column++) {
      cells.add(amended(row.cell(column), grid.place(row.number(), column)));
    }
    return new Row(row.number(), List.copyOf(cells));
  }

  private Cell amended(Cell cell, Place place) {
    String text = CellText.clean(cell.text());
    String meant = texts.get(text);
    if (meant != null) {
      count(text, place);
      return as(cell, meant);
    }
    for (Map.Entry<String, Pattern> piece : pieces.entrySet()) {
      Matcher matcher = piece.getValue().matcher(text);
      if (text.contains(piece.getKey()) && matcher.find()) {
        count(piece.getKey(), place);
        String as = Matcher.quoteReplacement(texts.getOrDefault(piece.getKey(), ""));
        return as(cell, matcher.replaceAll("$1" + as));
      }
    }
    return cell;
  }

  private void count(String text, Place place) {
    counts.merge(text, 1, Integer::sum);
    firsts.putIfAbsent(text, place);
  }

  private static Cell as(Cell cell, String text) {
    return Cell.text(text).in(cell.ink()).filled(cell.fill());
  }

  /** What was read as the user says; what the list does not have is a slip. */
  void report(Place whole, ListFindings findings) {
    counts.forEach(
        (text, count) -> {
          String meant = texts.getOrDefault(text, "");
          if (count > 0) {
            findings.note(
                firsts.getOrDefault(text, whole), new SheetOddity.ReadAsSaid(text, meant, count));
          } else {
            findings.error(whole, new SheetOddity.NothingCorrected("read-as", text));
          }
        });
    rows.forEach(
        (range, count) -> {
          if (count == 0) {
            findings.error(
                whole,
                new SheetOddity.NothingCorrected("leave-out", range.prefix() + range.value()));
          }
        });
  }
}
