package dev.ringout.jobs;

import dev.ringout.record.EmbeddedDigest;
import dev.ringout.seal.Digest;
import dev.ringout.seal.Keys;
import dev.ringout.seal.Seal;
import dev.ringout.seal.SealFinding;
import dev.ringout.seal.SealFinding.Kind;
import dev.ringout.seal.SealFinding.State;
import dev.ringout.source.FileBytes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.PublicKey;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Says whether a record and all that it was made from are as they were sealed. */
public final class VerifyJob {
  private final Path record;
  private final List<Path> besides;
  private final List<SealFinding> findings = new ArrayList<>();

  private VerifyJob(Request request) {
    this.record = request.record();
    this.besides = new ArrayList<>(List.of(folderOf(record)));
    request.inputs().map(one -> one.toAbsolutePath().normalize()).ifPresent(besides::add);
  }

  /**
   * What is asked.
   *
   * @param trusted the public keys that are trusted
   * @param list the shop's list of keys
   * @param inputs a folder in which the inputs may lie as well as beside the record: what somebody
   *     else has written into a seal opens nothing elsewhere
   */
  public record Request(
      Path record, List<Path> trusted, Optional<Path> list, Optional<Path> inputs) {
    /** What is given can't be changed afterwards. */
    public Request {
      trusted = List.copyOf(trusted);
    }

    /** A record beside which its inputs lie. */
    public static Request of(Path record, List<Path> trusted) {
      return new Request(record, trusted, Optional.empty(), Optional.empty());
    }
  }

  /** Everything that was looked at, in order. */
  public record Result(List<SealFinding> findings) {
    /** Whether everything is as it was sealed, and could be shown to be. */
    public boolean isAsSealed() {
      return !has(State.DIFFERS) && !has(State.NOT_SHOWN);
    }

    /** Whether anything at all is in this state, whatever the rest is. */
    public boolean has(State state) {
      return findings.stream().anyMatch(one -> one.state() == state);
    }
  }

  /** The seal's file of a record. */
  public static Path sealOf(Path record) {
    return SealFile.of(record);
  }

  static Path folderOf(Path record) {
    Path folder = record.toAbsolutePath().normalize().getParent();
    return folder == null ? Path.of("").toAbsolutePath() : folder;
  }

  /**
   * Looks at everything.
   *
   * @param store in which inputs may be kept; asked only where a seal names such
   * @throws WrongRequest where the trusted key, or the list of keys, is none
   * @throws Stopped where there is no record or no seal
   */
  public static Result run(Request request, StoreAtHand store) throws WrongRequest, Stopped {
    KnownKeys keys = KnownKeys.read(request.trusted(), request.list());
    SealFile file = SealFile.ofRecord(request.record());
    VerifyJob job = new VerifyJob(request);
    job.signature(file.read(), keys);
    job.record(file.seal());
    file.seal().inputs().forEach(job::input);
    file.seal().folders().forEach(folder -> job.folder(folder, file.seal().inputs()));
    job.findings.addAll(SealedInStore.look(file.seal().kept(), store));
    job.findings.addAll(Chain.walk(folderOf(request.record()), file, keys));
    return new Result(List.copyOf(job.findings));
  }

  private void add(Kind kind, String about) {
    findings.add(SealFinding.of(kind, about));
  }

  private void signature(Seal.Read read, KnownKeys trusted) {
    if (read.signature().isEmpty() || read.key().isEmpty()) {
      add(trusted.isEmpty() ? Kind.NOT_SIGNED : Kind.SIGNATURE_MISSING, "");
      return;
    }
    PublicKey key = read.key().get();
    Kind kind;
    if (!read.isSignedWell()) {
      kind = Kind.SIGNATURE_WRONG;
    } else if (trusted.isEmpty()) {
      kind = Kind.SIGNATURE_BY_A_KEY_NOT_GIVEN;
    } else if (trusted.list().isEmpty() && !trusted.isKnown(key)) {
      kind = Kind.SIGNATURE_BY_ANOTHER_KEY;
    } else {
      kind = Kind.SIGNATURE_GOOD;
    }
    add(kind, Keys.fingerprint(key));
    if (kind == Kind.SIGNATURE_GOOD) {
      // That it is of this key says nothing yet of whose the key was then.
      trusted.said(read).ifPresent(findings::add);
    }
  }

  private void record(Seal seal) {
    String name = String.valueOf(record.getFileName());
    try {
      if (!name.equals(seal.record().name())) {
        findings.add(new SealFinding(Kind.SEAL_OF_ANOTHER_RECORD, seal.record().name(), name));
      }
      FileBytes bytes = FileBytes.read(record);
      if (!Digest.of(bytes.open()).equals(seal.record().sha256())) {
        // Whatever it shows now says nothing of what was sealed.
        add(Kind.RECORD_OTHER_BYTES, name);
        return;
      }
      add(Kind.RECORD_SAME, name);
      Optional<String> printed = EmbeddedDigest.of(bytes);
      if (printed.isEmpty()) {
        add(Kind.DIGEST_NOT_SHOWN, "");
      } else {
        add(printed.get().equals(seal.content()) ? Kind.DIGEST_SAME : Kind.DIGEST_OTHER, "");
      }
    } catch (IOException e) {
      findings.add(new SealFinding(Kind.RECORD_UNREADABLE, name, String.valueOf(e.getMessage())));
    }
  }

  private void input(Seal.Named input) {
    String way = input.name();
    try {
      Path file = folderOf(record).resolve(way).normalize();
      if (!mayBeLookedAt(file)) {
        add(Kind.INPUT_ELSEWHERE, way);
      } else if (!Files.isRegularFile(file)) {
        add(Kind.INPUT_MISSING, way);
      } else {
        boolean same = Digest.of(file).equals(input.sha256());
        add(same ? Kind.INPUT_SAME : Kind.INPUT_OTHER_BYTES, way);
      }
    } catch (IOException | InvalidPathException e) {
      unreadable(way, e);
    }
  }

  /**
   * Whether a file lies beside the record or where the inputs are said to be: by its name, before
   * the system is asked for it (a name may lead to another machine), and by where links lead.
   */
  private boolean mayBeLookedAt(Path file) throws IOException {
    if (besides.stream().noneMatch(file::startsWith)) {
      return false;
    }
    if (!Files.exists(file)) {
      return true;
    }
    Path real = file.toRealPath();
    for (Path folder : besides) {
      if (Files.exists(folder) && real.startsWith(folder.toRealPath())) {
        return true;
      }
    }
    return false;
  }

  /** A table that lies beside those that were read would be read with them the next time. */
  private void folder(String way, List<Seal.Named> inputs) {
    try {
      Path folder = folderOf(record).resolve(way).normalize();
      if (!mayBeLookedAt(folder)) {
        add(Kind.INPUT_ELSEWHERE, way);
        return;
      }
      if (!Files.isDirectory(folder)) {
        add(Kind.INPUT_MISSING, way);
        return;
      }
      Set<Path> known = new HashSet<>();
      for (Seal.Named input : inputs) {
        known.add(folderOf(record).resolve(input.name()).normalize());
      }
      try (Stream<Path> inside = Files.list(folder)) {
        inside
            .filter(file -> isTable(file) && !known.contains(file.normalize()))
            .sorted()
            .forEach(file -> add(Kind.INPUT_ADDED, way + "/" + file.getFileName()));
      }
    } catch (IOException | InvalidPathException e) {
      unreadable(way, e);
    }
  }

  private static boolean isTable(Path file) {
    return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(".csv");
  }

  private void unreadable(String way, Exception e) {
    findings.add(new SealFinding(Kind.INPUT_UNREADABLE, way, String.valueOf(e.getMessage())));
  }
}
