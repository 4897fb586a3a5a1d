package dev.ringout.store;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Something that is said of a person, to be kept.
 *
 * @param at when
 * @param who says it
 * @param body the person, and what the kind needs besides, as {@link Fields}
 */
public record SaidOfPeople(Kind kind, String at, String who, String body) {

  /** What is said. */
  public enum Kind {
    /** There is such a person, with these roles. */
    ADDED(true),
    /** The roles are others from now on. */
    ROLES(true),
    /** The passphrase is another from now on: what is kept of it. */
    PASSPHRASE(true),
    /** The person signs in no more, and why. */
    WITHDRAWN(true),
    /** Wherever the person is in, the person is out. */
    OUT_EVERYWHERE(true),
    /** The person came in. */
    SIGNED_IN(false),
    /** The person went out. */
    SIGNED_OUT(false),
    /** Somebody tried to come in and was turned away. */
    TURNED_AWAY(false),
    /** A key to sign with is the person's: its public half (DER, RFC 8410), and its last day. */
    KEY_ADDED(false),
    /** A key of the person's counts no more: by what it is known, and why. */
    KEY_WITHDRAWN(false);

    private final boolean decides;

    Kind(boolean decides) {
      this.decides = decides;
    }

    /** Whether it decides who may come in. */
    boolean decides() {
      return decides;
    }

    /** Whether it only tells who came and went: nobody may more or less by it. */
    boolean onlyTells() {
      return this == SIGNED_IN || this == SIGNED_OUT || this == TURNED_AWAY;
    }

    /** As it is kept. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** Of a word as it is kept; absent where a later program kept another. */
    public static Optional<Kind> of(String word) {
      return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }
  }
}
