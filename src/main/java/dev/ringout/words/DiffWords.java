package dev.ringout.words;

import dev.ringout.harness.Wire;
import dev.ringout.revision.Change;
import dev.ringout.revision.Difference;
import dev.ringout.revision.HeaderChange;
import dev.ringout.revision.Reach;
import dev.ringout.revision.Rename;
import dev.ringout.revision.RetestReason;
import dev.ringout.revision.ReworkOrder;
import dev.ringout.revision.ReworkStep;
import dev.ringout.revision.Risk;
import dev.ringout.revision.Unsure;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.work.WorkPapers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Two revisions in words, whichever form they are shown in. */
public final class DiffWords {
  /** What a list built from readings can't tell. */
  public static final String FROM_READINGS =
      "A list that was built from readings knows no wires: only nets are compared. What was never"
          + " read shows as apart; see what ringout asfound wants read next.";

  private DiffWords() {}

  /**
   * The verdict.
   *
   * @param header what the headers have otherwise
   * @param fromReadings whether one list was built from readings: it knows no more than was read
   */
  public static String verdict(
      Difference difference, List<HeaderChange> header, boolean fromReadings) {
    if (difference.isEmpty() && header.isEmpty()) {
      return fromReadings ? "NO DIFFERENCE in what was read" : "NO DIFFERENCE";
    }
    if (difference.isElectricallySame()) {
      return "ELECTRICALLY THE SAME: the same points are joined; "
          + (difference.isEmpty()
              ? "the units it is for differ."
              : "names, wires or words differ.");
    }
    if (difference.nets().isEmpty() && difference.isOfWiresAlone()) {
      return "ELECTRICALLY CHANGED: the new list has no switch contacts and no parts; its wires"
          + " join the same points.";
    }
    return "ELECTRICALLY CHANGED: "
        + (difference.nets().isEmpty()
            ? "switch contacts or parts lie between other nets."
            : Numbers.count(difference.nets().size(), "group") + " of nets changed.");
  }

  /** What the headers have otherwise. */
  public static String sentence(HeaderChange change) {
    return Text.of("%s: was %s, now %s", change.name(), stated(change.old()), stated(change.now()));
  }

  private static String stated(String value) {
    return value.isEmpty() ? "not stated" : "\"" + value + "\"";
  }

  /** What was, what went, what came, what is. */
  public static String balance(Difference difference) {
    return Text.of(
        "%s listed - %d removed + %d added = %d listed",
        Numbers.count(difference.before().wires().size(), "wire"),
        difference.changes(Change.Removed.class).size(),
        difference.changes(Change.Added.class).size(),
        difference.after().wires().size());
  }

  /** What makes one doubt the comparison. */
  public static String sentence(Unsure unsure) {
    return unsure.match(new UnsureWords());
  }

  /** Rows that are written twice. */
  public static List<String> doubled(Difference difference) {
    List<String> texts = new ArrayList<>();
    difference.doubledBefore().forEach(wire -> texts.add(doubled(wire, "earlier")));
    difference.doubledAfter().forEach(wire -> texts.add(doubled(wire, "later")));
    return texts;
  }

  private static String doubled(Wire wire, String which) {
    return Text.of(
        "%s is written twice in the %s list (%s), and counts once",
        wire.name(), which, wire.place());
  }

  /** The options that say what was found; empty where nothing is to confirm. */
  public static String toConfirm(List<Rename> renames) {
    return renames.stream()
        .filter(rename -> rename.ofItem() && !rename.asTold())
        .map(rename -> "--rename " + rename.oldRef() + "=" + rename.newRef())
        .collect(Collectors.joining(" "));
  }

  /** An item that may have another name. */
  public static String possible(Rename rename) {
    return Text.of(
        "%s may be %s now: too few wires to tell, so they count as two; if it is one, give"
            + " --rename %s=%s",
        rename.oldRef(), rename.newRef(), rename.oldRef(), rename.newRef());
  }

  /** What is to be done. */
  public static String sentence(ReworkStep step) {
    return step.match(new StepWords());
  }

  /** What is another thing now. */
  public static List<String> exchanges(ReworkOrder rework) {
    return rework.exchanges().stream()
        .map(
            change ->
                ChangeWords.of(change).sentence()
                    + (change.isOfItem() ? "; its wires come off and on again" : ""))
        .toList();
  }

  /** The items of a visit, with the names that they still bear. */
  public static String at(ReworkOrder.Visit visit, Difference difference) {
    List<String> names = new ArrayList<>();
    for (String item : visit.items()) {
      String marked =
          difference.renames().stream()
              .filter(rename -> rename.ofItem() && rename.newRef().equals(item))
              .map(rename -> " (marked " + rename.oldRef() + ")")
              .findFirst()
              .orElse("");
      names.add(item + marked);
    }
    return names.size() > 1 ? String.join(" and ", names) + " together" : names.get(0);
  }

  /** Why an end gets where it goes, or may not. */
  public static String why(Reach reach) {
    return reach.why().match(new ReachWords());
  }

  /** An end that may not get where it goes. */
  public static String sentence(Reach reach) {
    return Text.of(
        "%s, from %s to %s, %s: %s",
        reach.wire().name(),
        reach.from(),
        reach.to(),
        reach.verdict() == Reach.Verdict.TOO_SHORT ? "may be too short" : "can't be told",
        why(reach));
  }

  /**
   * What is joined on the way.
   *
   * @param risks absent where the work is too large to walk through
   */
  public static List<String> risks(Optional<List<Risk>> risks) {
    return risks
        .map(some -> some.stream().map(DiffWords::sentence).toList())
        .orElse(List.of("The work is too large to look for power and ground joined on the way."));
  }

  private static String sentence(Risk risk) {
    return Text.of(
        "From step %d until step %d, half done, %s (%s) is joined to %s (%s). Do not stop"
            + " there, and never switch power on there.",
        risk.afterStep(),
        risk.untilStep(),
        risk.powerSignal(),
        risk.power(),
        risk.groundSignal(),
        risk.ground());
  }

  /**
   * What has to be at hand: wire by kind, then the rest; a new splice by all its wires.
   *
   * @param papers of the wires that are made new
   * @param splices the papers of the splices that are new
   */
  public static List<String> plus(WorkPapers papers, Optional<WorkPapers> splices) {
    List<String> lines = new ArrayList<>(KitWords.totals(papers));
    lines.addAll(KitWords.counted(papers.kitBesideSplices()));
    splices.ifPresent(some -> lines.addAll(KitWords.counted(some.splices())));
    return lines;
  }

  /**
   * What is left over.
   *
   * @param papers of the wires that come out
   */
  public static List<String> minus(WorkPapers papers) {
    return KitWords.all(papers);
  }

  /** Why a reading is to be taken again. */
  public static String sentence(RetestReason why) {
    return why.match(new RetestWords());
  }
}
