package dev.ringout.cells;

import java.util.Optional;

/**
 * A cell understood, or what was wrong with it.
 *
 * @param complaint what was expected instead, where there is no value
 * @param maybe what was probably meant, or empty
 */
public record Understood<T>(Optional<T> value, String complaint, String maybe) {

  /** What a cell means. */
  public static <T> Understood<T> as(T value) {
    return new Understood<>(Optional.of(value), "", "");
  }

  /** A cell that means nothing that is known, and what was probably meant. */
  public static <T> Understood<T> not(String complaint, String maybe) {
    return new Understood<>(Optional.empty(), complaint, maybe);
  }

  /** A cell that means nothing that is known. */
  public static <T> Understood<T> not(String complaint) {
    return not(complaint, "");
  }
}
