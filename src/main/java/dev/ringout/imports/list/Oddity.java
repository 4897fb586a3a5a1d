package dev.ringout.imports.list;

import java.util.List;

/** Something suspect in a list, of which the finding says where. */
public sealed interface Oddity
    permits DamagedCell, RowOddity, WiringOddity, SheetOddity, KblOddity {

  /** What sort of mess it is. */
  OddityKind kind();

  /** Lengths that are given without a unit; none where it is about anything else. */
  default List<String> lengthsWithoutUnit() {
    return List.of();
  }

  /** Gauges that are given without a unit; none where it is about anything else. */
  default List<String> gaugesWithoutUnit() {
    return List.of();
  }

  /** What is made of it, by its family. */
  <T> T matchFamily(Families<T> families);

  /**
   * What a writer makes of each family.
   *
   * @param <T> what it makes
   */
  interface Families<T> {
    T damagedCell(DamagedCell odd);

    T rowOddity(RowOddity odd);

    T wiringOddity(WiringOddity odd);

    T sheetOddity(SheetOddity odd);

    T kblOddity(KblOddity odd);
  }
}
