package dev.ringout.review;

import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.Locale;

/** Revision letters that the drafting standard skips. */
final class RevisionLetter implements Check {
  private static final String SKIPPED = "IOQSXZ";
  private static final String LOOKS_LIKE = "1005-2";

  @Override
  public String rule() {
    return "revision-letter";
  }

  @Override
  public String about() {
    return "the revision is a letter that the drafting standard uses";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    String revision = paper.harness().headerValue("revision").toUpperCase(Locale.ROOT);
    if (revision.isEmpty()) {
      findings.notRun(Lack.REVISION);
      return;
    }
    findings.looked();
    for (int i = 0; i < revision.length(); i++) {
      char letter = revision.charAt(i);
      if (SKIPPED.indexOf(letter) >= 0 && revision.length() <= 2) {
        findings.say(
            Severity.WARNING,
            "header revision",
            Text.of(
                "revision %s: the letter %s is skipped since it is misread; is it %s?",
                revision, letter, LOOKS_LIKE.charAt(SKIPPED.indexOf(letter))),
            "ASME Y14.35, letters I, O, Q, S, X and Z are not used");
      }
    }
  }
}
