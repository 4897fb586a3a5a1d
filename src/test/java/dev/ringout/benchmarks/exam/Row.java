package dev.ringout.benchmarks.exam;

/**
 * A row of a sheet.
 *
 * @param minus empty: the rest, every point that is in no net of the other side
 * @param reverse what the meter showed with its leads exchanged, or empty
 */
@SuppressWarnings("ArrayRecordComponent") // never compared as a whole
record Row(
    boolean insulation, int[] plus, int[] minus, String state, String reading, String reverse) {
  static Row pair(int plus, int minus, String state) {
    return new Row(false, new int[] {plus}, new int[] {minus}, state, "", "");
  }

  static Row rest(int[] plus) {
    return new Row(true, plus, new int[0], "", "", "");
  }

  /** The same with its probes exchanged, nothing read yet. */
  Row turned() {
    return new Row(insulation, /* plus= */ minus, /* minus= */ plus, state, "", "");
  }

  Row showing(String shown, String turned) {
    return new Row(insulation, plus, minus, state, shown, turned);
  }

  Row showing(String shown) {
    return showing(shown, reverse);
  }

  boolean isSame(Row other) {
    return insulation == other.insulation
        && state.equals(other.state)
        && plus.length == 1
        && other.plus.length == 1
        && minus.length == 1
        && other.minus.length == 1
        && Math.min(plus[0], minus[0]) == Math.min(other.plus[0], other.minus[0])
        && Math.max(plus[0], minus[0]) == Math.max(other.plus[0], other.minus[0]);
  }
}
