package dev.ringout.benchmarks.exam;

import dev.ringout.benchmarks.exam.Exam.Sat;
import dev.ringout.benchmarks.exam.Marker.Claim;
import dev.ringout.benchmarks.exam.Marker.Mark;
import java.util.Arrays;
import java.util.List;

/** The tables of the exam. */
final class Marks {
  static final String HEADING =
      """
      | asked | units | exact | among | wrong | missed | alarms | crashes | certain | of these not so | median s | 99th s | more: median | 90th | not reached |
      | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |""";

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
    int[] more = sat.stream().mapToInt(Sat::more).filter(one -> one >= 0).sorted().toArray();
    for (double share : new double[] {0.5, 0.9}) {
      row.append(" | ")
          .append(
              more.length == 0 ? "-" : Integer.toString(more[(int) (share * (more.length - 1))]));
    }
    row.append(" | ").append(Arrays.stream(more).filter(one -> one >= Exam.NOT_REACHED).count());
    return row.append(" |").toString();
  }

  /** How often the cause that is named first was the one, of wires that are too high. */
  static String firstCauses(List<Sat> sat) {
    List<Claim> first =
        claims(sat).stream()
            .filter(one -> one.text().startsWith(Marker.WHY_HIGH + 0 + " "))
            .toList();
    return "wires too high "
        + first.size()
        + ", the cause named first so in "
        + first.stream().filter(Claim::holds).count();
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

  /**
   * The same as a picture: how often it was so, over what was stated; the line is where both agree.
   */
  static String picture(List<Sat> sat) {
    List<Claim> claims = claims(sat);
    StringBuilder svg =
        new StringBuilder(
            """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 440 440" font-family="sans-serif" font-size="12">
            <rect width="440" height="440" fill="white"/>
            <path d="M40 400H420M40 400V20" stroke="black" fill="none"/>
            <path d="M40 400L420 20" stroke="grey" stroke-dasharray="4"/>
            <text x="180" y="432">stated, %</text>
            <text x="14" y="240" transform="rotate(-90 14 240)">so, %</text>
            """);
    for (int bin = 0; bin < 10; bin++) {
      int from = bin;
      List<Claim> here =
          claims.stream()
              .filter(one -> !one.certain() && Math.min(9, (int) (one.odds() * 10)) == from)
              .toList();
      if (!here.isEmpty()) {
        double mean = here.stream().mapToDouble(Claim::odds).average().orElse(0);
        double so = here.stream().filter(Claim::holds).count() / (double) here.size();
        svg.append("<circle cx=\"").append(Meter.text(40 + 380 * mean, 1));
        svg.append("\" cy=\"").append(Meter.text(400 - 380 * so, 1));
        svg.append("\" r=\"").append(Meter.text(3 + Math.log10(here.size()) * 2, 1));
        svg.append("\"/>\n<text x=\"").append(Meter.text(48 + 380 * mean, 1));
        svg.append("\" y=\"").append(Meter.text(414 - 380 * so, 1));
        svg.append("\">").append(here.size()).append("</text>\n");
      }
    }
    for (int tick = 0; tick <= 100; tick += 20) {
      String along = Meter.text(40 + 3.8 * tick, 1);
      String up = Meter.text(404 - 3.8 * tick, 1);
      svg.append("<text x=\"").append(along).append("\" y=\"416\">").append(tick);
      svg.append("</text>\n<text x=\"16\" y=\"").append(up).append("\">").append(tick);
      svg.append("</text>\n");
    }
    return svg.append("</svg>\n").toString();
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
