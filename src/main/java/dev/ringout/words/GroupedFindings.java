package dev.ringout.words;

import dev.ringout.imports.list.Finding;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Findings for a person: of many that are alike the first are told in full, the others as one with
 * their count and places.
 */
final class GroupedFindings {
  private static final int TOLD_IN_FULL = 3;
  private static final int MOST_PLACES = 12;

  /** Findings that differ in the cell or in names alone. */
  private record Kind(Severity severity, Class<?> oddity) {}

  /** One sentence, and where it holds. */
  private record Told(Problem first, List<Place> places, Finding finding) {}

  private final Map<Kind, Map<Problem, Told>> byKind = new LinkedHashMap<>();

  private GroupedFindings() {}

  /** What is said of findings, in the order in which each kind of them came first. */
  static List<Problem> of(List<Finding> findings) {
    GroupedFindings grouped = new GroupedFindings();
    findings.forEach(grouped::add);
    List<Problem> said = new ArrayList<>();
    grouped.byKind.values().forEach(alike -> say(List.copyOf(alike.values()), said));
    return said;
  }

  private void add(Finding finding) {
    Problem problem = ImportWords.problem(finding);
    Place column = new Place(problem.place().file(), "", 0, 0);
    Problem anywhere =
        new Problem(column, problem.heading(), problem.severity(), problem.text(), problem.maybe());
    byKind
        .computeIfAbsent(
            new Kind(finding.severity(), finding.oddity().getClass()),
            kind -> new LinkedHashMap<>())
        .computeIfAbsent(anywhere, same -> new Told(problem, new ArrayList<>(), finding))
        .places()
        .add(finding.place());
  }

  private static void say(List<Told> alike, List<Problem> said) {
    // A line for one more that is not told would be as long as telling it.
    int inFull = alike.size() > TOLD_IN_FULL + 1 ? TOLD_IN_FULL : alike.size();
    alike.stream().limit(inFull).map(GroupedFindings::inFull).forEach(said::add);
    if (inFull < alike.size()) {
      said.add(more(alike.subList(inFull, alike.size())));
    }
  }

  private static Problem inFull(Told told) {
    Problem first = told.first();
    if (told.places().size() == 1) {
      return first;
    }
    return new Problem(
        first.place(),
        first.heading(),
        first.severity(),
        first.text() + " (" + counted(told.places()) + ")",
        first.maybe());
  }

  private static Problem more(List<Told> others) {
    Finding first = others.get(0).finding();
    List<Place> places = new ArrayList<>();
    others.forEach(told -> places.addAll(told.places()));
    boolean oneSheet = places.stream().map(Place::sheet).distinct().count() == 1;
    Place where = new Place(first.place().file(), oneSheet ? first.place().sheet() : "", 0, 0);
    return new Problem(
        where,
        "",
        first.severity(),
        "and "
            + places.size()
            + " more: "
            + ImportWords.kind(first.kind())
            + " ("
            + cells(places)
            + ")",
        "");
  }

  private static String counted(List<Place> places) {
    return places.size() + " in all: " + cells(places);
  }

  /** {@code B4, B7, J2!C3 and 9 more}: a sheet is named where it is another than before. */
  private static String cells(List<Place> places) {
    List<String> cells = new ArrayList<>();
    String sheet = places.get(0).sheet();
    boolean several = places.stream().map(Place::sheet).distinct().count() > 1;
    for (Place place : places.subList(0, Math.min(MOST_PLACES, places.size()))) {
      boolean named = several && (cells.isEmpty() || !place.sheet().equals(sheet));
      String cell = place.cell().isEmpty() ? "" : place.cell();
      cells.add(named ? place.sheet() + (cell.isEmpty() ? "" : "!" + cell) : cell);
      sheet = place.sheet();
    }
    int more = places.size() - cells.size();
    return String.join(", ", cells) + (more > 0 ? " and " + more + " more" : "");
  }
}
