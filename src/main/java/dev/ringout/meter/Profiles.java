package dev.ringout.meter;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The profiles of this program, and a user's own beside them. */
public final class Profiles {
  private static final String ENDING = ".profile";

  /** The names of the files, in the order in which they are told. */
  private static final List<String> OURS =
      List.of(
          "scpi",
          "scpi-fast",
          "scpi-low-ohms",
          "scpi-over-at-1e9",
          "scpi-plain",
          "scpi-insulation",
          "stream-2400-8n1",
          "stream-9600-8n1",
          "stream-115200-8n1",
          "stream-2400-7o1",
          "stream-19200-7o1",
          "key-9600-8n1",
          "poll-2400-7o1",
          "insulation-9600-8n1");

  private final Optional<Path> own;

  /**
   * Profiles.
   *
   * @param own the folder of the user's own, which may not be there; an own one of the same name
   *     goes before
   */
  public Profiles(Optional<Path> own) {
    this.own = own;
  }

  /** The profile for an address of which nothing is said. */
  public static String usual(MeterAddress address) {
    return address.match(USUAL);
  }

  /** The names of all, the user's own first. */
  public List<String> names() throws MeterTrouble {
    List<String> names = new ArrayList<>(ownNames());
    OURS.stream().filter(name -> !names.contains(name)).forEach(names::add);
    return List.copyOf(names);
  }

  /** Whether a name is of the user's own. */
  public boolean isOwn(String name) throws MeterTrouble {
    return ownNames().contains(name);
  }

  private List<String> ownNames() throws MeterTrouble {
    if (own.isEmpty() || !Files.isDirectory(own.get())) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(own.get())) {
      return files
          .map(file -> "" + file.getFileName())
          .filter(name -> name.endsWith(ENDING))
          .map(name -> name.substring(0, name.length() - ENDING.length()))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw unreadable("" + own.get());
    }
  }

  /**
   * The profile of a name, or in a file.
   *
   * @throws MeterTrouble where there is none, or it can't be read
   */
  public MeterProfile find(String name) throws MeterTrouble {
    Optional<Path> file = file(name);
    if (file.isPresent()) {
      String base = "" + file.get().getFileName();
      return read(base.substring(0, base.length() - ENDING.length()), file.get());
    }
    if (isOwn(name)) {
      return read(name, own.orElseThrow().resolve(name + ENDING));
    }
    if (OURS.contains(name)) {
      return ours(name);
    }
    throw new MeterTrouble(
        new Failure.NoProfile(name, "there are " + String.join(", ", names())), List.of());
  }

  private static Optional<Path> file(String name) {
    try {
      return Optional.of(Path.of(name))
          .filter(file -> name.endsWith(ENDING) && Files.isRegularFile(file));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private static MeterProfile read(String name, Path file) throws MeterTrouble {
    try {
      return MeterProfileText.read(name, Files.readString(file));
    } catch (IOException e) {
      throw unreadable("" + file);
    }
  }

  private static MeterProfile ours(String name) throws MeterTrouble {
    try (InputStream in = Profiles.class.getResourceAsStream("profiles/" + name + ENDING)) {
      if (in == null) {
        throw unreadable(name);
      }
      return MeterProfileText.read(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw unreadable(name);
    }
  }

  private static MeterTrouble unreadable(String name) {
    return new MeterTrouble(new Failure.NoProfile(name, "it can't be read"), List.of());
  }

  private static final MeterAddress.Cases<String> USUAL =
      new MeterAddress.Cases<>() {
        @Override
        public String socket(MeterAddress.Socket address) {
          return "scpi";
        }

        @Override
        public String hislip(MeterAddress.Hislip address) {
          return "scpi";
        }

        @Override
        public String serial(MeterAddress.Serial address) {
          return "stream-9600-8n1";
        }

        @Override
        public String typed(MeterAddress.Typed address) {
          return "";
        }

        @Override
        public String practice(MeterAddress.Practice address) {
          return "scpi";
        }
      };
}
