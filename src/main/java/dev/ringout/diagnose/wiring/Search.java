package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.wiring.Arrangements.Supposed;
import dev.ringout.diagnose.wiring.Slip.Rearranged;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Finds the cheapest sets of slips that explain every reading: consistency-based diagnosis (R.
 * Reiter, "A Theory of Diagnosis from First Principles", Artificial Intelligence 32, 1987) by a
 * best-first search. A set grows by the slips that mend its first contradicted reading; its promise
 * is its cost plus the least that the nets still wrong must cost, so the first set that explains
 * everything is the cheapest.
 */
final class Search {
  /** No explanation costs too much. */
  static final double ANY_COST = Double.POSITIVE_INFINITY;

  /** Explanations e^-5 as likely as the best are left out, unless they are of the same size. */
  static final double MARGIN = 5;

  /** The same for explanations of the best one's size, all of which are wanted. */
  private static final double MARGIN_OF_SIZE = 7;

  /** How many sets of slips may be recomputed for one region. */
  private static final int MOST_TRIES = 30_000;

  /** The same where nothing dear is wanted: what is cheap is found at once. */
  private static final int MOST_TRIES_UP_TO_A_COST = 2_000;

  private static final int MOST_TRIES_BY_STEPS = 60_000;
  private static final int LEAST_READINGS_BY_STEPS = 4;
  private static final int MOST_READINGS_BY_STEPS = 300;
  private static final int MOST_SUSPECTS = 60;
  private static final int MOST_SLIPS = 8;
  private static final int MOST_NEAR_MISSES = 20;

  /** The likeliest so many: they come in their order, and with so many none is certain. */
  private static final int MOST_EXPLANATIONS = 400;

  private final Circuit circuit;
  private final Evidence evidence;
  private final Candidates candidates;
  private final SlipCosts costs;
  private final double mostCost;
  private final double leastArrangement;
  private final Set<Integer> arrangeable;

  /** The orders of a ring that no reading tells from the one that is tried. */
  private final Map<Slip, List<Rearranged>> alike = new HashMap<>();

  /** The nearest found so far, the farthest of them first. */
  private final PriorityQueue<NearMiss> nearMisses =
      new PriorityQueue<>(Comparator.comparingDouble(NearMiss::score).reversed());

  private int nodes;

  Search(
      Circuit circuit,
      Evidence evidence,
      SlipCosts costs,
      List<Supposed> arrangements,
      Candidates candidates,
      double mostCost) {
    this.circuit = circuit;
    this.evidence = evidence;
    this.costs = costs;
    this.candidates = candidates;
    this.mostCost = mostCost;
    this.leastArrangement =
        arrangements.stream()
            .mapToDouble(arrangement -> costs.of(arrangement.slip()))
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    arrangements.forEach(one -> alike.put(one.slip(), one.alike()));
    this.arrangeable =
        arrangements.stream().flatMap(one -> one.nets().stream()).collect(Collectors.toSet());
  }

  /** A set of slips with which the unit would give every reading made. */
  record Explanation(List<Slip> slips, double cost) {
    /** Whether a reading is not of the points that the sheet names. */
    boolean isOfTheTest() {
      return slips.stream()
          .anyMatch(one -> one.asMisread().isPresent() || one.asExchanged().isPresent());
    }
  }

  /**
   * What was found.
   *
   * @param explanations cheapest first; empty where nothing explains the readings
   * @param complete whether the search ended by itself; if not, cheaper or equal ones may exist
   * @param runnerUp the story that came next, and the readings that speak against it
   */
  record Result(List<Explanation> explanations, boolean complete, Optional<NearMiss> runnerUp) {
    Result(List<Explanation> explanations, boolean complete) {
      this(explanations, complete, Optional.empty());
    }
  }

  /** A set of slips that explains much, and the readings that it does not. */
  record NearMiss(List<Slip> slips, double cost, List<Judged> against) {
    /** Each reading speaks against it as a cost of one does. */
    double score() {
      return cost + against.size();
    }
  }

  /** A set of slips, what it promises to cost in all, and the readings that it does not explain. */
  record Node(
      int number, List<Slip> slips, double cost, double promise, List<Judged> contradicted) {
    /**
     * The reading to mend next: one between two points says most, a join or none more than ohms.
     */
    Judged first() {
      Judged best = contradicted.get(0);
      for (Judged judged : contradicted) {
        if (rank(judged) < rank(best)) {
          best = judged;
        }
      }
      return best;
    }

    private static int rank(Judged judged) {
      if (!judged.probing().isPair()) {
        return 3;
      }
      return switch (judged.observed()) {
        case APART -> 0;
        case JOINED -> 1;
        case RESISTIVE, UNKNOWN -> 2;
      };
    }
  }

  /** Explains readings that hang together. */
  Result explain(List<Judged> failing) {
    Result best = new BestFirst(failing).result();
    if (!best.explanations().isEmpty()) {
      best = new Result(inAllOrders(best.explanations(), failing), best.complete());
      return new Result(best.explanations(), best.complete(), runnerUp(best.explanations().get(0)));
    }
    return mostCost == ANY_COST ? stepByStep(failing) : best;
  }

  /** The likeliest, each ring in every order that no reading tells apart. */
  private List<Explanation> inAllOrders(List<Explanation> explanations, List<Judged> failing) {
    List<Explanation> all = new ArrayList<>();
    for (Explanation explanation : explanations) {
      for (List<Slip> slips : inAllOrders(explanation.slips())) {
        boolean isTried = slips.equals(explanation.slips());
        if (all.size() < MOST_EXPLANATIONS
            && (isTried || evidence.contradicted(slips, failing).isEmpty())) {
          all.add(new Explanation(slips, explanation.cost()));
        }
      }
    }
    return all;
  }

  private List<List<Slip>> inAllOrders(List<Slip> slips) {
    List<List<Slip>> all = new ArrayList<>(List.of(slips));
    for (int i = 0; i < slips.size(); i++) {
      for (List<Slip> one : List.copyOf(all)) {
        for (Slip other : alike.getOrDefault(slips.get(i), List.of())) {
          if (all.size() < MOST_EXPLANATIONS) {
            List<Slip> more = new ArrayList<>(one);
            more.set(i, other);
            all.add(List.copyOf(more));
          }
        }
      }
    }
    return all;
  }

  /** How many stories a set of slips stands for. */
  private int orders(List<Slip> slips) {
    int orders = 1;
    for (Slip slip : slips) {
      orders *= 1 + alike.getOrDefault(slip, List.of()).size();
    }
    return orders;
  }

  /** The nearest story that is no part of the best. */
  private Optional<NearMiss> runnerUp(Explanation best) {
    return nearMisses.stream()
        .filter(nearMiss -> !best.slips().containsAll(nearMiss.slips()))
        .filter(one -> !one.slips().containsAll(best.slips()))
        .min(Comparator.comparingDouble(NearMiss::score));
  }

  private void noteNearMiss(Node node) {
    if (node.contradicted().isEmpty()) {
      return;
    }
    nearMisses.add(new NearMiss(node.slips(), node.cost(), node.contradicted()));
    if (nearMisses.size() > MOST_NEAR_MISSES) {
      nearMisses.remove();
    }
  }

  /** Whether some one slip explains all. */
  boolean oneSlipExplains(List<Judged> failing) {
    return successors(node(List.of(), failing), new HashSet<>()).stream()
        .anyMatch(slips -> evidence.contradicted(slips, failing).isEmpty());
  }

  /**
   * Where the best-first search ends without an answer: takes slip after slip, always the one that
   * leaves the fewest readings contradicted. Finds long runs of like slips, but not always the
   * fewest. Two ends crossed count as two moves here: half of a run would look crossed too.
   */
  private Result stepByStep(List<Judged> failing) {
    if (failing.size() < LEAST_READINGS_BY_STEPS || failing.size() > MOST_READINGS_BY_STEPS) {
      return new Result(List.of(), false);
    }
    Node node = node(List.of(), failing);
    int tries = 0;
    while (!node.contradicted().isEmpty()) {
      Node next = node;
      for (List<Slip> slips : successors(node, new HashSet<>())) {
        if (slips.get(slips.size() - 1).asCrossed().isPresent()) {
          continue;
        }
        tries++;
        if (tries > MOST_TRIES_BY_STEPS) {
          return new Result(List.of(), false);
        }
        Node tried = node(slips, evidence.contradicted(slips, failing));
        boolean better =
            tried.contradicted().size() < next.contradicted().size()
                || (tried.contradicted().size() == next.contradicted().size()
                    && next.slips().size() == slips.size()
                    && tried.cost() < next.cost());
        if (better) {
          next = tried;
        }
      }
      if (next.slips().size() == node.slips().size()) {
        return new Result(List.of(), false);
      }
      node = next;
    }
    return new Result(List.of(new Explanation(node.slips(), node.cost())), false);
  }

  /** One best-first search: what is open, what was found, how much was tried. */
  private final class BestFirst {
    private final List<Judged> failing;
    private final PriorityQueue<Node> open =
        new PriorityQueue<>(
            Comparator.comparingDouble(Node::promise)
                .thenComparingInt(node -> node.contradicted().size())
                .thenComparingInt(Node::number));
    private final Set<Set<Slip>> seen = new HashSet<>();
    private final List<Explanation> found = new ArrayList<>();
    private int stories;
    private int triesLeft = mostCost == ANY_COST ? MOST_TRIES : MOST_TRIES_UP_TO_A_COST;

    BestFirst(List<Judged> failing) {
      this.failing = failing;
    }

    Result result() {
      open.add(node(List.of(), failing));
      boolean complete = true;
      while (!open.isEmpty()) {
        Node node = open.remove();
        if (!found.isEmpty() && isBeyond(node, found.get(0))) {
          continue;
        }
        if (node.contradicted().isEmpty()) {
          found.add(new Explanation(node.slips(), node.cost()));
          stories += orders(node.slips());
          if (stories >= MOST_EXPLANATIONS) {
            return new Result(found, complete);
          }
        } else if (node.slips().size() >= MOST_SLIPS) {
          complete = false;
        } else if (!grow(node)) {
          return new Result(found, false);
        }
      }
      return new Result(found, complete);
    }

    /** Opens what mends a node's first reading; false where nothing more may be tried. */
    private boolean grow(Node node) {
      for (List<Slip> slips : successors(node, seen)) {
        if (triesLeft == 0) {
          return false;
        }
        triesLeft--;
        if (isTooDear(slips, found)) {
          continue;
        }
        List<Judged> contradicted = evidence.contradicted(slips, failing);
        if (!contradicted.contains(node.first())) {
          Node next = node(slips, contradicted);
          noteNearMiss(next);
          if (next.promise() <= mostCost && (found.isEmpty() || !isBeyond(next, found.get(0)))) {
            open.add(next);
          }
        }
      }
      return true;
    }
  }

  private boolean isTooDear(List<Slip> slips, List<Explanation> found) {
    double cost = cost(slips);
    return cost > mostCost || (!found.isEmpty() && cost > found.get(0).cost() + MARGIN_OF_SIZE);
  }

  private double cost(List<Slip> slips) {
    double cost = 0;
    for (Slip slip : slips) {
      cost += costs.of(slip);
    }
    return cost;
  }

  /** Too dear to matter, and not of the size at which every explanation is wanted. */
  private boolean isBeyond(Node node, Explanation best) {
    int size = node.slips().size() + (node.contradicted().isEmpty() ? 0 : 1);
    double margin = size <= best.slips().size() ? MARGIN_OF_SIZE : MARGIN;
    return node.promise() > best.cost() + margin;
  }

  private List<List<Slip>> successors(Node node, Set<Set<Slip>> seen) {
    Set<Integer> suspects = new LinkedHashSet<>();
    for (Judged judged : node.contradicted()) {
      if (suspects.size() < MOST_SUSPECTS) {
        judged.probing().points().forEach(suspects::add);
      }
    }
    List<List<Slip>> successors = new ArrayList<>();
    for (Slip slip : candidates.mending(node.first(), node.slips(), suspects)) {
      List<Slip> slips = new ArrayList<>(node.slips());
      slips.add(slip);
      if (!node.slips().contains(slip) && seen.add(new HashSet<>(slips))) {
        successors.add(List.copyOf(slips));
        if (slips.size() > 1 && slips.stream().anyMatch(one -> one.asBridged().isPresent())) {
          List<Slip> settled = candidates.settled(slips, node.first().reading().state());
          if (seen.add(new HashSet<>(settled))) {
            successors.add(settled);
          }
        }
      }
    }
    return successors;
  }

  private Node node(List<Slip> slips, List<Judged> contradicted) {
    double cost = cost(slips);
    return new Node(nodes++, slips, cost, cost + least(slips, contradicted), contradicted);
  }

  /**
   * The least that it must cost to mend some readings. Those that share no net of the unit as
   * slipped so far need a mend each; an arrangement may mend all at its item at once.
   */
  private double least(List<Slip> slips, List<Judged> contradicted) {
    SlippedNets nets = evidence.nets(slips, SwitchState.normal());
    Set<Integer> claimed = new HashSet<>();
    double one = 0;
    double beside = 0;
    for (Judged judged : contradicted) {
      int[] points = judged.probing().points().toArray();
      if (Arrays.stream(points).map(nets::groupOf).noneMatch(claimed::contains)) {
        Set<Integer> listed = new HashSet<>();
        for (int point : points) {
          claimed.add(nets.groupOf(point));
          listed.add(circuit.normal().of(point));
        }
        double least = costs.leastPerNet(listed);
        one += least;
        beside += listed.stream().anyMatch(arrangeable::contains) ? 0 : least;
      }
    }
    return Math.min(one, leastArrangement + beside);
  }
}
