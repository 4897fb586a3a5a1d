package dev.ringout.sheet;

import dev.ringout.source.FileBytes;
import java.io.BufferedInputStream;
import java.io.FileNotFoundException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import java.util.zip.ZipException;

/**
 * The parts of a zip file that was read, by its central directory (APPNOTE.TXT, PKWARE, 4.3): what
 * stands between the parts, or in a part that the directory does not name, is not there. Read here,
 * since Java's own reader opens a file again by its name.
 */
final class ZipParts {
  private static final int END = 0x06054b50;
  private static final int END_LENGTH = 22;
  private static final int LONGEST_COMMENT = 0xffff;
  private static final int END_64 = 0x06064b50;
  private static final int LOCATOR_64 = 0x07064b50;
  private static final int LOCATOR_64_LENGTH = 20;
  private static final int ENTRY = 0x02014b50;
  private static final int ENTRY_LENGTH = 46;
  private static final int LOCAL = 0x04034b50;
  private static final int LOCAL_LENGTH = 30;
  private static final int EXTRA_64 = 1;
  private static final long MAX_32 = 0xffffffffL;
  private static final int STORED = 0;
  private static final int DEFLATED = 8;
  private static final int ENCRYPTED = 1;

  /** A part of less than this may be packed as tightly as it likes. */
  private static final long GRACE_BYTES = 100 * 1024;

  private static final long MOST_UNPACKED_OF_A_PACKED_BYTE = 100;

  private final ByteBuffer bytes;
  private final Map<String, Part> parts = new LinkedHashMap<>();

  private record Part(
      String name, int method, boolean encrypted, long checksum, long size, long offset) {}

  /** A part unpacks to far more than a wire list would. */
  static final class Bomb extends IOException {
    private static final long serialVersionUID = 1L;

    Bomb(String part) {
      super(part + " unpacks to far too much");
    }
  }

  /**
   * The parts of a file.
   *
   * @throws ZipException where it is no zip file, or a damaged one
   */
  ZipParts(FileBytes file) throws ZipException {
    bytes = file.buffer().order(ByteOrder.LITTLE_ENDIAN);
    try {
      readDirectory();
    } catch (IndexOutOfBoundsException | IllegalArgumentException | ArithmeticException e) {
      throw new ZipException("its directory is damaged");
    }
  }

  /** Names of parts are one whatever their case. */
  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** The names of all, in the order of the directory. */
  List<String> names() {
    return parts.values().stream().map(Part::name).toList();
  }

  boolean has(String name) {
    return parts.containsKey(key(name));
  }

  private void readDirectory() throws ZipException {
    int end = end();
    long size = unsigned(end + 12);
    long count = bytes.getShort(end + 10) & 0xffff;
    long offset = unsigned(end + 16);
    long behind = end;
    int locator = end - LOCATOR_64_LENGTH;
    if (locator >= 0 && bytes.getInt(locator) == LOCATOR_64) {
      int end64 = Math.toIntExact(bytes.getLong(locator + 8));
      if (bytes.getInt(end64) == END_64) {
        count = bytes.getLong(end64 + 32);
        size = bytes.getLong(end64 + 40);
        offset = bytes.getLong(end64 + 48);
        behind = end64;
      }
    }
    // Something may stand before a zip file; then it begins later than it says.
    int at = position(behind - size);
    int shift = position(at - offset);
    for (long i = 0; i < count; i++) {
      if (bytes.getInt(at) != ENTRY) {
        throw new ZipException("its directory is damaged");
      }
      Part part = part(at, shift);
      if (parts.put(key(part.name()), part) != null) {
        throw new ZipException("it holds " + part.name() + " twice");
      }
      at += ENTRY_LENGTH + length(at + 28) + length(at + 30) + length(at + 32);
    }
  }

  /** Where the record at the file's end begins: its comment ends where the file does. */
  private int end() throws ZipException {
    int last = bytes.limit() - END_LENGTH;
    for (int at = last; at >= Math.max(0, last - LONGEST_COMMENT); at--) {
      if (bytes.getInt(at) == END && length(at + 20) == last - at) {
        return at;
      }
    }
    throw new ZipException("it is not a whole zip file");
  }

  private int length(int at) {
    return bytes.getShort(at) & 0xffff;
  }

  private long unsigned(int at) {
    return bytes.getInt(at) & MAX_32;
  }

  private int position(long at) throws ZipException {
    if (at < 0 || at > bytes.limit()) {
      throw new ZipException("its directory is damaged");
    }
    return (int) at;
  }

  private Part part(int at, int shift) throws ZipException {
    byte[] name = new byte[length(at + 28)];
    bytes.get(at + ENTRY_LENGTH, name);
    long unpacked = unsigned(at + 24);
    long size = unsigned(at + 20);
    long offset = unsigned(at + 42);
    Optional<ByteBuffer> large = extra64(at);
    if (large.isPresent()) {
      if (unpacked == MAX_32) {
        large.get().getLong();
      }
      size = size == MAX_32 ? large.get().getLong() : size;
      offset = offset == MAX_32 ? large.get().getLong() : offset;
    }
    return new Part(
        new String(name, StandardCharsets.UTF_8),
        length(at + 10),
        (length(at + 8) & ENCRYPTED) != 0,
        unsigned(at + 16),
        size,
        position(offset + shift));
  }

  /** Sizes that do not fit 32 bits. */
  private Optional<ByteBuffer> extra64(int at) {
    int from = at + ENTRY_LENGTH + length(at + 28);
    int to = from + length(at + 30);
    while (from + 4 <= to) {
      int end = from + 4 + length(from + 2);
      if (length(from) == EXTRA_64 && end <= to) {
        return Optional.of(bytes.slice(from + 4, end - from - 4).order(ByteOrder.LITTLE_ENDIAN));
      }
      from = end;
    }
    return Optional.empty();
  }

  /** A part of a file that this program has made itself: its tables are as long as they are. */
  InputStream openOwn(String name) throws IOException {
    return open(name).unguarded();
  }

  /**
   * A part as it was packed.
   *
   * @throws IOException where there is none, or it can't be unpacked; while it is read too
   */
  Unpacked open(String name) throws IOException {
    Part part = parts.get(key(name));
    if (part == null) {
      throw new FileNotFoundException("its part " + name + " is not there");
    }
    if (part.encrypted() || (part.method() != STORED && part.method() != DEFLATED)) {
      throw new ZipException("its part " + name + " is packed in a way that is not read");
    }
    try {
      int at = (int) part.offset();
      if (bytes.getInt(at) != LOCAL) {
        throw new ZipException("its part " + name + " is damaged");
      }
      int from = at + LOCAL_LENGTH + length(at + 26) + length(at + 28);
      InputStream packed = new OfBuffer(bytes.slice(from, Math.toIntExact(part.size())));
      return new Unpacked(part.method() == STORED ? packed : new Inflated(packed), part);
    } catch (IndexOutOfBoundsException | ArithmeticException e) {
      throw new ZipException("its part " + name + " is damaged");
    }
  }

  private static final class OfBuffer extends InputStream {
    private final ByteBuffer from;

    OfBuffer(ByteBuffer from) {
      this.from = from;
    }

    @Override
    public int read() {
      return from.hasRemaining() ? from.get() & 0xff : -1;
    }

    @Override
    public int read(byte[] into, int offset, int length) {
      if (!from.hasRemaining()) {
        return length == 0 ? 0 : -1;
      }
      int read = Math.min(length, from.remaining());
      from.get(into, offset, read);
      return read;
    }
  }

  private static final class Inflated extends InflaterInputStream {
    private static final int BUFFER = 8192;

    Inflated(InputStream packed) {
      super(packed, new Inflater(true), BUFFER);
    }

    @Override
    public void close() throws IOException {
      super.close();
      inf.end();
    }
  }

  /**
   * A part as it is unpacked, with an eye on how much that is, and at its end on whether it is what
   * was packed: one wrong bit may be another digit.
   */
  static final class Unpacked extends FilterInputStream {
    private final Part part;
    private final CRC32 checksum = new CRC32();
    private long count;

    private Unpacked(InputStream in, Part part) {
      super(new BufferedInputStream(in));
      this.part = part;
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
      int read = super.read(into, offset, length);
      if (read > 0) {
        count += read;
        checksum.update(into, offset, read);
      }
      if (isTooMuch()) {
        throw new Bomb(part.name());
      }
      if (read < 0 && checksum.getValue() != part.checksum()) {
        throw new ZipException("its part " + part.name() + " is not what was packed");
      }
      return read;
    }

    private InputStream unguarded() {
      return in;
    }

    /** The same for readers that close what they have read; its end is still to be seen. */
    InputStream kept() {
      return new FilterInputStream(this) {
        @Override
        public void close() {}
      };
    }

    /** Reads what is left, so that its end is seen. */
    void finish() throws IOException {
      transferTo(OutputStream.nullOutputStream());
    }

    boolean isTooMuch() {
      return count > GRACE_BYTES
          && count > MOST_UNPACKED_OF_A_PACKED_BYTE * Math.max(1, part.size());
    }
  }
}
