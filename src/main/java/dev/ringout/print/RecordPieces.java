package dev.ringout.print;

import dev.ringout.pictures.Html;
import dev.ringout.record.RecordBlock;
import dev.ringout.units.Text;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The pieces of a record as parts of its page. */
final class RecordPieces implements RecordBlock.Cases<String> {
  private static final double PAGE_MM = 186;
  private static final double WIDEST_PHOTOGRAPH_MM = 130;
  private static final double HIGHEST_PHOTOGRAPH_MM = 95;

  /** Of a small one: no larger than on a screen. */
  private static final double MM_OF_A_PIXEL = 25.4 / 96;

  private static final int SHORT = 16;
  private static final Pattern SIZE =
      Pattern.compile("<svg ([^>]*?)width=\"([0-9.]+)mm\" height=\"([0-9.]+)mm\"");

  private static final Pattern ENDLESS = Pattern.compile("\\S{70}");
  private static final Pattern PART_OF_ENDLESS = Pattern.compile("(?:&[a-z]{2,4};|[^\\s&]){40}");

  private final boolean screen;
  private int tables;

  /**
   * Pieces of one page.
   *
   * @param screen whether it is for a screen too, where rows can be chosen
   */
  RecordPieces(boolean screen) {
    this.screen = screen;
  }

  @Override
  public String heading(RecordBlock.Heading heading) {
    return Text.of(
        "<h%1$d id=\"%2$s\">%3$s</h%1$d>\n",
        heading.level(), heading.id(), Html.escaped(heading.text()));
  }

  @Override
  public String verdict(RecordBlock.Verdict verdict) {
    return (verdict.good() ? "<p class=\"verdict\">" : "<p class=\"verdict bad\">")
        + Html.escaped(verdict.words())
        + "</p>\n";
  }

  @Override
  public String words(RecordBlock.Words words) {
    return (words.warns() ? "<p class=\"warns\">" : "<p>") + broken(words.text()) + "</p>\n";
  }

  @Override
  public String picture(RecordBlock.Picture picture) {
    return "<figure>"
        + fitted(picture.svg())
        + "<figcaption>"
        + Html.escaped(picture.caption())
        + "</figcaption></figure>\n";
  }

  /** Its sizes stand with it: what has no photograph stays as it was. */
  @Override
  public String photograph(RecordBlock.Photograph photograph) {
    double wide =
        Math.min(
            photograph.width() * MM_OF_A_PIXEL,
            Math.min(
                WIDEST_PHOTOGRAPH_MM,
                HIGHEST_PHOTOGRAPH_MM * photograph.width() / photograph.height()));
    return Text.of("<figure style=\"width: %.1fmm; max-width: 100%%\">", wide)
        + "<img style=\"width: 100%\" alt=\""
        + Html.escaped(photograph.shows())
        + "\" src=\"data:image/jpeg;base64,"
        + photograph.base64()
        + "\"/><figcaption>"
        + broken(photograph.caption())
        + "</figcaption></figure>\n";
  }

  @Override
  public String signatures(RecordBlock.Signatures signatures) {
    StringBuilder html = new StringBuilder("<table aria-label=\"To sign\"><tbody><tr>");
    for (String who : signatures.who()) {
      html.append("<td class=\"sign\">")
          .append(Html.escaped(who))
          .append("<br/><br/><br/>Date</td>");
    }
    return html.append("</tr></tbody></table>\n").toString();
  }

  @Override
  public String newPage(RecordBlock.NewPage newPage) {
    return "<div class=\"newpage\"></div>\n";
  }

  @Override
  public String pairs(RecordBlock.Pairs pairs) {
    StringBuilder html = new StringBuilder("<table><tbody>\n");
    for (List<String> row : pairs.rows()) {
      html.append("<tr><th scope=\"row\" class=\"pairs\">")
          .append(Html.escaped(row.get(0)))
          .append("</th><td>")
          .append(Html.escaped(row.get(1)))
          .append("</td></tr>\n");
    }
    return html.append("</tbody></table>\n").toString();
  }

  @Override
  public String table(RecordBlock.Table table) {
    tables++;
    String id = "table-" + tables;
    boolean judged = table.stateColumn() >= 0;
    StringBuilder html = new StringBuilder(screen && judged ? chooser(table, id) : "");
    html.append(
        Text.of(
            "<div class=\"scroll%s\"%s><table id=\"%s\"><thead><tr>",
            judged ? " wide" : "",
            screen
                ? " tabindex=\"0\" role=\"region\" aria-label=\""
                    + Html.escaped(table.name() + ", table " + tables)
                    + "\""
                : "",
            id));
    for (String heading : table.headings().subList(0, table.shown())) {
      html.append("<th scope=\"col\">").append(Html.escaped(heading)).append("</th>");
    }
    html.append("</tr></thead><tbody>\n");
    for (List<String> row : table.rows()) {
      html.append(
          row(row.subList(0, table.shown()), judged ? row.get(table.stateColumn()) : "", judged));
    }
    return html.append("</tbody></table></div>\n").toString();
  }

  private String row(List<String> row, String verdict, boolean judged) {
    StringBuilder html =
        new StringBuilder(judged && stands(verdict) ? "<tr class=\"fails\"" : "<tr");
    html.append(screen && judged ? " data-verdict=\"" + Html.escaped(verdict) + "\">" : ">");
    for (String cell : row) {
      html.append(cell.length() <= SHORT ? "<td class=\"short\">" : "<td>")
          .append(broken(cell))
          .append("</td>");
    }
    return html.append("</tr>\n").toString();
  }

  /** Whether a row stands out. */
  static boolean stands(String verdict) {
    return !verdict.equals("conforms");
  }

  /** Of a word that no line can hold the rest stands below; none of the program's is so long. */
  private static String broken(String text) {
    String escaped = Html.escaped(text);
    return ENDLESS.matcher(text).find()
        ? PART_OF_ENDLESS.matcher(escaped).replaceAll("$0<br/>")
        : escaped;
  }

  private static String chooser(RecordBlock.Table table, String id) {
    StringBuilder html =
        new StringBuilder(
            Text.of(
                "<form data-for=\"%1$s\"><label>Find <input type=\"search\"/></label>\n"
                    + "<label>Verdict <select><option value=\"\">all</option>",
                id));
    table.rows().stream()
        .map(row -> row.get(table.stateColumn()))
        .distinct()
        .sorted()
        .forEach(
            state ->
                html.append(Text.of("<option value=\"%1$s\">%1$s</option>", Html.escaped(state))));
    return html.append("</select></label> <output aria-live=\"polite\"></output></form>\n")
        .toString();
  }

  /** Drawings, each no wider than the page. */
  private static String fitted(String svgs) {
    return SIZE.matcher(svgs)
        .replaceAll(
            size -> {
              double width = Double.parseDouble(size.group(2));
              double height = Double.parseDouble(size.group(3));
              double scale = Math.min(1, PAGE_MM / width);
              return Matcher.quoteReplacement(
                  Text.of(
                      "<svg %swidth=\"%.1fmm\" height=\"%.1fmm\"",
                      size.group(1), scale * width, scale * height));
            });
  }
}
