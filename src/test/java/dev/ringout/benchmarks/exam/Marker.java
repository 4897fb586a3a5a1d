package dev.ringout.benchmarks.exam;

import dev.ringout.benchmarks.exam.Edit.What;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Marks a paper: what was told against what was planted. */
final class Marker {
  /** The mark of one case. */
  enum Mark {
    /** What was planted and nothing else, or what no meter could tell from it. */
    EXACT,
    /** Not first, but among what it could be. */
    AMONG,
    /** Something is told, and it is not so. */
    WRONG,
    /** Nothing is told. */
    MISSED,
    /** A good unit has a fault. */
    ALARM,
    /** No usable answer. */
    CRASH
  }

  /**
   * Something that was said to be so.
   *
   * @param odds as stated; 1 where it is called certain
   */
  record Claim(double odds, boolean certain, boolean holds, String text) {}

  /** The mark and every claim. */
  record Marked(Mark mark, List<Claim> claims) {}

  /** What a claim why a wire is too high begins with; then its number, the likeliest 0. */
  static final String WHY_HIGH = "why high #";

  private final Box listed;
  private final Box unit;
  private final List<Edit> planted;
  private final Set<Integer> spoilt;
  private final boolean leadsAreOff;
  private final List<Told> told;

  Marker(
      Box listed, List<Edit> planted, Set<Integer> spoilt, boolean leadsAreOff, List<Told> told) {
    this.listed = listed;
    this.unit = Edit.applied(listed, planted);
    this.planted = planted;
    this.spoilt = spoilt;
    this.leadsAreOff = leadsAreOff;
    this.told = told;
  }

  /** The points that a difference is about. */
  static List<Integer> points(Box box, Edit edit) {
    List<Integer> points = new ArrayList<>();
    Stream.of(edit.a(), edit.b()).filter(point -> point >= 0).forEach(points::add);
    for (Box.Cond cond : box.conds) {
      if (cond.name().equals(edit.name())
          || (edit.what() == What.STUCK && cond.position().startsWith(ref(edit.name()) + "="))) {
        points.add(cond.a());
        points.add(cond.b());
      }
    }
    for (Box.Part part : box.parts) {
      if (part.ref().equals(edit.name())) {
        points.add(part.a());
        points.add(part.k());
      }
    }
    return points;
  }

  private static String ref(String position) {
    return position.replaceAll("=.*$", "");
  }

  /** Whether two units join the same in every state. */
  static boolean sameJoins(Box one, Box other) {
    Set<Integer> all = new HashSet<>();
    for (int point = 0; point < one.points.size(); point++) {
      all.add(point);
    }
    return sameJoins(one, other, all);
  }

  private static boolean sameJoins(Box one, Box other, Set<Integer> points) {
    for (String state : one.states()) {
      Joined mine = one.joined(state);
      Joined theirs = other.joined(state);
      Map<Integer, Integer> there = new LinkedHashMap<>();
      Map<Integer, Integer> back = new LinkedHashMap<>();
      for (int point : points) {
        int a = mine.of(point);
        int b = theirs.of(point);
        if (there.getOrDefault(a, b) != b || back.getOrDefault(b, a) != a) {
          return false;
        }
        there.put(a, b);
        back.put(b, a);
      }
    }
    return true;
  }

  Marked mark(boolean unexplained, boolean saysFaults) {
    return new Marked(theMark(unexplained, saysFaults), claims());
  }

  private Mark theMark(boolean unexplained, boolean saysFaults) {
    List<Told> ofTheUnit = told.stream().filter(one -> !one.isOfTheTest()).toList();
    List<Told> ofTheTest = told.stream().filter(Told::isOfTheTest).toList();
    if (planted.isEmpty() && spoilt.isEmpty()) {
      boolean good =
          ofTheUnit.isEmpty()
              && !unexplained
              && (told.isEmpty() ? !saysFaults : leadsAreOff && ofTheTest.size() == 1);
      return good ? Mark.EXACT : Mark.ALARM;
    }
    if (told.isEmpty()) {
      return Mark.MISSED;
    }
    boolean sheet =
        spoilt.isEmpty()
            ? ofTheTest.isEmpty() || (leadsAreOff && ofTheTest.size() == 1)
            : !ofTheTest.isEmpty() && ofTheTest.stream().allMatch(one -> one.isAbout(spoilt));
    if (sheet && !unexplained && asMeant(ofTheUnit).stream().anyMatch(this::isSo)) {
      return Mark.EXACT;
    }
    return isAmong(ofTheUnit) && (spoilt.isEmpty() || sheet) ? Mark.AMONG : Mark.WRONG;
  }

  /** What is told, in each way that is meant. */
  private static List<List<Edit>> asMeant(List<Told> told) {
    List<List<Edit>> ways = List.of(List.of());
    for (Told one : told) {
      List<List<Edit>> more = new ArrayList<>();
      for (List<Edit> before : ways) {
        for (List<Edit> meant : one.alike() ? one.suspects() : List.of(one.first())) {
          more.add(Stream.concat(before.stream(), meant.stream()).distinct().toList());
        }
      }
      ways = more;
    }
    return ways;
  }

  /** Whether these differences make what was planted. */
  private boolean isSo(List<Edit> edits) {
    List<Edit> joins = edits.stream().filter(edit -> edit.what().joins()).toList();
    if (!sameJoins(Edit.applied(listed, joins), unit)) {
      return false;
    }
    List<Edit> values = edits.stream().filter(edit -> !edit.what().joins()).toList();
    List<Edit> toFind = planted.stream().filter(edit -> !edit.what().joins()).toList();
    return toFind.stream().allMatch(one -> values.stream().anyMatch(other -> isLike(one, other)))
        && values.stream().allMatch(one -> toFind.stream().anyMatch(other -> isLike(other, one)));
  }

  private boolean isLike(Edit real, Edit said) {
    if (real.what() != said.what()) {
      return false;
    }
    if (real.what() == What.LEAK) {
      Joined net = unit.joined("");
      return Stream.of(said.a(), said.b())
          .filter(point -> point >= 0)
          .allMatch(point -> net.same(point, real.a()) || net.same(point, real.b()));
    }
    return real.name().equals(said.name());
  }

  /** Whether some choice of suspects and alternatives makes what was planted. */
  private boolean isAmong(List<Told> ofTheUnit) {
    List<List<Edit>> choices = List.of(List.of());
    Set<Integer> stories = new HashSet<>();
    for (Told one : ofTheUnit) {
      List<List<Edit>> mine = new ArrayList<>();
      boolean firstOfStory = one.story() == 0 || stories.add(one.story());
      mine.addAll(one.suspects());
      if (firstOfStory) {
        one.others().forEach(other -> mine.add(other.edits()));
      }
      List<List<Edit>> more = new ArrayList<>();
      for (List<Edit> before : choices) {
        for (List<Edit> choice : mine) {
          if (more.size() < 400) {
            more.add(Stream.concat(before.stream(), choice.stream()).toList());
          }
        }
      }
      choices = more;
    }
    return choices.stream().anyMatch(choice -> isSo(choice) || isSo(replacing(choice, ofTheUnit)));
  }

  /** An alternative stands in the place of the whole story. */
  private static List<Edit> replacing(List<Edit> choice, List<Told> told) {
    List<Edit> left = new ArrayList<>(choice);
    for (Told one : told) {
      for (Told.Other other : one.others()) {
        if (!other.edits().isEmpty() && left.containsAll(other.edits())) {
          told.stream()
              .filter(same -> same.story() > 0 && same.story() == one.story())
              .forEach(same -> left.removeAll(same.first()));
          left.addAll(other.edits());
        }
      }
    }
    return left.stream().distinct().toList();
  }

  private List<Claim> claims() {
    List<Claim> claims = new ArrayList<>();
    Set<Integer> stories = new HashSet<>();
    for (Told one : told) {
      if (one.alike()) {
        claims.addAll(whyHigh(one));
      }
      if (one.certain()) {
        boolean holds = one.alike() ? anySuspect(one) : holds(one, one.first(), List.of());
        claims.add(new Claim(1, true, holds, one.summary()));
        continue;
      }
      if (one.story() > 0 && !stories.add(one.story())) {
        continue;
      }
      List<Told> story =
          told.stream()
              .filter(same -> same.equals(one) || (one.story() > 0 && same.story() == one.story()))
              .toList();
      if (!one.others().isEmpty()) {
        double left = 1 - one.others().stream().mapToDouble(Told.Other::odds).sum();
        boolean all = story.stream().allMatch(same -> anySuspect(same));
        claims.add(new Claim(left, false, all, one.summary()));
        for (Told.Other other : one.others()) {
          claims.add(
              new Claim(other.odds(), false, holds(one, other.edits(), story), "or: " + other));
        }
      } else if (!one.alike() && one.odds().size() == one.suspects().size()) {
        for (int at = 0; at < one.odds().size(); at++) {
          claims.add(
              new Claim(
                  one.odds().get(at),
                  false,
                  holds(one, one.suspects().get(at), List.of()),
                  one.summary() + " #" + at));
        }
      }
    }
    return claims;
  }

  /** Why a wire is too high, of those that are: each cause with its odds. */
  private List<Claim> whyHigh(Told one) {
    List<Claim> claims = new ArrayList<>();
    for (int at = 0; at < one.suspects().size() && anySuspect(one); at++) {
      claims.add(
          new Claim(
              one.odds().get(at),
              false,
              holds(one, one.suspects().get(at), List.of()),
              WHY_HIGH + at + " " + one.summary()));
    }
    return claims;
  }

  private boolean anySuspect(Told one) {
    return one.suspects().stream().anyMatch(edits -> holds(one, edits, List.of()));
  }

  /** Whether something told is so, where the rest that is told stands. */
  private boolean holds(Told one, List<Edit> edits, List<Told> replaced) {
    if (edits.isEmpty()) {
      return false;
    }
    if (edits.stream().anyMatch(edit -> edit.what() == What.OF_THE_TEST)) {
      return one.isAbout(spoilt) || (leadsAreOff && one.code().equals("leads-not-nulled"));
    }
    if (edits.stream().anyMatch(edit -> !edit.what().joins())) {
      return edits.stream()
          .filter(edit -> !edit.what().joins())
          .allMatch(edit -> planted.stream().anyMatch(real -> isLike(real, edit)));
    }
    if (planted.containsAll(edits)) {
      return true;
    }
    List<Edit> all =
        new ArrayList<>(
            Told.all(
                told.stream()
                    .filter(other -> !other.equals(one) && !replaced.contains(other))
                    .toList()));
    all.addAll(edits);
    Set<Integer> about = new HashSet<>();
    for (String state : listed.states()) {
      Joined net = listed.joined(state);
      for (Edit edit : edits) {
        for (int mine : points(listed, edit)) {
          for (int point = 0; point < listed.points.size(); point++) {
            if (net.same(point, mine)) {
              about.add(point);
            }
          }
        }
      }
    }
    List<Edit> joins = all.stream().filter(edit -> edit.what().joins()).toList();
    return sameJoins(Edit.applied(listed, joins), unit, about);
  }
}
