package dev.ringout.seal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** SHA-256 (FIPS 180-4) in hexadecimal. */
public final class Digest {
  private Digest() {}

  /** The digest of a text in UTF-8. */
  public static String of(String text) {
    return hex(sha256().digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** The digest of a file. */
  public static String of(Path file) throws IOException {
    MessageDigest digest = sha256();
    try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
      in.transferTo(OutputStream.nullOutputStream());
    }
    return hex(digest.digest());
  }

  /**
   * The digests of a file, or of every file in a folder.
   *
   * @return file to digest, files of a folder in the order of their names
   */
  public static Map<Path, String> ofFileOrFolder(Path path) throws IOException {
    List<Path> files = List.of(path);
    if (Files.isDirectory(path)) {
      try (Stream<Path> inside = Files.list(path)) {
        files = inside.filter(Files::isRegularFile).sorted().toList();
      }
    }
    Map<Path, String> digests = new LinkedHashMap<>();
    for (Path file : files) {
      digests.put(file, of(file));
    }
    return digests;
  }

  private static String hex(byte[] bytes) {
    return HexFormat.of().formatHex(bytes);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
