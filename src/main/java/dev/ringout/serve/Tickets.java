package dev.ringout.serve;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;

/** Who was let in: a ticket stands in an address and is good once; a browser then has a cookie. */
final class Tickets implements Entrance {
  /** More addresses that nobody opened, or more browsers, are not kept: the oldest go. */
  private static final int MOST_KEPT = 64;

  /** A week: a browser that crashed comes back to the step at which it was. */
  private static final String ATTRIBUTES =
      "; Path=/; HttpOnly; SameSite=Strict; Max-Age=" + TimeUnit.DAYS.toSeconds(7);

  private final SecureRandom random = new SecureRandom();
  private final Map<Integer, byte[]> tickets = new LinkedHashMap<>();
  private final Map<Integer, byte[]> browsers = new LinkedHashMap<>();
  private final String cookieName;
  private int issued;

  Tickets(int port) {
    // Browsers give a machine's cookies to all its ports: two benches need two names.
    this.cookieName = "ringout-" + port;
  }

  /** A ticket for one browser. */
  synchronized String issue() {
    return issue(tickets);
  }

  /**
   * Takes a ticket, which is then good no more: the cookie of who comes in with it, or nothing
   * where it was not good, or who comes with it has a cookie already.
   */
  synchronized Optional<String> redeem(String ticket, boolean known) {
    OptionalInt ours = find(tickets, ticket);
    ours.ifPresent(tickets::remove);
    return ours.isEmpty() || known
        ? Optional.empty()
        : Optional.of(cookieName + "=" + issue(browsers) + ATTRIBUTES);
  }

  @Override
  public synchronized Optional<Guest> guest(List<String> cookieLines) {
    Optional<Guest> guest = Optional.empty();
    for (String value : Entrance.cookies(cookieLines, cookieName)) {
      OptionalInt known = find(browsers, value);
      guest = known.isPresent() ? Optional.of(new Guest(known.getAsInt(), "", 0)) : guest;
    }
    return guest;
  }

  @Override
  public boolean isIn(Guest guest) {
    return true;
  }

  @Override
  public Optional<Tickets> tickets() {
    return Optional.of(this);
  }

  @Override
  public Optional<Visits> visits() {
    return Optional.empty();
  }

  private String issue(Map<Integer, byte[]> to) {
    String value = Entrance.secret(random);
    issued++;
    to.put(issued, value.getBytes(StandardCharsets.US_ASCII));
    if (to.size() > MOST_KEPT) {
      Iterator<Integer> oldest = to.keySet().iterator();
      oldest.next();
      oldest.remove();
    }
    return value;
  }

  /** Looks at all of them, each in the same time whatever it is like. */
  private static OptionalInt find(Map<Integer, byte[]> among, String value) {
    byte[] sought = value.getBytes(StandardCharsets.UTF_8);
    OptionalInt found = OptionalInt.empty();
    for (Map.Entry<Integer, byte[]> one : among.entrySet()) {
      if (MessageDigest.isEqual(one.getValue(), sought)) {
        found = OptionalInt.of(one.getKey());
      }
    }
    return found;
  }
}
