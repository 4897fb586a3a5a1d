package dev.ringout.benchmarks.exam;

import dev.ringout.benchmarks.exam.Marker.Mark;
import dev.ringout.benchmarks.exam.Marker.Marked;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** The questions of the exam: a seed makes a unit, its faults, and how it is read. */
final class Exam {
  /** Neighbouring seeds begin alike; these do not. */
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  /** A sort of question: one row of the table. */
  enum Question {
    GOOD,
    GOOD_MIXED_WITHOUT_GAUGES,
    GOOD_LEADS_TOLD,
    GOOD_DRIFTING,
    GOOD_HAND_HELD,
    ONE_EVERY_PAIR,
    ONE_SHEET,
    ONE_SHEET_AND_SWEEPS,
    MANY_EVERY_PAIR,
    MANY_SHEET_AND_SWEEPS,
    LONG_WIRES,
    HAND_HELD,
    HALF_SHEET,
    LEADS_AND_DRIFT,
    WITHOUT_GAUGES,
    MILLIOHMS_FOR_OHMS,
    ROW_SKIPPED,
    ROWS_EXCHANGED,
    DECIMAL,
    SLIP_AND_FAULT,
    GOOD_RICH,
    ONE_RICH,
    MANY_RICH;

    /** Neighbouring seeds must not make the same units for two questions. */
    private static final List<Question> IN_ORDER = List.of(values());

    boolean isGood() {
      return name().startsWith("GOOD");
    }

    boolean isSlip() {
      return number() >= MILLIOHMS_FOR_OHMS.number() && !isRich();
    }

    /** Units and habits that not every shop has. */
    boolean isRich() {
      return name().endsWith("RICH");
    }

    int number() {
      return IN_ORDER.indexOf(this);
    }
  }

  /**
   * A question and its answer.
   *
   * @param seconds that the answer took
   * @param more of the readings asked for next so many were made until every fault of the unit was
   *     certain; -1 where that was not asked, {@link #NOT_REACHED} where it was not reached
   */
  record Sat(
      Question question,
      long seed,
      List<Edit> planted,
      Marked marked,
      double seconds,
      int more,
      String told) {}

  /** More readings than this nobody takes. */
  static final int NOT_REACHED = 12;

  private final Question question;
  private final long seed;
  private final boolean follows;
  private final Random random;

  private Exam(Question question, long seed, boolean follows) {
    this.question = question;
    this.seed = seed;
    this.follows = follows;
    this.random = new Random((seed * 64 + question.number() + 1) * SPREAD);
  }

  /** Asks; nothing where such a slip would not show. The files stay in the folder. */
  static Optional<Sat> sit(Question question, long seed, Path folder) {
    return new Exam(question, seed, true).sit(folder);
  }

  /** Asks once: the readings that the answer asks for are not made. */
  static Optional<Sat> sitOnce(Question question, long seed, Path folder) {
    return new Exam(question, seed, false).sit(folder);
  }

  private Optional<Sat> sit(Path folder) {
    Bench.Reads reads = reads();
    Box listed = Maker.of(random, make(), wires(reads), question.isRich());
    Bench bench = new Bench(listed);
    Meter.Use use = use();
    Meter meter = Meter.of(use, random);
    Habit habit = question.isRich() ? Habit.of(meter, random) : Habit.PLAIN;
    List<Row> rows = habit.ordered(listed, bench.rows(reads, random), random);
    Planter planter = new Planter(listed, bench, random);
    List<List<Edit>> faults = planter.plant(faults(), rows, meter);
    List<Edit> planted = faults.stream().flatMap(List::stream).toList();
    Box unit = Edit.applied(listed, planted);
    if (reads == Bench.Reads.SHEET_AND_SWEEPS) {
      rows.addAll(bench.sweeps(rows, unit));
    }
    List<Row> ordered = new ArrayList<>(rows.stream().filter(row -> !row.insulation()).toList());
    rows.stream().filter(Row::insulation).forEach(ordered::add);
    List<Row> read = habit.written(bench.read(ordered, unit, meter, random), planted, random);
    Optional<Hand.Spoilt> written = Hand.writes(slip(), read, random);
    return written
        .filter(sheet -> planter.areShown(faults, sheet.left(read), meter))
        .map(sheet -> answer(listed, planted, meter, use, sheet, habit, folder));
  }

  private Sat answer(
      Box listed,
      List<Edit> planted,
      Meter meter,
      Meter.Use use,
      Hand.Spoilt sheet,
      Habit habit,
      Path folder) {
    Path list = folder.resolve("list");
    Path readings = folder.resolve("readings");
    Files.list(listed, list);
    Files.sheet(listed, sheet.rows(), meter, habit, readings);
    Examinee.Paper paper = Examinee.check(list, readings);
    if (!paper.isUsable()) {
      return new Sat(
          question,
          seed,
          planted,
          new Marked(Mark.CRASH, List.of()),
          paper.seconds(),
          -1,
          paper.code() + " " + paper.err());
    }
    List<Told> told = Told.of(paper, listed);
    boolean leadsAreOff = use == Meter.Use.HAND_HELD_UNTOLD || use == Meter.Use.DRIFTING;
    Marker marker = new Marker(listed, planted, sheet.cells(), leadsAreOff, told);
    Marked marked =
        marker.mark(
            !Examinee.texts(paper.document(), "unexplained").isEmpty(),
            Examinee.text(paper.document(), "verdict").equals("faults"));
    boolean isFollowed = follows && !question.isGood() && !question.isSlip() && !planted.isEmpty();
    int more = isFollowed ? follow(listed, planted, meter, sheet, habit, folder, paper, told) : -1;
    return new Sat(question, seed, planted, marked, paper.seconds(), more, said(told, paper));
  }

  /** Makes the reading that is asked for first, again and again. */
  private int follow(
      Box listed,
      List<Edit> planted,
      Meter meter,
      Hand.Spoilt sheet,
      Habit habit,
      Path folder,
      Examinee.Paper first,
      List<Told> firstTold) {
    Examinee.Paper paper = first;
    List<Told> told = firstTold;
    Bench bench = new Bench(listed);
    Box made = Edit.applied(listed, planted);
    Map<String, Solver> unit = Bench.solvers(made);
    listed.parts.forEach(part -> unit.put(part.lifted(), new Solver(made, part.lifted())));
    List<Row> rows = new ArrayList<>(sheet.rows());
    for (int more = 0; more < NOT_REACHED; more++) {
      if (told.stream().allMatch(one -> one.certain() || one.isOfTheTest())) {
        return more;
      }
      Optional<Row> next =
          paper.list("next").stream().findFirst().flatMap(one -> Next.row(listed, one));
      if (next.isEmpty() || !unit.containsKey(next.get().state())) {
        return NOT_REACHED;
      }
      rows.add(bench.reading(next.get(), unit, meter, random));
      Path readings = folder.resolve("more" + more);
      Files.sheet(listed, rows, meter, habit, readings);
      paper = Examinee.check(folder.resolve("list"), readings);
      if (!paper.isUsable()) {
        return NOT_REACHED;
      }
      told = Told.of(paper, listed);
    }
    return NOT_REACHED;
  }

  private static String said(List<Told> told, Examinee.Paper paper) {
    StringBuilder said = new StringBuilder();
    for (Told one : told) {
      said.append(
              one.certain()
                  ? "[certain] "
                  : "[" + (1 - one.others().stream().mapToDouble(Told.Other::odds).sum()) + "] ")
          .append(one.summary())
          .append('\n');
      one.others().forEach(other -> said.append("   or ").append(other).append('\n'));
    }
    Object left = paper.document().get("unexplained");
    return said + "unexplained " + left + ", verdict " + paper.document().get("verdict");
  }

  private Bench.Reads reads() {
    return switch (question) {
      case ONE_EVERY_PAIR, MANY_EVERY_PAIR -> Bench.Reads.EVERY_PAIR;
      case ONE_SHEET -> Bench.Reads.SHEET;
      case HALF_SHEET -> Bench.Reads.HALF_SHEET;
      case LONG_WIRES, HAND_HELD, WITHOUT_GAUGES, LEADS_AND_DRIFT ->
          random.nextInt(4) == 0 ? Bench.Reads.EVERY_PAIR : Bench.Reads.SHEET_AND_SWEEPS;
      case ONE_SHEET_AND_SWEEPS, MANY_SHEET_AND_SWEEPS, ONE_RICH, MANY_RICH ->
          Bench.Reads.SHEET_AND_SWEEPS;
      default -> random.nextInt(6) == 0 ? Bench.Reads.EVERY_PAIR : Bench.Reads.SHEET;
    };
  }

  private int wires(Bench.Reads reads) {
    if (reads == Bench.Reads.EVERY_PAIR) {
      return 20 + random.nextInt(21);
    }
    return random.nextInt(8) == 0 ? 150 + random.nextInt(251) : 20 + random.nextInt(100);
  }

  private Maker.Make make() {
    return switch (question) {
      case LONG_WIRES -> Maker.Make.LONG_AND_THIN;
      case GOOD_MIXED_WITHOUT_GAUGES -> Maker.Make.MIXED_WITHOUT_GAUGES;
      case WITHOUT_GAUGES ->
          random.nextBoolean() ? Maker.Make.WITHOUT_GAUGES : Maker.Make.MIXED_WITHOUT_GAUGES;
      default ->
          switch (random.nextInt(8)) {
            case 0 -> Maker.Make.WITHOUT_GAUGES;
            case 1 -> question.isGood() ? Maker.Make.LONG_AND_THIN : Maker.Make.PLAIN;
            case 2, 3, 4 -> Maker.Make.MIXED_GAUGES;
            default -> Maker.Make.PLAIN;
          };
    };
  }

  private Meter.Use use() {
    return switch (question) {
      case GOOD_LEADS_TOLD -> Meter.Use.LEADS_TOLD;
      case GOOD_DRIFTING -> Meter.Use.DRIFTING;
      case GOOD_HAND_HELD, HAND_HELD ->
          List.of(Meter.Use.HAND_HELD_NULLED, Meter.Use.HAND_HELD_TOLD, Meter.Use.HAND_HELD_UNTOLD)
              .get(random.nextInt(3));
      case LEADS_AND_DRIFT -> random.nextBoolean() ? Meter.Use.LEADS_TOLD : Meter.Use.DRIFTING;
      case GOOD_RICH, ONE_RICH, MANY_RICH -> {
        List<Meter.Use> uses = List.of(Meter.Use.values());
        yield uses.get(random.nextInt(uses.size()));
      }
      default -> random.nextBoolean() ? Meter.Use.MILLIOHMS : Meter.Use.MILLIOHMS_UNTOLD;
    };
  }

  private int faults() {
    return switch (question) {
      case MANY_EVERY_PAIR, MANY_SHEET_AND_SWEEPS, MANY_RICH -> 2 + random.nextInt(3);
      case MILLIOHMS_FOR_OHMS, ROW_SKIPPED, ROWS_EXCHANGED, DECIMAL -> 0;
      default -> question.isGood() ? 0 : 1;
    };
  }

  private Hand.Slip slip() {
    return switch (question) {
      case MILLIOHMS_FOR_OHMS -> Hand.Slip.MILLIOHMS_FOR_OHMS;
      case ROW_SKIPPED -> Hand.Slip.ROW_SKIPPED;
      case ROWS_EXCHANGED -> Hand.Slip.ROWS_EXCHANGED;
      case DECIMAL -> Hand.Slip.DECIMAL;
      case SLIP_AND_FAULT ->
          List.of(Hand.Slip.ROW_SKIPPED, Hand.Slip.ROWS_EXCHANGED, Hand.Slip.DECIMAL)
              .get(random.nextInt(3));
      default -> Hand.Slip.NONE;
    };
  }
}
