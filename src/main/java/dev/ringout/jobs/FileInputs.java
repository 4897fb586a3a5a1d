package dev.ringout.jobs;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Waiver;
import dev.ringout.imports.ListImporter;
import dev.ringout.imports.kbl.KblImporter;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.Words;
import dev.ringout.intake.HarnessReader;
import dev.ringout.intake.JobTemplateReader;
import dev.ringout.intake.LostCase;
import dev.ringout.intake.ReadingsReader;
import dev.ringout.intake.WaiversReader;
import dev.ringout.readings.JobTemplate;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.UnitHistory;
import dev.ringout.seal.Digest;
import dev.ringout.seal.KeptInput;
import dev.ringout.seal.Seal;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.FileBytes;
import dev.ringout.source.Place;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;
import dev.ringout.standards.Tables;
import dev.ringout.store.HarnessFile;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.TakenBack;
import dev.ringout.units.Text;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Inputs from files, with every problem of all of them. */
public final class FileInputs implements Inputs {
  private final Problems problems = new Problems();
  private final Map<String, Integer> timesNamed = new HashMap<>();
  private final Map<Path, String> shownAs = new HashMap<>();
  private final Map<Path, String> digests = new LinkedHashMap<>();
  private final Map<Path, FileBytes> kept = new LinkedHashMap<>();
  private final Optional<FromStore> store;
  private boolean keepsBytes;
  private Optional<HarnessFile> keptList = Optional.empty();
  private Optional<String> digestOfList = Optional.empty();
  private boolean missing;

  /**
   * Inputs from files.
   *
   * @param files all that one run names: two of one name are told apart by their paths
   */
  public FileInputs(List<Path> files) {
    this(files, Optional.empty());
  }

  private FileInputs(List<Path> files, Optional<FromStore> store) {
    files.forEach(file -> timesNamed.merge(fileName(file), 1, Integer::sum));
    this.store = store;
  }

  /** Inputs from files, and of a store where a unit is named. */
  public static FileInputs with(List<Path> named, StoreAtHand store) {
    return new FileInputs(named, Optional.of(new FromStore(store)));
  }

  /** Inputs of a store as it will be once something is taken back. */
  static FileInputs with(List<Path> named, StoreAtHand store, List<TakenBack> also) {
    return new FileInputs(named, Optional.of(new FromStore(store, also)));
  }

  /** The same, in which an input is called otherwise. */
  FileInputs naming(Path input, String name) {
    shownAs.put(input, name);
    return this;
  }

  /** The same, which keep what they read: for those who keep it in turn. */
  FileInputs keepingBytes() {
    keepsBytes = true;
    return this;
  }

  /** What was read of an input: a file, or all files of a folder. */
  List<FileBytes> bytes(Path input) {
    Path whole = whole(input);
    return kept.entrySet().stream()
        .filter(one -> one.getKey().equals(whole) || whole.equals(one.getKey().getParent()))
        .map(Map.Entry::getValue)
        .toList();
  }

  /** The list that was read, as it is kept. */
  HarnessFile listAsKept(Path list, Harness harness) {
    return keptList.orElseGet(
        () ->
            new HarnessFile(
                digest(list),
                harness.headerValue("title"),
                harness.headerValue("drawing"),
                harness.headerValue("revision"),
                shownName(list),
                Files.isDirectory(list),
                bytes(list)));
  }

  private static String fileName(Path file) {
    Path name = file.toAbsolutePath().normalize().getFileName();
    return name == null ? file.toString() : name.toString();
  }

  /** A file's name alone, or as typed where two files of one command share it. */
  @Override
  public String shownName(Path file) {
    String other = shownAs.get(file);
    if (other != null) {
      return other;
    }
    if (InputName.isKept(file)) {
      return Text.visible(InputName.typed(file));
    }
    String name = timesNamed.getOrDefault(fileName(file), 1) > 1 ? file.toString() : fileName(file);
    return Text.visibleInOneLine(name);
  }

  @Override
  public Problems problems() {
    return problems;
  }

  @Override
  public boolean isMissing() {
    return missing;
  }

  @Override
  public Optional<Harness> harness(Path file) {
    Optional<InputName.Unit> unit = InputName.unit(file);
    if (unit.isPresent()) {
      return keptList(unit.get(), shownName(file));
    }
    if (fileName(file).toLowerCase(Locale.ROOT).endsWith(".kbl") && Files.isRegularFile(file)) {
      problems.error(
          Place.of(shownName(file)),
          "is a harness file in KBL; import it first: ringout import "
              + shownName(file)
              + " -o unit.xlsx");
      return Optional.empty();
    }
    Optional<Harness> harness =
        open(file, (table, name) -> HarnessReader.read(table, name, problems));
    digestOfList = Optional.of(digest(file));
    return harness;
  }

  private Optional<Harness> keptList(InputName.Unit unit, String shownName) {
    try {
      HarnessFile list = ofStore().list(unit);
      digestOfList = Optional.of(list.digest());
      keptList = Optional.of(list);
      try (TabularFile table =
          TabularFile.kept(list.folder(), list.parts(), list.file(), problems)) {
        return Optional.of(HarnessReader.read(table, list.file(), problems));
      }
    } catch (StoreTrouble e) {
      missing |= FromStore.report(e, shownName, problems);
    } catch (UnusableInput e) {
      report(e);
    } catch (IOException e) {
      problems.error(Place.of(shownName), "can't be closed: " + e.getMessage());
    }
    return Optional.empty();
  }

  private FromStore ofStore() throws StoreTrouble {
    return store.orElseThrow(
        () -> StoreTrouble.of(StoreTrouble.Reason.MISSING, "no store was named"));
  }

  /** The digest of an input that was read: of a file, or of all files of a folder. */
  String digest(Path input) {
    return HarnessFile.digest(Files.isDirectory(input), digestsOf(input));
  }

  private Map<String, String> digestsOf(Path input) {
    Path whole = whole(input);
    Map<String, String> byName = new LinkedHashMap<>();
    digests.forEach(
        (file, digest) -> {
          if (file.equals(whole) || whole.equals(file.getParent())) {
            byName.put(fileName(file), digest);
          }
        });
    return byName;
  }

  @Override
  public Optional<ImportResult> wireList(Path file, Words words, ImportOptions options) {
    if (isHarnessXml(file)) {
      return harnessXml(file, options);
    }
    if (!options.shape().modules().isEmpty() && Files.exists(file)) {
      problems.error(
          Place.of(shownName(file)), "is not a harness file in KBL, so it has no modules");
      return Optional.empty();
    }
    return open(
        file,
        (table, name) ->
            ListImporter.read(table, name, words, options, HarnessReader::noteHeading));
  }

  /** Whether a list is a harness file in KBL: an exchange format of its own, and no table. */
  private static boolean isHarnessXml(Path file) {
    try {
      return KblImporter.is(file);
    } catch (IOException e) {
      // What can't be opened is said by those who open tables.
      return false;
    }
  }

  private Optional<ImportResult> harnessXml(Path file, ImportOptions options) {
    try {
      return Optional.of(KblImporter.read(file, shownName(file), options.shape().modules()));
    } catch (UnusableInput e) {
      report(e);
      return Optional.empty();
    }
  }

  /** What somebody has accepted. */
  @Override
  public List<Waiver> waivers(Path file) {
    return open(file, (table, name) -> WaiversReader.read(table, problems)).orElse(List.of());
  }

  @Override
  public List<Path> siblings() {
    try {
      String list = digestOfList.orElse("");
      return ofStore().siblings(list).stream()
          .map(serial -> InputName.ofUnit(serial, list))
          .toList();
    } catch (StoreTrouble e) {
      missing |= FromStore.report(e, store.map(FromStore::shown).orElse("--store"), problems);
      return List.of();
    }
  }

  @Override
  public List<Path> sheets(Path named) {
    if (InputName.unit(named).isPresent()) {
      return List.of(named);
    }
    try {
      return SheetFolder.sheets(named, shownName(named), problems);
    } catch (IOException e) {
      problems.error(Place.of(shownName(named)), "can't be read: " + e.getMessage());
      return List.of();
    }
  }

  @Override
  public JobTemplate jobTemplate(Path named) {
    Optional<String> station = InputName.station(named);
    if (station.isPresent()) {
      try {
        return ofStore().station(station.get());
      } catch (StoreTrouble e) {
        missing |= FromStore.report(e, shownName(named), problems);
        return JobTemplate.NONE;
      }
    }
    return open(named, (table, name) -> JobTemplateReader.read(table, name, problems))
        .orElse(JobTemplate.NONE);
  }

  @Override
  public ReadingSet readings(List<Path> files, Harness harness) {
    ReadingsReader reader = new ReadingsReader(harness, problems);
    files.forEach(file -> read(reader, file));
    ReadingSet readings = reader.readings();
    LostCase.report(harness, readings, problems);
    return readings;
  }

  /** Readings of a unit for which there is no harness file. */
  @Override
  public ReadingSet readingsOfAnything(List<Path> readingsFiles) {
    ReadingsReader reader = ReadingsReader.forProblemsOnly(problems);
    readingsFiles.forEach(file -> read(reader, file));
    return reader.readings();
  }

  private void read(ReadingsReader reader, Path file) {
    Optional<InputName.Unit> unit = InputName.unit(file);
    if (unit.isPresent()) {
      keptSheets(reader, unit.get(), shownName(file));
      return;
    }
    open(
        file,
        (table, name) -> {
          reader.read(table, name);
          return reader;
        });
  }

  private void keptSheets(ReadingsReader reader, InputName.Unit unit, String shownName) {
    try {
      ofStore().sheets(unit, digestOfList, problems, reader::read);
    } catch (StoreTrouble e) {
      missing |= FromStore.report(e, shownName, problems);
    } catch (UnusableInput e) {
      report(e);
    }
  }

  @Override
  public UnitHistory history(List<Path> sheets) {
    return sheets.stream()
        .flatMap(sheet -> InputName.unit(sheet).stream())
        .findFirst()
        .flatMap(unit -> store.map(one -> one.history(unit)))
        .orElse(UnitHistory.NONE);
  }

  @Override
  public Tables tables(Path folder) throws Tables.Unusable {
    return Tables.with(folder, this::readOnce);
  }

  /** What is judged is what is digested: nothing is read again for its digest. */
  private FileBytes readOnce(Path file) throws IOException {
    FileBytes bytes = FileBytes.read(file);
    String digest = Digest.of(bytes.open());
    String before = digests.putIfAbsent(whole(file), digest);
    if (before != null && !before.equals(digest)) {
      throw new IOException("it was changed while it was read");
    }
    if (keepsBytes) {
      kept.put(whole(file), bytes);
    }
    return bytes;
  }

  private static Path whole(Path file) {
    return file.toAbsolutePath().normalize();
  }

  @Override
  public Sealed sealed(List<Path> inputs, Path folder) {
    Set<Seal.Named> files = new LinkedHashSet<>();
    Set<String> folders = new LinkedHashSet<>();
    Set<KeptInput> kept = new LinkedHashSet<>();
    for (Path input : inputs) {
      Optional<InputName.Unit> unit = InputName.unit(input);
      if (unit.isPresent()) {
        store.map(one -> one.read(unit.get())).ifPresent(kept::addAll);
        continue;
      }
      Path whole = whole(input);
      if (!digests.containsKey(whole)) {
        folders.add(way(folder, whole));
      }
      digests.forEach(
          (file, digest) -> {
            if (file.equals(whole) || whole.equals(file.getParent())) {
              files.add(new Seal.Named(way(folder, file), digest));
            }
          });
    }
    return new Sealed(List.copyOf(files), List.copyOf(folders), List.copyOf(kept));
  }

  private static String way(Path folder, Path file) {
    if (!Objects.equals(folder.getRoot(), file.getRoot())) {
      // No way leads from one drive to another.
      return file.toString();
    }
    String way = folder.relativize(file).toString().replace('\\', '/');
    return way.isEmpty() ? "." : way;
  }

  private interface Use<T> {
    T of(TabularFile table, String shownName) throws UnusableInput;
  }

  /** What is made of a file, or nothing where it can't be used; why is among the problems. */
  private <T> Optional<T> open(Path file, Use<T> use) {
    String name = shownName(file);
    try (TabularFile table = TabularFile.open(file, name, problems, this::readOnce)) {
      return Optional.of(use.of(table, name));
    } catch (UnusableInput e) {
      report(e);
    } catch (IOException e) {
      problems.error(Place.of(name), "can't be closed: " + e.getMessage());
    }
    return Optional.empty();
  }

  private void report(UnusableInput e) {
    missing |= e.reason() == Reason.MISSING;
    problems.error(e.place(), e.text());
  }
}
