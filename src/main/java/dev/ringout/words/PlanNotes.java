package dev.ringout.words;

import dev.ringout.harness.Part;
import dev.ringout.harness.SwitchState;
import dev.ringout.plan.PlanOptions.Isolation;
import dev.ringout.plan.Step;
import dev.ringout.plan.TestPlan;
import dev.ringout.readings.Reading;
import dev.ringout.standards.Cautions;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What whoever uses a plan must know before the first step and do after the last. */
public final class PlanNotes {
  private PlanNotes() {}

  /** One line. */
  public record Note(String topic, String text) {}

  /** Every line, in the order in which it is to be read. */
  public static List<Note> of(TestPlan plan) {
    boolean insulation =
        plan.steps().stream().anyMatch(step -> step.kind() == Reading.Kind.INSULATION);
    Set<String> lifted = lifted(plan);
    List<Note> notes = new ArrayList<>();
    for (Cautions.Caution caution : Cautions.published(insulation)) {
      notes.add(new Note("caution", caution.text()));
    }
    notes.addAll(BEFORE);
    notes.addAll(howToRead(plan, lifted));
    if (insulation) {
      notes.addAll(WITH_VOLTS);
    }
    for (Part part : plan.sensitive()) {
      notes.add(
          new Note(
              "off [ ]",
              Text.of(
                  "Disconnect %s before insulation volts: it stands %s V.",
                  Sentences.capital(part.label()), volts(part))));
    }
    LeftOutSentences leftOut = new LeftOutSentences(plan.circuit());
    plan.leftOut().stream()
        .map(one -> one.match(leftOut))
        .distinct()
        .forEach(left -> notes.add(new Note("not proven", left)));
    notes.addAll(after(plan, lifted));
    notes.addAll(limits(plan));
    return notes;
  }

  private static final List<Note> BEFORE =
      List.of(
          new Note("before", "Every connector unmated at both ends; look over the unit first."),
          new Note(
              "before",
              "Null the leads, or write what they read together on the sheet Job as lead null."),
          new Note("unit", "On paper, ring the unit you read in: mΩ and MΩ are not the same."),
          new Note(
              "before",
              "Probe with mating contacts: a probe pushed into a socket spreads it and makes a"
                  + " new fault."));

  private static final List<Note> WITH_VOLTS =
      List.of(
          new Note("order", "Continuity first. Insulation volts only when all of it is good."),
          new Note(
              "after volts",
              "Short each net to the others before you touch it, for as long as the volts were"
                  + " on."));

  /** What the words in the columns of a step mean. */
  private static List<Note> howToRead(TestPlan plan, Set<String> lifted) {
    List<Note> notes = new ArrayList<>();
    if (uses(plan, true)) {
      notes.add(
          new Note(
              "REST",
              "Every point that is not in the net of the other side, and every shell, tied"
                  + " together."));
    }
    if (uses(plan, false)) {
      notes.add(new Note("A+B", "These points tied together for this step."));
    }
    if (!lifted.isEmpty()) {
      notes.add(
          new Note(
              "LIFTED",
              "One end of that wire off its point while the step is made: "
                  + String.join(", ", lifted)
                  + ". Put each back at once."));
    }
    if (plan.options().isolation() == Isolation.NEIGHBOURS) {
      notes.add(new Note("limits", "Only pins next to each other are held apart by this sheet."));
    }
    return notes;
  }

  /** What is to be put back. */
  private static List<Note> after(TestPlan plan, Set<String> lifted) {
    List<Note> notes = new ArrayList<>();
    for (Part part : plan.sensitive()) {
      notes.add(new Note("on again [ ]", Sentences.capital(part.label()) + " connected again."));
    }
    for (String wire : lifted) {
      notes.add(new Note("on again [ ]", wire + " back on its point."));
    }
    if (plan.steps().stream().anyMatch(step -> !step.probing().state().isNormal())) {
      notes.add(new Note("restore [ ]", "Every switch in its normal position."));
    }
    notes.add(new Note("restore [ ]", "Jumpers, clips and shorting leads off; caps on."));
    return notes;
  }

  private static List<Note> limits(TestPlan plan) {
    return List.of(
        new Note(
            "limits",
            Text.of(
                "Least and most are from the harness file's limits: open from %s, insulation"
                    + " from %s.",
                Ohms.text(plan.circuit().harness().limits().openMinOhms()),
                Ohms.text(plan.circuit().harness().limits().insulationMinOhms()))),
        new Note(
            "limits",
            "Continuity does not prove polarity, pairing, phase or function; safety-critical"
                + " circuits need an independent inspection and a check of direction from each station."));
  }

  private static String volts(Part part) {
    return Text.of("%.0f", part.maxTestVolts().orElse(0));
  }

  private static boolean uses(TestPlan plan, boolean rest) {
    return plan.steps().stream()
        .anyMatch(
            step ->
                rest
                    ? step.probing().toRest()
                    : step.probing().from().length > 1 || step.probing().to().length > 1);
  }

  private static Set<String> lifted(TestPlan plan) {
    Set<String> wires = new LinkedHashSet<>();
    for (Step step : plan.steps()) {
      step.probing()
          .state()
          .positions()
          .forEach(
              (name, position) -> {
                if (position.equals(SwitchState.LIFTED)) {
                  wires.add(name);
                }
              });
    }
    return wires;
  }
}
