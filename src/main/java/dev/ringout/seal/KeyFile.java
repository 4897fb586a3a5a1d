package dev.ringout.seal;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A file with a private key, and what it takes to read it.
 *
 * @param passphrase where it is protected by one
 */
public record KeyFile(Path file, Optional<String> passphrase) {
  /** A file that is not protected. */
  public static KeyFile of(Path file) {
    return new KeyFile(file, Optional.empty());
  }

  /** The file alone: a passphrase is shown nowhere. */
  @Override
  public String toString() {
    return file.toString();
  }
}
