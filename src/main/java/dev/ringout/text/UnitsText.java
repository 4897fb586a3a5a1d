package dev.ringout.text;

import dev.ringout.check.CheckResult;
import dev.ringout.jobs.UnitsJob;
import dev.ringout.jobs.UnitsJob.History;
import dev.ringout.jobs.UnitsJob.Later;
import dev.ringout.jobs.UnitsJob.Listed;
import dev.ringout.jobs.UnitsJob.Test;
import dev.ringout.store.Lease;
import dev.ringout.store.StoredUnit;
import dev.ringout.text.Page.Style;
import dev.ringout.units.Numbers;
import dev.ringout.units.ShellWord;
import dev.ringout.units.Text;
import dev.ringout.words.Sentences;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The units of a store, or one's history, on a terminal. */
public final class UnitsText {
  private static final int LONGEST_NAME = 20;

  private UnitsText() {}

  /**
   * The page.
   *
   * @param storeOption as it stands in a command that goes on
   */
  public static String write(UnitsJob.Result result, String storeOption, Look look) {
    Page page = new Page(look);
    if (result.histories().isEmpty()) {
      page.paragraph(
          "", Text.of("%s in %s.", Numbers.count(result.units().size(), "unit"), result.store()));
      units(result, page);
    }
    result.histories().forEach(history -> history(history, storeOption, page));
    return page.toString();
  }

  private static void units(UnitsJob.Result result, Page page) {
    String list = "";
    for (Listed one : result.units()) {
      String its = list(one.unit());
      if (!its.equals(list)) {
        page.blank();
        page.paragraph("", its);
        list = its;
      }
      page.paragraph(
          Text.of("  %-20s  ", name(one.unit().serial())),
          Sentences.named(
              one.asWritten()
                  ? one.verdict().map(StoreText::verdict).orElseGet(() -> underWay(one.leads()))
                  : "NOT AS IT WAS WRITTEN, see ringout store check",
              Numbers.count(one.sessions(), "test"),
              one.started(),
              one.who()));
    }
  }

  private static String underWay(List<Lease> leads) {
    return leads.isEmpty()
        ? "under way, no verdict yet"
        : "under way: "
            + leads.stream()
                .map(
                    one ->
                        Text.visible(one.station() + " (" + one.who() + ")")
                            + (one.isSilent() ? " is silent" : " leads"))
                .collect(Collectors.joining("; "));
  }

  private static String list(StoredUnit unit) {
    return Sentences.named(
        unit.title().isEmpty() ? "a list without a title" : unit.title(),
        unit.drawing(),
        unit.revision().isEmpty() ? "revision not stated" : "revision " + unit.revision());
  }

  private static String name(String text) {
    String name = Text.visible(text);
    return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 1) + "…";
  }

  private static void history(History history, String storeOption, Page page) {
    Optional<CheckResult> now = history.now();
    page.paragraph("", "Unit " + name(history.unit().serial()) + ", " + list(history.unit()));
    page.blank();
    if (now.isPresent()) {
      CheckResult result = now.get();
      Style style = result.verdict() == CheckResult.Verdict.CONFORMS ? Style.GOOD : Style.BAD;
      page.paragraph("Now      ", page.styled(style, Sentences.verdict(result)));
      page.paragraph("Proven   ", Sentences.coverage(result.coverage()));
    } else {
      page.paragraph("Now      ", "its list or a sheet can't be understood any more");
    }
    page.heading("Tests");
    for (Test test : history.tests()) {
      page.paragraph(
          Text.of("  %2d  ", test.session().number()),
          Sentences.named(
              test.session().file(),
              Numbers.count(test.readings(), "reading"),
              test.session().started(),
              test.session().who(),
              test.session().station()));
      page.paragraph(
          "      ",
          test.verdict()
              .map(kept -> "then the unit " + StoreText.verdict(kept) + ", by " + kept.program())
              .orElse("under way, no verdict yet"));
      test.later().forEach(one -> page.paragraph("      ", later(one)));
    }
    String serial = history.unit().serial();
    if (name(serial).equals(serial)) {
      page.paragraph(
          "  ", "All of it: ringout check " + ShellWord.of("unit:" + serial) + storeOption);
    }
  }

  private static String later(Later one) {
    String by = Text.of(" (%s, %s)", line(one.who()), one.at());
    if (one.signature().isPresent()) {
      return Text.of(
          "signed by %s as %s, key %s%s%s",
          line(one.signature().get().who()),
          one.signature().get().role(),
          one.signature().get().fingerprint(),
          Text.of(" (%s)", one.at()),
          one.text().isEmpty() ? "" : "; does not count: " + one.text());
    }
    return one.cell().isEmpty()
        ? "note: " + line(one.text()) + by
        : one.cell() + " taken back: " + line(one.text()) + by;
  }

  /** What somebody said is one line: two could look like what the program says. */
  private static String line(String text) {
    return Text.visible(text.replaceAll("\\s+", " "));
  }
}
