package dev.ringout.jobs;

import dev.ringout.seal.Digest;
import dev.ringout.seal.Keys;
import dev.ringout.seal.Seal;
import dev.ringout.seal.SealFinding;
import dev.ringout.seal.SealFinding.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The records before a record, and those beside it that continue the same: what one seal says of
 * another is held against that one.
 */
final class Chain {
  /** A folder of records holds no more. */
  private static final int MOST_SEALS = 10_000;

  private final Path folder;
  private final SealFile last;
  private final KnownKeys trusted;
  private final KnownKeys known;
  private final List<SealFinding> findings = new ArrayList<>();

  private Chain(Path folder, SealFile last, KnownKeys trusted) {
    this.folder = folder;
    this.last = last;
    this.trusted = trusted;
    // Who signed the last vouches for the records of his own before it.
    this.known = trusted.and(last.read().key().filter(key -> last.read().isSignedWell()));
  }

  /**
   * What is found of all of them, the first record first.
   *
   * @param folder in which they lie
   * @param last the seal of the record that was asked for
   * @param trusted the keys that are trusted
   */
  static List<SealFinding> walk(Path folder, SealFile last, KnownKeys trusted) {
    Chain chain = new Chain(folder, last, trusted);
    List<Seal.Earlier> earlier = last.seal().earlier();
    for (int i = 0; i < earlier.size(); i++) {
      chain.earlier(earlier.get(i), earlier.subList(0, i));
    }
    chain.beside();
    return List.copyOf(chain.findings);
  }

  private void add(Kind kind, String about) {
    findings.add(SealFinding.of(kind, about));
  }

  private void add(Kind kind, String about, String detail) {
    findings.add(new SealFinding(kind, about, detail));
  }

  private void earlier(Seal.Earlier record, List<Seal.Earlier> before) {
    String name = record.name();
    try {
      Path file = folder.resolve(name).normalize();
      if (!folder.equals(file.getParent())) {
        add(Kind.EARLIER_UNREADABLE, name, "records of one history lie beside each other");
        return;
      }
      if (!Files.isRegularFile(file)) {
        add(Kind.EARLIER_MISSING, name);
      } else {
        boolean same = Digest.of(file).equals(record.sha256());
        add(same ? Kind.EARLIER_SAME : Kind.EARLIER_OTHER_BYTES, name);
      }
      Path sealFile = SealFile.of(file);
      if (Files.isRegularFile(sealFile)) {
        seal(record, SealFile.read(sealFile), before);
      } else {
        add(Kind.EARLIER_SEAL_MISSING, name);
      }
    } catch (IOException | InvalidPathException e) {
      add(Kind.EARLIER_UNREADABLE, name, String.valueOf(e.getMessage()));
    } catch (Seal.Unusable e) {
      add(Kind.EARLIER_SEAL_UNUSABLE, name, String.valueOf(e.getMessage()));
    }
  }

  private void seal(Seal.Earlier record, SealFile file, List<Seal.Earlier> before) {
    String name = record.name();
    if (record.sealSha256().isEmpty()) {
      add(Kind.EARLIER_SEAL_NOT_HELD, name);
    } else {
      boolean same = record.sealSha256().equals(file.sha256());
      add(same ? Kind.EARLIER_SEAL_SAME : Kind.EARLIER_SEAL_OTHER_BYTES, name);
    }
    signature(name, file);
    history(record, file.seal(), before);
  }

  private void signature(String name, SealFile file) {
    String key = file.read().key().map(Keys::fingerprint).orElse("");
    if (!file.isSigned()) {
      add(last.isSigned() ? Kind.EARLIER_SIGNATURE_MISSING : Kind.EARLIER_NOT_SIGNED, name);
    } else if (!file.read().isSignedWell()) {
      add(Kind.EARLIER_SIGNATURE_WRONG, name, key);
    } else if (isSignedByKnown(file)) {
      add(Kind.EARLIER_SIGNATURE_GOOD, name, key);
      trusted.said(file.read()).ifPresent(findings::add);
    } else {
      add(Kind.EARLIER_SIGNATURE_BY_A_KEY_NOT_GIVEN, name, key);
    }
  }

  private boolean isSignedByKnown(SealFile file) {
    return file.read().isSignedWell() && file.read().key().filter(known::isKnown).isPresent();
  }

  /** What the last record says of an earlier one, against what that one says itself. */
  private void history(Seal.Earlier record, Seal own, List<Seal.Earlier> before) {
    Seal seal = last.seal();
    String name = record.name();
    int found = findings.size();
    if (!own.record().name().equals(name) || !own.record().sha256().equals(record.sha256())) {
      add(Kind.HISTORY_OTHER_RECORD, name, own.record().name());
    }
    if (!own.verdict().equals(record.verdict())) {
      add(Kind.HISTORY_OTHER_VERDICT, name, own.verdict());
    }
    if (!own.earlier().equals(before)) {
      add(Kind.HISTORY_OTHER_RECORDS_BEFORE, name);
    }
    for (Seal.Failed failed : own.failed()) {
      if (!seal.failed().contains(failed)) {
        add(Kind.HISTORY_FAILED_VALUE_MISSING, name, failed.subject() + " " + failed.value());
      }
    }
    int notes = own.notes().size();
    if (notes > seal.notes().size() || !own.notes().equals(seal.notes().subList(0, notes))) {
      add(Kind.HISTORY_OTHER_NOTES, name);
    }
    if (findings.size() == found) {
      add(Kind.HISTORY_SAME, name);
    }
  }

  /** Records beside this one that go on from it, or from one before it by another way. */
  private void beside() {
    Seal seal = last.seal();
    for (SealFile file : seals(folder, last)) {
      Seal other = file.seal();
      if (isAmong(seal.record(), other.earlier())) {
        add(Kind.CONTINUED, seal.record().name(), other.record().name());
      } else if (!isAmong(other.record(), seal.earlier())) {
        // Anyone can lay a seal by a key of his own beside it.
        boolean counts = !last.isSigned() || isSignedByKnown(file);
        Kind kind = counts ? Kind.FORKED : Kind.FORKED_BY_A_KEY_NOT_GIVEN;
        Optional<String> shared = shared(seal, other);
        if (shared.isPresent()) {
          add(kind, shared.get(), other.record().name());
        } else if (isOfOneUnit(seal, other)) {
          add(Kind.UNIT_ELSEWHERE, other.record().name());
        }
      }
    }
  }

  private static boolean isOfOneUnit(Seal one, Seal other) {
    return one.unit().isPresent()
        && other.unit().filter(one.unit().get()::isSameUnitAs).isPresent();
  }

  private static boolean isAmong(Seal.Named record, List<Seal.Earlier> records) {
    return records.stream().anyMatch(one -> one.sha256().equals(record.sha256()));
  }

  /** The last record that both go on from. */
  private static Optional<String> shared(Seal one, Seal other) {
    return one.earlier().stream()
        .filter(record -> isAmong(new Seal.Named(record.name(), record.sha256()), other.earlier()))
        .reduce((first, later) -> later)
        .map(Seal.Earlier::name);
  }

  /**
   * The names of records beside a record that already continue it.
   *
   * @param to the record that is to be written, which is none of them
   */
  static List<String> alreadyContinuing(Path folder, SealFile before, String to) {
    return seals(folder, before).stream()
        .map(SealFile::seal)
        .filter(one -> isAmong(before.seal().record(), one.earlier()))
        .map(one -> one.record().name())
        .filter(name -> !name.equals(to))
        .toList();
  }

  /**
   * The other seals of a folder, in the order of their names. What is none says nothing of records;
   * where this record is signed, neither does what anyone may have written.
   */
  private static List<SealFile> seals(Path folder, SealFile but) {
    List<Path> files;
    try (Stream<Path> inside = Files.list(folder)) {
      files =
          inside
              .filter(file -> String.valueOf(file.getFileName()).endsWith(".seal"))
              .filter(Files::isRegularFile)
              .sorted()
              .limit(MOST_SEALS)
              .toList();
    } catch (IOException e) {
      return List.of();
    }
    return files.stream().flatMap(file -> counting(file, but).stream()).toList();
  }

  private static Optional<SealFile> counting(Path file, SealFile but) {
    try {
      SealFile other = SealFile.read(file);
      boolean counts = !but.isSigned() || other.read().isSignedWell();
      boolean same = but.seal().record().equals(other.seal().record());
      return counts && !same ? Optional.of(other) : Optional.empty();
    } catch (IOException | Seal.Unusable e) {
      // No seal of ours: whatever it is, it tells nothing of records.
      return Optional.empty();
    }
  }
}
