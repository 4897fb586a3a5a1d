package dev.ringout.store;

import dev.ringout.seal.Digest;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * A picture of a defect, as it was taken.
 *
 * @param type of its bytes, such as {@code image/jpeg}
 * @param text what it shows, in words; may be empty
 * @param step the points that were asked for then; may be empty
 */
public record Photo(String type, String text, String step, byte[] bytes) {
  /** What is given can't be changed afterwards. */
  public Photo {
    bytes = bytes.clone();
  }

  @Override
  public byte[] bytes() {
    return bytes.clone();
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
      return fields.size() == 5
          ? Optional.of(new About(fields.get(0), fields.get(1), fields.get(2), fields.get(3)))
          : Optional.empty();
    }
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
    if (fields.size() != 5) {
      return Optional.empty();
    }
    try {
      Photo photo =
          new Photo(
              fields.get(0),
              fields.get(1),
              fields.get(2),
              Base64.getDecoder().decode(fields.get(4)));
      return Optional.of(photo).filter(one -> one.digest().equals(fields.get(3)));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
