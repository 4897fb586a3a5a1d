package dev.ringout.seal;

import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.PublicKey;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * What stands beside a record: digests of the record and of everything it was made from, what was
 * said of the unit besides, the records before it, the values that failed first; and a signature
 * over all of it.
 *
 * <p>As text: a line for each fact, its parts parted by tabs, the first line {@value #FORMAT}. The
 * signature is over the lines before its own.
 *
 * @param record the record's name and digest
 * @param content the digest that is printed in the record
 * @param unit which unit the record is of; absent in seals of the time before it stood in them
 * @param inputs files by their paths from the record's folder, and digests
 * @param folders folders of which every table was an input: no other lay there
 * @param kept inputs that are kept in a store
 * @param said what was said of the unit beside the files
 * @param program name and version
 * @param verdict of the record
 * @param earlier the records that this one continues, the first first
 * @param failed values that failed first, in this record or in one before it
 * @param notes what was done between
 */
public record Seal(
    Named record,
    String content,
    Optional<TestedUnit> unit,
    List<Named> inputs,
    List<String> folders,
    List<KeptInput> kept,
    List<Said> said,
    String program,
    String verdict,
    List<Earlier> earlier,
    List<Failed> failed,
    List<String> notes) {
  private static final String FORMAT = "ringout-seal/1";
  private static final String VOUCHED = "vouched";

  /** A file by its name, and its digest. */
  public record Named(String name, String sha256) {}

  /** Something that somebody said on the command line and that a verdict may rest on. */
  public record Said(String option, String value) {}

  /**
   * A record before this one.
   *
   * @param sealSha256 the digest of its seal as it was when it was continued; empty in seals of the
   *     time before
   * @param vouchedFor whether its seal did not say of which unit it is, and somebody vouched for it
   */
  public record Earlier(
      String name, String sha256, String verdict, String sealSha256, boolean vouchedFor) {}

  /**
   * A value that failed.
   *
   * @param inRecord the record in which it failed first
   */
  public record Failed(String inRecord, String kind, String subject, String value) {}

  /**
   * A seal as it was read, with its signature.
   *
   * @param signed the text that is signed
   * @param at when it was signed, as who signed it says; absent in seals of the time before
   * @param key whose signature it says it is
   */
  public record Read(
      Seal seal,
      String signed,
      Optional<Instant> at,
      Optional<PublicKey> key,
      Optional<byte[]> signature) {
    /** Whether the signature is of this text and by the key that the seal names. */
    public boolean isSignedWell() {
      return key.isPresent()
          && signature.isPresent()
          && Keys.verify(signed, signature.get(), key.get());
    }
  }

  /** A seal that can't be understood. */
  public static final class Unusable extends Exception {
    private static final long serialVersionUID = 1L;

    Unusable(String text) {
      super(text);
    }
  }

  /** The seal without a signature. */
  public String text() {
    StringBuilder text = new StringBuilder(FORMAT + "\n");
    line(text, "record", record.name(), record.sha256());
    line(text, "content", content);
    unit.ifPresent(
        one -> line(text, "unit", one.serialNumber(), one.title(), one.drawing(), one.revision()));
    inputs.forEach(input -> line(text, "input", input.name(), input.sha256()));
    folders.forEach(folder -> line(text, "folder", folder));
    kept.forEach(input -> input.match(new KeptLine(text)));
    said.forEach(one -> line(text, "said", one.option(), one.value()));
    line(text, "program", program);
    line(text, "verdict", verdict);
    for (Earlier one : earlier) {
      List<String> parts = new ArrayList<>(List.of(one.name(), one.sha256(), one.verdict()));
      if (!one.sealSha256().isEmpty()) {
        parts.add(one.sealSha256());
      }
      if (one.vouchedFor()) {
        parts.add(VOUCHED);
      }
      line(text, "earlier", parts.toArray(String[]::new));
    }
    failed.forEach(
        one -> line(text, "failed", one.inRecord(), one.kind(), one.subject(), one.value()));
    notes.forEach(note -> line(text, "note", note));
    return text.toString();
  }

  /** Its line, which is of another kind than that of a file whatever its name. */
  private record KeptLine(StringBuilder text) implements KeptInput.Cases<StringBuilder> {
    @Override
    public StringBuilder listFile(KeptInput.ListFile one) {
      return line(text, "list", one.list(), one.listSha256(), one.file(), one.sha256());
    }

    @Override
    public StringBuilder test(KeptInput.Test one) {
      return line(
          text,
          "test",
          one.serialNumber(),
          one.listSha256(),
          Integer.toString(one.number()),
          one.sheet(),
          Integer.toString(one.entries()),
          one.lastHash());
    }
  }

  /** The seal with a signature, which does not say when it was made. */
  public String signed(KeyPair pair) {
    return signed("", pair);
  }

  /**
   * The seal with a signature.
   *
   * @param at when it is signed: the word of who signs, which nothing else shows
   */
  public String signed(KeyPair pair, Instant at) {
    return signed(timeLine(at), pair);
  }

  private String signed(String time, KeyPair pair) {
    String signed = text() + time + keyLine(pair.getPublic());
    return signed + signatureLine(Keys.sign(signed, pair.getPrivate()));
  }

  private static String timeLine(Instant at) {
    return line("signed", at.truncatedTo(ChronoUnit.SECONDS).toString());
  }

  private static String keyLine(PublicKey key) {
    return line("key", Base64.getEncoder().encodeToString(key.getEncoded()));
  }

  private static String signatureLine(byte[] signature) {
    return line("signature", Base64.getEncoder().encodeToString(signature));
  }

  private static String line(String what, String part) {
    return line(new StringBuilder(), what, part).toString();
  }

  private static StringBuilder line(StringBuilder text, String what, String... parts) {
    text.append(what);
    for (String part : parts) {
      text.append('\t').append(part.replaceAll("[\\t\\r\\n]+", " "));
    }
    return text.append('\n');
  }

  /** Reads a seal. */
  public static Read read(String text) throws Unusable {
    String[] lines = text.split("\n", -1);
    if (!lines[0].equals(FORMAT)) {
      throw new Unusable("it does not begin with " + FORMAT);
    }
    Reader reader = new Reader();
    StringBuilder signed = new StringBuilder(FORMAT + "\n");
    for (int i = 1; i < lines.length; i++) {
      if (lines[i].isEmpty() && i == lines.length - 1) {
        continue;
      }
      if (reader.signature.isPresent()) {
        throw new Unusable("something stands after the signature");
      }
      reader.line(i + 1, lines[i].split("\t", -1));
      if (reader.signature.isEmpty()) {
        signed.append(lines[i]).append('\n');
      }
    }
    Seal seal = reader.seal();
    if (!text.equals(reader.written(seal))) {
      throw new Unusable("it is not written as seals are");
    }
    return new Read(seal, signed.toString(), reader.at, reader.key, reader.signature);
  }

  private static final class Reader {
    private Named record = new Named("", "");
    private String content = "";
    private Optional<TestedUnit> unit = Optional.empty();
    private final List<Named> inputs = new ArrayList<>();
    private final List<String> folders = new ArrayList<>();
    private final List<KeptInput> kept = new ArrayList<>();
    private final List<Said> said = new ArrayList<>();
    private String program = "";
    private String verdict = "";
    private final List<Earlier> earlier = new ArrayList<>();
    private final List<Failed> failed = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private Optional<Instant> at = Optional.empty();
    private Optional<PublicKey> key = Optional.empty();
    private Optional<byte[]> signature = Optional.empty();

    void line(int number, String[] parts) throws Unusable {
      try {
        switch (parts[0]) {
          case "record" -> record = new Named(parts[1], parts[2]);
          case "content" -> content = parts[1];
          case "unit" -> unit = Optional.of(new TestedUnit(parts[1], parts[2], parts[3], parts[4]));
          case "input" -> inputs.add(new Named(parts[1], parts[2]));
          case "folder" -> folders.add(parts[1]);
          case "list" -> kept.add(new KeptInput.ListFile(parts[1], parts[2], parts[3], parts[4]));
          case "test" -> kept.add(test(parts));
          case "said" -> said.add(new Said(parts[1], parts[2]));
          case "program" -> program = parts[1];
          case "verdict" -> verdict = parts[1];
          case "earlier" -> earlier.add(earlier(parts));
          case "failed" -> failed.add(new Failed(parts[1], parts[2], parts[3], parts[4]));
          case "note" -> notes.add(parts[1]);
          case "signed" -> at = Optional.of(Instant.parse(parts[1]));
          case "key" -> key = Optional.of(Keys.publicKey(Base64.getDecoder().decode(parts[1])));
          case "signature" -> signature = Optional.of(Base64.getDecoder().decode(parts[1]));
          default -> throw new Unusable("line " + number + " is none that a seal has");
        }
      } catch (IndexOutOfBoundsException
          | IllegalArgumentException
          | DateTimeParseException
          | GeneralSecurityException e) {
        throw new Unusable("line " + number + " can't be understood");
      }
    }

    /**
     * The one text that says all this: an order of its own, a part more, another end of a line or
     * other letters for the same bytes would be more than was sealed.
     */
    String written(Seal seal) {
      return seal.text()
          + at.map(Seal::timeLine).orElse("")
          + key.map(Seal::keyLine).orElse("")
          + signature.map(Seal::signatureLine).orElse("");
    }

    private static KeptInput test(String[] parts) {
      return new KeptInput.Test(
          parts[1],
          parts[2],
          Integer.parseInt(parts[3]),
          parts[4],
          Integer.parseInt(parts[5]),
          parts[6]);
    }

    private static Earlier earlier(String[] parts) {
      boolean vouchedFor = parts.length > 4 && parts[parts.length - 1].equals(VOUCHED);
      boolean sealed = parts.length > 4 && !parts[4].equals(VOUCHED);
      return new Earlier(parts[1], parts[2], parts[3], sealed ? parts[4] : "", vouchedFor);
    }

    Seal seal() throws Unusable {
      if (record.name().isEmpty() || content.isEmpty()) {
        throw new Unusable("it names no record");
      }
      return new Seal(
          record,
          content,
          unit,
          List.copyOf(inputs),
          List.copyOf(folders),
          List.copyOf(kept),
          List.copyOf(said),
          program,
          verdict,
          List.copyOf(earlier),
          List.copyOf(failed),
          List.copyOf(notes));
    }
  }
}
