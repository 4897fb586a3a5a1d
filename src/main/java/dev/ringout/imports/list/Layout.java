package dev.ringout.imports.list;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How a table tells its wires. */
public enum Layout {
  /** A row is a wire from one point to another. */
  FROM_TO,
  /** A row is a pin of one connector and the point that it goes to. */
  BLOCK,
  /** A row is a conductor of a device and the terminal that it goes to. */
  ITEM_TO_POINTS,
  /** A row is a terminal with a wire on either side. */
  TERMINALS,
  /** A row is a pin and the net on which it is. */
  NET_LIST,
  /** A row is a path from point to point. */
  PATHS,
  /** A row is one net through a pin of each item that holds one. */
  ROW_NETS,
  /** Marks say which device uses which terminal. */
  MARKS,
  /** A row is a pin and the number of the wire that ends there. */
  WIRE_ENDS,
  /** A row is a pin and its wire; the far end is not named. */
  OPEN_ENDED,
  /** A row is a pin and its name; wires are not told. */
  PIN_NAMES,
  /** An element of a harness file is a wire between contacts of items. */
  CONNECTIONS,
  /** No wires. */
  NONE;

  /** Whether it can tell wires. */
  public boolean tellsWires() {
    return this != PIN_NAMES && this != NONE;
  }

  /** A layout by the user's word for it. */
  public static Optional<Layout> of(String word) {
    return Arrays.stream(values())
        .filter(layout -> layout != CONNECTIONS && layout.word().equals(word))
        .findFirst();
  }

  /** The word used in machine-readable output: {@code wire-ends}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
