package dev.ringout.imports.list;

/** How a table tells its wires. */
public enum Layout {
  FROM_TO("a row is a wire from one point to another"),
  BLOCK("a row is a pin of one connector and the point that it goes to"),
  ITEM_TO_POINTS("a row is a conductor of a device and the terminal that it goes to"),
  ROW_NETS("a row is one net through a pin of each item that holds one"),
  MARKS("marks say which device uses which terminal"),
  WIRE_ENDS("a row is a pin and the number of the wire that ends there"),
  OPEN_ENDED("a row is a pin and its wire; the far end is not named"),
  PIN_NAMES("a row is a pin and its name; wires are not told"),
  NONE("no wires");

  private final String says;

  Layout(String says) {
    this.says = says;
  }

  /** What a row is, in words. */
  public String says() {
    return says;
  }
}
