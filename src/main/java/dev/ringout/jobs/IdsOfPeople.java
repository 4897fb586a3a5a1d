package dev.ringout.jobs;

import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.record.NamesByIds;
import dev.ringout.record.TestRecord;
import dev.ringout.source.FileBytes;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A shop's list of ids of its people: a line for each name as it is written, behind its id and a
 * tab.
 */
final class IdsOfPeople {
  private static final long MOST_BYTES = 1024L * 1024;

  private IdsOfPeople() {}

  /**
   * Reads it.
   *
   * @throws WrongRequest where it is no such list, or has no id for somebody of the record:
   *     nobody's name is to leave the shop because his line was forgotten
   */
  static NamesByIds read(Path file, TestRecord record) throws WrongRequest {
    NamesByIds names = new NamesByIds(lines(file));
    List<String> missing = names.missing(record);
    if (!missing.isEmpty()) {
      throw new WrongRequest(
          Part.IDS,
          file + " has no id for " + String.join("; ", missing) + ": add a line for each");
    }
    return names;
  }

  private static Map<String, String> lines(Path file) throws WrongRequest {
    try {
      FileBytes bytes = FileBytes.read(file);
      if (bytes.size() > MOST_BYTES) {
        throw new WrongRequest(Part.IDS, file + " is larger than any list of people");
      }
      Map<String, String> ids = new LinkedHashMap<>();
      for (String line : bytes.utf8().lines().toList()) {
        String[] parts = line.split("\t", -1);
        if (line.isBlank()) {
          continue;
        }
        if (parts.length != 2 || parts[0].isBlank() || parts[1].isBlank()) {
          throw new WrongRequest(
              Part.IDS, file + ": a line is an id, a tab and a name; this is none: " + line);
        }
        if (ids.put(parts[1].strip(), parts[0].strip()) != null) {
          throw new WrongRequest(Part.IDS, file + " has two lines for " + parts[1].strip());
        }
      }
      return ids;
    } catch (IOException e) {
      throw new WrongRequest(Part.IDS, file + " can't be read: " + e.getMessage());
    }
  }
}
