package dev.ringout.record;

import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.compare.Conceded;
import dev.ringout.compare.IdleConcession;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.Replaced;
import dev.ringout.diagnose.Fault;
import dev.ringout.harness.Effectivity;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.pictures.FacePicture;
import dev.ringout.pictures.JoinPicture;
import dev.ringout.pictures.JoinPicture.Join;
import dev.ringout.pictures.JoinPicture.Look;
import dev.ringout.readings.Reading;
import dev.ringout.readings.Rework;
import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.NewPage;
import dev.ringout.record.RecordBlock.Pairs;
import dev.ringout.record.RecordBlock.Picture;
import dev.ringout.record.RecordBlock.Signatures;
import dev.ringout.record.RecordBlock.Table;
import dev.ringout.record.RecordBlock.Words;
import dev.ringout.review.Remark;
import dev.ringout.review.Review;
import dev.ringout.seal.Digest;
import dev.ringout.seal.Seal;
import dev.ringout.source.Severity;
import dev.ringout.standards.Cautions;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import dev.ringout.words.BlindSentences;
import dev.ringout.words.FaultSentences;
import dev.ringout.words.InsulationNoteSentences;
import dev.ringout.words.NextSentences;
import dev.ringout.words.NotJudgedSentences;
import dev.ringout.words.ReadingPlace;
import dev.ringout.words.RecordLimits;
import dev.ringout.words.Sentences;
import dev.ringout.words.UnitTitle;
import dev.ringout.words.UnprovenSentences;
import dev.ringout.work.ItemSheet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What a record says: one row of pieces, first page first, made once for every form. */
public final class RecordContent {
  private static final int POINTS_DRAWN = 30;
  private static final double LEAST_ODDS_SHOWN = 0.015;
  private static final String NO_STATE = "";
  private static final String STATED = "not stated";

  private final TestRecord record;
  private final RecordLimits limits;
  private final ReadingPlace places;
  private final List<RecordBlock> blocks = new ArrayList<>();
  private String digest = "";

  private RecordContent(TestRecord record) {
    this.record = record;
    this.limits = new RecordLimits(record.result());
    this.places = new ReadingPlace(record.result().readings());
  }

  /** The content of a record, its own digest last. */
  public static RecordContent of(TestRecord record) {
    RecordContent content = new RecordContent(record);
    content.firstPage();
    content.faults();
    content.charts();
    content.next();
    content.unproven();
    content.retests();
    content.remarks();
    content.readings();
    content.sources();
    content.files();
    return content;
  }

  /** Which unit it is of. */
  public String title() {
    return UnitTitle.of(record.result().harness());
  }

  /** The pieces. */
  public List<RecordBlock> blocks() {
    return blocks;
  }

  /** The digest of all that the record says, which is printed at its end. */
  public String digest() {
    return digest;
  }

  /** What failed, by the name of the record in which it did first. */
  public static List<Seal.Failed> failed(TestRecord record, String name) {
    List<Seal.Failed> failed = new ArrayList<>(record.failedBefore());
    Set<String> known = new TreeSet<>();
    failed.forEach(one -> known.add(one.kind() + "\t" + one.subject()));
    List<Judged> failing = new ArrayList<>();
    record.result().comparison().replaced().stream()
        .map(Replaced::earlier)
        .filter(one -> one.outcome().fails())
        .forEach(failing::add);
    record.result().comparison().overtaken().stream()
        .filter(one -> one.outcome().fails())
        .forEach(failing::add);
    failing.addAll(record.result().comparison().failing());
    for (Judged judged : failing) {
      if (known.add(kind(judged) + "\t" + judged.reading().subject())) {
        failed.add(
            new Seal.Failed(
                name,
                kind(judged),
                judged.reading().subject(),
                judged.reading().measured().text()));
      }
    }
    return failed;
  }

  private static String kind(Judged judged) {
    return judged.reading().kind().name().toLowerCase(Locale.ROOT);
  }

  private void firstPage() {
    blocks.add(new Heading(1, "Test record: " + title()));
    blocks.add(
        new RecordBlock.Verdict(
            Sentences.verdict(record.result()), record.result().verdict() == Verdict.CONFORMS));
    doubts().forEach(doubt -> blocks.add(new Words(doubt, true)));
    blocks.add(new Pairs(unit()));
    blocks.add(new Table("Counts", COUNTS, List.of(counts()), -1));
    waivedOnFirstPage();
    blocks.add(new Signatures(List.of("Tester", "Inspector, independent of the tester", "Stamp")));
    blocks.add(new NewPage());
  }

  private static final List<String> COUNTS =
      List.of(
          "Tested",
          "Passed",
          "Accepted out of limits",
          "Failed",
          "Not tested",
          "Not judged",
          "Waived remarks");

  private List<String> counts() {
    long tested =
        record.result().comparison().inForce().stream()
            .filter(one -> one.reading().measured().made())
            .count();
    return List.of(
        "" + tested,
        "" + record.result().comparison().with(Outcome.CONFORMS).size(),
        "" + record.result().comparison().conceded().size(),
        "" + record.result().comparison().failing().size(),
        "" + record.result().comparison().with(Outcome.NOT_TESTED).size(),
        "" + record.result().comparison().with(Outcome.NOT_JUDGED).size(),
        "" + record.review().waived().size());
  }

  private void waivedOnFirstPage() {
    for (Conceded one : record.result().comparison().conceded()) {
      blocks.add(
          new Words("Accepted out of limits: " + Sentences.conceded(one) + cellOf(one), true));
    }
    for (IdleConcession one : record.result().comparison().idleConcessions()) {
      blocks.add(new Words("A waiver that covers nothing: " + Sentences.idle(one), false));
    }
    for (Review.Waived one : record.review().waived()) {
      blocks.add(
          new Words(
              Text.of(
                  "Waived: %s at %s, by %s: %s%s",
                  one.remark().rule(),
                  one.remark().subject(),
                  one.waiver().who(),
                  one.waiver().why(),
                  one.waiver().until().isEmpty() ? "" : ", until " + one.waiver().until()),
              false));
    }
  }

  /** What makes the verdict less than it seems: on the first page, beside it. */
  private List<String> doubts() {
    List<String> doubts = new ArrayList<>();
    record.result().doubts().forEach(doubt -> doubts.add(Sentences.doubt(doubt)));
    long errors = record.review().count(Severity.ERROR);
    if (errors > 0) {
      doubts.add(Text.of("The paper itself has %s: see Remarks.", Numbers.count(errors, "error")));
    }
    return doubts;
  }

  private String value(String name) {
    return record.result().readings().jobs().stream()
        .map(job -> job.value(name))
        .filter(value -> !value.isEmpty())
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static String orStated(String text) {
    return text.isEmpty() ? STATED : text;
  }

  private List<List<String>> unit() {
    var harness = record.result().harness();
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("Unit", orStated(harness.headerValue("title"))));
    rows.add(List.of("Serial number", orStated(value("serial number"))));
    rows.add(
        List.of(
            "Drawing, revision",
            orStated(
                Sentences.named(harness.headerValue("drawing"), harness.headerValue("revision")))));
    rows.add(List.of("Effectivity", orStated(Effectivity.of(harness))));
    rows.add(List.of("Procedure", orStated(value("procedure"))));
    rows.add(List.of("Instruments", orStated(instruments())));
    rows.add(
        List.of(
            "Ranges",
            orStated(
                Sentences.named(
                    value("continuity range").isEmpty()
                        ? ""
                        : "continuity " + value("continuity range"),
                    value("insulation range").isEmpty()
                        ? ""
                        : "insulation " + value("insulation range")))));
    rows.add(
        List.of("Ambient", orStated(Sentences.named(value("temperature"), value("humidity")))));
    rows.add(List.of("Date of the test", record.date().map(LocalDate::toString).orElse(STATED)));
    rows.add(
        List.of(
            "Tester, inspector", orStated(Sentences.named(value("operator"), value("inspector")))));
    rows.add(List.of("Proven", Sentences.coverage(record.result().coverage())));
    return rows;
  }

  /** Each instrument by itself: the due day of one says nothing of another. */
  private String instruments() {
    return record.result().readings().jobs().stream()
        .flatMap(job -> job.instruments().stream())
        .map(
            one ->
                Sentences.named(
                    one.name(),
                    one.number(),
                    one.calibrationDue().isEmpty()
                        ? ""
                        : "calibration due " + one.calibrationDue()))
        .filter(one -> !one.isEmpty())
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private void faults() {
    List<Fault> faults = record.result().diagnosis().faults();
    if (!faults.isEmpty() || !record.result().diagnosis().unexplained().isEmpty()) {
      blocks.add(new Heading(2, "What is wrong"));
    }
    int number = 0;
    for (Fault fault : faults) {
      number++;
      fault(number, fault);
    }
    List<Judged> unexplained = record.result().diagnosis().unexplained();
    if (!unexplained.isEmpty()) {
      blocks.add(new Heading(3, "Failing readings that nothing here explains"));
      blocks.add(readingTable("Unexplained", unexplained));
    }
    if (!faults.isEmpty()) {
      Cautions.published(true).forEach(caution -> blocks.add(new Words(caution.text(), true)));
    }
  }

  private void fault(int number, Fault fault) {
    blocks.add(
        new Heading(
            3,
            Text.of(
                "%d  %s (%s)",
                number,
                FaultSentences.kind(fault).replace('-', ' '),
                fault.finding().certainty().word())));
    blocks.add(new Words(FaultSentences.summary(fault), false));
    blocks.add(new Words("Do: " + FaultSentences.advice(fault), false));
    for (Fault.Alternative other : fault.finding().alternatives()) {
      if (other.odds() >= LEAST_ODDS_SHOWN) {
        blocks.add(
            new Words(
                Text.of(
                    "Or: %s (%s)",
                    FaultSentences.slips(other.slips()), Sentences.percent(other.odds())),
                false));
      }
    }
    blocks.add(readingTable("Fault " + number, fault.finding().readings()));
    faces(number, fault);
    nets(number, fault);
  }

  private void faces(int number, Fault fault) {
    Map<String, Map<String, String>> marks = new TreeMap<>();
    for (Point point : fault.points()) {
      marks.computeIfAbsent(point.ref(), ref -> new TreeMap<>()).put(point.pin(), "" + number);
    }
    for (ItemSheet sheet : record.faces()) {
      Map<String, String> marked = marks.getOrDefault(sheet.ref(), Map.of());
      if (!marked.isEmpty() && sheet.face().isPresent()) {
        blocks.add(
            new Picture(
                FacePicture.of(sheet, sheet.face().get(), marked),
                Text.of(
                    "%s from both sides; marked %d: %s",
                    sheet.ref(), number, String.join(", ", marked.keySet()))));
      }
    }
  }

  /** The nets of a fault as they are listed, and as they were measured. */
  private void nets(int number, Fault fault) {
    Circuit circuit = record.result().circuit();
    Set<Integer> nets = new TreeSet<>();
    for (Point point : fault.points()) {
      nets.add(circuit.normal().of(circuit.index(point)));
    }
    Set<Point> points = new LinkedHashSet<>(fault.points());
    List<Judged> readings = new ArrayList<>();
    for (Judged judged : record.result().comparison().inForce()) {
      if (judged.reading().kind() == Reading.Kind.CONTINUITY && judged.probing().isPair()) {
        int from = judged.probing().from()[0];
        int to = judged.probing().to()[0];
        boolean concerned =
            nets.contains(circuit.normal().of(from)) && nets.contains(circuit.normal().of(to));
        if (concerned && judged.reading().state().isNormal()) {
          readings.add(judged);
        }
      }
    }
    for (int net : nets) {
      for (int point : circuit.normal().pointsOf(net)) {
        if (points.size() < POINTS_DRAWN) {
          points.add(circuit.point(point));
        }
      }
    }
    if (points.size() < 2) {
      return;
    }
    List<Join> listed = new ArrayList<>();
    for (int net : nets) {
      for (int conductor : circuit.normal().conductorsOf(net)) {
        Conductor one = circuit.conductors().get(conductor);
        listed.add(
            new Join(one.from(), one.to(), one.asWire().map(Wire::name).orElse(""), Look.THIN));
      }
    }
    List<Join> measured = new ArrayList<>();
    for (Judged judged : readings) {
      Look look =
          switch (judged.observed()) {
            case JOINED -> judged.outcome() == Outcome.UNEXPECTED_JOIN ? Look.THICK : Look.THIN;
            case APART -> judged.outcome().fails() ? Look.OPEN : Look.BROKEN;
            case RESISTIVE -> Look.POOR;
            case UNKNOWN -> Look.BROKEN;
          };
      if (look != Look.BROKEN) {
        measured.add(
            new Join(
                circuit.point(judged.probing().from()[0]),
                circuit.point(judged.probing().to()[0]),
                judged.reading().measured().text(),
                look));
      }
    }
    String title = "Fault " + number;
    blocks.add(
        new Picture(
            new JoinPicture(points)
                .draw(
                    title,
                    new JoinPicture.Side(title + ", AS LISTED", listed),
                    new JoinPicture.Side(title + ", AS MEASURED", measured),
                    "Right: thin joined; × should join and does not; + joins and should not;"
                        + " ? neither."),
            Text.of("The nets of fault %d as they are listed and as they were measured", number)));
  }

  private void charts() {
    blocks.add(new Heading(2, "To look at"));
    Map<String, Set<String>> faultsAt = new TreeMap<>();
    int number = 0;
    for (Fault fault : record.result().diagnosis().faults()) {
      number++;
      for (Point point : fault.points()) {
        faultsAt.computeIfAbsent(point.ref(), ref -> new LinkedHashSet<>()).add("" + number);
      }
    }
    Map<String, String> marks = new TreeMap<>();
    faultsAt.forEach((ref, numbers) -> marks.put(ref, String.join(",", numbers)));
    if (record.map().places().size() <= 60) {
      blocks.add(
          new Picture(
              RecordCharts.map(record.map(), marks),
              "The unit: items, how many wires run between them, broken lines for halves that are"
                  + " plugged together, and in black the numbers of the faults at each. Not to"
                  + " scale, not as it lies."));
    }
    String joins = RecordCharts.joins(record);
    if (!joins.isEmpty()) {
      blocks.add(
          new Picture(
              joins,
              "Joins: each reading as a share of its limit, by the item of its first probe; rings"
                  + " pass, black lozenges fail; beyond the scale at its end. The worst items first."));
    }
    String insulation = RecordCharts.insulation(record);
    if (!insulation.isEmpty()) {
      blocks.add(
          new Picture(
              insulation,
              "Insulation, the lowest first, on a logarithmic scale: rings pass, black lozenges"
                  + " fail, > is above the meter's range; the short thick line is the limit."));
    }
  }

  private void next() {
    List<List<String>> rows = new ArrayList<>();
    record
        .result()
        .diagnosis()
        .next()
        .forEach(
            one ->
                rows.add(
                    List.of(
                        one.from().toString(),
                        one.to().toString(),
                        one.state().toString(),
                        one.kind().name().toLowerCase(Locale.ROOT),
                        NextSentences.why(record.result().circuit(), one))));
    if (!rows.isEmpty()) {
      blocks.add(new Heading(2, "What to measure next"));
      blocks.add(new Table("Next", List.of("From", "To", "State", "Kind", "Because"), rows, -1));
    }
  }

  private void unproven() {
    List<List<String>> rows = new ArrayList<>();
    for (Judged judged : record.result().comparison().with(Outcome.NOT_TESTED)) {
      rows.add(List.of("not tested", judged.reading().subject(), places.of(judged.reading())));
    }
    for (Judged judged : record.result().comparison().with(Outcome.NOT_JUDGED)) {
      rows.add(
          List.of(
              "not judged",
              judged.reading().subject() + ": " + NotJudgedSentences.why(judged),
              places.of(judged.reading())));
    }
    record
        .result()
        .coverage()
        .unproven()
        .forEach(
            one ->
                rows.add(
                    List.of(
                        "not proven", UnprovenSentences.said(record.result().circuit(), one), "")));
    if (!rows.isEmpty()) {
      blocks.add(new Heading(2, "What is not proven"));
      blocks.add(
          withoutEmptyColumns("Not proven", List.of("How", "What", "Where"), rows, NO_STATE));
    }
    List<List<String>> blind = new ArrayList<>();
    record
        .result()
        .coverage()
        .unprovable()
        .forEach(one -> blind.add(List.of(Sentences.unprovable(record.result().circuit(), one))));
    record.result().diagnosis().blind().forEach(one -> blind.add(List.of(BlindSentences.of(one))));
    blind.add(
        List.of(
            "No direct current sees twisted pairs split, equal windings exchanged, or wires crossed"
                + " inside one net."));
    blocks.add(new Heading(2, "What this test can't see"));
    blocks.add(new Table("Not seen", List.of("What"), blind, -1));
  }

  private String cellOf(Conceded one) {
    return " (" + places.of(one.judged().reading()) + ")";
  }

  /** What was opened between the readings, and which of them are older than that. */
  private void reworks() {
    List<Rework> reworks = record.result().readings().reworks();
    if (reworks.isEmpty()) {
      return;
    }
    blocks.add(new Heading(2, "Opened and touched between the readings"));
    reworks.forEach(one -> blocks.add(new Words(Sentences.rework(one), false)));
    List<Judged> overtaken = record.result().comparison().overtaken();
    if (!overtaken.isEmpty()) {
      blocks.add(new Words("Taken before, at what was opened: these prove nothing of it.", false));
      blocks.add(readingTable("Overtaken", overtaken));
    }
  }

  private void retests() {
    reworks();
    List<List<String>> rows = new ArrayList<>();
    for (Replaced one : record.result().comparison().replaced()) {
      rows.add(
          List.of(
              one.later().reading().subject(),
              one.earlier().reading().measured().text(),
              places.of(one.earlier().reading()),
              one.later().reading().measured().text(),
              places.of(one.later().reading())));
    }
    if (!rows.isEmpty()) {
      blocks.add(new Heading(2, "Readings that were taken again"));
      blocks.add(
          new Table(
              "Again",
              List.of("Between", "First", "Cell", "Last, which stands", "Cell"),
              rows,
              -1));
    }
    if (record.earlier().isEmpty() && record.notes().isEmpty()) {
      return;
    }
    blocks.add(new Heading(2, "Records before this one"));
    List<List<String>> before = new ArrayList<>();
    record.earlier().forEach(one -> before.add(List.of(one.name(), one.verdict(), one.sha256())));
    blocks.add(new Table("Before", List.of("Record", "Verdict", "SHA-256"), before, -1));
    record.earlier().stream()
        .filter(Seal.Earlier::vouchedFor)
        .forEach(
            one ->
                blocks.add(
                    new Words(
                        "Unit of the record before: vouched for (" + one.name() + ")", true)));
    record.notes().forEach(note -> blocks.add(new Words("Done between: " + note, false)));
    List<List<String>> failed = new ArrayList<>();
    for (Seal.Failed one : record.failedBefore()) {
      failed.add(List.of(one.subject(), one.kind(), one.value(), one.inRecord(), now(one)));
    }
    blocks.add(
        new Table(
            "Failed first",
            List.of("Between", "Kind", "First value that failed", "In record", "Now"),
            failed,
            -1));
  }

  private String now(Seal.Failed failed) {
    return record.result().comparison().inForce().stream()
        .filter(
            one ->
                kind(one).equals(failed.kind()) && one.reading().subject().equals(failed.subject()))
        .findFirst()
        .map(one -> one.reading().measured().text() + ", " + RecordLimits.words(one.outcome()))
        .orElse("not read in this record");
  }

  private void remarks() {
    List<List<String>> rows = new ArrayList<>();
    for (Remark remark : record.review().remarks()) {
      if (remark.severity() != Severity.NOTE) {
        rows.add(
            List.of(
                remark.severity().word(),
                remark.rule(),
                remark.subject(),
                remark.text(),
                remark.source()));
      }
    }
    for (Review.Waived one : record.review().waived()) {
      rows.add(
          List.of(
              "waived",
              one.remark().rule(),
              one.remark().subject(),
              Text.of(
                  "%s. Accepted by %s: %s",
                  one.remark().text(), one.waiver().who(), one.waiver().why()),
              one.remark().source()));
    }
    if (!rows.isEmpty()) {
      blocks.add(new Heading(2, "Remarks"));
      blocks.add(
          new Table("Remarks", List.of("Severity", "Rule", "At", "What", "Source"), rows, -1));
    }
    InsulationNoteSentences.of(record.result().insulationNotes())
        .forEach(note -> blocks.add(new Words(note, true)));
  }

  private void readings() {
    blocks.add(new Heading(2, "Readings"));
    blocks.add(new Words(RecordLimits.LEGEND, false));
    blocks.add(readingTable("Readings", record.result().comparison().inForce()));
  }

  private Table readingTable(String name, List<Judged> readings) {
    List<List<String>> rows = new ArrayList<>();
    for (Judged judged : readings) {
      Reading reading = judged.reading();
      RecordLimits.Limit limit = limits.of(judged);
      rows.add(
          List.of(
              reading.step(),
              kind(judged),
              reading.from().toString(),
              reading.to().toString(),
              reading.state().toString(),
              reading.measured().text(),
              limit.words(),
              limit.expected().replace(" to ", "–"),
              limit.from(),
              RecordLimits.words(judged.outcome()),
              reading.by(),
              places.cellOfKind(reading)));
    }
    List<String> headings =
        List.of(
            "Step",
            "Kind",
            "From",
            "To",
            "State",
            "Reading",
            "Limit",
            "Expected",
            "Limit from",
            "Verdict",
            "By",
            "Cell");
    return withoutEmptyColumns(
        name, headings, rows, name.equals("Readings") ? "Verdict" : NO_STATE);
  }

  private static Table withoutEmptyColumns(
      String name, List<String> headings, List<List<String>> rows, String stateColumn) {
    List<Integer> kept = new ArrayList<>();
    for (int column = 0; column < headings.size(); column++) {
      int one = column;
      if (rows.stream().anyMatch(row -> !row.get(one).isEmpty())) {
        kept.add(column);
      }
    }
    List<String> keptHeadings = kept.stream().map(headings::get).toList();
    return new Table(
        name,
        keptHeadings,
        rows.stream().map(row -> kept.stream().map(row::get).toList()).toList(),
        keptHeadings.indexOf(stateColumn));
  }

  private void sources() {
    List<List<String>> rows = new ArrayList<>();
    record.tables().forEach((table, source) -> rows.add(List.of(table, source)));
    blocks.add(new Heading(2, "Tables and their sources"));
    blocks.add(new Table("Sources", List.of("Table", "Source"), rows, -1));
    List<List<String>> rules = new ArrayList<>();
    record.review().checks().forEach((rule, about) -> rules.add(List.of(rule, about)));
    blocks.add(new Heading(2, "Rules held against the paper"));
    blocks.add(new Table("Rules", List.of("Rule", "What"), rules, -1));
  }

  private void files() {
    List<List<String>> rows = new ArrayList<>();
    record.inputs().forEach(input -> rows.add(List.of(input.name(), input.sha256())));
    blocks.add(new Heading(2, "Made from"));
    blocks.add(new Table("Files", List.of("File", "SHA-256"), rows, -1));
    blocks.add(new Words("By " + record.program() + ".", false));
    digest = Digest.of(CanonicalForm.of(blocks));
    blocks.add(new Words("Content digest " + digest, false));
  }
}
