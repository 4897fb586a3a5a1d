package dev.ringout.page;

import dev.ringout.source.OwnerOnly;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Where the lists that a page hands in are kept: each alone in a folder of its own, so that two of
 * one name stay two. Those that were taken stay; those that were not go with the bench that
 * received them.
 */
final class ListFolder {
  private static final Pattern OF_PROCESS = Pattern.compile("([0-9]{1,18})-[0-9a-f-]{36}");
  private static final Pattern TAKEN = Pattern.compile("[0-9a-f-]{36}");
  private static final String UNFINISHED = ".part";

  private final Path received;
  private final Path taken;

  /** The folder of a bench's data. */
  ListFolder(Path data) {
    Path lists = data.toAbsolutePath().normalize().resolve("lists");
    this.received = lists.resolve("received");
    this.taken = lists.resolve("taken");
  }

  /**
   * Keeps what was handed in.
   *
   * @param name a file's name that leads nowhere else
   * @throws IOException where it can't be written
   */
  Path receive(String id, String name, byte[] bytes) throws IOException {
    takeAwayLeftovers();
    make(received);
    Path folder = received(id);
    Files.createDirectory(folder, OwnerOnly.folder());
    return Files.write(folder.resolve(name), bytes);
  }

  private Path received(String id) {
    return received.resolve(ProcessHandle.current().pid() + "-" + id);
  }

  /** Takes away a list that was received and what was made of it. */
  void drop(String id) {
    delete(received(id));
  }

  /**
   * Keeps a harness file for units to be made to: whole, or not at all.
   *
   * @throws IOException where it can't be written
   */
  Path take(Path harness) throws IOException {
    make(taken);
    String id = UUID.randomUUID().toString();
    Path unfinished = taken.resolve(id + UNFINISHED);
    Path folder = taken.resolve(id);
    Files.createDirectory(unfinished, OwnerOnly.folder());
    Files.copy(harness, unfinished.resolve(name(harness)));
    Files.move(unfinished, folder, StandardCopyOption.ATOMIC_MOVE);
    return folder.resolve(name(harness));
  }

  /** The harness files that were taken, by this bench and those before it. */
  List<Path> taken() {
    return inside(taken).stream()
        .filter(folder -> TAKEN.matcher(name(folder)).matches())
        .flatMap(folder -> inside(folder).stream())
        .filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
        .sorted(Comparator.comparing(ListFolder::name))
        .toList();
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }

  private static void make(Path folder) throws IOException {
    Files.createDirectories(folder, OwnerOnly.folder());
  }

  /** What a bench that is no more has left: it knew these lists, and no other does. */
  private void takeAwayLeftovers() {
    for (Path folder : inside(received)) {
      Matcher process = OF_PROCESS.matcher(name(folder));
      if (process.matches() && ProcessHandle.of(Long.parseLong(process.group(1))).isEmpty()) {
        delete(folder);
      }
    }
  }

  private static List<Path> inside(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    } catch (IOException e) {
      // It is not there yet, or somebody else clears up at the same time.
      return List.of();
    }
  }

  /** Deletes a folder; what lies behind a link stays. */
  private static void delete(Path path) {
    try {
      if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
        inside(path).forEach(ListFolder::delete);
      }
      Files.deleteIfExists(path);
    } catch (IOException e) {
      // It stays until the next bench.
      return;
    }
  }
}
