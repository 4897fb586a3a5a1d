package dev.ringout.jobs;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Waiver;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.Words;
import dev.ringout.readings.JobTemplate;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.UnitHistory;
import dev.ringout.seal.KeptInput;
import dev.ringout.seal.Seal;
import dev.ringout.source.Problems;
import dev.ringout.standards.Tables;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Where the inputs of one run of a job come from: files, or a store. What can't be used is among
 * the problems, all of it, and never thrown.
 */
public interface Inputs {

  /** Opens the inputs of one run, given everything that the run names. */
  interface Source extends Function<List<Path>, Inputs> {}

  /** Everything that was odd or wrong in what was read so far. */
  Problems problems();

  /** Whether something that was named is not there at all. */
  boolean isMissing();

  /** How an input is called in messages. */
  String shownName(Path input);

  /** A list of what is wired; absent where it can't be used. */
  Optional<Harness> harness(Path list);

  /** A list to go by: absent too where anything that was read so far has an error. */
  default Optional<Harness> soundHarness(Path list) {
    return harness(list).filter(harness -> !problems().hasErrors());
  }

  /** A wire list as somebody else laid it out; absent where the file can't be used. */
  Optional<ImportResult> wireList(Path list, Words words, ImportOptions options);

  /**
   * The test sheets that a name stands for: itself, or where it is a folder of sheets, each of
   * them. What is left out there is told.
   */
  List<Path> sheets(Path named);

  /** The other units of the list that was read last, where they are kept. */
  List<Path> siblings();

  /** Readings of a unit of this list, the later of two of the same points in force. */
  ReadingSet readings(List<Path> sheets, Harness harness);

  /**
   * What was said of the unit whose test sheets were read last, where it is kept with them; nothing
   * where they are files.
   */
  UnitHistory history(List<Path> sheets);

  /** Readings of a unit for which there is no list, or whose list can't be used. */
  ReadingSet readingsOfAnything(List<Path> sheets);

  /** What a station carries into every test; nothing where it can't be used. */
  JobTemplate jobTemplate(Path named);

  /** What somebody has accepted of the paper. */
  List<Waiver> waivers(Path file);

  /**
   * The published tables with a user's own laid over them.
   *
   * @throws Tables.Unusable where they can't be used
   */
  Tables tables(Path folder) throws Tables.Unusable;

  /**
   * What inputs were made of when they were read, each by its way from a folder: so a folder can be
   * moved as a whole.
   */
  Sealed sealed(List<Path> inputs, Path folder);

  /**
   * What inputs were made of.
   *
   * @param files with the digests of the bytes that were read
   * @param folders of which every table was read
   * @param kept what was read of a store
   */
  record Sealed(List<Seal.Named> files, List<String> folders, List<KeptInput> kept) {
    /** What is given can't be changed afterwards. */
    public Sealed {
      files = List.copyOf(files);
      folders = List.copyOf(folders);
      kept = List.copyOf(kept);
    }
  }
}
