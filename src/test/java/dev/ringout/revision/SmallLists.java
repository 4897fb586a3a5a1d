package dev.ringout.revision;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Switch;
import dev.ringout.support.ReadUnit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Revisions as a test writes them down: a few rows each, read through real files. */
final class SmallLists {
  private static final Set<String> INNER = Set.of("X1", "TB1");

  private final Path folder;
  private int number;

  SmallLists(Path folder) {
    this.folder = folder;
  }

  /** A unit: the name of a sheet, its rows with blanks for line ends, and so on. */
  Harness unit(String... sheets) {
    try {
      Path unit = Files.createDirectories(folder.resolve("unit" + number++));
      for (int i = 0; i < sheets.length; i += 2) {
        Files.writeString(unit.resolve(sheets[i] + ".csv"), sheets[i + 1]);
      }
      return ReadUnit.of(unit);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A unit of wires alone: {@code W1,J1-A,P2-1} and so on. */
  Harness wires(String... rows) {
    return unit("wires", "Wire,From,To\n" + String.join("\n", rows) + "\n");
  }

  /** A unit whose wires say more: the headings after the ends, then the rows. */
  Harness wiresWith(String headings, String... rows) {
    return unit("wires", "Wire,From,To," + headings + "\n" + String.join("\n", rows) + "\n");
  }

  static Difference diff(Harness before, Harness after) {
    return Difference.of(
        before, after, new Difference.Options(Map.of(), true, INNER::contains, false));
  }

  /** By the names as they are: no renames are looked for. */
  static Difference asNamed(Harness before, Harness after) {
    return Difference.of(
        before, after, new Difference.Options(Map.of(), false, INNER::contains, false));
  }

  /** Every change in words, sorted. */
  static List<String> said(Difference difference) {
    return said(difference.changes());
  }

  /** Changes in words, sorted. */
  static List<String> said(List<Change> changes) {
    Set<String> said = new TreeSet<>();
    changes.forEach(change -> said.add(word(change)));
    return List.copyOf(said);
  }

  private static String word(Change change) {
    return change.match(new InShort());
  }

  /** A change in as few words as tell it from others. */
  private static final class InShort implements Change.Cases<String> {
    @Override
    public String removed(Change.Removed one) {
      return "removed " + one.wire().name();
    }

    @Override
    public String added(Change.Added one) {
      return "added " + one.wire().name();
    }

    @Override
    public String moved(Change.Moved one) {
      return "moved " + one.before().name() + " " + one.ends();
    }

    @Override
    public String renumbered(Change.Renumbered one) {
      return "renumbered " + one.before().name() + " " + one.after().name();
    }

    @Override
    public String altered(Change.Altered one) {
      String of = one.field().word() + " of " + one.before().name();
      return of + ": " + one.old() + " > " + one.now();
    }

    @Override
    public String itemAdded(Change.ItemAdded one) {
      return "item added " + one.ref();
    }

    @Override
    public String itemDropped(Change.ItemDropped one) {
      return "item dropped " + one.ref();
    }

    @Override
    public String itemAltered(Change.ItemAltered one) {
      String of = one.field().word() + " of " + one.after().ref();
      return of + ": " + one.old() + " > " + one.now();
    }

    @Override
    public String jumper(Change.Jumper one) {
      return (one.added() ? "jumper " : "no jumper ") + one.link().from() + " " + one.link().to();
    }

    @Override
    public String switchContact(Change.SwitchContact change) {
      Switch.Contact one = change.contact();
      return String.join(
          " ",
          change.added() ? "contact" : "no contact",
          one.ref(),
          one.state(),
          one.from().toString(),
          one.to().toString());
    }

    @Override
    public String normalPosition(Change.NormalPosition one) {
      return String.join(" ", "normal position", one.ref(), one.old(), one.now());
    }

    @Override
    public String ofPart(Change.OfPart one) {
      return (one.added() ? "part " : "no part ") + one.part().ref() + " " + one.part().kind();
    }
  }
}
