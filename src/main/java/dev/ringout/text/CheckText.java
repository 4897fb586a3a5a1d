package dev.ringout.text;

import dev.ringout.check.CheckResult;
import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.check.Doubt;
import dev.ringout.check.Values;
import dev.ringout.compare.Conceded;
import dev.ringout.compare.Contradiction;
import dev.ringout.compare.IdleConcession;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.Replaced;
import dev.ringout.compare.Unproven;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Alternative;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.NextReading.Answer;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Wire;
import dev.ringout.readings.Job;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.readings.Rework;
import dev.ringout.review.Remark;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import dev.ringout.standards.Cautions;
import dev.ringout.text.Page.Style;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import dev.ringout.words.BlindSentences;
import dev.ringout.words.FaultSentences;
import dev.ringout.words.InsulationNoteSentences;
import dev.ringout.words.NextSentences;
import dev.ringout.words.NotJudgedSentences;
import dev.ringout.words.ReadingPlace;
import dev.ringout.words.Sentences;
import dev.ringout.words.UnprovenSentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The page that a mechanic reads at arm's length: verdict, faults, what to measure, what is owed.
 */
public final class CheckText {
  private static final int MOST_NEXT = 12;
  private static final int MOST_IN_COMMAND_LINE = 70;
  private static final int MOST_UNPROVEN = 12;
  private static final int MOST_READINGS = 8;
  private static final int MOST_WIRES = 24;
  private static final int MOST_ALTERNATIVES = 3;
  private static final int LONGEST_UNBROKEN = 60;
  private static final double LEAST_ODDS_SHOWN = 0.015;

  private final CheckResult result;
  private final Values values;
  private final ReadingPlace places;
  private final Page page;
  private final String planOfTheRest;

  private CheckText(CheckResult result, boolean colour, String planOfTheRest) {
    this.result = result;
    this.planOfTheRest = planOfTheRest;
    this.values = result.values();
    this.places = new ReadingPlace(result.readings());
    this.page = new Page(colour);
  }

  /**
   * The page as text, with terminal colours or without.
   *
   * @param planOfTheRest the command that plans what these readings leave open, or empty
   */
  public static String write(CheckResult result, boolean colour, String planOfTheRest) {
    CheckText text = new CheckText(result, colour, planOfTheRest);
    text.headline();
    text.unread();
    text.doubts();
    text.overtaken();
    text.conceded();
    text.faults();
    text.unexplained();
    text.unlike();
    text.insulationNotes();
    text.remarks();
    text.next();
    text.unproven();
    text.record();
    text.cautions();
    return text.page.toString();
  }

  private void headline() {
    Verdict verdict = result.verdict();
    Style style =
        switch (verdict) {
          case CONFORMS -> Style.GOOD;
          case FAULTS -> Style.BAD;
          case INCOMPLETE -> Style.OWED;
        };
    page.line(page.styled(style, Sentences.verdict(result)));
    int accepted = result.comparison().conceded().size();
    page.paragraph(
        "",
        Text.of(
            "%d conform,%s %d fail, %d not tested, %d not judged.",
            result.comparison().with(Outcome.CONFORMS).size(),
            accepted == 0 ? "" : " " + accepted + " accepted out of limits,",
            result.comparison().failing().size(),
            result.comparison().with(Outcome.NOT_TESTED).size(),
            result.comparison().with(Outcome.NOT_JUDGED).size()));
    Harness harness = result.harness();
    page.blank();
    page.paragraph(
        "Harness  ",
        Sentences.named(
            harness.headerValue("title"),
            harness.headerValue("drawing"),
            revision(harness.headerValue("revision"))));
    page.paragraph("Unit     ", unit());
    page.paragraph(
        "Size     ",
        Text.of(
            "%s, %s, %s",
            Numbers.count(result.circuit().size(), "point"),
            Numbers.count(harness.wires().size(), "wire"),
            Numbers.count(result.circuit().normal().count(), "net")));
    page.paragraph("Readings ", readings());
    values();
    page.paragraph("Proven   ", Sentences.coverage(result.coverage()));
  }

  /** How the ohms of the joins stand to what their wires account for. */
  private void values() {
    List<String> parts = new ArrayList<>();
    add(parts, values.count(ValueVerdict.AS_EXPECTED), "as their wires account for");
    add(parts, values.count(ValueVerdict.HIGH), "high");
    add(parts, values.count(ValueVerdict.LOW), "low");
    add(parts, values.count(ValueVerdict.CANT_TELL), "too little for this meter to tell");
    if (values.fixedLimit() > 0) {
      add(
          parts,
          values.fixedLimit(),
          "held against the fixed "
              + Ohms.text(result.harness().limits().fixedClosedMaxOhms())
              + " (no gauge or length, or links alone)");
    }
    if (!parts.isEmpty()) {
      page.paragraph("Ohms     ", String.join(", ", parts));
    }
  }

  private static void add(List<String> parts, long count, String what) {
    if (count > 0) {
      parts.add(count + " " + what);
    }
  }

  /** Joined and within the limit, but with ohms that the wires do not account for. */
  private void unlike() {
    List<Judged> unlike = values.unlike();
    if (unlike.isEmpty()) {
      return;
    }
    page.heading("Joined, but not as the wires account for");
    for (Judged judged : unlike.subList(0, Math.min(unlike.size(), MOST_READINGS))) {
      page.paragraph(
          "  - ",
          Text.of(
              "%s reads %s, %s; expected %s (%s)",
              judged.reading().subject(),
              judged.reading().measured().text(),
              judged.value() == ValueVerdict.LOW ? "low" : "high",
              judged.limit().expected().text(),
              place(judged.reading())));
    }
    if (unlike.size() > MOST_READINGS) {
      page.paragraph("  - ", Text.of("and %d more", unlike.size() - MOST_READINGS));
    }
    boolean anyLow = unlike.stream().anyMatch(judged -> judged.value() == ValueVerdict.LOW);
    page.paragraph(
        "    ",
        anyLow
            ? "Low: another way lies in parallel, or the wire is shorter or thicker than listed, or"
                + " the leads were nulled too far."
            : "High: within the limit of the harness file, and more than copper and contacts have.");
  }

  private void doubts() {
    // Leads that were not nulled make faults of good joints: to be settled before anything else.
    doubts("First of all", one -> one.doubt().ofLeads().isPresent());
    doubts("What makes this less than it seems", one -> one.doubt().ofLeads().isEmpty());
  }

  private void doubts(String heading, Predicate<Doubt.Raised> which) {
    List<Doubt.Raised> shown = result.doubts().stream().filter(which).toList();
    if (!shown.isEmpty()) {
      page.heading(heading);
      shown.forEach(doubt -> page.paragraph("  ! ", Sentences.doubt(doubt)));
    }
  }

  /** The cells that could not be read: nothing is final before they are. */
  private void unread() {
    if (result.readings().unread().isEmpty()) {
      return;
    }
    page.heading("Cells that can't be understood: no verdict before they are mended");
    for (Problem problem : result.readings().unread()) {
      page.paragraph("  ! ", Text.of("%s (%s)", problem.sentence(), problem.place()));
    }
  }

  /** What was opened and touched, and which readings are older than that. */
  private void overtaken() {
    if (result.readings().reworks().isEmpty()) {
      return;
    }
    page.heading("Opened and touched");
    for (Rework rework : result.readings().reworks()) {
      page.paragraph("  - ", Sentences.rework(rework));
    }
    List<Judged> overtaken = result.comparison().overtaken();
    long failed = overtaken.stream().filter(judged -> judged.outcome().fails()).count();
    if (overtaken.isEmpty()) {
      page.paragraph("    ", "Every reading given is told to have been taken after.");
      return;
    }
    page.paragraph(
        "    ",
        Text.of(
            "%s taken before, at what was opened: they prove nothing of it any more%s.",
            Numbers.count(overtaken.size(), "reading"),
            failed == 0 ? "" : Text.of(" (%d of them failed)", failed)));
  }

  /** Readings out of limits that an inspector accepts, and words of his that cover nothing. */
  private void conceded() {
    if (!result.comparison().conceded().isEmpty()) {
      page.heading("Out of limits, and accepted");
      for (Conceded one : result.comparison().conceded()) {
        page.paragraph(
            "  - ", Sentences.conceded(one) + " (" + place(one.judged().reading()) + ")");
      }
    }
    if (!result.comparison().idleConcessions().isEmpty()) {
      page.heading("Waivers that cover nothing");
      for (IdleConcession one : result.comparison().idleConcessions()) {
        page.paragraph("  - ", Sentences.idle(one) + " (" + one.concession().place() + ")");
      }
    }
  }

  private static String revision(String revision) {
    return revision.isEmpty() ? "revision not stated" : "revision " + revision;
  }

  private String unit() {
    String serial = jobValue("serial number");
    return Sentences.named(
        serial.isEmpty() ? "serial number not stated" : "serial " + serial,
        jobRevision(),
        prefixed("read by ", jobValue("operator")),
        prefixed("with ", Sentences.named(jobValue("instrument"), jobValue("instrument number"))));
  }

  private String jobRevision() {
    String revision =
        result.readings().jobs().stream()
            .map(Job::revision)
            .filter(one -> !one.isEmpty())
            .distinct()
            .collect(Collectors.joining(" and "));
    return revision.isEmpty()
        ? "readings do not say against which revision"
        : "read against revision " + revision;
  }

  private static String prefixed(String prefix, String value) {
    return value.isEmpty() ? "" : prefix + value;
  }

  private String jobValue(String name) {
    return result.readings().jobs().stream()
        .map(job -> job.value(name))
        .filter(value -> !value.isEmpty())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private String readings() {
    StringBuilder words =
        new StringBuilder(
            Text.of(
                "%d continuity, %d insulation",
                result.comparison().made(Reading.Kind.CONTINUITY),
                result.comparison().made(Reading.Kind.INSULATION)));
    if (!result.comparison().replaced().isEmpty()) {
      words.append(Text.of(", %d replaced by later ones", result.comparison().replaced().size()));
    }
    if (result.comparison().unquantified() > 0) {
      words.append(Text.of(", %d a word without a value", result.comparison().unquantified()));
    }
    long voltsOfSheet =
        result.readings().readings().stream()
            .filter(reading -> reading.kind() == Reading.Kind.INSULATION)
            .filter(reading -> reading.measured().made() && reading.volts().isEmpty())
            .count();
    boolean sheetGives =
        result.readings().jobs().stream().anyMatch(job -> job.insulationVolts().isPresent());
    if (voltsOfSheet > 0) {
      words.append(
          Text.of(
              "; %d of insulation without volts in their row%s",
              voltsOfSheet, sheetGives ? ", which the sheet Job gives for all" : ": not judged"));
    }
    boolean rangeUnknown =
        result.comparison().inForce().stream()
            .map(Judged::reading)
            .filter(reading -> reading.kind() == Reading.Kind.CONTINUITY)
            .anyMatch(
                reading ->
                    reading.measured() instanceof Measured.OverRange over
                        && over.rangeOhms().isEmpty());
    if (rangeUnknown) {
      words.append("; OL counts as open, since no \"continuity range\" is given");
    }
    return words.toString();
  }

  private void faults() {
    List<Fault> faults = result.diagnosis().faults();
    if (faults.isEmpty()) {
      return;
    }
    page.heading("What is wrong");
    int number = 0;
    for (Fault fault : faults) {
      number++;
      fault(number, fault);
    }
  }

  private void fault(int number, Fault fault) {
    page.blank();
    String lead = Text.of("%2d  ", number);
    page.line(
        lead
            + page.styled(
                Style.BAD, FaultSentences.kind(fault).toUpperCase(Locale.ROOT).replace('-', ' '))
            + "  ("
            + fault.finding().certainty().word()
            + ")");
    page.paragraph("    ", FaultSentences.summary(fault));
    for (Wire wire : fault.wires()) {
      page.paragraph("    wire   ", Sentences.wire(wire));
    }
    shown("    shown  ", fault.finding().readings());
    page.paragraph("    do     ", FaultSentences.advice(fault));
    List<Alternative> alternatives =
        fault.finding().alternatives().stream()
            .filter(alternative -> alternative.odds() >= LEAST_ODDS_SHOWN)
            .toList();
    for (int i = 0; i < Math.min(alternatives.size(), MOST_ALTERNATIVES); i++) {
      Alternative alternative = alternatives.get(i);
      page.paragraph(
          "    or     ",
          Text.of(
              "%s (%s)",
              FaultSentences.slips(alternative.slips()), Sentences.percent(alternative.odds())));
    }
    fault
        .finding()
        .runnerUp()
        .ifPresent(one -> page.paragraph("    not    ", FaultSentences.runnerUp(one)));
    if (alternatives.size() > MOST_ALTERNATIVES) {
      page.paragraph(
          "    or     ",
          Numbers.count(alternatives.size() - (long) MOST_ALTERNATIVES, "less likely explanation"));
    }
  }

  /** Readings one below the other: probes, value, cell. */
  private void shown(String lead, List<Judged> readings) {
    String indent = lead;
    for (Judged judged : readings.subList(0, Math.min(readings.size(), MOST_READINGS))) {
      String read =
          Text.of("%-26s %-9s ", judged.reading().subject(), judged.reading().measured().text());
      String place = place(judged.reading());
      if (indent.length() + read.length() + place.length() <= Page.WIDTH) {
        page.paragraph(indent, read + place);
      } else {
        page.paragraph(indent, read.stripTrailing());
        page.paragraph(" ".repeat(lead.length() + 2), place);
      }
      indent = " ".repeat(lead.length());
    }
    if (readings.size() > MOST_READINGS) {
      page.paragraph(indent, Text.of("and %d more", readings.size() - MOST_READINGS));
    }
  }

  private String inLine(List<Judged> readings) {
    return readings.stream()
        .map(
            judged ->
                Text.of(
                    "%s %s (%s)",
                    judged.reading().subject(),
                    judged.reading().measured().text(),
                    place(judged.reading())))
        .collect(Collectors.joining("; "));
  }

  /** Cell and step, kept on one line where they fit. */
  private String place(Reading reading) {
    String cell = places.cell(reading.place());
    String step = ReadingPlace.step(reading);
    if (step.isEmpty()) {
      return cell;
    }
    boolean fits = cell.length() + step.length() <= LONGEST_UNBROKEN;
    return cell + "," + (fits ? Page.UNBROKEN : ' ') + step.replace(' ', Page.UNBROKEN);
  }

  private void unexplained() {
    if (!result.diagnosis().searchComplete()) {
      page.blank()
          .paragraph(
              "",
              "The search for explanations was cut short: there may be others, as likely as any"
                  + " given here.");
    }
    if (!result.diagnosis().unexplained().isEmpty()) {
      page.heading("Failing readings that nothing here explains");
      shown("  - ", result.diagnosis().unexplained());
    }
    if (!result.comparison().contradictions().isEmpty()) {
      page.heading("Readings that can't all be true");
      for (Contradiction contradiction : result.comparison().contradictions()) {
        page.paragraph(
            "  - ",
            inLine(List.of(contradiction.apart())) + ", yet " + inLine(contradiction.joins()));
      }
    }
  }

  private void insulationNotes() {
    List<String> notes = InsulationNoteSentences.of(result.insulationNotes());
    if (!notes.isEmpty()) {
      page.heading("On the insulation readings");
      notes.forEach(note -> page.paragraph("  ! ", note));
    }
  }

  private void remarks() {
    List<Remark> remarks = result.review().remarks();
    List<Remark> shown =
        remarks.stream().filter(remark -> remark.severity() != Severity.NOTE).toList();
    if (!shown.isEmpty()) {
      page.heading("What is wrong on paper");
      ReviewText.remarks(page, shown);
    }
    int notes = remarks.size() - shown.size();
    if (notes > 0) {
      page.blank()
          .line("ringout review shows " + Numbers.count(notes, "note") + " on the paper besides.");
    }
  }

  private void next() {
    List<NextReading> next = result.diagnosis().next();
    if (next.isEmpty()) {
      return;
    }
    page.heading("What to measure next");
    for (NextReading reading : next.stream().limit(MOST_NEXT).toList()) {
      page.paragraph(
          "  - ",
          Text.of(
              "%s to %s%s%s: %s",
              reading.from(),
              reading.to(),
              reading.state().isNormal() ? "" : " (" + reading.state() + ")",
              reading.kind() == Reading.Kind.INSULATION ? ", insulation" : "",
              NextSentences.why(result.circuit(), reading)));
      for (Answer answer : reading.answers()) {
        page.paragraph("      ", NextSentences.answer(answer));
      }
    }
    if (next.size() > MOST_NEXT) {
      page.paragraph(
          "  - ", Text.of("and %d more (all of them with --json)", next.size() - MOST_NEXT));
    }
  }

  private void unproven() {
    List<Judged> notTested = result.comparison().with(Outcome.NOT_TESTED);
    List<Judged> notJudged = result.comparison().with(Outcome.NOT_JUDGED);
    List<Unproven> unproven = result.coverage().unproven();
    if (!notTested.isEmpty() || !notJudged.isEmpty() || !unproven.isEmpty()) {
      page.heading("What is not yet proven");
    }
    for (Judged judged : notTested) {
      page.paragraph(
          "  - ",
          Text.of("not tested: %s (%s)", judged.reading().subject(), place(judged.reading())));
    }
    for (Judged judged : notJudged) {
      page.paragraph(
          "  - ",
          Text.of(
              "not judged: %s, %s (%s)",
              judged.reading().subject(), NotJudgedSentences.why(judged), place(judged.reading())));
    }
    gaps(unproven);
    if (!planOfTheRest.isEmpty() && !result.coverage().isComplete()) {
      page.paragraph("    ", "To plan what is left:");
      commandLines(planOfTheRest).forEach(line -> page.line("      " + line));
    }
    if (!result.coverage().unprovable().isEmpty()) {
      page.heading("What no reading shows with the parts in place");
      several(
          result.coverage().unprovable().stream()
              .map(one -> Sentences.unprovable(result.circuit(), one))
              .toList());
    }
    if (!result.diagnosis().blind().isEmpty()) {
      page.heading("What these readings can't see");
      several(result.diagnosis().blind().stream().map(BlindSentences::of).toList());
    }
  }

  /** What is not proven, where another line does not say it. */
  private void gaps(List<Unproven> unproven) {
    Set<Integer> netsOfWiresOwed = wiresOwed(unproven);
    boolean noInsulation = result.comparison().made(Reading.Kind.INSULATION) == 0;
    SaidByItself byItself =
        new SaidByItself(
            result.circuit().normal(), netsOfWiresOwed, noInsulation, netsOfFailingInsulation());
    if (noInsulation && result.coverage().insulation().needed() > 0) {
      page.paragraph(
          "  - ",
          Text.of(
              "no insulation reading was made: %s of nets",
              Numbers.count(result.coverage().insulation().needed(), "pair")));
    }
    several(
        unproven.stream()
            .filter(one -> one.match(byItself))
            .map(one -> UnprovenSentences.said(result.circuit(), one))
            .toList());
    if (unproven.stream().anyMatch(Unproven::waitsForJoins)) {
      page.paragraph("  - ", "once these are joined: that their nets are apart from all others");
    }
  }

  /** A command in lines that a shell takes for one, broken before its options. */
  private static List<String> commandLines(String command) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String piece : command.split("(?= --)|(?= -o )", -1)) {
      if (line.length() > 0 && line.length() + piece.length() > MOST_IN_COMMAND_LINE) {
        lines.add(line + " \\");
        line = new StringBuilder(" ");
      }
      line.append(piece);
    }
    lines.add(line.toString());
    return lines;
  }

  /** Of them the failing reading says more than that their insulation is not shown. */
  private Set<Integer> netsOfFailingInsulation() {
    return result.comparison().failing().stream()
        .filter(judged -> judged.reading().kind() == Reading.Kind.INSULATION)
        .flatMap(judged -> judged.probing().points().boxed())
        .map(result.circuit().normal()::of)
        .collect(Collectors.toSet());
  }

  /** Wires that only lack a good reading are named together; gives their nets. */
  private Set<Integer> wiresOwed(List<Unproven> unproven) {
    List<Integer> conductors =
        unproven.stream().flatMapToInt(one -> one.unreadWire().stream()).boxed().toList();
    List<String> wires =
        conductors.stream()
            .map(conductor -> result.circuit().conductors().get(conductor).label())
            .toList();
    if (!wires.isEmpty()) {
      page.paragraph("  - ", "no good reading goes through " + Text.first(wires, MOST_WIRES));
    }
    return conductors.stream()
        .map(conductor -> result.circuit().normal().of(result.circuit().from(conductor)))
        .collect(Collectors.toSet());
  }

  private void several(List<String> lines) {
    lines.stream().limit(MOST_UNPROVEN).forEach(line -> page.paragraph("  - ", line));
    if (lines.size() > MOST_UNPROVEN) {
      page.paragraph(
          "  - ", Text.of("and %d more (all of them with --json)", lines.size() - MOST_UNPROVEN));
    }
  }

  private void record() {
    List<Replaced> changed =
        result.comparison().replaced().stream().filter(Replaced::changed).toList();
    if (!changed.isEmpty()) {
      page.heading("Readings that changed");
      for (Replaced replaced : changed) {
        page.paragraph(
            "  - ",
            Text.of(
                "%s: %s (%s), later %s (%s); the later stands",
                replaced.later().reading().subject(),
                replaced.earlier().reading().measured().text(),
                place(replaced.earlier().reading()),
                replaced.later().reading().measured().text(),
                place(replaced.later().reading())));
      }
    }
  }

  private void cautions() {
    if (result.verdict() == Verdict.CONFORMS) {
      return;
    }
    page.heading("Before you touch the unit");
    boolean insulation = result.comparison().made(Reading.Kind.INSULATION) > 0;
    Cautions.published(insulation).forEach(caution -> page.paragraph("  ! ", caution.text()));
  }
}
