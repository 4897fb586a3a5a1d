package dev.ringout.serve;

import java.nio.charset.StandardCharsets;

/** The name under which a browser keeps an answer (RFC 6266, RFC 8187). */
final class FileName {
  private static final String HEX = "0123456789ABCDEF";

  private FileName() {}

  static String parameters(String name) {
    StringBuilder plain = new StringBuilder();
    StringBuilder full = new StringBuilder();
    name.chars()
        .map(c -> c >= ' ' && c < 0x7f && !isSign(c) ? c : '_')
        .forEach(c -> plain.append((char) c));
    for (byte b : name.replaceAll("[\\p{Cc}/\\\\]", "_").getBytes(StandardCharsets.UTF_8)) {
      if (isPlain(b)) {
        full.append((char) b);
      } else {
        full.append('%').append(HEX.charAt((b >> 4) & 15)).append(HEX.charAt(b & 15));
      }
    }
    return "filename=\"" + plain + "\"; filename*=UTF-8''" + full;
  }

  /** What ends a quoted text, or leads to another folder. */
  private static boolean isSign(int c) {
    return c == '"' || c == '\\' || c == '/' || c == '%';
  }

  private static boolean isPlain(int c) {
    return (c >= 'a' && c <= 'z')
        || (c >= 'A' && c <= 'Z')
        || (c >= '0' && c <= '9')
        || c == '-'
        || c == '.'
        || c == '_';
  }
}
