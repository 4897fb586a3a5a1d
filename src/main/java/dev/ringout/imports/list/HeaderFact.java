package dev.ringout.imports.list;

import dev.ringout.source.Place;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What a list says of itself as a whole.
 *
 * @param place the cell of the value; {@link Place#NOWHERE} where the user said it
 */
public record HeaderFact(Name name, String value, Place place) {

  /** What a list can say of itself. */
  public enum Name {
    TITLE,
    DRAWING,
    REVISION,
    EFFECTIVITY,
    DATE;

    /** As the sheet {@code Header} of a harness file and every output call it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** A fact by its word. */
    public static Optional<Name> of(String word) {
      return Arrays.stream(values()).filter(name -> name.word().equals(word)).findFirst();
    }
  }
}
