package dev.ringout.jobs;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.units.Text;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** What changed between two revisions, and what is to be done. */
public final class DiffJob {
  private DiffJob() {}

  /**
   * What is asked.
   *
   * @param asBuilt the list of this unit as it was found, from which the work then starts
   * @param renames items that have another name, such as {@code J1=J101}
   * @param searchRenames whether other names are looked for besides
   * @param mostPointsPlanned of how many points in opened items the readings to take again are
   *     still planned; absent: of any number
   */
  public record Request(
      Path earlier,
      Path later,
      Optional<Path> asBuilt,
      List<String> renames,
      boolean searchRenames,
      OptionalInt mostPointsPlanned,
      Optional<Path> ownTables) {
    /** What is given can't be changed afterwards. */
    public Request {
      renames = List.copyOf(renames);
    }

    /** Two revisions of which nothing more is said. */
    public static Request of(Path earlier, Path later) {
      return new Request(
          earlier, later, Optional.empty(), List.of(), true, OptionalInt.empty(), Optional.empty());
    }

    /** All inputs that are named. */
    public List<Path> named() {
      List<Path> named = new ArrayList<>(List.of(earlier, later));
      asBuilt.ifPresent(named::add);
      return named;
    }
  }

  /** The later list, and all that is to be said of the two. */
  public record Result(Harness later, RevisionPaper paper) {}

  /**
   * Compares the two.
   *
   * @throws WrongRequest where the request names what the lists do not have
   */
  public static Answer<Result> run(Request request, Inputs inputs) throws WrongRequest {
    Optional<Harness> earlier = inputs.harness(request.earlier());
    Optional<Harness> later = inputs.harness(request.later());
    Optional<Harness> built = request.asBuilt().flatMap(inputs::harness);
    if (earlier.isEmpty() || later.isEmpty() || inputs.problems().hasErrors()) {
      return Answer.refused(inputs);
    }
    return WrongRequest.answer(() -> compared(request, earlier.get(), later.get(), built), inputs);
  }

  private static Result compared(
      Request request, Harness earlier, Harness later, Optional<Harness> built)
      throws WrongRequest {
    Harness unit = TwoRevisions.Lists.unit(earlier, built);
    TwoRevisions.Lists lists =
        new TwoRevisions.Lists(
            earlier,
            later,
            built,
            told(request.renames(), unit, later),
            told(request.renames(), earlier, later),
            request.searchRenames(),
            OwnTables.over(request.ownTables()),
            request.mostPointsPlanned());
    return new Result(later, TwoRevisions.run(lists));
  }

  private static Map<String, String> told(List<String> renames, Harness before, Harness after)
      throws WrongRequest {
    Map<String, String> told = new LinkedHashMap<>();
    for (String text : renames) {
      String[] names = text.split("=", -1);
      if (names.length != 2) {
        throw new WrongRequest(Part.RENAME, "expected OLD=NEW such as J1=J101, not " + text);
      }
      String from = item(before, names[0]);
      String to = item(after, names[1]);
      if (told.containsKey(from) || told.containsValue(to)) {
        throw new WrongRequest(Part.RENAME, text + " names an item that is named already");
      }
      told.put(from, to);
    }
    for (Map.Entry<String, String> entry : told.entrySet()) {
      if (!told.containsKey(entry.getValue())) {
        refuseTwoPointsOfOneName(entry.getKey(), entry.getValue(), before);
      }
    }
    return told;
  }

  /** An item can't get the name of another, where both have a pin of one name. */
  private static void refuseTwoPointsOfOneName(String from, String to, Harness before)
      throws WrongRequest {
    Set<String> pins = new HashSet<>();
    for (Point point : before.points()) {
      if (point.ref().equals(to)) {
        pins.add(point.pin());
      }
    }
    for (Point point : before.points()) {
      if (point.ref().equals(from) && pins.contains(point.pin())) {
        throw new WrongRequest(
            Part.RENAME,
            Text.of(
                "%s=%s: the list as it was has a %s-%s of its own; say how that %s is called now",
                from, to, to, point.pin(), to));
      }
    }
  }

  private static String item(Harness harness, String name) throws WrongRequest {
    return new NamesOfRequest(harness).items(Part.RENAME, List.of(name)).iterator().next();
  }
}
