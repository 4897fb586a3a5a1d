package dev.ringout.record;

import java.util.List;

/**
 * The content of a record as the text whose SHA-256 is printed in it: the same whatever form the
 * record is written in, and whatever the parts of this program are called.
 *
 * <p>In UTF-8, a line for each fact: its name, then its values, each behind a tab; in values a
 * backslash, tab, line feed and carriage return stand as {@code \\}, {@code \t}, {@code \n} and
 * {@code \r}. The first line is {@value #FORMAT}; each piece begins with a line {@code piece}. So
 * no two contents have one text. docs/reference/report.md lists the names.
 */
final class CanonicalForm implements RecordBlock.Cases<String> {
  private static final String FORMAT = "ringout-record-content/1";

  private CanonicalForm() {}

  /** The text of some pieces. */
  static String of(List<RecordBlock> blocks) {
    CanonicalForm form = new CanonicalForm();
    StringBuilder text = new StringBuilder(line(FORMAT));
    blocks.forEach(block -> text.append(block.match(form)));
    return text.toString();
  }

  private static String piece(String kind) {
    return line("piece", kind);
  }

  private static String line(String name, String... values) {
    return line(name, List.of(values));
  }

  private static String line(String name, List<String> values) {
    StringBuilder line = new StringBuilder(name);
    values.forEach(value -> line.append('\t').append(escaped(value)));
    return line.append('\n').toString();
  }

  private static String lines(String name, List<List<String>> rows) {
    StringBuilder lines = new StringBuilder();
    rows.forEach(row -> lines.append(line(name, row)));
    return lines.toString();
  }

  private static String escaped(String value) {
    return value
        .replace("\\", "\\\\")
        .replace("\t", "\\t")
        .replace("\n", "\\n")
        .replace("\r", "\\r");
  }

  private static String yesOrNo(boolean is) {
    return is ? "yes" : "no";
  }

  @Override
  public String verdict(RecordBlock.Verdict one) {
    return piece("verdict") + line("words", one.words()) + line("conforms", yesOrNo(one.good()));
  }

  @Override
  public String heading(RecordBlock.Heading one) {
    return piece("heading")
        + line("level", Integer.toString(one.level()))
        + line("words", one.text());
  }

  @Override
  public String words(RecordBlock.Words one) {
    return piece("words") + line("words", one.text()) + line("warns", yesOrNo(one.warns()));
  }

  @Override
  public String pairs(RecordBlock.Pairs one) {
    return piece("pairs") + lines("pair", one.rows());
  }

  @Override
  public String table(RecordBlock.Table one) {
    return piece("table")
        + line("name", one.name())
        + line("headings", one.headings())
        + lines("row", one.rows());
  }

  @Override
  public String picture(RecordBlock.Picture one) {
    return piece("picture") + line("svg", one.svg()) + line("caption", one.caption());
  }

  @Override
  public String signatures(RecordBlock.Signatures one) {
    return piece("signatures") + line("who", one.who());
  }

  @Override
  public String newPage(RecordBlock.NewPage one) {
    return piece("new page");
  }
}
