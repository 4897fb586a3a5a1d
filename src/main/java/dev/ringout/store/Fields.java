package dev.ringout.store;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The body of an entry: lines of fields with tabs between, of which nothing is lost and nothing is
 * written in two ways.
 */
public final class Fields {
  private Fields() {}

  /** A line of fields. */
  public static String line(String... fields) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < fields.length; i++) {
      if (i > 0) {
        line.append('\t');
      }
      append(line, fields[i]);
    }
    return line.toString();
  }

  private static void append(StringBuilder line, String field) {
    // Half a letter, as damaged files have, is no text that a database could give back.
    String text = new String(field.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '\\' -> line.append("\\\\");
        case '\t' -> line.append("\\t");
        case '\n' -> line.append("\\n");
        case '\r' -> line.append("\\r");
        case '\0' -> line.append("\\0");
        default -> line.append(c);
      }
    }
  }

  /** The lines of a body, each with its fields. */
  public static List<List<String>> of(String body) {
    List<List<String>> lines = new ArrayList<>();
    for (String line : body.split("\n", -1)) {
      List<String> fields = new ArrayList<>();
      for (String field : line.split("\t", -1)) {
        fields.add(plain(field));
      }
      lines.add(fields);
    }
    return lines;
  }

  private static String plain(String field) {
    if (field.indexOf('\\') < 0) {
      return field;
    }
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < field.length(); i++) {
      char c = field.charAt(i);
      if (c != '\\' || i + 1 == field.length()) {
        plain.append(c);
        continue;
      }
      char escaped = field.charAt(++i);
      plain.append(
          switch (escaped) {
            case 't' -> '\t';
            case 'n' -> '\n';
            case 'r' -> '\r';
            case '0' -> '\0';
            default -> escaped;
          });
    }
    return plain.toString();
  }
}
