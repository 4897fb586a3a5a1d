package dev.ringout.intake;

import dev.ringout.cells.Names;
import dev.ringout.cells.OhmsCell;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.units.Numbers;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The columns that a tester has put beside those that are read: a word of failing in one is not
 * passed over, and a column of results is named.
 */
final class OwnColumns {
  private static final Set<String> FAILING =
      Set.of(
          "FAILS",
          "NOK",
          "NG",
          "N.G",
          "NO GOOD",
          "NOGO",
          "NO GO",
          "NO-GO",
          "REJ",
          "DEFECT",
          "DEFECTIVE",
          "FAULT",
          "FAULTY",
          "UNSATISFACTORY",
          "SHORT",
          "SHORTED",
          "\u00d7",
          "\u274c");

  /** {@code FAIL, flashed over at 300 V}. */
  private static final Pattern BEGINS_FAILING =
      Pattern.compile("(?:FAIL(?:S|ED|URE)?|REJECT(?:S|ED)?|UNSAT|NOT OK|NOT GOOD)\\b.*");

  /** What should be read, or where a switch stands, speaks of no unit. */
  private static final List<String> SAYS_NOTHING_OF_A_UNIT =
      List.of(
          "least",
          "most",
          "min",
          "max",
          "limit",
          "lower",
          "upper",
          "expected",
          "expect",
          "should",
          "nominal",
          "target",
          "required",
          "requirement",
          "position",
          "switch",
          "state");

  private static final Set<String> RESULTS =
      Set.of(
          "result",
          "results",
          "passfail",
          "passed",
          "verdict",
          "status",
          "retest",
          "retested",
          "remark",
          "remarks",
          "comment",
          "comments",
          "judgement",
          "judgment",
          "ok",
          "oknotok",
          "pf",
          "good",
          "accepted",
          "conform",
          "conforms",
          "conforme",
          "qa",
          "qc",
          "io",
          "bestanden",
          "ergebnis",
          "pr\u00fcfergebnis",
          "pruefergebnis",
          "r\u00e9sultat",
          "befund",
          "resultat",
          "resultado",
          "risultato",
          "esito");

  /** What fails in a column of results alone: elsewhere it may be anything. */
  private static final Set<String> FAILING_AS_RESULT =
      Set.of(
          "F",
          "N",
          "NO",
          "FALSE",
          "BAD",
          "KO",
          "REFUSED",
          "SCRAP",
          "VOID",
          "BROKEN",
          "ABORTED",
          "NEIN",
          "FALSCH",
          "NIO",
          "N.I.O",
          "N. I. O",
          "NICHT OK",
          "NICHT BESTANDEN",
          "NON",
          "FAUX");

  /** Columns in which a row is said to have failed, or not to count. */
  private static final Set<String> AGAINST =
      Set.of(
          "void",
          "voided",
          "deleted",
          "invalid",
          "cancelled",
          "canceled",
          "discarded",
          "fail",
          "fails",
          "failed",
          "failure",
          "bad",
          "reject",
          "rejected",
          "nok",
          "nio",
          "defect",
          "defective",
          "faulty");

  private static final Set<String> NOT_SO =
      Set.of("NO", "N", "0", "FALSE", "-", "NEIN", "FALSCH", "NON", "OK", "PASS", "PASSED", "GOOD");

  private final Map<Integer, Integer> cellsOfResults = new LinkedHashMap<>();

  /** Looks through the columns of one row that are not read. */
  void row(Entry entry) {
    entry.forEachUnknown(
        (column, text) -> {
          String heading = Names.key(entry.heading(column));
          if (SAYS_NOTHING_OF_A_UNIT.stream().anyMatch(heading::startsWith)) {
            return;
          }
          boolean isResult = RESULTS.contains(heading);
          String word = word(text);
          if (isFailing(text)
              || (isResult && FAILING_AS_RESULT.contains(word))
              || (AGAINST.contains(heading) && !NOT_SO.contains(word))) {
            entry.error(
                column, "\"" + text + "\" is in a column that is not read; write it in Reading");
          } else if (isResult) {
            cellsOfResults.merge(column, 1, Integer::sum);
          }
        });
  }

  private static String word(String text) {
    return text.toUpperCase(Locale.ROOT).replaceFirst("[\\s.!]+$", "");
  }

  /** Whether a cell says, wherever it stands, that something failed. */
  static boolean isFailing(String text) {
    String word = word(text);
    return FAILING.contains(word)
        || OhmsCell.isFailing(word)
        || BEGINS_FAILING.matcher(word).matches();
  }

  /** Names the columns of results, once the sheet has been read. */
  void report(Table table, Problems problems) {
    cellsOfResults.forEach(
        (column, cells) ->
            problems.add(
                new Problem(
                    table.placeOf(0, column),
                    table.heading(column),
                    Severity.WARNING,
                    "the column \""
                        + table.heading(column)
                        + "\" is not read: "
                        + Numbers.count(cells, "cell"),
                    "")));
  }
}
