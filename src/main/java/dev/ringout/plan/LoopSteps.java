package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.JoinLimits.JoinLimit;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Unproven;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Link;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.plan.Step.Purpose;
import dev.ringout.readings.Meter;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Steps across what others go around: wires and links in loops, and switch contacts. */
final class LoopSteps {
  /** What parts a switch's position or a lifted wire from the next in the column State. */
  private static final Pattern IN_A_STATE = Pattern.compile("[;,=]");

  private final Circuit circuit;
  private final JoinLimits limits;
  private final Hubs hubs;
  private final DraftSteps draft;

  /** The names that several wires or links share. */
  private final Set<String> sharedNames;

  LoopSteps(Circuit circuit, JoinLimits limits, Hubs hubs, DraftSteps draft) {
    this.circuit = circuit;
    this.limits = limits;
    this.hubs = hubs;
    this.draft = draft;
    this.sharedNames = sharedNames(circuit.harness());
  }

  private static Set<String> sharedNames(Harness harness) {
    Set<String> names = new HashSet<>();
    Set<String> shared = new HashSet<>();
    Stream.concat(
            harness.wires().stream().map(Wire::name), harness.links().stream().map(Link::name))
        .map(name -> name.toUpperCase(Locale.ROOT))
        .filter(name -> !names.add(name))
        .forEach(shared::add);
    return shared;
  }

  /** A contact in the position that is not shown. */
  void add(Unproven.Contact gap) {
    int conductor = gap.conductor();
    circuit
        .conductors()
        .get(conductor)
        .asContact()
        .map(circuit::switchOf)
        .map(which -> SwitchState.normal().with(which, gap.position()))
        .ifPresent(
            state ->
                across(
                    conductor,
                    // What goes around a contact shows it closed whether it is or not.
                    lifted(conductor, state).orElse(state),
                    Purpose.CONTACT));
  }

  private void across(int conductor, SwitchState state, Purpose purpose) {
    draft.add(
        Probing.pair(circuit.from(conductor), circuit.to(conductor), state),
        purpose,
        label(conductor));
  }

  private String label(int conductor) {
    return circuit.conductors().get(conductor).label();
  }

  /**
   * By a switch position in which nothing goes around it, by ohms, or with a wire's end lifted; on
   * either side of a contact, with that open.
   */
  void add(Unproven.OfWire gap) {
    gap.missing()
        .shownBy()
        .ifPresentOrElse(
            probing -> draft.add(probing, Purpose.CONTACT, label(gap.conductor())),
            () ->
                stateFor(gap.conductor())
                    .ifPresent(state -> across(gap.conductor(), state, Purpose.LOOP)));
  }

  private Optional<SwitchState> stateFor(int wire) {
    for (Switch one : circuit.harness().switches()) {
      for (String position : one.states()) {
        SwitchState state = SwitchState.normal().with(one, position);
        if (circuit.in(state).isCutEdge(wire)) {
          return Optional.of(state);
        }
      }
    }
    return showsByOhms(wire)
        ? Optional.of(SwitchState.normal())
        : lifted(wire, SwitchState.normal());
  }

  /** Whether the highest good reading across a wire is below the least one without it. */
  private boolean showsByOhms(int wire) {
    int from = circuit.from(wire);
    int to = circuit.to(wire);
    SwitchState state = SwitchState.normal();
    OptionalDouble without = limits.resistances().leastWithout(wire, from, to, state);
    JoinLimit limit = limits.of(Probing.pair(from, to, state), Meter.UNKNOWN);
    return limit.expected().isKnown()
        && without.isPresent()
        && without.getAsDouble() > limit.ohms();
  }

  /** A state with enough other wires lifted that nothing goes around a conductor. */
  private Optional<SwitchState> lifted(int conductor, SwitchState position) {
    SwitchState state = position;
    Set<Integer> off = new HashSet<>();
    List<Integer> around = Detour.around(circuit.in(position), circuit, conductor, off);
    while (!around.isEmpty()) {
      Optional<Integer> other =
          around.stream()
              .filter(this::canBeSaid)
              .min((left, right) -> Integer.compare(effort(left), effort(right)));
      if (other.isEmpty()) {
        return Optional.empty();
      }
      off.add(other.get());
      state = withLifted(state, circuit.conductors().get(other.get()));
      around = Detour.around(circuit.in(position), circuit, conductor, off);
    }
    return Optional.of(state);
  }

  /** Whether the column State can say of a wire or link that it, and it alone, is lifted. */
  private boolean canBeSaid(int conductor) {
    Conductor one = circuit.conductors().get(conductor);
    return one.asWire()
        .map(Wire::name)
        .or(() -> one.asLink().map(Link::name))
        .filter(name -> !IN_A_STATE.matcher(name).find())
        .filter(name -> !sharedNames.contains(name.toUpperCase(Locale.ROOT)))
        .isPresent();
  }

  private static SwitchState withLifted(SwitchState state, Conductor one) {
    return one.asWire()
        .map(state::withLifted)
        .or(() -> one.asLink().map(state::withLifted))
        .orElse(state);
  }

  /** A wire is lifted at a screw sooner than a contact is taken out of a connector. */
  private int effort(int wire) {
    return hubs.isScrew(circuit.from(wire)) || hubs.isScrew(circuit.to(wire)) ? 0 : 1;
  }
}
