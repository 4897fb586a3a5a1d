package dev.ringout.imports;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Grid;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Said;
import dev.ringout.imports.list.SheetOddity;
import dev.ringout.imports.list.Weighed;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the user said of sheets, tables and columns that the list does not have. */
final class UnusedOptions {
  private final ImportOptions options;
  private final ListFindings findings;

  UnusedOptions(ImportOptions options, ListFindings findings) {
    this.options = options;
    this.findings = findings;
  }

  /** An option that fits nothing is a slip that would go unseen, or a profile of another list. */
  void report(Place whole, List<Grid> sheets, List<Weighed> tables, Set<String> items) {
    for (String name : options.columns().keySet()) {
      boolean used = tables.stream().anyMatch(table -> hasColumn(table, name));
      if (!used) {
        findings.error(whole, new SheetOddity.ColumnNotFound(name));
      }
    }
    for (Weighed table : tables) {
      saidTwice(table);
    }
    for (String item : options.onePoint()) {
      boolean found =
          item.equalsIgnoreCase(ImportOptions.ALL)
              || items.stream().anyMatch(one -> isSame(one, item));
      if (!items.isEmpty() && !found) {
        findings.error(whole, new SheetOddity.ItemNotFound(item));
      }
    }
    for (String heading : options.joinBy()) {
      boolean used =
          tables.stream()
              .flatMap(table -> table.best().table().columns().stream())
              .anyMatch(column -> isHeading(column, heading));
      if (!used) {
        findings.error(whole, new SheetOddity.NameColumnNotFound(heading));
      }
    }
    for (String sheet : options.shape().sheets()) {
      if (sheets.stream().noneMatch(one -> one.name().strip().equalsIgnoreCase(sheet.strip()))) {
        findings.error(whole, new SheetOddity.SheetNotFound(sheet));
      }
    }
    for (String where : places()) {
      boolean fits =
          sheets.stream().anyMatch(sheet -> sheet.name().equals(where))
              || tables.stream()
                  .anyMatch(table -> (table.sheet() + "!" + table.firstCell()).equals(where));
      if (!where.isEmpty() && !fits) {
        findings.error(whole, new SheetOddity.SheetNotFound(where));
      }
    }
  }

  private static boolean isSame(String one, String item) {
    return CellText.refKey(one).equals(CellText.refKey(item));
  }

  /** Two columns can't be one end both. */
  private void saidTwice(Weighed table) {
    Map<Role, ListColumn> said = new EnumMap<>(Role.class);
    for (ListColumn column : table.best().table().columns()) {
      boolean several =
          switch (column.role()) {
            case KEEP, NOTE, POINTS -> true;
            default -> false;
          };
      if (column.isSaid() && !several && said.putIfAbsent(column.role(), column) != null) {
        findings.error(
            table.best().table().grid().place(0, column.index()),
            new SheetOddity.RoleSaidTwice(column.role().title()));
      }
    }
  }

  private List<String> places() {
    ImportOptions.Shape shape = options.shape();
    List<String> places = new ArrayList<>();
    shape.rows().stream().map(Said::where).forEach(places::add);
    shape.headingRows().stream().map(Said::where).forEach(places::add);
    shape.layouts().stream().map(Said::where).forEach(places::add);
    shape.items().stream().map(Said::where).forEach(places::add);
    shape.separators().stream().map(Said::where).forEach(places::add);
    options.corrections().leftOut().stream().map(Said::where).forEach(places::add);
    return places.stream().distinct().toList();
  }

  private static boolean hasColumn(Weighed table, String name) {
    String column = ImportOptions.columnOn(table.sheet(), table.firstCell(), name);
    return table.best().table().columns().stream()
        .anyMatch(one -> isHeading(one, column) || Place.columnLetters(one.index()).equals(column));
  }

  private static boolean isHeading(ListColumn column, String heading) {
    return CellText.headingKey(column.heading()).equals(CellText.headingKey(heading));
  }
}
