package dev.ringout.jobs;

import dev.ringout.source.Problem;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a job answers: its result, or that its inputs can't be understood. Either way it says
 * everything that was odd or wrong in them.
 *
 * @param <T> the result
 */
public sealed interface Answer<T> {

  /** What was odd or wrong in the inputs, with file, sheet and cell. */
  List<Problem> problems();

  /** What is made of it, whichever it is. */
  <R> R match(Function<Given<T>, R> given, Function<Refused<T>, R> refused);

  /** The result, where there is one. */
  default Optional<T> result() {
    return match(given -> Optional.of(given.value()), refused -> Optional.empty());
  }

  /** A result. */
  record Given<T>(T value, List<Problem> problems) implements Answer<T> {
    @Override
    public <R> R match(Function<Given<T>, R> given, Function<Refused<T>, R> refused) {
      return given.apply(this);
    }
  }

  /**
   * None: the inputs can't be understood.
   *
   * @param missing whether one of them is not there at all
   */
  record Refused<T>(List<Problem> problems, boolean missing) implements Answer<T> {
    @Override
    public <R> R match(Function<Given<T>, R> given, Function<Refused<T>, R> refused) {
      return refused.apply(this);
    }
  }

  /** A result, with what was found in the inputs on the way to it. */
  static <T> Answer<T> of(T result, Inputs inputs) {
    return new Given<>(result, inputs.problems().list());
  }

  /** No result. */
  static <T> Answer<T> refused(Inputs inputs) {
    return new Refused<>(inputs.problems().list(), inputs.isMissing());
  }
}
