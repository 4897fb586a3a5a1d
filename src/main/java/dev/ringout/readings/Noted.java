package dev.ringout.readings;

import dev.ringout.source.Place;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Something that was said of a unit beside what was read on it. It changes no verdict. */
public sealed interface Noted {

  /** When, as written; empty where nothing says so. */
  String at();

  /** By whom; empty where nothing says so. */
  String who();

  /** What is made of it, by its kind: a use that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** Somebody's words. */
  record Words(String at, String who, String text) implements Noted {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.words(this);
    }
  }

  /**
   * A reading that was none.
   *
   * @param cell where it stands
   */
  record ReadingTakenBack(String at, String who, Place cell, String why) implements Noted {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.takenBack(this);
    }
  }

  /**
   * A photograph of a defect.
   *
   * @param text what it shows, in words; may be empty
   * @param points that were asked for then; may be empty
   * @param type of its bytes, as whoever took it says: {@code image/jpeg}
   * @param sha256 of its bytes
   */
  record Photograph(
      String at,
      String who,
      String text,
      String points,
      String type,
      String sha256,
      PhotographBytes bytes)
      implements Noted {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.photograph(this);
    }
  }

  /** The bytes of a photograph, which are read when they are asked for: they are large. */
  interface PhotographBytes {
    /** Just those of the digest; absent where they are not to be had. */
    Optional<byte[]> read();
  }

  /**
   * An end of a wire was made, or looked at.
   *
   * @param wire its name
   * @param item where the end is
   * @param pin where the end is
   */
  record EndTicked(String at, String who, EndState state, String wire, String item, String pin)
      implements Noted {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.endTicked(this);
    }
  }

  /** What became of an end of a wire. */
  enum EndState {
    /** It is crimped and home. */
    MADE,
    /** A second person looked at it. */
    CHECKED,
    /** It was taken apart again, or ticked by mistake. */
    UNDONE;

    /** Of a word; absent where it is none. */
    public static Optional<EndState> of(String word) {
      return Arrays.stream(values())
          .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(word))
          .findFirst();
    }
  }

  /**
   * A signature under all that was read before. It holds: of a unit with one that does not nothing
   * is said at all.
   *
   * @param role as what
   * @param fingerprint by which the key is known
   * @param doubt why it does not count in its shop; empty where it does
   */
  record Signed(String at, String who, String role, String fingerprint, String doubt)
      implements Noted {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.signed(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link Words}. */
    T words(Words noted);

    /** See {@link ReadingTakenBack}. */
    T takenBack(ReadingTakenBack noted);

    /** See {@link Photograph}. */
    T photograph(Photograph noted);

    /** See {@link EndTicked}. */
    T endTicked(EndTicked noted);

    /** See {@link Signed}. */
    T signed(Signed noted);
  }
}
