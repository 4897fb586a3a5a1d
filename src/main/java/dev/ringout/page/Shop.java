package dev.ringout.page;

import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.jobs.PeopleJob;
import dev.ringout.meter.Ticks;
import dev.ringout.people.Act;
import dev.ringout.people.Attempts;
import dev.ringout.people.Member;
import dev.ringout.people.People;
import dev.ringout.people.Role;
import dev.ringout.serve.Ask;
import dev.ringout.serve.Guest;
import dev.ringout.store.SaidOfPeople.Kind;
import dev.ringout.store.StoreTrouble;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The people of a shop at one of its benches: who asks, and whether that is for him to ask. */
final class Shop {
  private static final int FREE_OF_A_NAME = 5;

  /** Several people share a tablet, and mistype. */
  private static final int FREE_OF_A_MACHINE = 20;

  private final PeopleJob people;
  private final String station;
  private final Ticks ticks;
  private final Attempts ofNames = new Attempts(FREE_OF_A_NAME);
  private final Attempts ofMachines = new Attempts(FREE_OF_A_MACHINE);

  Shop(PeopleJob people, String station, Ticks ticks) {
    this.people = people;
    this.station = station;
    this.ticks = ticks;
  }

  PeopleJob people() {
    return people;
  }

  /** Somebody of the shop says something now. */
  PeopleJob.Said said(Member by) {
    return new PeopleJob.Said(by.name(), ticks.now());
  }

  /**
   * Who asks; absent where the browser is nobody's, or the person was withdrawn, has another
   * passphrase or went out everywhere since. It is looked up each time: what was said at another
   * bench counts at once.
   */
  Optional<Member> member(Ask ask) throws Refused {
    try {
      return ask.guest().isEmpty() ? Optional.empty() : member(people.people(), ask.guest().get());
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
  }

  private static Optional<Member> member(People people, Guest guest) {
    return people
        .named(guest.who())
        .filter(Member::isIn)
        .filter(member -> member.since() == guest.since());
  }

  /** Whether a name is that of another than one, who is something here. */
  boolean isOther(String one, String name, Role role) throws Refused {
    try {
      return people
          .people()
          .named(name)
          .filter(Member::isIn)
          .filter(member -> member.roles().contains(role) && !member.name().equals(one))
          .isPresent();
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
  }

  /** Which browsers are nobody's any more; where nobody can be asked none is out. */
  Set<Guest> out(List<Guest> in) {
    if (in.isEmpty()) {
      return Set.of();
    }
    try {
      People now = people.people();
      return in.stream().filter(guest -> member(now, guest).isEmpty()).collect(Collectors.toSet());
    } catch (StoreTrouble e) {
      return Set.of();
    }
  }

  /** Who asks, where he may ask this. */
  Member require(Ask ask, Act act) throws Refused {
    Member member = member(ask).orElseThrow(() -> new Refused(Reason.STRANGER, "Sign in first."));
    if (!member.may(act)) {
      throw new Refused(
          Reason.NOT_ALLOWED,
          "This is not for you to do: it takes "
              + String.join(" or ", act.roles().stream().map(Role::word).toList())
              + ".");
    }
    return member;
  }

  /**
   * Lets somebody in.
   *
   * @throws Refused where name and passphrase are not one person's, or it was tried too often: what
   *     is said does not tell whether there is such a name
   */
  Member signIn(String name, String passphrase, String from) throws Refused {
    String typed = People.asCompared(name);
    requireNoWait(ofNames.tries(typed, ticks.millis()));
    long waits = ofMachines.tries(from, ticks.millis());
    if (waits > 0) {
      ofNames.takenBack(typed);
    }
    requireNoWait(waits);
    try {
      Optional<Member> member = people.known(name, passphrase);
      people.tell(
          member.isPresent() ? Kind.SIGNED_IN : Kind.TURNED_AWAY, name, station, from, ticks.now());
      if (member.isPresent()) {
        ofNames.cameIn(typed);
        ofMachines.takenBack(from);
      }
      return member.orElseThrow(
          () -> new Refused(Reason.STRANGER, "The name or the passphrase is not right."));
    } catch (StoreTrouble e) {
      ofNames.takenBack(typed);
      ofMachines.takenBack(from);
      throw Refused.by(e);
    }
  }

  private static void requireNoWait(long millis) throws Refused {
    if (millis > 0) {
      throw new Refused(
          Reason.TOO_OFTEN,
          "Too many wrong tries. Wait "
              + Attempts.seconds(millis)
              + " seconds, or ask an administrator for another passphrase.");
    }
  }

  /** Somebody goes out here. */
  void signedOut(Member member, String from) throws Refused {
    try {
      people.tell(Kind.SIGNED_OUT, member.name(), station, from, ticks.now());
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
  }
}
