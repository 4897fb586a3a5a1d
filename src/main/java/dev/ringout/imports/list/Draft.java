package dev.ringout.imports.list;

import dev.ringout.source.Place;
import java.util.List;
import java.util.Map;

/**
 * A wire as its row gives it.
 *
 * @param also further terminals on which the same conductor lands at its far end
 * @param texts the row's other columns that are understood
 * @param notes the row's columns that are not, by their headings
 * @param layout how the row's table tells its wires
 */
public record Draft(
    String name,
    End from,
    End to,
    List<End> also,
    Map<Role, Value> texts,
    Map<String, String> notes,
    Place place,
    Layout layout) {

  /** A cell's text; where it stands and what its heading says of units is asked for rarely. */
  public record Value(String text, ListTable table, int row, ListColumn column) {

    public Place place() {
      return table.grid().place(row, column.index());
    }

    public String heading() {
      return column.heading();
    }

    public String unit() {
      return column.unit();
    }

    public Value with(String other) {
      return new Value(other, table, row, column);
    }
  }

  /** The text under a role, or empty. */
  public String text(Role role) {
    Value value = texts.get(role);
    return value == null ? "" : value.text();
  }

  /** Whether the row belongs to a connector's own list of pins. */
  public boolean block() {
    return layout == Layout.BLOCK;
  }

  /** What tells the wires of one row apart: {@code W5}, {@code W5/2}; counted from 0. */
  public static String numbered(String name, int number) {
    return name.isEmpty() || number == 0 ? name : name + "/" + (number + 1);
  }

  /** The same wire with other ends. */
  public Draft with(End newFrom, End newTo, List<End> newAlso) {
    return new Draft(name, newFrom, newTo, newAlso, texts, notes, place, layout);
  }
}
