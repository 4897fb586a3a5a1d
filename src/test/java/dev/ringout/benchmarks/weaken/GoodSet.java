package dev.ringout.benchmarks.weaken;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.ringout.benchmarks.weaken.Style.Units;
import dev.ringout.units.Text;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/** A complete set of readings of a sound unit: what its plan asks for, measured by our physics. */
final class GoodSet {
  private final Unit unit;
  private final Style style;
  private final Physics physics;
  private final Random random;
  private int minute;

  /** One row that the plan asks for. */
  private record Step(Probing probing, List<String> from, List<String> to, String state) {}

  private GoodSet(Unit unit, Style style, long seed) {
    this.unit = unit;
    this.style = style;
    this.physics = new Physics(unit);
    this.random = new Random(seed);
  }

  static Folder of(Unit unit, Style style, Path harness, long seed) {
    return new GoodSet(unit, style, seed).make(harness);
  }

  private Folder make(Path harness) {
    List<Step> steps = plan(harness);
    Folder folder = new Folder();
    folder.sheets.put(Folder.CONTINUITY, table(steps, false));
    if (unit.demand().insulationTest()) {
      folder.sheets.put(Folder.INSULATION, table(steps, true));
    }
    folder.sheets.put(Folder.JOB, job());
    return folder;
  }

  private List<Step> plan(Path harness) {
    List<String> words = new ArrayList<>(List.of("plan", "--json", harness.toString()));
    if (!unit.demand().insulationTest()) {
      words.add("--no-insulation");
    }
    Ran ran = Ran.of(words);
    List<Step> steps = new ArrayList<>();
    try {
      for (JsonNode step : new ObjectMapper().readTree(ran.out()).get("steps")) {
        List<String> from = texts(step.get("from"));
        List<String> to = texts(step.get("to"));
        String state = step.get("state").asText();
        steps.add(
            new Step(
                new Probing(
                    step.get("kind").asText().equals("insulation"),
                    numbers(from),
                    to.equals(List.of("REST")) ? List.of() : numbers(to),
                    SheetReader.state(unit, state).orElseThrow()),
                from,
                to,
                state));
      }
    } catch (JsonProcessingException | RuntimeException e) {
      throw new IllegalStateException("no plan for " + harness + ": " + ran.err(), e);
    }
    return steps;
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(one -> texts.add(one.asText()));
    return texts;
  }

  private List<Integer> numbers(List<String> names) {
    return names.stream().map(unit.points()::indexOf).toList();
  }

  private Table table(List<Step> steps, boolean insulation) {
    Table table = new Table();
    table.headings.addAll(List.of("Step", "From"));
    if (style.twoColumns()) {
      table.headings.add("From Pin");
    }
    table.headings.add("To");
    if (style.twoColumns()) {
      table.headings.add("To Pin");
    }
    table.headings.add("State");
    if (insulation && !style.jobVolts()) {
      table.headings.add("Volts");
    }
    boolean inHeading = style.units() == Units.HEADING;
    table.headings.add(inHeading ? "Reading (" + (insulation ? "GΩ" : "Ω") + ")" : "Reading");
    Set<Integer> merged = new TreeSet<>();
    boolean anyReverse = steps.stream().anyMatch(one -> reverseOf(one, steps).isPresent());
    boolean withReverse = !insulation && style.reverse() && anyReverse;
    if (withReverse) {
      table.headings.add(inHeading ? "Reverse (Ω)" : "Reverse");
    }
    if (style.units() == Units.COLUMN) {
      table.headings.add("Unit");
    }
    if (style.times()) {
      table.headings.add("Time");
    }
    for (int number = 0; number < steps.size(); number++) {
      Step step = steps.get(number);
      if (step.probing().insulation() == insulation && !merged.contains(number)) {
        Optional<Integer> reverse = withReverse ? reverseOf(step, steps) : Optional.empty();
        reverse.ifPresent(merged::add);
        row(table, number + 1, step, reverse.isPresent());
      }
    }
    return table;
  }

  private static Optional<Integer> reverseOf(Step step, List<Step> steps) {
    for (int other = steps.indexOf(step) + 1; other < steps.size(); other++) {
      Probing probing = steps.get(other).probing();
      if (!probing.isRest() && probing.equals(step.probing().exchanged())) {
        return Optional.of(other);
      }
    }
    return Optional.empty();
  }

  private void row(Table table, int number, Step step, boolean withReverse) {
    String[] cells = new String[table.headings.size()];
    Arrays.fill(cells, "");
    table.row(cells);
    int row = table.rows.size() - 1;
    table.set(row, "Step", "" + number);
    side(table, row, "From", step.from());
    side(table, row, "To", step.to());
    table.set(row, "State", step.state());
    table.set(row, "Volts", "" + (int) unit.demand().insulationVolts());
    double ohms = step.probing().insulation() ? insulation() : physics.trueOhms(step.probing());
    value(table, row, "Reading", ohms, step.probing().insulation());
    if (withReverse) {
      double back = physics.trueOhms(step.probing().exchanged());
      // One unit stands for both ways: what is beyond the range needs none.
      String unitOfRow = table.cell(row, "Unit");
      value(table, row, "Reverse", back, false);
      if (!unitOfRow.isEmpty() && !table.cell(row, "Unit").equals(unitOfRow)) {
        throw new IllegalStateException("two units in one row");
      }
    }
    minute++;
    table.set(row, "Time", Text.of("2026-11-20 %02d:%02d", 8 + minute / 60, minute % 60));
  }

  private void side(Table table, int row, String name, List<String> points) {
    boolean split = style.twoColumns() && points.size() == 1 && !points.get(0).equals("REST");
    if (split) {
      int dash = points.get(0).indexOf('-');
      table.set(row, name, points.get(0).substring(0, dash));
      table.set(row, name + " Pin", points.get(0).substring(dash + 1));
    } else {
      table.set(row, name, String.join("+", points));
    }
  }

  /** Infinite: beyond the tester's range. */
  private double insulation() {
    boolean beyond = style.overRange() && random.nextInt(4) > 0;
    return beyond ? Double.POSITIVE_INFINITY : 1e9 * (1 + random.nextInt(8));
  }

  private void value(Table table, int row, String column, double ohms, boolean insulation) {
    if (Double.isInfinite(ohms)) {
      table.set(row, column, insulation && random.nextInt(3) == 0 ? above(table) : "OL");
      return;
    }
    String unitName = insulation ? "GΩ" : ohms > 1e6 ? "MΩ" : ohms < 1 ? "mΩ" : "Ω";
    switch (style.units()) {
      case COLUMN -> {
        table.set(row, column, Values.text(ohms, unitName));
        table.set(row, "Unit", unitName);
      }
      case CELL -> table.set(row, column, Values.text(ohms, unitName) + " " + unitName);
      case HEADING -> table.set(row, column, Values.text(ohms, table.headingUnit("Reading")));
      case NOWHERE -> table.set(row, column, Values.text(ohms, insulation ? "MΩ" : "Ω"));
    }
  }

  private static String above(Table table) {
    return table.headingUnit("Reading").isEmpty() ? ">2 GΩ" : ">2";
  }

  private Table job() {
    Table job = Table.of("Name", "Value");
    job.row("serial number", style.serialNumber());
    job.put("revision", unit.demand().revision());
    job.row("operator", "R. Adeyemi").row("inspector", "M. Sorensen");
    job.row("instrument", "milliohm meter").row("instrument number", "T-118");
    boolean calibration = style.calibration() || unit.demand().calibration();
    if (calibration) {
      job.row("calibration due", "2027-03-01");
    }
    if (style.ownTester()) {
      job.row("insulation instrument", "insulation tester");
      job.row("insulation instrument number", "T-204");
      if (calibration) {
        job.row("insulation calibration due", "2027-01-15");
      }
    }
    job.row("date", "2026-11-20");
    job.row("continuity range", "40 MΩ").row("insulation range", "10 GΩ");
    if (style.jobVolts()) {
      job.row("insulation volts", (int) unit.demand().insulationVolts() + " V");
    }
    return job.row("lead null", "nulled");
  }
}
