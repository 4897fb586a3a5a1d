package dev.ringout.jobs;

import dev.ringout.check.CheckResult;
import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.Fields;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was shown of a unit when its readings were brought in. It is kept beside them; a verdict is
 * always derived again.
 *
 * @param program that showed it
 * @param verdict absent where a later program kept another word
 * @param conceded readings out of limits that an inspector accepts
 * @param insulationTest whether the list asks for one
 */
public record KeptVerdict(
    String program,
    Optional<Verdict> verdict,
    int faults,
    int failing,
    int notProven,
    int conceded,
    boolean insulationTest) {
  private static final String VERDICT = "verdict";
  private static final String PROGRAM = "program";
  private static final String FAULTS = "faults";
  private static final String FAIL = "fail";
  private static final String NOT_PROVEN = "not proven";
  private static final String CONCEDED = "accepted out of limits";
  private static final String INSULATION_TEST = "insulation test";
  private static final String NONE = "none";

  static KeptVerdict of(CheckResult result) {
    return new KeptVerdict(
        Program.text(),
        Optional.of(result.verdict()),
        result.diagnosis().faults().size(),
        result.comparison().failing().size(),
        result.coverage().unproven().size(),
        result.comparison().conceded().size(),
        result.harness().limits().demands().insulationTest());
  }

  /** As the body of an entry. */
  String body() {
    return String.join(
        "\n",
        List.of(
            Fields.line(PROGRAM, program),
            Fields.line(VERDICT, verdict.map(Verdict::word).orElse("")),
            Fields.line(FAULTS, Integer.toString(faults)),
            Fields.line(FAIL, Integer.toString(failing)),
            Fields.line(NOT_PROVEN, Integer.toString(notProven)),
            Fields.line(CONCEDED, Integer.toString(conceded)),
            Fields.line(INSULATION_TEST, insulationTest ? "" : NONE)));
  }

  /** That which a test was first shown; absent where it was shown none. */
  public static Optional<KeptVerdict> firstIn(List<Entry> entries) {
    return entries.stream()
        .filter(one -> one.is(EntryKind.VERDICT))
        .flatMap(one -> of(one.body()).stream())
        .findFirst();
  }

  /** Of an entry's body; absent where there is none. */
  static Optional<KeptVerdict> of(String body) {
    if (body.isEmpty()) {
      return Optional.empty();
    }
    Map<String, String> fields = new LinkedHashMap<>();
    for (List<String> line : Fields.of(body)) {
      fields.put(line.get(0), line.size() > 1 ? line.get(1) : "");
    }
    return Optional.of(
        new KeptVerdict(
            fields.getOrDefault(PROGRAM, ""),
            Arrays.stream(Verdict.values())
                .filter(one -> one.word().equals(fields.get(VERDICT)))
                .findFirst(),
            number(fields, FAULTS),
            number(fields, FAIL),
            number(fields, NOT_PROVEN),
            number(fields, CONCEDED),
            !NONE.equals(fields.get(INSULATION_TEST))));
  }

  private static int number(Map<String, String> fields, String name) {
    String text = fields.getOrDefault(name, "");
    return text.matches("\\d{1,9}") ? Integer.parseInt(text) : 0;
  }
}
