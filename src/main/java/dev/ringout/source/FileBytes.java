package dev.ringout.source;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * What stood in a file when it was read, once: whatever becomes of the file, everybody who asks for
 * it gets the same bytes, who judges them as well as who seals them.
 */
public final class FileBytes {
  /** No list and no sheet is so long; what is would fill the memory before it is refused. */
  private static final long MOST_BYTES = 256L * 1024 * 1024;

  private final String name;
  private final byte[] bytes;

  private FileBytes(String name, byte[] bytes) {
    this.name = name;
    this.bytes = bytes;
  }

  /** The way in which files are read; it may keep an account of them. */
  public interface Reader {
    /**
     * Reads a file to its end.
     *
     * @throws IOException where it can't be read, or is another one than when it was read before
     */
    FileBytes read(Path file) throws IOException;
  }

  /**
   * Reads a file to its end.
   *
   * @throws IOException where it can't be read, is no file, or is larger than any list
   */
  public static FileBytes read(Path file) throws IOException {
    if (isEndless(file)) {
      throw new IOException("it is a device or a pipe, not a file");
    }
    if (Files.size(file) > MOST_BYTES) {
      throw new IOException("it is larger than any list (256 MiB)");
    }
    return new FileBytes(String.valueOf(file.getFileName()), Files.readAllBytes(file));
  }

  /** Whether something is there that may never end, or wait for ever: a device, a pipe. */
  public static boolean isEndless(Path file) {
    return Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file);
  }

  /** What a file of this name would hold. */
  public static FileBytes of(String name, byte[] bytes) {
    return new FileBytes(name, bytes.clone());
  }

  /** The file's name, without its folder. */
  public String name() {
    return name;
  }

  /** How many bytes there are. */
  public int size() {
    return bytes.length;
  }

  /** The first bytes, at most so many. */
  public byte[] first(int most) {
    return Arrays.copyOf(bytes, Math.min(most, bytes.length));
  }

  /** All of them, from the first. */
  public InputStream open() {
    return new ByteArrayInputStream(bytes);
  }

  /**
   * All of them as a text in UTF-8.
   *
   * @throws CharacterCodingException where they are none
   */
  public String utf8() throws CharacterCodingException {
    return StandardCharsets.UTF_8.newDecoder().decode(buffer()).toString();
  }

  /** All of them, to be looked at and not changed. */
  public ByteBuffer buffer() {
    return ByteBuffer.wrap(bytes).asReadOnlyBuffer();
  }
}
