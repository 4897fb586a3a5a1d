package dev.ringout.benchmarks.weaken;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Units with good readings of them, and the cases that are made from these. */
final class Bench {
  private static final int MOST_WEAKENINGS = 3;

  /** Neighbouring seeds begin alike; these do not. */
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  final List<Subject> subjects;

  private Bench(List<Subject> subjects) {
    this.subjects = subjects;
  }

  /** Some units; their lists are written below a folder. */
  static Bench of(Path folder, int units, long seed) {
    List<Subject> subjects = new ArrayList<>();
    List<Folder> goods = new ArrayList<>();
    for (int number = 0; number < units; number++) {
      long own = (seed * 1000 + number) * SPREAD;
      Unit unit = UnitMaker.make("U" + (number + 1), own);
      Path list = Harness.of(unit).write(folder.resolve("list-" + unit.name()));
      Style style = Style.of(new Random(own), "0418");
      Style sister = Style.of(new Random(own + 7), "0419");
      Folder good = GoodSet.of(unit, style, list, own);
      goods.add(good);
      subjects.add(
          new Subject(
              unit,
              style,
              list,
              good,
              GoodSet.of(unit, sister, list, own + 7),
              List.of(),
              new Oracle(unit)));
    }
    List<Subject> withStrangers = new ArrayList<>();
    for (int number = 0; number < units; number++) {
      Subject one = subjects.get(number);
      List<Folder> strangers = new ArrayList<>();
      for (int other = 1; other < units && other <= 5; other++) {
        strangers.add(goods.get((number + other) % units));
      }
      withStrangers.add(
          new Subject(
              one.unit(),
              one.style(),
              one.harness(),
              one.good(),
              one.sister(),
              strangers,
              one.oracle()));
    }
    return new Bench(withStrangers);
  }

  /** A way to weaken, with the seed of its own choices. */
  record Step(Weakening weakening, long seed) {}

  /** What became of one case. */
  record Outcome(
      Subject subject, List<Step> steps, List<String> told, List<Oracle.Open> open, int code) {
    boolean isFalsePass() {
      return code == Ran.CONFORMS && !open.isEmpty();
    }
  }

  /** The steps of one case: one to three, the fewer the likelier. */
  static List<Step> steps(long seed) {
    Random random = new Random(seed);
    int count = 1;
    while (count < MOST_WEAKENINGS && random.nextInt(3) == 0) {
      count++;
    }
    List<Weakening> all = List.of(Weakening.values());
    List<Step> steps = new ArrayList<>();
    for (int step = 0; step < count; step++) {
      steps.add(new Step(all.get(random.nextInt(all.size())), random.nextLong()));
    }
    return steps;
  }

  /** Makes a case, asks the oracle, and runs the check on it. */
  static Outcome run(Subject subject, List<Step> steps, long seed, Path folder) {
    Random random = new Random(seed);
    Harmless start = random.nextInt(4) == 0 ? Harmless.SPLIT_OVER_TWO_FILES : Harmless.NOTHING;
    Case one = new Case(subject, start.apply(subject, subject.good(), random));
    List<String> told = new ArrayList<>();
    told.add(start == Harmless.NOTHING ? "the good set" : "the good set in two files");
    for (Step step : steps) {
      told.add(
          step.weakening()
              + ": "
              + step.weakening().apply(one, step.seed()).orElse("(does not apply)"));
    }
    List<Oracle.Open> open = subject.oracle().open(one.files, one.options);
    return new Outcome(subject, steps, told, open, check(subject, one, folder).code());
  }

  /** Runs the check on a case. */
  static Ran check(Subject subject, Case one, Path folder) {
    List<String> words = new ArrayList<>(List.of("check", subject.harness().toString()));
    for (int file = 0; file < one.files.size(); file++) {
      words.add(one.files.get(file).write(folder.resolve("readings-" + file)).toString());
    }
    words.addAll(one.options);
    return Ran.of(words);
  }

  /** A false pass with as few steps as still make one. */
  static Outcome least(Outcome found, long seed, Path folder) {
    Outcome least = found;
    for (int drop = found.steps().size() - 1; drop >= 0 && least.steps().size() > 1; drop--) {
      List<Step> fewer = new ArrayList<>(least.steps());
      fewer.remove(drop);
      Outcome smaller = run(found.subject(), fewer, seed, folder);
      least = smaller.isFalsePass() ? smaller : least;
    }
    return least;
  }
}
