package dev.ringout.text;

import dev.ringout.jobs.AddJob;
import dev.ringout.jobs.KeptVerdict;
import dev.ringout.jobs.LaterJob;
import dev.ringout.jobs.StationJob;
import dev.ringout.jobs.StoreCare;
import dev.ringout.store.Entry;
import dev.ringout.store.Parted;
import dev.ringout.store.StoreFinding;
import dev.ringout.store.StoreState;
import dev.ringout.store.Stores;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.words.Sentences;
import dev.ringout.words.StoreWords;
import dev.ringout.words.UnitWords;

/** What was done with a store, on a terminal. */
public final class StoreText {
  private static final int LONGEST_BODY = 80;
  private static final int HASH_SHOWN = 12;

  private StoreText() {}

  /** What became of each sheet. */
  public static String added(AddJob.Result result, Look look) {
    Page page = new Page(look);
    for (AddJob.AddedSheet sheet : result.sheets()) {
      page.paragraph(
          "",
          Text.of(
              "%s: %s%s",
              sheet.file(),
              sheet.unit().isEmpty() ? "" : "unit " + Text.visible(sheet.unit()) + ", ",
              state(sheet)));
    }
    long added = result.sheets().stream().filter(one -> one.state() == AddJob.State.ADDED).count();
    page.paragraph(
        "",
        Text.of(
            "%s added, %d there already, %d refused.",
            Numbers.count(added, "sheet"),
            result.sheets().stream().filter(one -> one.state() == AddJob.State.WAS_THERE).count(),
            result.sheets().stream().filter(one -> one.state() == AddJob.State.REFUSED).count()));
    return page.toString();
  }

  private static String state(AddJob.AddedSheet sheet) {
    return switch (sheet.state()) {
      case ADDED -> "added; the unit " + sheet.verdict().map(StoreText::verdict).orElse("");
      case WAS_THERE -> "was there already, nothing added";
      case REFUSED -> "refused, nothing added";
    };
  }

  static String verdict(KeptVerdict verdict) {
    return UnitWords.verdict(
        verdict.verdict(),
        verdict.faults(),
        verdict.notProven(),
        verdict.conceded(),
        verdict.insulationTest());
  }

  /** What a station carries along now. */
  public static String station(StationJob.Result result, Look look) {
    Page page = new Page(look);
    page.paragraph(
        "",
        Text.of(
            "Station %s carries %s%s.",
            result.name(),
            Numbers.count(result.job().rows().size(), "row"),
            result.isNew() ? "; kept" : ", as before; nothing added"));
    result.job().rows().forEach((name, value) -> page.paragraph("  " + name + "  ", value));
    return page.toString();
  }

  /** Whether everything is as it was written. */
  public static String state(String shown, StoreState state, Look look) {
    Page page = new Page(look);
    page.paragraph(
        "",
        state.findings().isEmpty()
            ? "WHOLE. Every entry is as it was written."
            : Text.of("NOT AS WRITTEN: %s.", Numbers.count(state.findings().size(), "finding")));
    page.blank();
    page.paragraph("Store    ", shown);
    page.paragraph("Holds    ", StoreWords.size(state));
    page.paragraph("Digest   ", state.digest());
    if (!state.findings().isEmpty()) {
      page.heading("What is wrong");
    }
    for (StoreFinding finding : state.findings()) {
      page.paragraph("  - ", StoreWords.finding(finding));
    }
    return page.toString();
  }

  /** What a copy came to. */
  public static String copied(StoreCare.Copied copied, Look look) {
    Page page = new Page(look);
    page.paragraph(
        "",
        copied.isSame()
            ? Text.of("COPIED: %s. Both hold the same, as it was written.", amount(copied.copy()))
            : copied.isDone()
                ? Text.of(
                    "COPIED: %s. TO holds all of FROM as it was written, and more.",
                    amount(copied.copy()))
                : Text.of(
                    "NOT ALL COPIED: %s copied; see below. Nothing was written over.",
                    amount(copied.copy())));
    page.paragraph("From     ", StoreWords.size(copied.from()));
    page.paragraph("         ", copied.from().digest());
    page.paragraph("To       ", StoreWords.size(copied.to()));
    page.paragraph("         ", copied.to().digest());
    copied.copy().parted().forEach(one -> parted(one, page));
    copied.from().findings().forEach(one -> page.paragraph("  - ", StoreWords.finding(one)));
    copied.to().findings().forEach(one -> page.paragraph("  - ", StoreWords.finding(one)));
    return page.toString();
  }

  /** What a file holds that one unit was archived in. */
  public static String archived(String file, StoreState state, Look look) {
    Page page = new Page(look);
    page.paragraph("", "ARCHIVED: " + file + " holds all of the unit, as it was written.");
    page.paragraph("Holds    ", StoreWords.size(state));
    page.paragraph("Digest   ", state.digest());
    return page.toString();
  }

  /** What both have in one place, one below the other. */
  private static void parted(Parted one, Page page) {
    page.paragraph("  - ", StoreWords.finding(one.finding()));
    one.from().ifPresent(entry -> page.paragraph("      FROM has  ", entry(entry)));
    one.to().ifPresent(entry -> page.paragraph("      TO has    ", entry(entry)));
  }

  private static String entry(Entry entry) {
    // What is kept of a passphrase is told nobody.
    String said =
        entry.kind().equals("passphrase") ? entry.body().split("\t", -1)[0] : entry.body();
    String body = Text.visible(said.replaceAll("\\s+", " "));
    return Sentences.named(
        entry.kind(),
        entry.at(),
        Text.visible(entry.who()),
        body.length() <= LONGEST_BODY ? body : body.substring(0, LONGEST_BODY) + "…",
        "hash " + entry.hash().substring(0, HASH_SHOWN));
  }

  private static String amount(Stores.Copy copy) {
    return Numbers.count(copy.sessions(), "test")
        + (copy.grown() == 0 ? "" : ", and more of " + Numbers.count(copy.grown(), "test"))
        + (copy.handedOver() == 0
            ? ""
            : " (" + copy.handedOver() + " as the next of a unit that went on in TO as well)");
  }

  /** What was said of a unit afterwards. */
  public static String later(LaterJob.Result result, Look look) {
    Page page = new Page(look);
    String serial = result.unit().serial();
    page.paragraph("", "Unit " + serial + ": " + result.what().match(new Done()));
    page.paragraph("", "It now " + verdict(result.verdict()) + ".");
    return page.toString();
  }

  private static final class Done implements LaterJob.What.Cases<String> {
    @Override
    public String note(LaterJob.What.Note what) {
      return "noted.";
    }

    @Override
    public String takeBack(LaterJob.What.TakeBack what) {
      return Text.of(
          "%s taken back; what was read of the same points before does not count either."
              + " Read them again.",
          Numbers.count(what.cells().size(), "reading"));
    }

    @Override
    public String sign(LaterJob.What.Sign what) {
      return "signed, with all that was read of it so far.";
    }
  }
}
