package dev.ringout.benchmarks.exam;

import java.util.List;

/**
 * How a unit differs from its list: planted, or as the program tells it.
 *
 * @param name of the wire, link, contact or part; of a switch {@code S1=MADE}, where it stays
 * @param a of a moved end: where it is listed; of a bridge or leak: one side
 * @param b of a moved end: where it sits; of a bridge or leak: the other
 * @param ohms of a poor joint, a leak, a wire of another gauge, another part
 */
record Edit(What what, String name, int a, int b, double ohms) {
  /** Above this, what is between two points is no join. */
  static final double MOST_OF_A_BRIDGE = 50;

  /** The sort of a difference. */
  enum What {
    OPEN,
    MOVE,
    SHORT,
    POOR,
    GAUGE,
    LEAK,
    PART_MISSING,
    PART_VALUE,
    PART_TURNED,
    STUCK,
    OF_THE_TEST,
    OTHER;

    /** Whether it changes what is joined to what. */
    boolean joins() {
      return this == OPEN || this == MOVE || this == SHORT || this == STUCK;
    }
  }

  static Edit of(What what, String name) {
    return new Edit(what, name, -1, -1, 0);
  }

  static Edit of(What what, String name, double ohms) {
    return new Edit(what, name, -1, -1, ohms);
  }

  static Edit between(What what, int a, int b, double ohms) {
    return new Edit(what, "", a, b, ohms);
  }

  static Edit moved(String wire, int from, int to) {
    return new Edit(What.MOVE, wire, from, to, 0);
  }

  /** A unit with these differences. */
  static Box applied(Box listed, List<Edit> edits) {
    Box box = listed.copy();
    edits.forEach(edit -> edit.apply(box, listed));
    return box;
  }

  private void apply(Box box, Box listed) {
    if (what == What.SHORT || what == What.LEAK) {
      box.strays.add(new Box.Stray(a, b, ohms));
    }
    if (what == What.STUCK) {
      String ref = name.substring(0, name.indexOf('=') + 1);
      box.conds.replaceAll(one -> one.position().startsWith(ref) ? stuck(one) : one);
    }
    for (int at = 0; at < box.conds.size(); at++) {
      Box.Cond cond = box.conds.get(at);
      if (cond.name().equals(name)) {
        box.conds.set(at, changed(cond, listed.conds.get(at)));
      }
    }
    if (what == What.PART_MISSING) {
      box.parts.removeIf(part -> part.ref().equals(name));
    } else if (what == What.PART_VALUE) {
      box.parts.replaceAll(part -> part.ref().equals(name) ? part.with(ohms) : part);
    } else if (what == What.PART_TURNED) {
      box.parts.replaceAll(part -> part.ref().equals(name) ? part.turned() : part);
    }
  }

  /** A contact of a switch that stays where it is. */
  private Box.Cond stuck(Box.Cond contact) {
    return contact.position().equals(name) ? contact.always() : contact.opened();
  }

  private Box.Cond changed(Box.Cond cond, Box.Cond asListed) {
    return switch (what) {
      case OPEN -> cond.opened();
      case POOR -> cond.poorer(ohms);
      case GAUGE -> cond.of(ohms);
      case MOVE ->
          cond.between(
              asListed.a() == a && cond.a() == a ? b : cond.a(),
              asListed.b() == a && asListed.a() != a && cond.b() == a ? b : cond.b());
      default -> cond;
    };
  }
}
