package dev.ringout.store;

import dev.ringout.seal.Digest;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/** A picture of a defect, as it was taken. */
public final class Photo {
  private static final int FIELDS = 5;

  private final String type;
  private final String text;
  private final String step;
  private final byte[] bytes;

  /**
   * A picture.
   *
   * @param type of its bytes, such as {@code image/jpeg}
   * @param text what it shows, in words; may be empty
   * @param step the points that were asked for then; may be empty
   */
  public Photo(String type, String text, String step, byte[] bytes) {
    this.type = type;
    this.text = text;
    this.step = step;
    this.bytes = bytes.clone();
  }

  /**
   * What is told of a picture without its bytes.
   *
   * @param type of its bytes, such as {@code image/jpeg}
   * @param text what it shows, in words; may be empty
   * @param step the points that were asked for then; may be empty
   * @param digest of its bytes
   */
  public record About(String type, String text, String step, String digest) {
    /** As the body of an entry that has lost the bytes. */
    String body() {
      return Fields.line(type, text, step, digest, "");
    }

    /** Of an entry's body, with or without the bytes; absent where it is none. */
    public static Optional<About> of(String body) {
      List<String> fields = Fields.of(body).get(0);
      return fields.size() == FIELDS
          ? Optional.of(new About(fields.get(0), fields.get(1), fields.get(2), fields.get(3)))
          : Optional.empty();
    }
  }

  /** Of what kind its bytes are. */
  public String type() {
    return type;
  }

  /** What it shows, in words; may be empty. */
  public String text() {
    return text;
  }

  /** The points that were asked for then; may be empty. */
  public String step() {
    return step;
  }

  /** The picture itself. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** The digest of its bytes. */
  public String digest() {
    return Digest.of(bytes);
  }

  /** As the body of an entry. */
  public String body() {
    return Fields.line(type, text, step, digest(), Base64.getEncoder().encodeToString(bytes));
  }

  /** Of an entry's body; absent where it is none. */
  public static Optional<Photo> of(String body) {
    List<String> fields = Fields.of(body).get(0);
    if (fields.size() != FIELDS) {
      return Optional.empty();
    }
    try {
      byte[] bytes = Base64.getDecoder().decode(fields.get(4));
      return Optional.of(new Photo(fields.get(0), fields.get(1), fields.get(2), bytes))
          .filter(photo -> photo.digest().equals(fields.get(3)));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
