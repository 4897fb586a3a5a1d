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
  public String verdict(RecordBlock.Verdict verdict) {
    return piece("verdict")
        + line("words", verdict.words())
        + line("conforms", yesOrNo(verdict.good()));
  }

  @Override
  public String heading(RecordBlock.Heading heading) {
    return piece("heading")
        + line("level", Integer.toString(heading.level()))
        + line("words", heading.text());
  }

  @Override
  public String words(RecordBlock.Words words) {
    return piece("words") + line("words", words.text()) + line("warns", yesOrNo(words.warns()));
  }

  @Override
  public String pairs(RecordBlock.Pairs pairs) {
    return piece("pairs") + lines("pair", pairs.rows());
  }

  @Override
  public String table(RecordBlock.Table table) {
    return piece("table")
        + line("name", table.name())
        + line("headings", table.headings())
        + lines("row", table.rows());
  }

  @Override
  public String picture(RecordBlock.Picture picture) {
    return piece("picture") + line("svg", picture.svg()) + line("caption", picture.caption());
  }

  /** By the bytes that are kept: how they are made smaller for a page says nothing of the unit. */
  @Override
  public String photograph(RecordBlock.Photograph photograph) {
    return piece("photograph")
        + line("sha256", photograph.sha256())
        + line("shows", photograph.shows())
        + line("caption", photograph.caption());
  }

  @Override
  public String signatures(RecordBlock.Signatures signatures) {
    return piece("signatures") + line("who", signatures.who());
  }

  @Override
  public String newPage(RecordBlock.NewPage newPage) {
    return piece("new page");
  }
}
