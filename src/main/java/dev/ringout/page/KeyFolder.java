package dev.ringout.page;

import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.seal.Keys;
import dev.ringout.source.OwnerOnly;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.security.KeyPair;
import java.security.PublicKey;
import java.text.Normalizer;
import java.util.EnumSet;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The keys that lie beside the store: a page names one, and no other file of the machine. */
final class KeyFolder {
  private static final Pattern KEY = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._ -]{0,80}");
  private static final String OPEN = ".pub";
  private static final int LONGEST_OF_A_NAME = 40;

  private final Path folder;

  KeyFolder(Path data) {
    this.folder = data.resolve("keys");
  }

  Path folder() {
    return folder;
  }

  /** The file of a name. */
  Path file(String name) throws Refused {
    if (!KEY.matcher(name).matches()) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "key is the name of a key file in " + folder + ".");
    }
    return folder.resolve(name);
  }

  /** The public half of the key of a name. */
  PublicKey open(String name) throws Refused {
    Path file = file(name + OPEN);
    try {
      return Keys.publicKey(file);
    } catch (Keys.Unusable e) {
      throw new Refused(Reason.MISSING, "No key of this name lies on the bench.");
    }
  }

  /** The names of all keys. */
  List<String> names() throws Refused {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> KEY.matcher(name).matches() && !name.endsWith(OPEN))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new Refused(Reason.MISSING, "The keys can't be listed: " + e.getMessage());
    }
  }

  /** A protected key, as its owner takes it along. */
  byte[] bytes(String name) throws Refused {
    try {
      return Files.readAllBytes(file(name));
    } catch (IOException e) {
      throw new Refused(Reason.MISSING, "No key of this name lies on the bench.");
    }
  }

  /**
   * Makes a key that nobody can use without its passphrase.
   *
   * @return its name
   */
  String make(String person, String passphrase) throws Refused {
    KeyPair pair = Keys.create();
    String end = Keys.fingerprint(pair.getPublic()).replace(" ", "").substring(0, 8);
    String name = plain(person) + "-" + end + ".key";
    try {
      String closed = Keys.pem(pair.getPrivate(), passphrase);
      Files.createDirectories(folder, OwnerOnly.folder());
      write(file(name), closed, OwnerOnly.file());
      write(file(name + OPEN), Keys.pem(pair.getPublic()));
      return name;
    } catch (Keys.Unusable e) {
      throw new Refused(Reason.NOT_UNDERSTOOD, String.valueOf(e.getMessage()));
    } catch (IOException e) {
      throw new Refused(Reason.NOT_WRITTEN, "The key can't be kept: " + e.getMessage());
    }
  }

  private static void write(Path file, String text, FileAttribute<?>... rights) throws IOException {
    try (SeekableByteChannel out =
        Files.newByteChannel(
            file, EnumSet.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), rights)) {
      Channels.newOutputStream(out).write(text.getBytes(StandardCharsets.US_ASCII));
    }
  }

  /** Letters that every system has in names of files. */
  private static String plain(String person) {
    String bare =
        Normalizer.normalize(person, Normalizer.Form.NFKD).replaceAll("[^A-Za-z0-9]+", "-");
    String cut = bare.substring(0, Math.min(LONGEST_OF_A_NAME, bare.length()));
    String inner = cut.replaceAll("^-+|-+$", "");
    return inner.isEmpty() ? "key" : inner;
  }
}
