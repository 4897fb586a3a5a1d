package dev.ringout.words;

import dev.ringout.revision.Change;
import dev.ringout.revision.Difference;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Changes as a page tells them: what many wires or items have alike is said once, with their count.
 * A list that leaves a column out differs in every row, and the one wire that was moved would be
 * lost among them.
 */
public final class ChangeGroups {
  private static final int FEWEST = 4;
  private static final int MOST_NAMED = 8;

  private ChangeGroups() {}

  /** A line: its class, and its sentence. */
  public record Line(String kind, String sentence) {}

  /** What is said of a change, if it is said of many at once; the two are empty where it is not. */
  private record Alike(String kind, String what) {
    static final Alike NOTHING = new Alike("", "");
  }

  /** The changes, each in its place or with those that are like it. */
  public static List<Line> of(Difference difference) {
    List<Change> changes = difference.changes();
    ToGroup toGroup = new ToGroup(difference.isOfWiresAlone());
    Map<Alike, List<Change>> alike = new LinkedHashMap<>();
    for (Change change : changes) {
      Alike group = change.match(toGroup);
      alike.computeIfAbsent(group, key -> new ArrayList<>()).add(change);
    }
    List<Line> lines = new ArrayList<>();
    for (Change change : changes) {
      Alike group = change.match(toGroup);
      List<Change> fellows = alike.getOrDefault(group, List.of());
      if (group.equals(Alike.NOTHING) || fellows.size() < FEWEST) {
        ChangeWords.Said said = ChangeWords.of(change);
        lines.add(new Line(said.kind(), said.sentence()));
      } else if (change.equals(fellows.get(0))) {
        lines.add(new Line(group.kind(), together(group, fellows)));
      }
    }
    return lines;
  }

  private static String together(Alike group, List<Change> changes) {
    List<String> subjects =
        changes.stream().map(change -> ChangeWords.of(change).subject()).distinct().toList();
    String noun = changes.get(0).isOfWire() ? "wire" : "item";
    return Text.of(
        "%s: %s (%s)",
        group.what(), Numbers.count(subjects.size(), noun), Text.first(subjects, MOST_NAMED));
  }

  /** How many changes there are of each class, most first as they stand. */
  public static String counts(List<Change> changes) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    changes.forEach(change -> counts.merge(ChangeWords.of(change).kind(), 1, Integer::sum));
    List<String> words = new ArrayList<>();
    counts.forEach((kind, count) -> words.add(count + " " + kind));
    return String.join(", ", words);
  }

  private static Alike field(String word, String old, String now) {
    if (now.isEmpty()) {
      return new Alike("not given", word + " is not in the new list");
    }
    return old.isEmpty()
        ? new Alike("now given", word + " was not in the old list")
        : new Alike("altered", Text.of("%s %s, now %s", word, old, now));
  }

  /** What each kind of change has alike with others. */
  private record ToGroup(boolean ofWiresAlone) implements Change.Cases<Alike> {
    @Override
    public Alike removed(Change.Removed change) {
      return Alike.NOTHING;
    }

    @Override
    public Alike added(Change.Added change) {
      return Alike.NOTHING;
    }

    @Override
    public Alike moved(Change.Moved change) {
      return Alike.NOTHING;
    }

    @Override
    public Alike renumbered(Change.Renumbered change) {
      return Alike.NOTHING;
    }

    @Override
    public Alike altered(Change.Altered change) {
      return field(change.field().word(), change.old(), change.now());
    }

    @Override
    public Alike itemAdded(Change.ItemAdded change) {
      return Alike.NOTHING;
    }

    @Override
    public Alike itemDropped(Change.ItemDropped change) {
      return Alike.NOTHING;
    }

    @Override
    public Alike itemAltered(Change.ItemAltered change) {
      return field("the item's " + change.field().word(), change.old(), change.now());
    }

    @Override
    public Alike jumper(Change.Jumper change) {
      return Alike.NOTHING;
    }

    @Override
    public Alike switchContact(Change.SwitchContact change) {
      return change.added() || !ofWiresAlone
          ? Alike.NOTHING
          : new Alike("not given", "switch contacts that are not in the new list");
    }

    @Override
    public Alike normalPosition(Change.NormalPosition change) {
      return Alike.NOTHING;
    }

    @Override
    public Alike ofPart(Change.OfPart change) {
      return change.added() || !ofWiresAlone
          ? Alike.NOTHING
          : new Alike("not given", "parts that are not in the new list");
    }
  }
}
