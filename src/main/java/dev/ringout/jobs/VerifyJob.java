package dev.ringout.jobs;

import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.record.EmbeddedDigest;
import dev.ringout.seal.Digest;
import dev.ringout.seal.Keys;
import dev.ringout.seal.Seal;
import dev.ringout.seal.SealFinding;
import dev.ringout.seal.SealFinding.Kind;
import dev.ringout.seal.SealFinding.State;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.PublicKey;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Says whether a record and all that it was made from are as they were sealed. */
public final class VerifyJob {
  private final Path record;
  private final List<SealFinding> findings = new ArrayList<>();

  private VerifyJob(Path record) {
    this.record = record;
  }

  /**
   * What is asked.
   *
   * @param trusted the public key that is trusted
   */
  public record Request(Path record, Optional<Path> trusted) {}

  /** Everything that was looked at, in order. */
  public record Result(List<SealFinding> findings) {
    /** Whether everything is as it was sealed, and could be shown to be. */
    public boolean isAsSealed() {
      return findings.stream().allMatch(finding -> finding.state() == State.AS_SEALED);
    }

    /** Whether anything at all is in this state, whatever the rest is. */
    public boolean has(State state) {
      return findings.stream().anyMatch(one -> one.state() == state);
    }
  }

  /** The seal's file of a record. */
  public static Path sealOf(Path record) {
    return record.resolveSibling(record.getFileName() + ".seal");
  }

  static Path folderOf(Path record) {
    Path folder = record.toAbsolutePath().normalize().getParent();
    return folder == null ? Path.of("").toAbsolutePath() : folder;
  }

  /**
   * Looks at everything.
   *
   * @throws WrongRequest where the trusted key is none
   * @throws Stopped where there is no record or no seal
   */
  public static Result run(Request request) throws WrongRequest, Stopped {
    Optional<PublicKey> key = Optional.empty();
    if (request.trusted().isPresent()) {
      key = Optional.of(trusted(request.trusted().get()));
    }
    Seal.Read read = read(request.record());
    VerifyJob job = new VerifyJob(request.record());
    job.signature(read, key);
    job.record(read.seal());
    for (Seal.Named input : read.seal().inputs()) {
      job.file(
          input.name(),
          input.sha256(),
          new OfFile(
              Kind.INPUT_SAME, Kind.INPUT_OTHER_BYTES, Kind.INPUT_MISSING, Kind.INPUT_UNREADABLE));
    }
    for (Seal.Earlier earlier : read.seal().earlier()) {
      job.file(
          earlier.name(),
          earlier.sha256(),
          new OfFile(
              Kind.EARLIER_SAME,
              Kind.EARLIER_OTHER_BYTES,
              Kind.EARLIER_MISSING,
              Kind.EARLIER_UNREADABLE));
    }
    return new Result(List.copyOf(job.findings));
  }

  /**
   * The seal of an earlier record that is as it was sealed.
   *
   * @throws Stopped where it is not
   */
  static Seal unchanged(Path record) throws Stopped {
    Seal.Read read = read(record);
    try {
      boolean asSealed = Digest.of(record).equals(read.seal().record().sha256());
      boolean signedWell = read.signature().isEmpty() || read.isSignedWell();
      boolean shown = EmbeddedDigest.of(record).filter(read.seal().content()::equals).isPresent();
      if (asSealed && signedWell && shown) {
        return read.seal();
      }
    } catch (IOException e) {
      throw Stopped.notUnderstood(record + " can't be read: " + e.getMessage());
    }
    throw Stopped.notUnderstood(
        record + " is not as it was sealed, so nothing can continue it; see --verify");
  }

  private void add(Kind kind, String about) {
    findings.add(SealFinding.of(kind, about));
  }

  private static PublicKey trusted(Path file) throws WrongRequest {
    try {
      return Keys.publicKey(file);
    } catch (Keys.Unusable e) {
      throw new WrongRequest(Part.TRUSTED_KEY, String.valueOf(e.getMessage()));
    }
  }

  private static Seal.Read read(Path record) throws Stopped {
    Path sealFile = sealOf(record);
    if (!Files.exists(record)) {
      throw Stopped.missing(record + " is missing");
    }
    if (!Files.exists(sealFile)) {
      throw Stopped.notUnderstood(sealFile + " is missing: nothing tells what was sealed");
    }
    try {
      return Seal.read(Files.readString(sealFile));
    } catch (IOException e) {
      throw Stopped.notUnderstood(sealFile + " can't be read: " + e.getMessage());
    } catch (Seal.Unusable e) {
      throw Stopped.notUnderstood(sealFile + " is no seal: " + e.getMessage());
    }
  }

  private void signature(Seal.Read read, Optional<PublicKey> trusted) {
    if (read.signature().isEmpty() || read.key().isEmpty()) {
      add(trusted.isPresent() ? Kind.SIGNATURE_MISSING : Kind.NOT_SIGNED, "");
      return;
    }
    PublicKey key = read.key().get();
    Kind kind;
    if (!read.isSignedWell()) {
      kind = Kind.SIGNATURE_WRONG;
    } else if (trusted.isEmpty()) {
      kind = Kind.SIGNATURE_BY_A_KEY_NOT_GIVEN;
    } else if (!Arrays.equals(trusted.get().getEncoded(), key.getEncoded())) {
      kind = Kind.SIGNATURE_BY_ANOTHER_KEY;
    } else {
      kind = Kind.SIGNATURE_GOOD;
    }
    add(kind, Keys.fingerprint(key));
  }

  private void record(Seal seal) {
    String name = String.valueOf(record.getFileName());
    try {
      if (!name.equals(seal.record().name())) {
        findings.add(new SealFinding(Kind.SEAL_OF_ANOTHER_RECORD, seal.record().name(), name));
      }
      boolean same = Digest.of(record).equals(seal.record().sha256());
      add(same ? Kind.RECORD_SAME : Kind.RECORD_OTHER_BYTES, name);
      Optional<String> printed = EmbeddedDigest.of(record);
      if (printed.isEmpty()) {
        add(Kind.DIGEST_NOT_SHOWN, "");
      } else {
        add(printed.get().equals(seal.content()) ? Kind.DIGEST_SAME : Kind.DIGEST_OTHER, "");
      }
    } catch (IOException e) {
      findings.add(new SealFinding(Kind.RECORD_UNREADABLE, name, String.valueOf(e.getMessage())));
    }
  }

  /** What may be found of a file beside the record. */
  private record OfFile(Kind same, Kind otherBytes, Kind missing, Kind unreadable) {}

  private void file(String way, String sha256, OfFile kinds) {
    try {
      Path file = folderOf(record).resolve(way).normalize();
      if (!Files.isRegularFile(file)) {
        add(kinds.missing(), way);
      } else {
        add(Digest.of(file).equals(sha256) ? kinds.same() : kinds.otherBytes(), way);
      }
    } catch (IOException | InvalidPathException e) {
      findings.add(new SealFinding(kinds.unreadable(), way, String.valueOf(e.getMessage())));
    }
  }
}
