package dev.ringout.page;

import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.people.Act;
import dev.ringout.people.Member;
import dev.ringout.people.Role;
import dev.ringout.serve.Ask;
import java.util.Map;
import java.util.Optional;

/**
 * Who asks something: in a shop whoever signed in, whatever name is sent beside it; at a bench that
 * only its own machine opens, whoever is named.
 */
final class Callers {
  private final Optional<Shop> shop;
  private volatile String leader = "";

  Callers(Optional<Shop> shop) {
    this.shop = shop;
  }

  /** The shop; absent at a bench that only its own machine opens. */
  Optional<Shop> shop() {
    return shop;
  }

  /** The name of who asks: typed in a field, or signed in. */
  String name(Ask ask, Body body, String field) throws Refused {
    return shop.isEmpty() ? body.text(field) : member(ask).name();
  }

  private Member member(Ask ask) throws Refused {
    return shop.orElseThrow(IllegalStateException::new).require(ask, Act.LOOK);
  }

  /** Nobody does in a role what is not his. */
  void requireRole(Ask ask, String role) throws Refused {
    if (shop.isPresent() && member(ask).roles().stream().map(Role::word).noneMatch(role::equals)) {
      throw new Refused(Reason.NOT_ALLOWED, "You are not " + role + " here.");
    }
  }

  /** What is done in a test. */
  interface Work<T> {
    /** Does it. */
    T run() throws Refused;
  }

  /**
   * Does something of which it is asked first who leads: nobody takes the test over between the
   * two, and has it done in his name.
   */
  synchronized <T> T inTurn(Work<T> work) throws Refused {
    return work.run();
  }

  /**
   * Who is named as inspector on a sheet is one of the shop, and not who tests: the sheet may ask
   * for one, and a word is no inspection.
   */
  void requireInspector(Ask ask, Map<String, String> conditions) throws Refused {
    if (shop.isEmpty()) {
      return;
    }
    String tester = member(ask).name();
    for (Map.Entry<String, String> one : conditions.entrySet()) {
      boolean inspector =
          one.getKey().replaceAll("[^\\p{L}]+", "").equalsIgnoreCase(Role.INSPECTOR.word());
      if (inspector
          && !one.getValue().isBlank()
          && !shop.get().isOther(tester, one.getValue(), Role.INSPECTOR)) {
        throw new Refused(
            Reason.NOT_UNDERSTOOD, "inspector is somebody else, who is inspector here.");
      }
    }
  }

  /** Whoever asks leads the test from now on; another who leads one is asked first. */
  synchronized void begins(Ask ask, boolean takesOver) throws Refused {
    if (shop.isEmpty()) {
      return;
    }
    String name = member(ask).name();
    if (!leader.isEmpty() && !leader.equals(name) && !takesOver) {
      throw new Refused(
          Reason.NOT_ALLOWED, leader + " leads a test at this bench. Ask, then take it over.");
    }
  }

  /** Who leads the test at this bench from now on; nobody where the name is empty. */
  synchronized void leads(String name) {
    leader = shop.isEmpty() ? "" : name;
  }

  /** Who is out leads nothing any more. */
  synchronized void ends(String who, Runnable leave) {
    if (leader.equals(who)) {
      leader = "";
      leave.run();
    }
  }

  /** Who leads the test at this bench; empty where nobody does. A meter may ask at any time. */
  String leader() {
    return leader;
  }

  /** What is read stands under the name of who leads: so nobody else reads. */
  synchronized void requireLeader(Ask ask) throws Refused {
    if (shop.isPresent() && !leader.equals(member(ask).name())) {
      throw new Refused(
          Reason.NOT_ALLOWED,
          leader.isEmpty()
              ? "Nobody leads a test at this bench: go on with the unit first."
              : leader + " leads this test. Take it over to go on in your own name.");
    }
  }
}
