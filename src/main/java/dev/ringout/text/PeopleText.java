package dev.ringout.text;

import dev.ringout.jobs.PeopleJob;
import dev.ringout.people.Member;
import dev.ringout.units.Text;
import dev.ringout.words.PeopleWords;

/** The people of a shop, on a terminal. */
public final class PeopleText {
  private static final int DAY = 10;

  private PeopleText() {}

  /** How somebody stands after something was said. */
  public static String done(Member member, Look look) {
    Page page = new Page(look);
    page.paragraph("", Text.of("%s: %s.", member.name(), PeopleWords.standing(member)));
    return page.toString();
  }

  /** All of them; and where it was asked for all that was said. */
  public static String write(PeopleJob.Listed listed, Look look) {
    Page page = new Page(look);
    page.paragraph(
        "",
        Text.of(
            "%s in %s.",
            listed.members().size() == 1 ? "1 person" : listed.members().size() + " people",
            listed.store()));
    for (Member member : listed.members()) {
      page.paragraph(
          Text.of("  %-24s  ", member.name()),
          Text.of(
              "%s; since %s",
              PeopleWords.standing(member),
              member.added().substring(0, Math.min(DAY, member.added().length()))));
    }
    if (!listed.history().isEmpty()) {
      page.blank();
      listed
          .history()
          .forEach(entry -> page.paragraph("  " + entry.at() + "  ", PeopleWords.said(entry)));
    }
    return page.toString();
  }
}
