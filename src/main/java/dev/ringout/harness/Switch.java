package dev.ringout.harness;

import dev.ringout.source.Place;
import java.util.List;

/**
 * A switch or relay with its positions.
 *
 * @param states the positions in the order listed; the first is the normal one
 * @param contacts every contact with the position in which it is closed
 */
public record Switch(String ref, List<String> states, List<Contact> contacts) {

  /** The position the switch is in unless a reading says otherwise. */
  public String normalState() {
    return states.get(0);
  }

  /** A contact closed in one position. */
  public record Contact(String ref, String state, Point from, Point to, Place place) {

    /** Whether it joins the same two points as another, whichever is named first. */
    public boolean hasSamePointsAs(Contact other) {
      return (from.equals(other.from) && to.equals(other.to))
          || (from.equals(other.to) && to.equals(other.from));
    }
  }
}
