package dev.ringout.benchmarks.exam;

import dev.ringout.benchmarks.exam.Edit.What;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A fault as it is told.
 *
 * @param story 0: by itself
 * @param suspects each by itself may be it, the likeliest first; mostly one
 * @param odds of the suspects; empty where none are given
 * @param alike whether it is said that no reading tells the suspects apart: then all are meant
 * @param others what else it could be
 * @param rows of the sheet Continuity that show it
 */
record Told(
    String code,
    boolean certain,
    int story,
    List<List<Edit>> suspects,
    List<Double> odds,
    boolean alike,
    List<Other> others,
    Set<Integer> rows,
    String summary) {

  /** Another explanation. */
  record Other(double odds, List<Edit> edits) {}

  List<Edit> first() {
    return suspects.isEmpty() ? List.of() : suspects.get(0);
  }

  boolean isOfTheTest() {
    return first().stream().anyMatch(edit -> edit.what() == What.OF_THE_TEST);
  }

  static List<Told> of(Examinee.Paper paper, Box listed) {
    Reader reader = new Reader(listed);
    return paper.list("faults").stream().map(reader::fault).toList();
  }

  /** Reads the faults of the document. */
  private static final class Reader {
    private final Box listed;
    private final Map<String, String> names = new HashMap<>();

    Reader(Box listed) {
      this.listed = listed;
      for (Box.Cond cond : listed.conds) {
        if (cond.sort() != Box.Sort.WIRE) {
          names.put(pair(listed.points.get(cond.a()), listed.points.get(cond.b())), cond.name());
        }
      }
    }

    private static String pair(String a, String b) {
      return a.compareTo(b) < 0 ? a + " " + b : b + " " + a;
    }

    /** The exam's own name of what the program calls by its points. */
    private String name(String label) {
      for (String word : label.split("[ ,]+", -1)) {
        int slash = word.indexOf('/');
        if (slash > 0) {
          String item = word.substring(0, word.indexOf('-') + 1);
          String pair = pair(word.substring(0, slash), item + word.substring(slash + 1));
          return names.getOrDefault(pair, label);
        }
      }
      List<String> points =
          Arrays.stream(label.split("[ ,]+", -1)).filter(listed.numbers::containsKey).toList();
      return points.size() == 2
          ? names.getOrDefault(pair(points.get(0), points.get(1)), label)
          : label;
    }

    private int point(String name) {
      return listed.numbers.getOrDefault(name, -1);
    }

    Told fault(Map<String, Object> json) {
      String code = Examinee.text(json, "code");
      Set<Integer> rows = new LinkedHashSet<>();
      for (String cell : Examinee.texts(json, "readings")) {
        String number = cell.replaceAll("^.*?([0-9]+)$", "$1");
        if (cell.contains(Files.CONTINUITY)) {
          rows.add(Integer.parseInt(number) - 2);
        }
      }
      List<Other> others = new ArrayList<>();
      for (Map<String, Object> one : Examinee.list(json, "alternatives")) {
        List<Edit> edits = new ArrayList<>();
        Examinee.list(one, "slips").forEach(slip -> edits.addAll(slip(slip)));
        others.add(new Other(Examinee.number(one, "odds"), edits));
      }
      return new Told(
          code,
          Examinee.text(json, "certainty").equals("certain"),
          (int) Examinee.number(json, "story"),
          suspects(code, json),
          odds(code, json),
          code.equals("high-wire"),
          others,
          rows,
          Examinee.text(json, "summary"));
    }

    private static List<Double> odds(String code, Map<String, Object> json) {
      return code.equals("high-wire")
          ? Examinee.list(json, "causes").stream()
              .map(cause -> Examinee.number(cause, "odds"))
              .toList()
          : Examinee.numbers(json, "odds");
    }

    private List<List<Edit>> suspects(String code, Map<String, Object> json) {
      List<String> points = Examinee.texts(json, "points");
      List<String> wires = Examinee.texts(json, "wires");
      return switch (code) {
        case "open" -> named(What.OPEN, Examinee.texts(json, "suspects"));
        case "high-resistance" -> named(What.POOR, Examinee.texts(json, "suspects"));
        case "high-wire" ->
            Examinee.list(json, "causes").stream()
                .map(
                    cause ->
                        Examinee.list(cause, "slips").stream()
                            .flatMap(slip -> slip(slip).stream())
                            .toList())
                .toList();
        case "unequal-wire" -> named(What.POOR, wires);
        case "shorted" ->
            List.of(
                List.of(Edit.between(What.SHORT, point(points.get(0)), point(points.get(1)), 0.1)));
        case "miswire" -> List.of(moves(json));
        case "wrong-gauge" ->
            List.of(wires.stream().map(wire -> Edit.of(What.GAUGE, wire)).toList());
        case "low-insulation" -> List.of(leak(points));
        case "wrong-part" ->
            List.of(List.of(part(Examinee.text(json, "part"), Examinee.text(json, "how"))));
        case "wrong-switch" ->
            List.of(
                List.of(
                    selector(
                        Examinee.text(json, "switch"),
                        Examinee.text(json, "how"),
                        Examinee.text(json, "position"))));
        default ->
            Examinee.text(json, "kind").equals("test")
                ? List.of(List.of(Edit.of(What.OF_THE_TEST, code)))
                : List.of(List.of(Edit.of(What.OTHER, code)));
      };
    }

    private List<List<Edit>> named(What what, List<String> labels) {
      return labels.stream().map(label -> List.of(Edit.of(what, name(label), 1))).toList();
    }

    private List<Edit> moves(Map<String, Object> json) {
      List<Edit> moves = new ArrayList<>();
      for (Map<String, Object> move : Examinee.list(json, "moves")) {
        moves.add(
            Edit.moved(
                Examinee.text(move, "wire"),
                point(Examinee.text(move, "from")),
                point(Examinee.text(move, "to"))));
      }
      return moves;
    }

    private List<Edit> leak(List<String> points) {
      List<Edit> leak = new ArrayList<>();
      int one = points.isEmpty() ? -1 : point(points.get(0));
      for (String other : points.subList(Math.min(1, points.size()), points.size())) {
        leak.add(Edit.between(What.LEAK, one, point(other), 1e6));
      }
      return leak.isEmpty() ? List.of(Edit.between(What.LEAK, one, -1, 1e6)) : leak;
    }

    private static Edit part(String label, String how) {
      return switch (how) {
        case "missing" -> Edit.of(What.PART_MISSING, label);
        case "reversed" -> Edit.of(What.PART_TURNED, label);
        case "other-value" -> Edit.of(What.PART_VALUE, label);
        default -> Edit.of(What.OTHER, label);
      };
    }

    private Edit selector(String ref, String how, String position) {
      if (how.equals("stuck")) {
        String at = position.replaceAll("^.*=", "");
        return Edit.of(What.STUCK, ref + "=" + at);
      }
      return Edit.of(What.OTHER, ref);
    }

    private List<Edit> slip(Map<String, Object> slip) {
      List<String> points = Examinee.texts(slip, "points");
      return switch (Examinee.text(slip, "code")) {
        case "opened" -> List.of(Edit.of(What.OPEN, name(Examinee.text(slip, "conductor"))));
        case "misplaced" -> moves(slip);
        case "bridge" ->
            List.of(Edit.between(What.SHORT, point(points.get(0)), point(points.get(1)), 0.1));
        case "poor-joint" -> List.of(Edit.of(What.POOR, name(Examinee.text(slip, "conductor")), 1));
        case "bad-part" -> List.of(part(Examinee.text(slip, "part"), Examinee.text(slip, "how")));
        case "bad-switch" ->
            List.of(
                selector(
                    Examinee.text(slip, "switch"),
                    Examinee.text(slip, "how"),
                    Examinee.text(slip, "position")));
        case "other-gauge" -> List.of(Edit.of(What.GAUGE, Examinee.text(slip, "wire")));
        case "other-length" -> List.of(Edit.of(What.OTHER, Examinee.text(slip, "wire")));
        default -> List.of(Edit.of(What.OF_THE_TEST, Examinee.text(slip, "code")));
      };
    }
  }

  /** All edits of several, without repetitions. */
  static List<Edit> all(List<Told> told) {
    Set<Edit> all = new LinkedHashSet<>();
    told.forEach(one -> all.addAll(one.first()));
    return List.copyOf(all);
  }

  /** Whether two sets of rows share any. */
  boolean isAbout(Set<Integer> cells) {
    Set<Integer> shared = new HashSet<>(rows);
    shared.retainAll(cells);
    return !shared.isEmpty();
  }
}
