package dev.ringout.imports.list;

import dev.ringout.source.Place;

/**
 * One end of a wire as a row gives it.
 *
 * @param pin empty where the list names an item alone
 * @param own whether it is the pin of the table's own connector
 */
public record End(String item, String pin, Place place, boolean own) {

  /** The same end under other names. */
  public End with(String otherItem, String otherPin) {
    return new End(otherItem, otherPin, place, own);
  }

  /** Whether the list names a pin. */
  public boolean hasPin() {
    return !pin.isEmpty();
  }

  @Override
  public String toString() {
    return pin.isEmpty() ? item : item + "-" + pin;
  }
}
