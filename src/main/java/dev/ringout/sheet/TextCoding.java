package dev.ringout.sheet;

import dev.ringout.source.FileBytes;
import dev.ringout.source.Place;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * In which encoding a text file is written: UTF-8, or UTF-16 with or without a byte-order mark;
 * else Windows-1252 where it can be, and that is said. A text of the time before is not guessed at:
 * what it most likely is, is named, with the first letter that shows it.
 */
final class TextCoding {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

  /** Encodings of other systems, by the names under which programs offer them. */
  private static final List<Map.Entry<String, String>> OTHERS =
      List.of(
          Map.entry("IBM850", "CP850 (DOS)"),
          Map.entry("IBM437", "CP437 (DOS)"),
          Map.entry("x-MacRoman", "Mac OS Roman"));

  /** Letters and signs beyond ASCII that lists of wires are written with. */
  private static final String USUAL = "äöüÄÖÜßéèêëàâáçñíóúìòùîôûæøåÆØÅÉµμΩ²³°±×÷§½";

  private TextCoding() {}

  /** The encoding of a file, as far as its first bytes and its letters tell. */
  static Charset of(FileBytes file) {
    byte[] head = file.first(2);
    if (head.length >= 2) {
      int mark = ((head[0] & 0xff) << 8) | (head[1] & 0xff);
      if (mark == 0xfffe || mark == 0xfeff) {
        return StandardCharsets.UTF_16;
      }
      if (head[0] != 0 && head[1] == 0) {
        return StandardCharsets.UTF_16LE;
      }
      if (head[0] == 0 && head[1] != 0) {
        return StandardCharsets.UTF_16BE;
      }
    }
    return firstWrong(file, StandardCharsets.UTF_8).isEmpty()
        ? StandardCharsets.UTF_8
        : WINDOWS_1252;
  }

  /**
   * The same, and says what is doubtful about it.
   *
   * @throws UnusableInput where it is a text in no encoding that is read here
   */
  static Charset checked(FileBytes file, String shownName, Problems problems) throws UnusableInput {
    Charset charset = of(file);
    if (charset.equals(StandardCharsets.UTF_8)) {
      return charset;
    }
    Optional<Integer> wrong = firstWrong(file, charset);
    if (wrong.isPresent()) {
      throw unreadable(file, shownName, charset, wrong.get());
    }
    if (charset.equals(WINDOWS_1252)) {
      int first = firstWrong(file, StandardCharsets.UTF_8).orElse(0);
      if (isMostlyUtf8(file)) {
        throw new UnusableInput(
            place(file, shownName, first),
            Reason.NOT_UNDERSTOOD,
            "is UTF-8 elsewhere but holds a byte here that is no letter of it ("
                + hex(file, first)
                + "): a damaged letter?");
      }
      problems.warning(
          Place.of(shownName),
          "is not UTF-8: read as Windows-1252; check that Ω and µ came through"
              + likelyOther(file)
                  .map(
                      other ->
                          " (it may be " + other + ": see " + cell(file, shownName, first) + ")")
                  .orElse(""));
    }
    return charset;
  }

  private static UnusableInput unreadable(
      FileBytes file, String shownName, Charset charset, int at) {
    String is =
        charset.equals(WINDOWS_1252)
            ? "is no letter of UTF-8 or Windows-1252"
            : "is no letter of " + charset.name();
    String save = "; save the file as UTF-8";
    return new UnusableInput(
        place(file, shownName, at),
        Reason.NOT_UNDERSTOOD,
        "the byte "
            + hex(file, at)
            + " "
            + is
            + likelyOther(file).map(other -> ": the file is most likely in " + other).orElse("")
            + save);
  }

  private static String hex(FileBytes file, int at) {
    return Integer.toHexString(file.buffer().get(at) & 0xff);
  }

  private static String cell(FileBytes file, String shownName, int at) {
    return place(file, shownName, at).cell();
  }

  /** The first byte that an encoding has no letter for. */
  private static Optional<Integer> firstWrong(FileBytes file, Charset charset) {
    CharsetDecoder decoder = charset.newDecoder();
    ByteBuffer in = file.buffer();
    CharBuffer out = CharBuffer.allocate(8192);
    while (true) {
      CoderResult result = decoder.decode(in, out, true);
      if (result.isError()) {
        return Optional.of(in.position());
      }
      if (result.isUnderflow()) {
        return Optional.empty();
      }
      out.clear();
    }
  }

  private static String decoded(FileBytes file, Charset charset) {
    try {
      return charset
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPLACE)
          .onUnmappableCharacter(CodingErrorAction.REPLACE)
          .decode(file.buffer())
          .toString();
    } catch (CharacterCodingException e) {
      throw new IllegalStateException("what can't be read is replaced", e);
    }
  }

  /** Two bytes that make a letter of UTF-8 are seldom two letters of another encoding. */
  private static boolean isMostlyUtf8(FileBytes file) {
    String text = decoded(file, StandardCharsets.UTF_8);
    long wrong = text.chars().filter(c -> c == '\uFFFD').count();
    return text.chars().filter(c -> c > 0x7f).count() > 2 * wrong;
  }

  /** An encoding in which its letters are more usual than in Windows-1252. */
  private static Optional<String> likelyOther(FileBytes file) {
    Optional<String> likely = Optional.empty();
    long best = usual(decoded(file, WINDOWS_1252));
    for (Map.Entry<String, String> other : OTHERS) {
      if (Charset.isSupported(other.getKey())) {
        long usual = usual(decoded(file, Charset.forName(other.getKey())));
        if (usual > best) {
          best = usual;
          likely = Optional.of(other.getValue());
        }
      }
    }
    return likely;
  }

  private static long usual(String text) {
    return text.chars().filter(c -> c > 0x7f).mapToLong(c -> USUAL.indexOf(c) >= 0 ? 1 : -1).sum();
  }

  /** The cell in which a byte stands, by the lines and separators before it. */
  private static Place place(FileBytes file, String shownName, int at) {
    byte[] before = file.first(at);
    int row = 1;
    int[] separators = new int[128];
    boolean quoted = false;
    for (byte one : before) {
      quoted ^= one == '"';
      if (!quoted && one == '\n') {
        row++;
        separators = new int[128];
      } else if (!quoted && one > 0) {
        separators[one]++;
      }
    }
    int column = 1 + Math.max(separators['\t'], Math.max(separators[';'], separators[',']));
    return new Place(shownName, "", row, column);
  }
}
