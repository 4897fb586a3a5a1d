package dev.ringout.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The bridge's box by its next revision: a connector renamed, a wire renumbered, a ring of three
 * moves, a heavier earth wire, a splice put into a net, a lamp gone, a second horn; every third row
 * is written from its other end.
 */
final class RevisionC {
  /** Wires that go round at J2: pin to pin. */
  private static final Map<String, String> RING = Map.of("W005", "4", "W006", "5", "W007", "3");

  private final Workbook paper = new Workbook();

  RevisionC(Workbook revisionB) {
    revisionB
        .sheets()
        .forEach(
            (sheet, rows) -> {
              paper.sheet(sheet, rows.get(0).toArray(String[]::new));
              for (List<String> row : rows.subList(1, rows.size())) {
                if (sheet.equals("Wires")) {
                  wire(row);
                } else {
                  paper.row(sheet, cells(sheet, row));
                }
              }
            });
    wire("W094", "SP2", "1", "J2", "14", "20", "RED", "0.4", "24V");
    wire("W095", "TB2", "5", "J2", "18", "20", "ORN", "0.7", "HORN");
    wire("W096", "P2", "18", "LS2", "1", "20", "ORN", "8", "HORN");
    wire("W097", "P2", "19", "LS2", "2", "20", "BLK", "8", "0V");
    wire("W098", "TB1", "12", "J2", "19", "20", "BLK", "0.7", "0V");
    paper.row("Items", "SP2", "splice", "", "box, behind TB1", "", "");
    paper.row("Items", "LS2", "horn", "", "west landing", "", "");
  }

  private static String[] cells(String sheet, List<String> row) {
    String[] cells = row.stream().map(RevisionC::named).toArray(String[]::new);
    if (sheet.equals("Header") && cells[0].equals("revision")) {
      cells[1] = "C";
    }
    return cells;
  }

  private void wire(List<String> old) {
    List<String> row = new ArrayList<>(old.stream().map(RevisionC::named).toList());
    String name = old.get(0);
    if (name.equals("W013")) {
      return;
    }
    if (name.equals("W009")) {
      row.set(0, "W109");
    } else if (name.equals("W038")) {
      row.set(5, "12");
    } else if (name.equals("W033")) {
      row.set(3, "SP2");
      row.set(4, "1");
      row.set(7, "0.3");
    } else if (name.equals("W034")) {
      row.set(2, "10");
    }
    if (RING.containsKey(name)) {
      row.set(4, RING.get(name));
    }
    if (Integer.parseInt(name.substring(1)) % 3 == 0) {
      List<String> turned = new ArrayList<>(row);
      for (int i = 0; i < 2; i++) {
        turned.set(1 + i, row.get(3 + i));
        turned.set(3 + i, row.get(1 + i));
      }
      row = turned;
    }
    paper.row("Wires", row.toArray(String[]::new));
  }

  /** A pin may be named B; only an item is renamed. */
  private static String named(String cell) {
    return cell.equals("J4") ? "J14" : cell;
  }

  private void wire(
      String name,
      String from,
      String fromPin,
      String to,
      String toPin,
      String gauge,
      String colour,
      String metres,
      String signal) {
    paper.row("Wires", name, from, fromPin, to, toPin, gauge, colour, metres, signal, "", "", "");
  }

  Workbook paper() {
    return paper;
  }
}
