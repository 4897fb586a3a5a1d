package dev.ringout.bench;

import dev.ringout.compare.Judged;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which step is asked: those of the plan in their order, each once, and once more where its value
 * failed; readings that tell explanations apart before them where somebody follows them.
 *
 * <p>Not for use by several threads at once.
 */
final class StepOrder {
  private final List<AskedStep> plan = new ArrayList<>();
  private final Map<String, Integer> times = new HashMap<>();
  private final Map<String, Integer> answers = new HashMap<>();
  private final Set<String> failedLast = new HashSet<>();
  private final Set<String> skipped = new HashSet<>();
  private List<AskedStep> telling = List.of();
  private int at;
  private boolean follows;
  private boolean jumped;
  private Optional<AskedStep> pinned = Optional.empty();

  /** Steps behind those that there are. */
  void plan(List<AskedStep> steps) {
    Set<String> known = new HashSet<>();
    plan.forEach(step -> known.add(step.id()));
    steps.stream().filter(step -> known.add(step.id())).forEach(plan::add);
  }

  /** A value was read, or read once more. */
  void read(Judged judged) {
    String id = AskedStep.id(judged.reading());
    if (!judged.reading().measured().made() || judged.reading().measured().isTakenBack()) {
      return;
    }
    times.merge(id, 1, Integer::sum);
    answers.merge(id, 1, Integer::sum);
    skipped.remove(id);
    if (judged.outcome().fails()) {
      failedLast.add(id);
    } else {
      failedLast.remove(id);
    }
  }

  /** A value that stands is judged otherwise by what was read after it. */
  void judgedAnew(Judged judged) {
    if (judged.outcome().fails()) {
      failedLast.add(AskedStep.id(judged.reading()));
    }
  }

  /** A value counts no more: it is asked for again. */
  void takenBack(String id) {
    times.remove(id);
    failedLast.remove(id);
  }

  /** Everything is forgotten that was read; the order stays. */
  void forgetReadings() {
    times.clear();
    failedLast.clear();
    skipped.clear();
  }

  void skip(String id) {
    answers.merge(id, 1, Integer::sum);
    skipped.add(id);
    pinned = Optional.empty();
  }

  /** Another name each time a step is asked: what answers it once does not answer it twice. */
  String asked(AskedStep step) {
    return step.id() + "|" + answers.getOrDefault(step.id(), 0);
  }

  /** A failing value is asked for once more before it is believed. */
  boolean isAskedAgain(String id) {
    return failedLast.contains(id) && times.getOrDefault(id, 0) == 1;
  }

  private boolean isDone(AskedStep step) {
    String id = step.id();
    return skipped.contains(id) || (times.containsKey(id) && !isAskedAgain(id));
  }

  /** Whether the same points are still to be read with the leads exchanged. */
  boolean isReverseLeft(AskedStep step) {
    return plan.stream().anyMatch(one -> one.isReverseOf(step) && !isDone(one));
  }

  /** What is asked now; absent where nothing is left. */
  Optional<AskedStep> now() {
    if (pinned.isPresent() && !isDone(pinned.get())) {
      return pinned;
    }
    pinned = Optional.empty();
    if (follows) {
      Optional<AskedStep> next = telling.stream().filter(step -> !isDone(step)).findFirst();
      if (next.isPresent()) {
        return next;
      }
    }
    for (int i = 0; i < plan.size(); i++) {
      AskedStep step = plan.get((at + i) % plan.size());
      if (!isDone(step)) {
        at = (at + i) % plan.size();
        return Optional.of(step);
      }
    }
    return Optional.empty();
  }

  /** The reading that was asked for is asked for again, or first. */
  void pin(AskedStep step) {
    pinned = Optional.of(step);
  }

  /**
   * Goes on at an item, a wire or a point: at what is left there, else at what was read there.
   *
   * @return whether there is any step there
   */
  boolean jump(String name) {
    int first = -1;
    for (int i = 0; i < plan.size(); i++) {
      if (plan.get(i).isAbout(name)) {
        if (!isDone(plan.get(i))) {
          at = i;
          jumped = true;
          follows = false;
          pinned = Optional.empty();
          return true;
        }
        first = first < 0 ? i : first;
      }
    }
    if (first < 0) {
      return false;
    }
    at = first;
    again(plan.get(first));
    return true;
  }

  /** Asks for a reading though it was made, or is not planned. */
  void again(AskedStep step) {
    jumped = true;
    follows = false;
    times.remove(step.id());
    skipped.remove(step.id());
    pinned = Optional.of(step);
  }

  void follow(boolean yes) {
    follows = yes;
    jumped &= !yes;
  }

  void telling(List<AskedStep> steps) {
    telling = List.copyOf(steps);
  }

  /** So many readings are left that tell explanations apart. */
  int tellingLeft() {
    return (int) telling.stream().filter(step -> !isDone(step)).count();
  }

  BenchState.Leading leading() {
    if (follows && tellingLeft() > 0) {
      return BenchState.Leading.TELLING;
    }
    return jumped ? BenchState.Leading.JUMP : BenchState.Leading.PLAN;
  }

  int made() {
    return (int) plan.stream().filter(step -> isDone(step) && !skipped.contains(step.id())).count();
  }

  int size() {
    return plan.size();
  }

  int skipped() {
    return (int) plan.stream().filter(step -> skipped.contains(step.id())).count();
  }
}
