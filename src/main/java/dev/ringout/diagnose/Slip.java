package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Judged;
import dev.ringout.harness.Wire;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;

/** One physical slip: what a hand or a tool did wrong. Points and conductors by their numbers. */
sealed interface Slip {

  /** A wire, link or contact that does not conduct. */
  record Missing(int conductor) implements Slip {}

  /** A wire's end that sits at another point of its item than listed. */
  record Moved(int wire, Wire.End end, int to) implements Slip {}

  /** The ends of two wires at one item, exchanged. */
  record Crossed(int wire, Wire.End end, int otherWire, Wire.End otherEnd) implements Slip {}

  /** One end of a wire put at a point. */
  record Put(int wire, Wire.End end, int to) {}

  /** Many ends at once by one mistake: a hand that was one cavity out, a plug on the wrong side. */
  record Rearranged(Arrangement how, List<Put> puts) implements Slip {}

  /**
   * A reading that was taken at another pin than the sheet says.
   *
   * @param first whether its first probe was elsewhere, else the second
   * @param at where that probe was
   */
  record Misread(Judged judged, boolean first, int at) implements Slip {}

  /** A wire, link or contact whose joints conduct poorly. */
  record Poor(int conductor) implements Slip {}

  /** Two points joined by something that is not listed. */
  record Bridged(int one, int other) implements Slip {}

  /**
   * A part that is not as listed.
   *
   * @param from where its first end is
   * @param to where its second end is
   */
  record FaultyPart(int part, PartFault how, int from, int to) implements Slip {}

  /**
   * A switch that does not close what it should in every position.
   *
   * @param which its number in the harness
   * @param position where it is stuck; else empty
   * @param contact the conductor that is welded; else -1
   */
  record FaultySwitch(int which, SwitchFault how, String position, int contact) implements Slip {}

  /** The wires that it puts elsewhere. */
  default Set<Integer> misplaced() {
    if (this instanceof Moved moved) {
      return Set.of(moved.wire());
    }
    if (this instanceof Rearranged many) {
      return many.puts().stream().map(Put::wire).collect(Collectors.toSet());
    }
    return this instanceof Crossed crossed ? Set.of(crossed.wire(), crossed.otherWire()) : Set.of();
  }

  /** The points that it is about: where things are listed and where they would be. */
  default Set<Integer> points(Circuit circuit) {
    Set<Integer> points = new LinkedHashSet<>();
    IntConsumer ends =
        conductor -> points.addAll(List.of(circuit.from(conductor), circuit.to(conductor)));
    if (this instanceof Missing missing) {
      ends.accept(missing.conductor());
    } else if (this instanceof Moved moved) {
      ends.accept(moved.wire());
      points.add(moved.to());
    } else if (this instanceof Crossed crossed) {
      ends.accept(crossed.wire());
      ends.accept(crossed.otherWire());
    } else if (this instanceof Rearranged many) {
      many.puts()
          .forEach(
              put -> {
                ends.accept(put.wire());
                points.add(put.to());
              });
    } else if (this instanceof Poor poor) {
      ends.accept(poor.conductor());
    } else if (this instanceof Misread misread) {
      misread.judged().probing().points().forEach(points::add);
    } else if (this instanceof Bridged bridged) {
      points.addAll(List.of(bridged.one(), bridged.other()));
    } else if (this instanceof FaultyPart faulty) {
      points.addAll(List.of(faulty.from(), faulty.to()));
    } else if (this instanceof FaultySwitch faulty) {
      for (int contact : circuit.contactsOf(circuit.harness().switches().get(faulty.which()))) {
        ends.accept(contact);
      }
    }
    return points;
  }
}
