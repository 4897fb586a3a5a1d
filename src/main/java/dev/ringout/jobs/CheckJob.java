package dev.ringout.jobs;

import dev.ringout.check.CheckResult;
import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.readings.Noted;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.UnitHistory;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.standards.Tables;
import dev.ringout.units.Text;
import dev.ringout.words.NotedWords;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The main job: a unit's readings held against its list. */
public final class CheckJob {
  private CheckJob() {}

  /**
   * What is asked.
   *
   * @param others readings of other units of the same list, by which a fault of the paper is told
   */
  public record Request(UnitRequest unit, List<Path> others) {
    /** What is given can't be changed afterwards. */
    public Request {
      others = List.copyOf(others);
    }

    /** A unit by itself. */
    public static Request of(UnitRequest unit) {
      return new Request(unit, List.of());
    }
  }

  /**
   * Checks a unit.
   *
   * <p>A cell that can't be understood stops the verdict, and not what the other cells say: its
   * problem stands among the result's unread readings.
   *
   * @throws WrongRequest where the request names what the list does not have
   */
  public static Answer<CheckResult> run(Request request, Inputs inputs) throws WrongRequest {
    for (Path other : request.others()) {
      if (request.unit().readings().contains(other)) {
        throw new WrongRequest(Part.OTHERS, other + " is among this unit's own readings");
      }
    }
    Optional<UnitAtHand> read = UnitAtHand.read(request.unit(), inputs);
    if (read.isEmpty()) {
      request.others().forEach(file -> inputs.readingsOfAnything(List.of(file)));
      return Answer.refused(inputs);
    }
    UnitAtHand unit = read.get();
    Map<String, ReadingSet> others = new LinkedHashMap<>();
    for (Path file : request.others()) {
      others.put(file.toString(), unit.another(file, request.unit().said(), inputs));
    }
    if (hasErrorsBeside(unit.readings().unread(), inputs.problems())) {
      return Answer.refused(inputs);
    }
    tellNotes(request.unit().readings(), inputs);
    return WrongRequest.answer(() -> checked(request, unit, others, inputs), inputs);
  }

  /** What people said of a unit of the store: its readings may be good, and the unit not. */
  private static void tellNotes(List<Path> readings, Inputs inputs) {
    for (Path named : readings) {
      UnitHistory history = inputs.history(List.of(named));
      List<String> told = new ArrayList<>();
      for (Noted.Words note : history.notes()) {
        told.add(
            Text.of(
                "noted by %s, %s: \"%s\"",
                note.who(), NotedWords.when(note.at()), Text.visibleInOneLine(note.text())));
      }
      for (Noted.Signed one : history.doubtfulSignatures()) {
        told.add(
            Text.of(
                "signed by %s as %s, %s, and that does not count: %s",
                one.who(), one.role(), NotedWords.when(one.at()), one.doubt()));
      }
      Place unit = Place.of(inputs.shownName(named));
      told.forEach(text -> inputs.problems().warning(unit, text));
    }
  }

  private static CheckResult checked(
      Request request, UnitAtHand unit, Map<String, ReadingSet> others, Inputs inputs)
      throws WrongRequest {
    Tables tables = OwnTables.over(request.unit().ownTables(), inputs);
    Map<String, CheckResult> checked = new LinkedHashMap<>();
    others.forEach(
        (file, other) ->
            checked.put(file, CheckResult.of(unit.harness(), other, tables, List.of())));
    CheckResult result =
        CheckResult.of(unit.harness(), unit.readings(), tables, inputs.problems().list());
    return result.comparedWith(checked);
  }

  /** Whether anything is wrong besides what is known. */
  static boolean hasErrorsBeside(Collection<Problem> known, Problems problems) {
    Set<Problem> beside = Collections.newSetFromMap(new IdentityHashMap<>());
    beside.addAll(known);
    return problems.list().stream()
        .anyMatch(one -> one.severity() == Severity.ERROR && !beside.contains(one));
  }
}
