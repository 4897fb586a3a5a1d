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
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A list with what the user says of single cells and rows, counted so that none goes unseen. */
final class Corrected {
  /** What stands before and behind one of several points in a cell. */
  private static final String BEFORE = "(?<=^|[;,&\\n])(\\s*)";

  private static final String BEHIND = "(?=\\s*(?:[;,&(\\n]|$))";

  private final Corrections said;
  private final Map<String, String> texts = new LinkedHashMap<>();
  private final Pattern pieces;
  private final Map<String, List<Place>> found = new HashMap<>();
  private final Set<Place> settled = new HashSet<>();
  private final Map<Said<RowRange>, Integer> rows = new LinkedHashMap<>();

  Corrected(Corrections said) {
    this.said = said;
    said.texts().forEach((text, meant) -> texts.put(CellText.clean(text), meant));
    this.pieces = pieces();
    said.leftOut().forEach(one -> rows.put(one, 0));
  }

  /** Each text as one of several points of a cell; the longest that fits is meant. */
  private Pattern pieces() {
    return Pattern.compile(
        texts.keySet().stream()
            .sorted(Comparator.comparing(String::length).reversed())
            .map(Pattern::quote)
            .collect(Collectors.joining("|", BEFORE + "(", ")" + BEHIND)));
  }

  Grid of(Grid grid) {
    Grid own = texts.isEmpty() ? grid : grid.with(row -> amended(row, grid), settled);
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
    String whole = texts.get(text);
    if (whole != null) {
      found(text, place);
      return as(cell, whole);
    }
    // In one pass, so that what one correction wrote is no text for the next.
    String amended = pieces.matcher(text).replaceAll(piece -> meant(piece, place));
    return amended.equals(text) ? cell : as(cell, amended);
  }

  private String meant(MatchResult piece, Place place) {
    found(piece.group(2), place);
    return piece.group(1) + Matcher.quoteReplacement(texts.getOrDefault(piece.group(2), ""));
  }

  private void found(String text, Place place) {
    found.computeIfAbsent(text, key -> new ArrayList<>()).add(place);
    settled.add(place);
  }

  private static Cell as(Cell cell, String text) {
    return Cell.text(text).in(cell.ink()).filled(cell.fill());
  }

  /** What was read as the user says; what the list does not have is a slip. */
  void report(Place whole, ListFindings findings) {
    texts.forEach(
        (text, meant) -> {
          List<Place> places = found.getOrDefault(text, List.of());
          if (places.isEmpty()) {
            findings.error(whole, new SheetOddity.NothingCorrected("read-as", text));
          } else {
            findings.note(places.get(0), new SheetOddity.ReadAsSaid(text, meant, places.size()));
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
