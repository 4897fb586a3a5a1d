package dev.ringout.bench.exam;

import dev.ringout.bench.exam.Exam.Sat;
import dev.ringout.bench.exam.Marker.Claim;
import dev.ringout.bench.exam.Marker.Mark;
import java.util.List;

/** The tables of the exam. */
final class Marks {
  static final String HEADING =
      """
      | asked | units | exact | among | wrong | missed | alarms | crashes | certain | of these not so | median s | 99th s |
      | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |""";

  private Marks() {}

  static long count(List<Sat> sat, Mark mark) {
    return sat.stream().filter(one -> one.marked().mark() == mark).count();
  }

  static List<Claim> claims(List<Sat> sat) {
    return sat.stream().flatMap(one -> one.marked().claims().stream()).toList();
  }

  static long falselyCertain(List<Sat> sat) {
    return claims(sat).stream().filter(one -> one.certain() && !one.holds()).count();
  }

  static String row(String name, List<Sat> sat) {
    StringBuilder row = new StringBuilder("| ").append(name).append(" | ").append(sat.size());
    for (Mark mark : Mark.values()) {
      row.append(" | ").append(count(sat, mark));
    }
    row.append(" | ").append(claims(sat).stream().filter(Claim::certain).count());
    row.append(" | ").append(falselyCertain(sat));
    double[] seconds = sat.stream().mapToDouble(Sat::seconds).sorted().toArray();
    for (double share : new double[] {0.5, 0.99}) {
      row.append(" | ")
          .append(
              seconds.length == 0
                  ? "-"
                  : Meter.text(seconds[(int) (share * (seconds.length - 1))], 0.001));
    }
    return row.append(" |").toString();
  }

  /** Stated odds in bins of ten points, and how often it was so. */
  static String calibration(List<Sat> sat) {
    StringBuilder table =
        new StringBuilder(
            "| stated | said | so | mean stated | so of these |\n| --- | --- | --- | --- | --- |\n");
    List<Claim> claims = claims(sat);
    for (int bin = 0; bin < 10; bin++) {
      int from = bin;
      bin(
          table,
          bin * 10 + "–" + (bin + 1) * 10 + " %",
          claims.stream()
              .filter(one -> !one.certain() && Math.min(9, (int) (one.odds() * 10)) == from)
              .toList());
    }
    bin(table, "certain", claims.stream().filter(Claim::certain).toList());
    return table.toString();
  }

  private static void bin(StringBuilder table, String name, List<Claim> claims) {
    long so = claims.stream().filter(Claim::holds).count();
    double mean = claims.stream().mapToDouble(Claim::odds).average().orElse(0);
    table.append("| ").append(name).append(" | ").append(claims.size()).append(" | ").append(so);
    table.append(" | ").append(Meter.text(mean * 100, 1)).append(" % | ");
    table
        .append(claims.isEmpty() ? "-" : Meter.text(100.0 * so / claims.size(), 1) + " %")
        .append(" |\n");
  }
}
