package dev.ringout.text;

import dev.ringout.standards.Cautions;
import dev.ringout.standards.CrimpTools.Setting;
import dev.ringout.text.Page.Style;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.words.KitWords;
import dev.ringout.words.UnitTitle;
import dev.ringout.work.ItemSheet;
import dev.ringout.work.WireEnd;
import dev.ringout.work.WorkPapers;
import dev.ringout.work.WorkPapers.Total;
import java.util.ArrayList;
import java.util.List;

/** The papers of the bench as a page on a terminal. */
public final class WorkText {
  private WorkText() {}

  /** The page. */
  public static String write(WorkPapers papers, Look look) {
    Page page = new Page(look);
    page.paragraph("", page.styled(Style.STRONG, UnitTitle.of(papers.harness())));
    page.blank();
    page.paragraph(
        "Work   ",
        Text.of(
            "%s, %s to cut",
            Numbers.count(papers.sheets().size(), "item"),
            Numbers.count(papers.cuts().size(), "wire")));
    page.paragraph("", Cautions.onPageOfHands());
    page.heading("Kit");
    for (Total total : papers.totals()) {
      page.paragraph("  ", KitWords.total(total));
    }
    papers.kit().forEach((what, count) -> page.paragraph("  ", count + " × " + what));
    papers.sheets().forEach(sheet -> sheet(sheet, page));
    return page.toString();
  }

  private static void sheet(ItemSheet sheet, Page page) {
    page.heading(sheet.ref());
    for (ItemSheet.Cavity cavity : sheet.cavities()) {
      String pin = Text.of("  %-6s ", cavity.pin());
      if (cavity.ends().isEmpty() && cavity.jumpers().isEmpty()) {
        page.paragraph(
            pin, cavity.plug().isEmpty() ? "empty" : "empty: sealing plug " + cavity.plug());
      }
      cavity.ends().forEach(end -> page.paragraph(pin, end(end)));
      if (!cavity.jumpers().isEmpty()) {
        page.paragraph(pin, "jumper to " + String.join(", ", cavity.jumpers()));
      }
    }
  }

  private static String end(WireEnd end) {
    List<String> words = new ArrayList<>(List.of(end.wire().name()));
    words.add(end.wire().colour());
    words.add(end.wire().gaugeLabel());
    words.add("to " + end.there());
    words.add(end.contact().isEmpty() ? "" : "contact " + end.contact());
    words.add(end.tool().map(Setting::text).orElse(""));
    words.add(end.strip().isEmpty() ? "" : "strip " + end.strip());
    words.removeIf(String::isEmpty);
    return String.join(", ", words);
  }
}
