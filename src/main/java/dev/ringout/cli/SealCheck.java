package dev.ringout.cli;

import dev.ringout.print.EmbeddedDigest;
import dev.ringout.seal.Digest;
import dev.ringout.seal.Keys;
import dev.ringout.seal.Seal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.PublicKey;
import java.util.Arrays;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Says whether a record and all that it was made from are as they were sealed. */
final class SealCheck {
  private final Output output;
  private final CommandSpec spec;
  private boolean differs;
  private boolean open;

  SealCheck(Output output, CommandSpec spec) {
    this.output = output;
    this.spec = spec;
  }

  /** The seal's file of a record. */
  static Path sealOf(Path record) {
    return record.resolveSibling(record.getFileName() + ".seal");
  }

  static Path folderOf(Path record) {
    Path folder = record.toAbsolutePath().normalize().getParent();
    return folder == null ? Path.of("").toAbsolutePath() : folder;
  }

  private void good(String text) {
    output.out().println("as sealed   " + text);
  }

  private void bad(String text) {
    differs = true;
    output.out().println("DIFFERS     " + text);
  }

  private void unknown(String text) {
    open = true;
    output.out().println("not shown   " + text);
  }

  /** Looks at everything; the exit code is that of a check. */
  int verify(Path record, Optional<Path> trusted) {
    Optional<PublicKey> key = trusted.map(this::trusted);
    Optional<Seal.Read> read = read(record);
    if (read.isEmpty()) {
      return Files.exists(record) ? ExitCode.NOT_UNDERSTOOD : ExitCode.MISSING_INPUT;
    }
    Seal seal = read.get().seal();
    signature(read.get(), key);
    record(record, seal);
    for (Seal.Named input : seal.inputs()) {
      file("input " + input.name(), record, input.name(), input.sha256());
    }
    for (Seal.Earlier one : seal.earlier()) {
      file("earlier record " + one.name(), record, one.name(), one.sha256());
    }
    output.out().println();
    output
        .out()
        .println(
            differs
                ? "NOT AS SEALED."
                : open
                    ? "Nothing differs, but not everything could be shown."
                    : "As sealed: record, inputs and signature.");
    return differs ? ExitCode.FAULTS : open ? ExitCode.INCOMPLETE : ExitCode.DONE;
  }

  private PublicKey trusted(Path file) {
    try {
      return Keys.publicKey(file);
    } catch (Keys.Unusable e) {
      throw new ParameterException(spec.commandLine(), "--key: " + e.getMessage());
    }
  }

  private Optional<Seal.Read> read(Path record) {
    Path sealFile = sealOf(record);
    try {
      if (!Files.exists(record)) {
        output.err().println("ringout: " + record + " is missing");
        return Optional.empty();
      }
      if (!Files.exists(sealFile)) {
        output.err().println("ringout: " + sealFile + " is missing: nothing tells what was sealed");
        return Optional.empty();
      }
      return Optional.of(Seal.read(Files.readString(sealFile)));
    } catch (IOException e) {
      output.err().println("ringout: " + sealFile + " can't be read: " + e.getMessage());
    } catch (Seal.Unusable e) {
      output.err().println("ringout: " + sealFile + " is no seal: " + e.getMessage());
    }
    return Optional.empty();
  }

  private void signature(Seal.Read read, Optional<PublicKey> trusted) {
    if (read.signature().isEmpty() || read.key().isEmpty()) {
      if (trusted.isPresent()) {
        bad("signature: there is none");
      } else {
        unknown("signature: the seal is not signed, so anyone may have made it");
      }
      return;
    }
    String fingerprint = Keys.fingerprint(read.key().get());
    if (!read.isSignedWell()) {
      bad("signature: it is not of this seal, or not by key " + fingerprint);
    } else if (trusted.isEmpty()) {
      unknown("signature: good, by key " + fingerprint + "; with --key it is held against yours");
    } else if (!Arrays.equals(trusted.get().getEncoded(), read.key().get().getEncoded())) {
      bad("signature: by key " + fingerprint + ", which is not the key given");
    } else {
      good("signature by key " + fingerprint);
    }
  }

  private void record(Path record, Seal seal) {
    try {
      if (!String.valueOf(record.getFileName()).equals(seal.record().name())) {
        bad("the seal is of " + seal.record().name() + ", not of " + record.getFileName());
      }
      if (Digest.of(record).equals(seal.record().sha256())) {
        good("record " + record.getFileName());
      } else {
        bad("record " + record.getFileName() + ": its bytes are others than were sealed");
      }
      Optional<String> printed = EmbeddedDigest.of(record);
      if (printed.isEmpty()) {
        bad("content digest: the record shows none");
      } else if (!printed.get().equals(seal.content())) {
        bad("content digest: the record shows another than the seal");
      } else {
        good("content digest");
      }
    } catch (IOException e) {
      bad("record " + record.getFileName() + " can't be read: " + e.getMessage());
    }
  }

  private void file(String what, Path record, String way, String sha256) {
    try {
      Path file = folderOf(record).resolve(way).normalize();
      if (!Files.isRegularFile(file)) {
        unknown(what + ": it is not there");
      } else if (Digest.of(file).equals(sha256)) {
        good(what);
      } else {
        bad(what + ": its bytes are others than were sealed");
      }
    } catch (IOException | InvalidPathException e) {
      unknown(what + " can't be read: " + e.getMessage());
    }
  }

  /** The seal of an earlier record, if that record is as it was sealed; else what differs. */
  Optional<Seal> unchanged(Path record) {
    Optional<Seal.Read> read = read(record);
    if (read.isEmpty()) {
      return Optional.empty();
    }
    try {
      boolean asSealed = Digest.of(record).equals(read.get().seal().record().sha256());
      boolean signedWell = read.get().signature().isEmpty() || read.get().isSignedWell();
      if (asSealed && signedWell) {
        return Optional.of(read.get().seal());
      }
      output
          .err()
          .println(
              "ringout: "
                  + record
                  + " is not as it was sealed, so nothing can continue it; see --verify");
    } catch (IOException e) {
      output.err().println("ringout: " + record + " can't be read: " + e.getMessage());
    }
    return Optional.empty();
  }
}
