package dev.ringout.diagnose;

import dev.ringout.compare.Judged;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What is wrong, how sure, and what to measure next.
 *
 * @param unexplained failing readings that no fault explains: none is lost
 * @param blind what could be wrong without any reading showing it
 * @param searchComplete false where the search for explanations was cut short
 */
public record Diagnosis(
    List<Fault> faults,
    List<Judged> unexplained,
    List<BlindSpot> blind,
    List<NextReading> next,
    boolean searchComplete) {

  /**
   * The same, once other units of the same list have been read: a fault that another has too is
   * likelier one of the paper.
   *
   * @param others what was found in each, by its file
   */
  public Diagnosis comparedWith(Map<String, Diagnosis> others) {
    List<Fault> held = new ArrayList<>();
    for (Fault fault : faults) {
      List<String> too =
          others.entrySet().stream()
              .filter(other -> other.getValue().faults().stream().anyMatch(fault::isLike))
              .map(Map.Entry::getKey)
              .toList();
      held.add(too.isEmpty() ? fault : new Fault.OnPaper(fault.finding(), fault, too));
    }
    return new Diagnosis(List.copyOf(held), unexplained, blind, next, searchComplete);
  }
}
