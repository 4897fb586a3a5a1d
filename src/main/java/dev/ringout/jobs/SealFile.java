package dev.ringout.jobs;

import dev.ringout.record.EmbeddedDigest;
import dev.ringout.seal.Digest;
import dev.ringout.seal.Keys;
import dev.ringout.seal.Seal;
import dev.ringout.source.FileBytes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.PublicKey;
import java.util.List;

/**
 * The seal beside a record, as it was read, once.
 *
 * @param sha256 of all its bytes, the signature among them
 */
record SealFile(Seal.Read read, String sha256) {
  /** No seal is so long: it has a line for each file and each value that failed. */
  private static final long MOST_BYTES = 64L * 1024 * 1024;

  /** The seal's file of a record. */
  static Path of(Path record) {
    return record.resolveSibling(record.getFileName() + ".seal");
  }

  /**
   * Reads a seal.
   *
   * @throws Seal.Unusable where it is none
   */
  static SealFile read(Path file) throws IOException, Seal.Unusable {
    if (Files.size(file) > MOST_BYTES) {
      throw new IOException("it is larger than any seal");
    }
    FileBytes bytes = FileBytes.read(file);
    return new SealFile(Seal.read(bytes.utf8()), Digest.of(bytes.open()));
  }

  /**
   * The seal of a record.
   *
   * @throws Stopped where there is no record or no seal
   */
  static SealFile ofRecord(Path record) throws Stopped {
    Path file = of(record);
    if (!Files.exists(record)) {
      throw Stopped.missing(record + " is missing");
    }
    if (!Files.exists(file)) {
      throw Stopped.notUnderstood(file + " is missing: nothing tells what was sealed");
    }
    try {
      return read(file);
    } catch (IOException e) {
      throw Stopped.notUnderstood(file + " can't be read: " + e.getMessage());
    } catch (Seal.Unusable e) {
      throw Stopped.notUnderstood(file + " is not a seal: " + e.getMessage());
    }
  }

  Seal seal() {
    return read.seal();
  }

  /** Whether anybody signed it, well or not. */
  boolean isSigned() {
    return read.key().isPresent() || read.signature().isPresent();
  }

  /** Whether its signature is good and by one of these keys. */
  boolean isSignedByOneOf(List<PublicKey> keys) {
    return read.isSignedWell()
        && read.key().filter(key -> keys.stream().anyMatch(key::equals)).isPresent();
  }

  /**
   * The seal of a record that another may continue.
   *
   * @param record the record before
   * @param known the keys whose signatures count, that of the record which continues it among them;
   *     where there is none, neither is signed, and both guard against accidents alone
   * @throws Stopped where it may not: it is not as it was sealed, or nobody who is known has signed
   *     it
   */
  static SealFile toContinue(Path record, List<PublicKey> known) throws Stopped {
    SealFile file = ofRecord(record);
    try {
      FileBytes bytes = FileBytes.read(record);
      Seal seal = file.seal();
      boolean asSealed =
          Digest.of(bytes.open()).equals(seal.record().sha256())
              && bytes.name().equals(seal.record().name())
              && (!file.isSigned() || file.read().isSignedWell());
      if (!asSealed || EmbeddedDigest.of(bytes).filter(seal.content()::equals).isEmpty()) {
        throw Stopped.notUnderstood(
            record + " is not as it was sealed, so nothing can continue it; see --verify");
      }
    } catch (IOException e) {
      throw Stopped.notUnderstood(record + " can't be read: " + e.getMessage());
    }
    refuseUnknown(record, file, known);
    return file;
  }

  private static void refuseUnknown(Path record, SealFile file, List<PublicKey> known)
      throws Stopped {
    if (file.isSigned() && !file.isSignedByOneOf(known)) {
      throw Stopped.notUnderstood(
          record
              + " is signed by key "
              + file.read().key().map(Keys::fingerprint).orElse("")
              + ", which is none that is known here; give it with --key where you trust it");
    }
    if (!file.isSigned() && !known.isEmpty()) {
      throw Stopped.notUnderstood(
          record
              + " is not signed, so anyone may have made its history: nothing that is signed, or asks"
              + " for a signature, can continue it; make that record again from its inputs with"
              + " --seal");
    }
  }

  /** Whether this record, or one before it, has a name: no two can lie beside each other. */
  boolean isNamed(String name) {
    return seal().record().name().equalsIgnoreCase(name)
        || seal().earlier().stream().anyMatch(one -> one.name().equalsIgnoreCase(name));
  }
}
