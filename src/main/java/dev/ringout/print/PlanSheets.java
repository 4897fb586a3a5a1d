package dev.ringout.print;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Probing;
import dev.ringout.harness.Point;
import dev.ringout.plan.Planner;
import dev.ringout.plan.Step;
import dev.ringout.plan.TestPlan;
import dev.ringout.readings.JobTemplate;
import dev.ringout.readings.Reading;
import dev.ringout.readings.Rework;
import dev.ringout.sheet.OutSheet;
import dev.ringout.sheet.OutSheet.Look;
import dev.ringout.standards.Cautions;
import dev.ringout.units.Numbers;
import dev.ringout.words.LimitWords;
import dev.ringout.words.PlanNotes;
import dev.ringout.words.UnitTitle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** A plan as a test sheet to fill in, which {@code ringout check} reads as it is. */
public final class PlanSheets {
  private static final String REST = "REST";

  /** Whatever is read on this sheet is read after the reworks that it was planned for. */
  private static final String AFTER = "after";

  private static final List<String> CONTINUITY =
      List.of(
          "Step",
          "From",
          "From Pin",
          "To",
          "To Pin",
          "State",
          "Limit",
          "Reading",
          "Unit",
          "By",
          "Time",
          "Note",
          "Least (Ω)",
          "Most (Ω)");
  private static final List<String> INSULATION =
      List.of(
          "Step",
          "From",
          "From Pin",
          "To",
          "To Pin",
          "State",
          "Volts",
          "Limit",
          "Seconds",
          "Reading",
          "Unit",
          "By",
          "Time",
          "Note",
          "Least (MΩ)");

  /** For a glove 12 mm, and what a printer takes of them (common practice, no source). */
  private static final int BOX_MM = 13;

  private static final Map<Integer, Integer> CONTINUITY_MM =
      Map.ofEntries(
          Map.entry(0, 11),
          Map.entry(1, 15),
          Map.entry(2, 14),
          Map.entry(3, 15),
          Map.entry(4, 14),
          Map.entry(5, 18),
          Map.entry(6, 27),
          Map.entry(7, 26),
          Map.entry(8, 17),
          Map.entry(9, 11),
          Map.entry(10, 14),
          Map.entry(11, 24));
  private static final Map<Integer, Integer> INSULATION_MM =
      Map.ofEntries(
          Map.entry(0, 11),
          Map.entry(1, 18),
          Map.entry(2, 14),
          Map.entry(3, 15),
          Map.entry(4, 14),
          Map.entry(5, 15),
          Map.entry(6, 12),
          Map.entry(7, 22),
          Map.entry(8, 18),
          Map.entry(9, 26),
          Map.entry(10, 17),
          Map.entry(11, 11),
          Map.entry(12, 14),
          Map.entry(13, 18));

  private static final Map<Integer, Integer> CALLS_MM = Map.of(0, 14, 1, 66, 2, 58, 3, 28, 4, 20);

  private static final int JOB_BOX_MM = 9;
  private static final Map<Integer, Integer> JOB_MM = Map.of(0, 52, 1, 74, 2, 64);

  private static final int DIGITS = 6;
  private static final double OHMS_IN_MEGOHM = 1e6;

  /** The reading in ohms, by the unit chosen. */
  private static final String OHMS =
      "$H2*IF($I2=\"mΩ\",0.001,IF($I2=\"kΩ\",1000,IF($I2=\"MΩ\",1000000,1)))";

  private static final String CONTINUITY_FAILS =
      "IF(ISNUMBER($H2),OR(AND($M2<>\"\","
          + OHMS
          + "<$M2*0.999),AND($N2<>\"\","
          + OHMS
          + ">$N2*1.001)),AND($N2<>\"\",OR($H2=\"OL\",$H2=\"OPEN\",$H2=\"FAIL\")))";

  private static final String INSULATION_FAILS =
      "IF(ISNUMBER($J2),$J2*IF($K2=\"GΩ\",1000,IF($K2=\"kΩ\",0.001,1))<$O2,$J2=\"FAIL\")";

  private PlanSheets() {}

  /** The sheets, what to read first in front. */
  public static List<OutSheet> of(TestPlan plan) {
    String title = UnitTitle.of(plan.circuit().harness());
    List<OutSheet> sheets = new ArrayList<>();
    sheets.add(first(plan, title));
    RestPicture.of(plan).ifPresent(picture -> sheets.add(tied(picture, title)));
    sheets.add(job(plan, title));
    if (!plan.options().reworks().isEmpty()) {
      sheets.add(reworks(plan, title));
    }
    sheets.add(continuity(plan, title));
    if (steps(plan, Reading.Kind.INSULATION).findAny().isPresent()) {
      sheets.add(insulation(plan, title));
    }
    sheets.add(calls(plan, title));
    return sheets;
  }

  private static OutSheet continuity(TestPlan plan, String title) {
    return new OutSheet(
        "Continuity",
        CONTINUITY,
        rows(plan, Reading.Kind.CONTINUITY),
        Look.printed(title)
            .withNumbers(0, 12, 13)
            .withChoices(8, List.of("mΩ", "Ω", "kΩ", "MΩ"))
            .withToFill(7, 8, 9, 10, 11)
            .withSizes(BOX_MM, CONTINUITY_MM)
            .withOnScreen(12, 13)
            .withCaution(Cautions.onPageOfHands())
            .withBars(
                PlanBars.of(
                    plan.circuit().harness(),
                    List.of(),
                    steps(plan, Reading.Kind.CONTINUITY).toList(),
                    steps(plan, Reading.Kind.INSULATION).findAny().isEmpty()))
            .withMarkWhere(CONTINUITY_FAILS));
  }

  private static OutSheet insulation(TestPlan plan, String title) {
    double volts =
        steps(plan, Reading.Kind.INSULATION)
            .mapToDouble(step -> step.volts().orElse(0))
            .max()
            .orElse(0);
    return new OutSheet(
        "Insulation",
        INSULATION,
        rows(plan, Reading.Kind.INSULATION),
        Look.printed(title)
            .withNumbers(0, 6, 14)
            .withChoices(10, List.of("kΩ", "MΩ", "GΩ"))
            .withToFill(8, 9, 10, 11, 12, 13)
            .withSizes(BOX_MM, INSULATION_MM)
            .withOnScreen(14)
            .withCaution(Cautions.onPageOfVolts(volts))
            .withBars(
                PlanBars.of(
                    plan.circuit().harness(),
                    steps(plan, Reading.Kind.CONTINUITY).toList(),
                    steps(plan, Reading.Kind.INSULATION).toList(),
                    true))
            .withMarkWhere(INSULATION_FAILS));
  }

  private static Stream<Step> steps(TestPlan plan, Reading.Kind kind) {
    return plan.steps().stream().filter(step -> step.kind() == kind);
  }

  private static OutSheet first(TestPlan plan, String title) {
    List<List<String>> rows = new ArrayList<>();
    for (PlanNotes.Note note : PlanNotes.of(plan)) {
      rows.add(List.of(note.topic(), note.text()));
    }
    return new OutSheet(
        "Read first", List.of("About", "What to know, and to tick"), rows, Look.printed(title));
  }

  /** How the rest is tied together: once, for who has not done it before. */
  private static OutSheet tied(String picture, String title) {
    return new OutSheet(
        REST,
        List.of("No", "How to tie REST"),
        List.of(
            List.of("1", "Clip every point and every shell to one bare wire: that wire is REST."),
            List.of(
                "2",
                "Take the net of the step off REST: every point that a good unit joins to From."),
            List.of("3", "One probe on the net, the other on REST. Read."),
            List.of("4", "Put the net back on REST before the next step.")),
        Look.printed(title).withCaution(Cautions.onPageOfHands()).withPicture(picture));
  }

  /** What says which unit was tested, by whom and with what: the names that are read again. */
  private static OutSheet job(TestPlan plan, String title) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("serial number", "", ""));
    rows.add(List.of("date", "", "year-month-day"));
    rows.add(List.of("revision", plan.circuit().harness().headerValue("revision"), ""));
    String drawing = plan.circuit().harness().headerValue("drawing");
    if (!drawing.isEmpty()) {
      rows.add(List.of("drawing", drawing, ""));
    }
    rows.add(List.of("procedure", "", ""));
    rows.add(List.of("operator", "", "who reads"));
    rows.add(List.of("inspector", "", "who accepts, and did not read"));
    rows.add(List.of("temperature", "", "as 20 °C"));
    rows.add(List.of("humidity", "", "as 46 %"));
    rows.add(List.of("instrument", "", "as milliohm meter"));
    rows.add(List.of("instrument number", "", ""));
    rows.add(List.of("calibration due", "", "year-month-day"));
    rows.add(List.of("continuity range", "", "what OL is more than, as 40 MΩ"));
    rows.add(List.of("meter accuracy", "", "as 0.5 % + 2 digits"));
    rows.add(List.of("meter resolution", "", "as 1 mΩ"));
    rows.add(List.of("lead null", "", "nulled, or what they read together, as 0.21 Ω"));
    if (steps(plan, Reading.Kind.INSULATION).findAny().isPresent()) {
      rows.add(List.of("insulation instrument", "", "as insulation tester; blank: the same"));
      rows.add(List.of("insulation instrument number", "", ""));
      rows.add(List.of("insulation calibration due", "", "year-month-day"));
      rows.add(List.of("insulation range", "", "what OL is more than, as 10 GΩ"));
    }
    return new OutSheet(
        "Job",
        List.of("Name", "Value", "What to write"),
        filledIn(rows, plan.options().job()),
        Look.printed(title).withTextToFill(1).withSizes(JOB_BOX_MM, JOB_MM));
  }

  /** What the station carries along stands in its rows, and what has none yet below them. */
  private static List<List<String>> filledIn(List<List<String>> rows, JobTemplate job) {
    Map<String, String> left = new LinkedHashMap<>(job.rows());
    List<List<String>> filled = new ArrayList<>();
    for (List<String> row : rows) {
      String carried = left.remove(row.get(0));
      boolean isOpen = row.get(1).isEmpty();
      filled.add(carried == null || !isOpen ? row : List.of(row.get(0), carried, row.get(2)));
    }
    left.forEach((name, value) -> filled.add(List.of(name, value, "")));
    return filled;
  }

  /** What the readings of this sheet are taken after: so that a check knows them for later ones. */
  private static OutSheet reworks(TestPlan plan, String title) {
    List<List<String>> rows = new ArrayList<>();
    for (Rework rework : plan.options().reworks()) {
      rows.add(
          List.of(
              rework.number(),
              rework.timeText(),
              String.join(", ", rework.items()),
              String.join(", ", rework.wires()),
              AFTER,
              rework.note()));
    }
    return new OutSheet(
        "Rework",
        List.of("No", "Time", "Items", "Wires", "Readings", "Note"),
        rows,
        Look.printed(title).withToFill(1, 5));
  }

  private static List<List<String>> rows(TestPlan plan, Reading.Kind kind) {
    return steps(plan, kind).map(step -> row(plan.circuit(), step)).toList();
  }

  private static List<String> row(Circuit circuit, Step step) {
    Probing probing = step.probing();
    List<String> row = new ArrayList<>();
    row.add("" + step.number());
    side(circuit, probing.from(), row);
    if (probing.toRest()) {
      row.add(REST);
      row.add("");
    } else {
      side(circuit, probing.to(), row);
    }
    row.add(probing.state().toString());
    if (step.kind() == Reading.Kind.INSULATION) {
      row.add(number(step.volts(), 1));
      row.add(LimitWords.of(step.minOhms(), step.maxOhms()));
      row.addAll(List.of("", "", "MΩ", "", "", ""));
      row.add(number(step.minOhms(), OHMS_IN_MEGOHM));
    } else {
      row.add(LimitWords.of(step.minOhms(), step.maxOhms()));
      row.addAll(List.of("", "Ω", "", "", note(circuit, step)));
      row.add(number(step.minOhms(), 1));
      row.add(number(step.maxOhms(), 1));
    }
    return row;
  }

  private static void side(Circuit circuit, int[] points, List<String> row) {
    if (points.length == 1) {
      row.add(circuit.point(points[0]).ref());
      row.add(circuit.point(points[0]).pin());
    } else {
      row.add(Planner.side(circuit, points));
      row.add("");
    }
  }

  private static String number(OptionalDouble ohms, double unit) {
    return ohms.isEmpty() ? "" : Numbers.rounded(ohms.getAsDouble() / unit, DIGITS);
  }

  /** What it is about, and the probe that need not be moved. */
  private static String note(Circuit circuit, Step step) {
    String what = step.expected().isApart() ? "open" : step.ofWhat();
    if (!step.samePoint()) {
      return what;
    }
    String stays = circuit.point(step.probing().from()[0]) + " stays";
    return what.isEmpty() ? stays : stays + "; " + what;
  }

  /** What one says and the other answers, with letters that sound like what they are. */
  private static OutSheet calls(TestPlan plan, String title) {
    List<List<String>> rows = new ArrayList<>();
    for (Step step : plan.steps()) {
      if (step.kind() == Reading.Kind.CONTINUITY && step.probing().isPair()) {
        Point from = plan.circuit().point(step.probing().from()[0]);
        Point to = plan.circuit().point(step.probing().to()[0]);
        rows.add(
            List.of(
                "" + step.number(),
                spoken(from) + state(step),
                spoken(to),
                step.expected().isApart() ? "open" : "reads …",
                ""));
      }
    }
    return new OutSheet(
        "Calls",
        List.of("Step", "First person", "Second person", "Then", "Tick"),
        rows,
        Look.printed(title).withNumbers(0).withToFill(4).withSizes(0, CALLS_MM));
  }

  private static String state(Step step) {
    return step.probing().state().isNormal() ? "" : ", with " + step.probing().state();
  }

  /** {@code J1-a} is said "J1, little a": heard, a and A are one. */
  static String spoken(Point point) {
    String pin = point.pin();
    boolean little = pin.length() == 1 && Character.isLowerCase(pin.charAt(0));
    return point.ref() + ", " + (little ? "little " : "") + pin;
  }
}
