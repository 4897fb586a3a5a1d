package dev.ringout.jobs;

import dev.ringout.harness.Harness;
import dev.ringout.jobs.WrongRequest.Part;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

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
    Harness unit = TwoRevisions.Lists.unit(earlier.get(), built);
    TwoRevisions.Lists lists =
        new TwoRevisions.Lists(
            earlier.get(),
            later.get(),
            built,
            told(request.renames(), unit, later.get()),
            told(request.renames(), earlier.get(), later.get()),
            request.searchRenames(),
            OwnTables.over(request.ownTables()),
            request.mostPointsPlanned());
    return Answer.of(new Result(later.get(), TwoRevisions.run(lists)), inputs);
  }

  private static Map<String, String> told(List<String> renames, Harness before, Harness after)
      throws WrongRequest {
    Map<String, String> told = new LinkedHashMap<>();
    for (String one : renames) {
      String[] names = one.split("=", -1);
      if (names.length != 2) {
        throw new WrongRequest(Part.RENAME, "expected OLD=NEW such as J1=J101, not " + one);
      }
      String from = item(before, names[0]);
      String to = item(after, names[1]);
      if (told.containsKey(from) || told.containsValue(to)) {
        throw new WrongRequest(Part.RENAME, one + " names an item that is named already");
      }
      told.put(from, to);
    }
    return told;
  }

  private static String item(Harness harness, String name) throws WrongRequest {
    return new Names(harness).items(Part.RENAME, List.of(name)).iterator().next();
  }
}
