package dev.ringout.revision;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** By what a wire of one list may be known again in the other. */
sealed interface WireClue {

  /** Whether so many wires that share it say something of who is who. */
  default boolean tells(int wires) {
    return true;
  }

  /** The number on it. */
  record Numbered(String name) implements WireClue {}

  /** Its two points, in order. */
  record Points(Point one, Point other) implements WireClue {
    static Points of(Wire wire) {
      return wire.from().compareTo(wire.to()) <= 0
          ? new Points(wire.from(), wire.to())
          : new Points(wire.to(), wire.from());
    }
  }

  /** The signal that it brings to one of its points. */
  record SignalAt(Point point, String signal) implements WireClue {
    /** A point with more wires of one signal than this tells nothing of who is who. */
    private static final int MOST_ALIKE = 12;

    @Override
    public boolean tells(int wires) {
      return wires <= MOST_ALIKE;
    }
  }

  /** A wire as two lists may have it both: its number, if it has one, and its points. */
  record Identity(Optional<String> name, Points points) {
    static Identity of(Wire wire) {
      return new Identity(
          Renaming.isUnnamed(wire) ? Optional.empty() : Optional.of(wire.name()), Points.of(wire));
    }
  }

  /** Everything by which a wire may be known. */
  static List<WireClue> of(Wire wire) {
    List<WireClue> clues = new ArrayList<>();
    if (!Renaming.isUnnamed(wire)) {
      clues.add(new Numbered(wire.name()));
    }
    clues.add(Points.of(wire));
    if (!wire.signal().isEmpty()) {
      String signal = Field.plain(wire.signal());
      clues.add(new SignalAt(wire.from(), signal));
      clues.add(new SignalAt(wire.to(), signal));
    }
    return clues;
  }
}
