package dev.ringout.benchmarks.weaken;

import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Weakenings of sheets and files. */
final class WeakFiles {
  private WeakFiles() {}

  private static Folder anyFile(Case one, Random random) {
    return one.files.get(random.nextInt(one.files.size()));
  }

  static Optional<String> dropSheet(Case one, Random random) {
    return WeakRows.anySheet(one, random)
        .map(
            place -> {
              place.file().sheets.remove(place.sheet());
              return "without sheet " + place.sheet();
            });
  }

  static Optional<String> dropJob(Case one, Random random) {
    Folder file = anyFile(one, random);
    return file.sheets.remove(Folder.JOB) == null
        ? Optional.empty()
        : Optional.of("without job sheet");
  }

  static Optional<String> otherSerialBeside(Case one, Random random) {
    Folder sister = one.subject.sister().copy();
    if (random.nextInt(3) == 0) {
      sister.sheets.remove(random.nextBoolean() ? Folder.INSULATION : Folder.CONTINUITY);
    }
    boolean nameless = random.nextInt(4) == 0;
    if (nameless) {
      sister.sheet(Folder.JOB).put("serial number", "");
    }
    one.files.add(random.nextBoolean() ? 0 : one.files.size(), sister);
    return Optional.of("beside it readings of " + (nameless ? "no serial number" : "its sister"));
  }

  static Optional<String> otherSerialInstead(Case one, Random random) {
    Folder file = anyFile(one, random);
    String sheet = random.nextBoolean() ? Folder.INSULATION : Folder.CONTINUITY;
    if (one.subject.sister().has(sheet) && random.nextBoolean()) {
      Folder moved = one.subject.sister().copy();
      moved.sheets.keySet().retainAll(List.of(sheet, Folder.JOB));
      file.sheets.remove(sheet);
      one.files.add(moved);
      return Optional.of(sheet + " of its sister instead");
    }
    one.files.set(one.files.indexOf(file), one.subject.sister().copy());
    return Optional.of("a file of its sister instead");
  }

  static Optional<String> otherListInstead(Case one, Random random) {
    return WeakRows.any(one.subject.strangers(), random)
        .map(
            stranger -> {
              one.files.set(random.nextInt(one.files.size()), stranger.copy());
              return "a file of another list instead";
            });
  }
}
