package dev.ringout.seal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) in hexadecimal. */
public final class Digest {
  private Digest() {}

  /** The digest of a text in UTF-8. */
  public static String of(String text) {
    return hex(sha256().digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** The digest of bytes. */
  public static String of(byte[] bytes) {
    return hex(sha256().digest(bytes));
  }

  /** The digest of a file. */
  public static String of(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return of(in);
    }
  }

  /** The digest of what was read. */
  public static String of(InputStream read) throws IOException {
    MessageDigest digest = sha256();
    try (InputStream in = new DigestInputStream(read, digest)) {
      in.transferTo(OutputStream.nullOutputStream());
    }
    return hex(digest.digest());
  }

  /** The digest of what goes by on its way into another stream, for as long as it is written to. */
  public static final class OfWritten extends DigestOutputStream {
    /** What goes into a stream. */
    public OfWritten(OutputStream out) {
      super(out, Digest.sha256());
    }

    /** The digest of all that was written. */
    public String sha256() {
      return hex(digest.digest());
    }
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
