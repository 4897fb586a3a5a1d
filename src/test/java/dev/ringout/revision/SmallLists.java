package dev.ringout.revision;

import dev.ringout.harness.Harness;
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
    Set<String> said = new TreeSet<>();
    difference.changes().forEach(change -> said.add(word(change)));
    return List.copyOf(said);
  }

  private static String word(Change change) {
    if (change instanceof Change.Removed one) {
      return "removed " + one.wire().name();
    }
    if (change instanceof Change.Added one) {
      return "added " + one.wire().name();
    }
    if (change instanceof Change.Moved one) {
      return "moved " + one.before().name() + " " + one.ends();
    }
    if (change instanceof Change.Renumbered one) {
      return "renumbered " + one.before().name() + " " + one.after().name();
    }
    if (change instanceof Change.Altered one) {
      return one.field().word()
          + " of "
          + one.before().name()
          + ": "
          + one.old()
          + " > "
          + one.now();
    }
    if (change instanceof Change.ItemAdded one) {
      return "item added " + one.ref();
    }
    if (change instanceof Change.ItemDropped one) {
      return "item dropped " + one.ref();
    }
    if (change instanceof Change.ItemAltered one) {
      return one.field() + " of " + one.after().ref() + ": " + one.old() + " > " + one.now();
    }
    if (change instanceof Change.Jumper one) {
      return (one.added() ? "jumper " : "no jumper ") + one.link().from() + " " + one.link().to();
    }
    if (change instanceof Change.SwitchContact one) {
      return (one.added() ? "contact " : "no contact ")
          + one.contact().ref()
          + " "
          + one.contact().state()
          + " "
          + one.contact().from()
          + " "
          + one.contact().to();
    }
    Change.OfPart part = (Change.OfPart) change;
    return (part.added() ? "part " : "no part ") + part.part().ref() + " " + part.part().kind();
  }
}
