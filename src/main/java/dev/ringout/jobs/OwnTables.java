package dev.ringout.jobs;

import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.standards.Tables;
import java.nio.file.Path;
import java.util.Optional;

/** The published tables, with the user's laid over them where there are any. */
final class OwnTables {
  private OwnTables() {}

  static Tables over(Optional<Path> folder) throws WrongRequest {
    return over(folder, Tables::with);
  }

  /** The same as inputs of a run, which keep account of what was read. */
  static Tables over(Optional<Path> folder, Inputs inputs) throws WrongRequest {
    return over(folder, inputs::tables);
  }

  private interface Reader {
    Tables read(Path folder) throws Tables.Unusable;
  }

  private static Tables over(Optional<Path> folder, Reader reader) throws WrongRequest {
    if (folder.isEmpty()) {
      return Tables.published();
    }
    try {
      return reader.read(folder.get());
    } catch (Tables.Unusable e) {
      throw new WrongRequest(Part.TABLES, folder.get() + ": " + e.getMessage());
    }
  }
}
