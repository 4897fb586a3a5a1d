package dev.ringout.seal;

import java.security.PublicKey;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * A shop's list of keys: whose each is, and from when to when a signature by it counts.
 *
 * <p>As text: the first line {@value #FORMAT}, then a line for each key, its parts parted by tabs:
 * {@code key}, person, fingerprint, from, until, withdrawn, why.
 */
public record KeyList(List<Listed> keys) {
  private static final String FORMAT = "ringout-keys/1";
  private static final int PARTS = 7;

  /** What is given can't be changed afterwards. */
  public KeyList {
    keys = List.copyOf(keys);
  }

  /**
   * A key.
   *
   * @param person whose it is
   * @param fingerprint as {@link Keys#fingerprint}
   * @param from from when on a signature counts
   * @param until the last day, in UTC; absent where there is none
   * @param withdrawn from when on a signature counts no more; absent where it was not withdrawn
   * @param why it was; empty where it was not
   */
  public record Listed(
      String person,
      String fingerprint,
      Instant from,
      Optional<LocalDate> until,
      Optional<Instant> withdrawn,
      String why) {

    /** How a signature of a moment stands, by what the signature itself says of the moment. */
    public Standing at(Optional<Instant> signed) {
      if (signed.isEmpty()) {
        return until.isPresent() || withdrawn.isPresent() ? Standing.NO_TIME : Standing.GOOD;
      }
      if (withdrawn.filter(from -> !signed.get().isBefore(from)).isPresent()) {
        return Standing.WITHDRAWN;
      }
      if (signed.get().isBefore(from)) {
        return Standing.EARLY;
      }
      LocalDate day = signed.get().atZone(ZoneOffset.UTC).toLocalDate();
      if (until.filter(day::isAfter).isPresent()) {
        return Standing.LATE;
      }
      return withdrawn.isPresent() ? Standing.GOOD_AT_ITS_TIME : Standing.GOOD;
    }
  }

  /** How a signature stands to the time of its key. */
  public enum Standing {
    GOOD,
    /** The key was withdrawn, after that. */
    GOOD_AT_ITS_TIME,
    /** The key was withdrawn before. */
    WITHDRAWN,
    /** Before the key was anybody's. */
    EARLY,
    /** After the last day of the key. */
    LATE,
    /** The signature does not say when it was made, and the key does not count for ever. */
    NO_TIME
  }

  /** A text that is no such list. */
  public static final class Unusable extends Exception {
    private static final long serialVersionUID = 1L;

    Unusable(String text) {
      super(text);
    }
  }

  /** What is said of a key; absent where the list does not have it. */
  public Optional<Listed> of(PublicKey key) {
    String fingerprint = Keys.fingerprint(key);
    return keys.stream().filter(one -> one.fingerprint().equals(fingerprint)).findFirst();
  }

  /** As it is written. */
  public String text() {
    StringBuilder text = new StringBuilder(FORMAT + "\n");
    for (Listed key : keys) {
      text.append(
              String.join(
                  "\t",
                  "key",
                  plain(key.person()),
                  key.fingerprint(),
                  key.from().toString(),
                  key.until().map(LocalDate::toString).orElse(""),
                  key.withdrawn().map(Instant::toString).orElse(""),
                  plain(key.why())))
          .append('\n');
    }
    return text.toString();
  }

  private static String plain(String text) {
    return text.replaceAll("[\\p{Cntrl}]+", " ");
  }

  /**
   * Reads a list.
   *
   * @throws Unusable where it is none: half a list would let a withdrawn key pass
   */
  public static KeyList read(String text) throws Unusable {
    List<String> lines = text.replace("\r\n", "\n").lines().toList();
    if (lines.isEmpty() || !lines.get(0).equals(FORMAT)) {
      throw new Unusable("it does not begin with " + FORMAT);
    }
    if (!text.endsWith("\n")) {
      throw new Unusable("it is cut off in its last line");
    }
    List<Listed> keys = new ArrayList<>();
    Set<String> fingerprints = new HashSet<>();
    for (int i = 1; i < lines.size(); i++) {
      Listed key = key(i + 1, lines.get(i).split("\t", -1));
      if (!fingerprints.add(key.fingerprint())) {
        throw new Unusable("line " + (i + 1) + " names a key a second time");
      }
      keys.add(key);
    }
    return new KeyList(keys);
  }

  private static Listed key(int number, String[] parts) throws Unusable {
    try {
      if (parts.length == PARTS
          && parts[0].equals("key")
          && parts[2].matches("[0-9a-f]{4}( [0-9a-f]{4}){7}")) {
        return new Listed(
            parts[1],
            parts[2],
            Instant.parse(parts[3]),
            given(parts[4], LocalDate::parse),
            given(parts[5], Instant::parse),
            parts[6]);
      }
    } catch (DateTimeParseException e) {
      // Told below, with the line.
    }
    throw new Unusable("line " + number + " is none that a list of keys has");
  }

  private static <T> Optional<T> given(String text, Function<String, T> parsed) {
    return Optional.of(text).filter(one -> !one.isEmpty()).map(parsed);
  }
}
