package dev.ringout.store;

import dev.ringout.seal.Digest;
import dev.ringout.source.FileBytes;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A list of what is wired, whole: as it was when a unit was tested by it.
 *
 * @param digest of its bytes; of a folder that of its files' digests and names
 * @param file its name
 * @param folder whether it is a folder of tables
 * @param parts the file itself, or the folder's
 */
public record HarnessFile(
    String digest,
    String title,
    String drawing,
    String revision,
    String file,
    boolean folder,
    List<FileBytes> parts) {
  /** What is given can't be changed afterwards. */
  public HarnessFile {
    parts = List.copyOf(parts);
  }

  /**
   * What no digest of bytes holds: what the list is called, and its file. Each test says it, for
   * the same bytes may come under several names.
   */
  public Entry.Draft names() {
    return new Entry.Draft(EntryKind.LIST, "", "", body());
  }

  /** Whether a test says these names of it. */
  boolean isNamedIn(Entry entry) {
    return entry.is(EntryKind.LIST) && entry.body().equals(body());
  }

  private String body() {
    // The names of a folder's files are in its digest.
    return Fields.line(file, folder ? "" : parts.get(0).name());
  }

  /** Whether its bytes are those that it was kept with. */
  public boolean isAsKept() {
    return digest(folder, parts).equals(digest);
  }

  /** The digest of a file, or of the files of a folder. */
  public static String digest(boolean folder, List<FileBytes> parts) {
    Map<String, String> digests = new LinkedHashMap<>();
    for (FileBytes part : parts) {
      digests.put(part.name(), Digest.of(part.first(part.size())));
    }
    return digest(folder, digests);
  }

  /**
   * The digest of a file, or of the files of a folder.
   *
   * @param digests of the files, by their names
   */
  public static String digest(boolean folder, Map<String, String> digests) {
    StringBuilder lines = new StringBuilder();
    for (Map.Entry<String, String> part : digests.entrySet()) {
      if (!folder) {
        return part.getValue();
      }
      lines.append(part.getValue()).append("  ").append(part.getKey()).append('\n');
    }
    return Digest.of(lines.toString());
  }
}
