package dev.ringout.circuit;

/**
 * A part that is not as listed.
 *
 * @param from the number of the point at which its first end really is
 * @param to the same of its second end
 */
public record AlteredPart(How how, int from, int to) {
  /** In which way. */
  public enum How {
    /** Not there, burnt out, or a lead is off. */
    MISSING,
    /** It may read anything. */
    ANY_VALUE,
    /** It has its value, but perhaps at other points, or the other way round. */
    AT_THESE_POINTS
  }
}
