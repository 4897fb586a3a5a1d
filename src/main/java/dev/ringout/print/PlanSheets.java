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
import dev.ringout.units.Numbers;
import dev.ringout.words.PlanNotes;
import dev.ringout.words.UnitTitle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;

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
          "Least (Ω)",
          "Most (Ω)",
          "Reading",
          "Unit",
          "By",
          "Time",
          "Note");
  private static final List<String> INSULATION =
      List.of(
          "Step",
          "From",
          "From Pin",
          "To",
          "To Pin",
          "State",
          "Volts",
          "Least (MΩ)",
          "Seconds",
          "Reading",
          "Unit",
          "By",
          "Time",
          "Note");
  private static final int DIGITS = 4;
  private static final double OHMS_IN_MEGOHM = 1e6;

  /** The reading in ohms, by the unit chosen. */
  private static final String OHMS =
      "$I2*IF($J2=\"mΩ\",0.001,IF($J2=\"kΩ\",1000,IF($J2=\"MΩ\",1000000,1)))";

  private static final String CONTINUITY_FAILS =
      "IF(ISNUMBER($I2),OR(AND($G2<>\"\","
          + OHMS
          + "<$G2*0.999),AND($H2<>\"\","
          + OHMS
          + ">$H2*1.001)),AND($H2<>\"\",OR($I2=\"OL\",$I2=\"OPEN\",$I2=\"FAIL\")))";

  private static final String INSULATION_FAILS =
      "IF(ISNUMBER($J2),$J2*IF($K2=\"GΩ\",1000,IF($K2=\"kΩ\",0.001,1))<$H2,$J2=\"FAIL\")";

  private PlanSheets() {}

  /** The sheets, what to read first in front. */
  public static List<OutSheet> of(TestPlan plan) {
    String title = UnitTitle.of(plan.circuit().harness());
    List<OutSheet> sheets = new ArrayList<>();
    sheets.add(first(plan, title));
    sheets.add(job(plan, title));
    if (!plan.options().reworks().isEmpty()) {
      sheets.add(reworks(plan, title));
    }
    sheets.add(
        new OutSheet(
            "Continuity",
            CONTINUITY,
            rows(plan, step -> step.kind() == Reading.Kind.CONTINUITY),
            Look.printed(title)
                .withNumbers(0, 6, 7)
                .withChoices(9, List.of("mΩ", "Ω", "kΩ", "MΩ"))
                .withToFill(8, 9, 10, 11, 12)
                .withMarkWhere(CONTINUITY_FAILS)));
    List<List<String>> insulation = rows(plan, step -> step.kind() == Reading.Kind.INSULATION);
    if (!insulation.isEmpty()) {
      sheets.add(
          new OutSheet(
              "Insulation",
              INSULATION,
              insulation,
              Look.printed(title)
                  .withNumbers(0, 6, 7)
                  .withChoices(10, List.of("kΩ", "MΩ", "GΩ"))
                  .withToFill(8, 9, 10, 11, 12, 13)
                  .withMarkWhere(INSULATION_FAILS)));
    }
    sheets.add(calls(plan, title));
    return sheets;
  }

  private static OutSheet first(TestPlan plan, String title) {
    List<List<String>> rows = new ArrayList<>();
    for (PlanNotes.Note note : PlanNotes.of(plan)) {
      rows.add(List.of(note.topic(), note.text()));
    }
    return new OutSheet(
        "Read first", List.of("About", "What to know, and to tick"), rows, Look.printed(title));
  }

  /** What says which unit was tested, by whom and with what: the names that are read again. */
  private static OutSheet job(TestPlan plan, String title) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("serial number", "", ""));
    rows.add(List.of("date", "", "2026-11-25"));
    rows.add(List.of("revision", plan.circuit().harness().headerValue("revision"), ""));
    String drawing = plan.circuit().harness().headerValue("drawing");
    if (!drawing.isEmpty()) {
      rows.add(List.of("drawing", drawing, ""));
    }
    rows.add(List.of("procedure", "", ""));
    rows.add(List.of("operator", "", "who reads"));
    rows.add(List.of("inspector", "", "who accepts, and did not read"));
    rows.add(List.of("temperature", "", "20 °C"));
    rows.add(List.of("humidity", "", "46 %"));
    rows.add(List.of("instrument", "", "milliohm meter"));
    rows.add(List.of("instrument number", "", ""));
    rows.add(List.of("calibration due", "", "2027-03-31"));
    rows.add(List.of("continuity range", "", "40 MΩ: what OL is more than"));
    rows.add(List.of("meter accuracy", "", "0.5 % + 2 digits"));
    rows.add(List.of("meter resolution", "", "1 mΩ"));
    rows.add(List.of("lead null", "", "nulled, or what they read together: 0.21 Ω"));
    if (plan.steps().stream().anyMatch(step -> step.kind() == Reading.Kind.INSULATION)) {
      rows.add(List.of("insulation instrument", "", "insulation tester; blank: the same"));
      rows.add(List.of("insulation instrument number", "", ""));
      rows.add(List.of("insulation calibration due", "", "2027-03-31"));
      rows.add(List.of("insulation range", "", "10 GΩ: what OL is more than"));
    }
    return new OutSheet(
        "Job",
        List.of("Name", "Value", "Such as"),
        filledIn(rows, plan.options().job()),
        Look.printed(title).withTextToFill(1));
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

  private static List<List<String>> rows(TestPlan plan, Predicate<Step> which) {
    List<List<String>> rows = new ArrayList<>();
    for (Step step : plan.steps()) {
      if (which.test(step)) {
        rows.add(row(plan.circuit(), step));
      }
    }
    return rows;
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
      row.add(number(step.minOhms(), OHMS_IN_MEGOHM));
      row.addAll(List.of("", "", "MΩ", "", "", ""));
    } else {
      row.add(number(step.minOhms(), 1));
      row.add(number(step.maxOhms(), 1));
      row.addAll(List.of("", "Ω", "", "", note(step)));
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

  private static String note(Step step) {
    String what = step.expected().isApart() ? "open" : step.ofWhat();
    return step.samePoint() ? "same pin" + (what.isEmpty() ? "" : "; " + what) : what;
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
        Look.printed(title).withNumbers(0).withToFill(4));
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
