package dev.ringout.jobs;

import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.standards.Tables;
import java.nio.file.Path;
import java.util.Optional;

/** The published tables, with the user's laid over them where there are any. */
final class OwnTables {
  private OwnTables() {}

  static Tables over(Optional<Path> folder) throws WrongRequest {
    if (folder.isEmpty()) {
      return Tables.published();
    }
    try {
      return Tables.with(folder.get());
    } catch (Tables.Unusable e) {
      throw new WrongRequest(Part.TABLES, folder.get() + ": " + e.getMessage());
    }
  }
}
