package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Judged;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
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
  /** Explanations e^-5 as likely as the best are left out, unless they are of the same size. */
  private static final double MARGIN = 5;

  /** How much may be recomputed for one region: tries times the readings that each must explain. */
  private static final long MOST_WORK = 400_000;

  private static final long MOST_WORK_BY_STEPS = 3_000_000;
  private static final int MOST_READINGS_BY_STEPS = 300;
  private static final int MOST_SUSPECTS = 60;
  private static final int WORK_OF_A_TRY = 20;
  private static final int MOST_SLIPS = 8;
  private static final int MOST_EXPLANATIONS = 60;

  private final Circuit circuit;
  private final Evidence evidence;
  private final Candidates candidates;
  private final SlipCosts costs;

  Search(Circuit circuit, Evidence evidence, Neighbours neighbours) {
    this.circuit = circuit;
    this.evidence = evidence;
    this.candidates = new Candidates(circuit, neighbours, evidence);
    this.costs = new SlipCosts(circuit, neighbours);
  }

  /** A set of slips with which the unit would give every reading made. */
  record Explanation(List<Slip> slips, double cost) {}

  /**
   * What was found.
   *
   * @param explanations cheapest first; empty where nothing explains the readings
   * @param complete whether the search ended by itself; if not, cheaper or equal ones may exist
   */
  record Result(List<Explanation> explanations, boolean complete) {}

  private record Node(List<Slip> slips, double cost, double promise, List<Judged> contradicted) {}

  /** Explains readings that hang together. */
  Result explain(List<Judged> failing) {
    Result best = bestFirst(failing);
    return best.explanations().isEmpty() ? stepByStep(failing) : best;
  }

  /**
   * Where the best-first search ends without an answer: takes slip after slip, always the one that
   * leaves the fewest readings contradicted. Finds long runs of like slips, but not always the
   * fewest. Two ends crossed count as two moves here: half of a run would look crossed too.
   */
  private Result stepByStep(List<Judged> failing) {
    if (failing.size() > MOST_READINGS_BY_STEPS) {
      return new Result(List.of(), false);
    }
    Node node = node(List.of(), failing);
    long work = 0;
    while (!node.contradicted().isEmpty()) {
      Node next = node;
      for (List<Slip> slips : successors(node, new HashSet<>())) {
        if (slips.get(slips.size() - 1) instanceof Slip.Crossed) {
          continue;
        }
        work += WORK_OF_A_TRY + failing.size();
        if (work > MOST_WORK_BY_STEPS) {
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

  private Result bestFirst(List<Judged> failing) {
    PriorityQueue<Node> open =
        new PriorityQueue<>(
            Comparator.comparingDouble(Node::promise)
                .thenComparingInt(node -> node.contradicted().size())
                .thenComparing(node -> node.slips().toString()));
    Set<Set<Slip>> seen = new HashSet<>();
    List<Explanation> found = new ArrayList<>();
    open.add(node(List.of(), failing));
    long work = 0;
    boolean complete = true;
    while (!open.isEmpty()) {
      Node node = open.remove();
      if (!found.isEmpty() && isBeyond(node, found.get(0))) {
        continue;
      }
      if (node.contradicted().isEmpty()) {
        found.add(new Explanation(node.slips(), node.cost()));
        if (found.size() >= MOST_EXPLANATIONS) {
          return new Result(found, false);
        }
        continue;
      }
      if (node.slips().size() >= MOST_SLIPS) {
        complete = false;
        continue;
      }
      for (List<Slip> slips : successors(node, seen)) {
        work += WORK_OF_A_TRY + failing.size();
        if (work > MOST_WORK) {
          return new Result(found, false);
        }
        List<Judged> contradicted = evidence.contradicted(slips, failing);
        if (!contradicted.contains(node.contradicted().get(0))) {
          open.add(node(slips, contradicted));
        }
      }
    }
    return new Result(found, complete);
  }

  /** Too dear to matter, and not of the size at which every explanation is wanted. */
  private boolean isBeyond(Node node, Explanation best) {
    int size = node.slips().size() + (node.contradicted().isEmpty() ? 0 : 1);
    double bound = best.cost() + MARGIN;
    return size <= best.slips().size()
        ? node.promise() > Math.max(bound, best.slips().size() * costs.most())
        : node.promise() > bound;
  }

  private List<List<Slip>> successors(Node node, Set<Set<Slip>> seen) {
    Set<Integer> suspects = new LinkedHashSet<>();
    for (Judged judged : node.contradicted()) {
      if (suspects.size() < MOST_SUSPECTS) {
        judged.probing().points().forEach(suspects::add);
      }
    }
    List<List<Slip>> successors = new ArrayList<>();
    for (Slip slip : candidates.mending(node.contradicted().get(0), node.slips(), suspects)) {
      List<Slip> slips = new ArrayList<>(node.slips());
      slips.add(slip);
      if (!node.slips().contains(slip) && seen.add(new HashSet<>(slips))) {
        successors.add(List.copyOf(slips));
      }
    }
    return successors;
  }

  private Node node(List<Slip> slips, List<Judged> contradicted) {
    double cost = slips.stream().mapToDouble(costs::of).sum();
    double promise = cost + netsWrong(contradicted) * costs.leastPerNet();
    return new Node(slips, cost, promise, contradicted);
  }

  /** How many of the contradicted readings share no net with each other: each needs mending. */
  private int netsWrong(List<Judged> contradicted) {
    Set<Integer> claimed = new HashSet<>();
    int wrong = 0;
    for (Judged judged : contradicted) {
      Set<Integer> nets =
          judged.probing().points().map(circuit.normal()::of).boxed().collect(Collectors.toSet());
      if (nets.stream().noneMatch(claimed::contains)) {
        claimed.addAll(nets);
        wrong++;
      }
    }
    return wrong;
  }
}
