package dev.ringout.imports.kbl;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A file as text in the encoding that it names or begins with (XML 1.0, appendix F). Decoded here,
 * since Java's own reader of XML writes to standard error where a byte does not fit.
 */
final class XmlText {
  private static final Pattern ENCODING =
      Pattern.compile("^<\\?xml[^>]*\\sencoding\\s*=\\s*[\"']([A-Za-z0-9._-]+)[\"']");
  private static final int DECLARATION = 256;

  /** The bytes of byte-order marks. */
  private static final String MARKS = "\u00ef\u00bb\u00bf\u00fe\u00ff";

  private XmlText() {}

  /** Whether the first letter of a file is a bracket: quicker than asking a reader of XML. */
  static boolean beginsLikeXml(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      for (byte one : in.readNBytes(DECLARATION)) {
        int letter = one & 0xff;
        if (letter > ' ' && MARKS.indexOf(letter) < 0) {
          return letter == '<';
        }
      }
      return false;
    }
  }

  /** Opens a file; what does not fit its encoding is an error and never another letter. */
  static Reader open(Path file) throws IOException {
    return open(file, CodingErrorAction.REPORT);
  }

  /** Opens a file to see what it is, whether all its letters fit or not. */
  static Reader openToLookInto(Path file) throws IOException {
    return open(file, CodingErrorAction.REPLACE);
  }

  private static Reader open(Path file, CodingErrorAction misfit) throws IOException {
    InputStream in = new BufferedInputStream(Files.newInputStream(file));
    try {
      in.mark(DECLARATION);
      byte[] first = in.readNBytes(DECLARATION);
      in.reset();
      String begins = HexFormat.of().formatHex(first, 0, Math.min(3, first.length));
      in.skipNBytes(begins.startsWith("efbbbf") ? 3 : begins.matches("(feff|fffe).*") ? 2 : 0);
      return new InputStreamReader(
          in,
          charset(begins, new String(first, StandardCharsets.ISO_8859_1), misfit)
              .newDecoder()
              .onMalformedInput(misfit)
              .onUnmappableCharacter(misfit));
    } catch (IOException | RuntimeException e) {
      in.close();
      throw e;
    }
  }

  private static Charset charset(String begins, String first, CodingErrorAction misfit)
      throws IOException {
    if (begins.startsWith("feff") || begins.startsWith("003c")) {
      return StandardCharsets.UTF_16BE;
    }
    if (begins.startsWith("fffe") || begins.startsWith("3c00")) {
      return StandardCharsets.UTF_16LE;
    }
    Matcher declared = ENCODING.matcher(first);
    if (begins.startsWith("efbbbf") || !declared.find()) {
      return StandardCharsets.UTF_8;
    }
    try {
      Charset charset = Charset.forName(declared.group(1));
      return charset.name().startsWith("UTF-16") ? StandardCharsets.UTF_8 : charset;
    } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
      if (!misfit.equals(CodingErrorAction.REPORT)) {
        return StandardCharsets.UTF_8;
      }
      throw new IOException("its encoding " + declared.group(1) + " is not known", e);
    }
  }
}
