package dev.ringout.jobs;

import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.seal.KeyFile;
import dev.ringout.seal.Keys;
import dev.ringout.source.Place;
import java.nio.file.Path;
import java.security.KeyPair;

/** The key that somebody signs with. */
final class SigningKey {
  private SigningKey() {}

  /**
   * Reads it; that others can read it too is among the problems.
   *
   * @throws WrongRequest where the file holds no such key, or the passphrase is not its own
   */
  static KeyPair read(KeyFile key, Inputs inputs) throws WrongRequest {
    Path file = key.file();
    if (Keys.isOpenToOthers(file)) {
      inputs
          .problems()
          .warning(
              Place.of(inputs.shownName(file)),
              "may be read by others than its owner, and who has it can sign in your name");
    }
    try {
      return Keys.pair(key);
    } catch (Keys.Unusable e) {
      throw new WrongRequest(Part.SEAL_KEY, String.valueOf(e.getMessage()));
    }
  }
}
