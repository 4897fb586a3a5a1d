package dev.ringout.bench;

import dev.ringout.bench.BenchState.Found;
import dev.ringout.bench.BenchState.MeterState;
import dev.ringout.bench.BenchState.Offer;
import dev.ringout.bench.BenchState.PointState;
import dev.ringout.bench.BenchState.Progress;
import dev.ringout.bench.BenchState.SessionState;
import dev.ringout.bench.BenchState.Should;
import dev.ringout.bench.BenchState.SideState;
import dev.ringout.bench.BenchState.StepState;
import dev.ringout.bench.BenchState.TakenState;
import dev.ringout.bench.BenchState.UnitState;
import dev.ringout.compare.Outcome;
import dev.ringout.jobs.Program;
import dev.ringout.meter.LeadNull;
import dev.ringout.readings.Side;
import dev.ringout.standards.Cautions;
import dev.ringout.store.StoredUnit;
import dev.ringout.units.Numbers;
import java.util.List;
import java.util.Optional;

/** Puts together what is shown of a bench. */
final class StateOfBench {
  private final Bench bench;

  StateOfBench(Bench bench) {
    this.bench = bench;
  }

  BenchState state() {
    BenchMeters meters = bench.meters();
    return new BenchState(
        bench.version(),
        Program.text(),
        bench.setup().store().shown(),
        bench.setup().station(),
        bench.setup().practice(),
        bench.tester(),
        meter(
            meters.continuity(),
            meters.trouble(),
            meters.leads().map(StateOfBench::leads),
            meters.needsLeads()),
        meter(meters.insulation(), "", Optional.empty(), false),
        bench.session().map(this::session));
  }

  private static BenchState.Dated leads(LeadNull leads) {
    return new BenchState.Dated(
        BenchWords.value(leads.reading().measured()), leads.reading().at().toString());
  }

  private static MeterState meter(
      MeterDesk desk, String trouble, Optional<BenchState.Dated> leads, boolean needsLeads) {
    return new MeterState(
        desk.address().text(),
        desk.link() == BenchState.Link.TYPED ? "" : desk.profile().name(),
        desk.link(),
        desk.identity().map(identity -> identity.text()).orElse(""),
        desk.trouble().isEmpty() ? trouble : desk.trouble(),
        leads,
        needsLeads);
  }

  static UnitState unit(StoredUnit unit) {
    return new UnitState(
        UnitPage.id(unit),
        unit.serial(),
        unit.title(),
        unit.drawing(),
        unit.revision(),
        Bench.isPractice(unit));
  }

  private SessionState session(LedSession led) {
    StepOrder order = led.order();
    int left = order.size() - order.made() - order.skipped();
    boolean choosing = led.isToChoose();
    return new SessionState(
        led.led().session().id(),
        led.led().session().number(),
        led.trouble(),
        unit(led.led().unit()),
        new Progress(order.made(), order.size(), order.skipped(), led.pace().minutes(left)),
        order.leading(),
        choosing ? Optional.of(offer(order.tellingLeft())) : Optional.empty(),
        led.sheets().job(),
        led.now().map(step -> step(led, step)),
        last(led),
        new Found(led.isWorking(), led.explained().faults()),
        led.explained().open(),
        bench.others());
  }

  private static Offer offer(int telling) {
    return new Offer(
        "Something failed here. "
            + Numbers.count(telling, "more reading")
            + (telling == 1 ? " tells" : " tell")
            + " what it is.",
        telling);
  }

  private static StepState step(LedSession led, AskedStep step) {
    String stays = led.before().map(step::stays).orElse("");
    return new StepState(
        led.asked(step),
        step.number(),
        step.isInsulation() ? "insulation" : "continuity",
        BenchWords.asks(step.expected()),
        side(step.from()),
        side(step.to()),
        stays,
        led.positions(step),
        step.wire(),
        new Should(BenchWords.expected(step), BenchWords.means(step)),
        step.why(),
        led.order().isAskedAgain(step.id()),
        led.before().filter(step::isReverseOf).isPresent(),
        cautions(step),
        led.mustConfirm(step),
        step.volts().isPresent() ? Numbers.plain(step.volts().getAsDouble()) + " V" : "",
        step.isInsulation() ? "MΩ" : "Ω",
        step.isInsulation() ? List.of("kΩ", "MΩ", "GΩ") : List.of("mΩ", "Ω", "kΩ", "MΩ"));
  }

  /** Where work can hurt somebody, on the step itself. */
  private static List<String> cautions(AskedStep step) {
    return step.isInsulation()
        ? Cautions.published(true).stream().map(Cautions.Caution::text).toList()
        : List.of();
  }

  private static SideState side(Side side) {
    return new SideState(
        side.toString(),
        BenchWords.spoken(side),
        side.points().stream().map(point -> new PointState(point.ref(), point.pin())).toList(),
        side.isRest(),
        BenchWords.howTied(side));
  }

  private static Optional<TakenState> last(LedSession led) {
    List<LedSession.Taken> taken = led.taken();
    return taken.isEmpty()
        ? Optional.empty()
        : Optional.of(taken(led, taken.get(taken.size() - 1)));
  }

  private static TakenState taken(LedSession led, LedSession.Taken one) {
    return new TakenState(
        led.named(one.seq()),
        one.step().from() + " to " + one.step().to(),
        BenchWords.value(one.judged().reading().measured()),
        one.value().raw(),
        one.value().how().word(),
        BenchWords.tone(one.verdict()),
        one.isFirstOfTwo() && one.verdict().outcome() == Outcome.CONFORMS
            ? "Good so far: the reading the other way decides."
            : BenchWords.says(one.verdict(), one.step()),
        one.at(),
        one.judged().reading().by(),
        one.counts());
  }
}
