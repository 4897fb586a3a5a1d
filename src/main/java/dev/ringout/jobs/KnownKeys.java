package dev.ringout.jobs;

import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.seal.KeyList;
import dev.ringout.seal.KeyList.Listed;
import dev.ringout.seal.Keys;
import dev.ringout.seal.Seal;
import dev.ringout.seal.SealFinding;
import dev.ringout.seal.SealFinding.Kind;
import dev.ringout.source.FileBytes;
import java.io.IOException;
import java.nio.file.Path;
import java.security.PublicKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whose signatures count.
 *
 * @param given keys that are trusted at any time
 * @param list a shop's own; what it says of a key goes before that the key was given
 */
record KnownKeys(List<PublicKey> given, Optional<KeyList> list) {
  private static final long MOST_BYTES = 16L * 1024 * 1024;

  KnownKeys {
    given = List.copyOf(given);
  }

  /**
   * Reads them.
   *
   * @throws WrongRequest where one is no key, or the list is none
   */
  static KnownKeys read(List<Path> keys, Optional<Path> list) throws WrongRequest {
    List<PublicKey> given = new ArrayList<>();
    for (Path file : keys) {
      try {
        given.add(Keys.publicKey(file));
      } catch (Keys.Unusable e) {
        throw new WrongRequest(Part.TRUSTED_KEY, String.valueOf(e.getMessage()));
      }
    }
    return new KnownKeys(given, list.isEmpty() ? Optional.empty() : Optional.of(list(list.get())));
  }

  private static KeyList list(Path file) throws WrongRequest {
    try {
      FileBytes bytes = FileBytes.read(file);
      if (bytes.size() > MOST_BYTES) {
        throw new WrongRequest(Part.KEY_LIST, file + " is larger than any list of keys");
      }
      return KeyList.read(bytes.utf8());
    } catch (IOException e) {
      throw new WrongRequest(Part.KEY_LIST, file + " can't be read: " + e.getMessage());
    } catch (KeyList.Unusable e) {
      throw new WrongRequest(Part.KEY_LIST, file + " is no list of keys: " + e.getMessage());
    }
  }

  /** Whether there is nothing to hold a signature against. */
  boolean isEmpty() {
    return given.isEmpty() && list.isEmpty();
  }

  boolean isKnown(PublicKey key) {
    return given.contains(key) || listed(key).isPresent();
  }

  private Optional<Listed> listed(PublicKey key) {
    return list.flatMap(one -> one.of(key));
  }

  /** The same, and one more that is trusted at any time. */
  KnownKeys and(Optional<PublicKey> key) {
    List<PublicKey> more = new ArrayList<>(given);
    key.ifPresent(more::add);
    return new KnownKeys(more, list);
  }

  /** What the list says of the key of a signature that holds; absent where there is no list. */
  Optional<SealFinding> said(Seal.Read read) {
    if (list.isEmpty() || read.key().isEmpty()) {
      return Optional.empty();
    }
    PublicKey key = read.key().get();
    Optional<Listed> listed = listed(key);
    if (listed.isEmpty() && given.contains(key)) {
      return Optional.empty();
    }
    Kind kind =
        listed
            .map(
                one ->
                    switch (one.at(read.at())) {
                      case GOOD -> Kind.KEY_LISTED;
                      case GOOD_AT_ITS_TIME -> Kind.KEY_WITHDRAWN_SINCE;
                      case WITHDRAWN -> Kind.KEY_WITHDRAWN_BEFORE;
                      case EARLY -> Kind.KEY_NOT_YET;
                      case LATE -> Kind.KEY_NO_LONGER;
                      case NO_TIME -> Kind.KEY_AT_NO_TIME;
                    })
            .orElse(Kind.KEY_NOT_LISTED);
    String facts = listed.map(one -> facts(one, read)).orElse("");
    return Optional.of(new SealFinding(kind, Keys.fingerprint(key), facts));
  }

  /** Of whom, from when to when, and when it was signed: all of it as it was written down. */
  private static String facts(Listed key, Seal.Read read) {
    StringBuilder facts = new StringBuilder(key.person());
    facts.append(", from ").append(key.from());
    key.until().ifPresent(day -> facts.append(" until ").append(day));
    read.at().ifPresent(at -> facts.append("; signed ").append(at).append(" by the signer's word"));
    key.withdrawn()
        .ifPresent(
            at -> facts.append("; withdrawn ").append(at).append(" (").append(key.why() + ")"));
    return facts.toString();
  }
}
