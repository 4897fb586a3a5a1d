package dev.ringout.serve;

import dev.ringout.units.Text;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a request is about: strictly, for what two readers of one address understand otherwise is
 * how a guard is passed.
 */
record Target(String path, Map<String, String> query) {
  private static final int MOST_CHARS = 8 * 1024;
  private static final int MOST_FIELDS = 32;
  private static final String SIGNS = "-._~!$&'()*+,;=:@";

  /** Reads an address as it was sent. */
  static Target of(String sent) throws Refused {
    if (sent.length() > MOST_CHARS) {
      throw new Refused(Refusal.LONG_ADDRESS);
    }
    int mark = sent.indexOf('?');
    String path = path(mark < 0 ? sent : sent.substring(0, mark));
    return new Target(path, mark < 0 ? Map.of() : query(sent.substring(mark + 1)));
  }

  private static String path(String sent) throws Refused {
    if (sent.equals("/")) {
      return sent;
    }
    if (!sent.startsWith("/")) {
      throw new Refused(Refusal.ADDRESS);
    }
    StringBuilder path = new StringBuilder();
    for (String segment : sent.substring(1).split("/", -1)) {
      String decoded = decoded(segment, SIGNS);
      if (climbs(decoded) || !Text.visibleInOneLine(decoded).equals(decoded)) {
        throw new Refused(Refusal.ADDRESS);
      }
      path.append('/').append(decoded);
    }
    return path.toString();
  }

  private static boolean climbs(String segment) {
    return segment.isEmpty()
        || segment.equals(".")
        || segment.equals("..")
        || segment.indexOf('/') >= 0
        || segment.indexOf('\\') >= 0;
  }

  private static Map<String, String> query(String sent) throws Refused {
    Map<String, String> query = new LinkedHashMap<>();
    if (sent.isEmpty()) {
      return query;
    }
    for (String field : sent.split("&", -1)) {
      int equals = field.indexOf('=');
      String name = value(equals < 0 ? field : field.substring(0, equals));
      String value = equals < 0 ? "" : value(field.substring(equals + 1));
      if (query.put(name, value) != null || query.size() > MOST_FIELDS) {
        throw new Refused(Refusal.ADDRESS);
      }
    }
    return query;
  }

  private static String value(String sent) throws Refused {
    String value = decoded(sent.replace("+", "%20"), SIGNS + "/?");
    if (!Text.visible(value).equals(value)) {
      throw new Refused(Refusal.ADDRESS);
    }
    return value;
  }

  private static String decoded(String sent, String signs) throws Refused {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(sent.length());
    for (int i = 0; i < sent.length(); i++) {
      char c = sent.charAt(i);
      if (c == '%') {
        bytes.write(16 * digit(sent, i + 1) + digit(sent, i + 2));
        i += 2;
      } else if (isLetterOrDigit(c) || signs.indexOf(c) >= 0) {
        bytes.write(c);
      } else {
        throw new Refused(Refusal.ADDRESS);
      }
    }
    try {
      ByteBuffer all = ByteBuffer.wrap(bytes.toByteArray());
      return StandardCharsets.UTF_8.newDecoder().decode(all).toString();
    } catch (CharacterCodingException e) {
      throw new Refused(Refusal.ADDRESS);
    }
  }

  private static int digit(String sent, int at) throws Refused {
    int value =
        at < sent.length() && sent.charAt(at) < 0x80 ? Character.digit(sent.charAt(at), 16) : -1;
    if (value < 0) {
      throw new Refused(Refusal.ADDRESS);
    }
    return value;
  }

  private static boolean isLetterOrDigit(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
  }
}
