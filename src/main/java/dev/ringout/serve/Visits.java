package dev.ringout.serve;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.LongSupplier;

/**
 * Who signed in, each with a cookie that begins with the sign-in and ends with it: nothing that a
 * browser had before is good afterwards.
 */
final class Visits implements Entrance {
  /** More browsers of one person are not kept: the one that was used least lately goes. */
  private static final int MOST_OF_ONE = 8;

  /** What a browser keeps to this very host, and sends over TLS alone (RFC 6265bis, 4.1.3.2). */
  private static final String ATTRIBUTES = "; Path=/; Secure; HttpOnly; SameSite=Strict";

  private final SecureRandom random = new SecureRandom();
  private final Map<Integer, Visit> visits = new LinkedHashMap<>();
  private final String cookieName;
  private final Stay stay;
  private final LongSupplier millis;

  /** Whose visits have ended, until somebody asks: some of them may be in with another browser. */
  private final Set<String> left = new TreeSet<>();

  private int issued;

  private record Visit(Guest guest, String cookie, long begun, long used) {
    Visit usedAt(long millis) {
      return new Visit(guest, cookie, begun, millis);
    }
  }

  Visits(int port, Stay stay, LongSupplier millis) {
    this.cookieName = "__Host-ringout-" + port;
    this.stay = stay;
    this.millis = millis;
  }

  /**
   * Somebody signed in.
   *
   * @param before what the browser was until now; it is that no more
   * @return the line that gives the browser its cookie
   */
  synchronized String come(Optional<Guest> before, String who, int since) {
    before.ifPresent(guest -> end(guest.number()));
    List<Visit> own = new ArrayList<>(visits.values());
    own.removeIf(one -> !one.guest().who().equals(who));
    own.sort(Comparator.comparingLong(Visit::used));
    if (own.size() >= MOST_OF_ONE) {
      end(own.get(0).guest().number());
    }
    String cookie = Entrance.secret(random);
    issued++;
    long now = millis.getAsLong();
    visits.put(issued, new Visit(new Guest(issued, who, since), cookie, now, now));
    return cookieName + "=" + cookie + ATTRIBUTES;
  }

  /** A browser goes out; the line that takes its cookie away. */
  synchronized String leave(Optional<Guest> guest) {
    guest.ifPresent(one -> end(one.number()));
    return cookieName + "=" + ATTRIBUTES + "; Max-Age=0";
  }

  /** A browser did something. */
  synchronized void used(Guest guest) {
    visits.computeIfPresent(guest.number(), (number, one) -> one.usedAt(millis.getAsLong()));
  }

  /** Somebody did something, and no browser asked for it. */
  synchronized void used(String who) {
    long now = millis.getAsLong();
    visits.replaceAll((number, one) -> one.guest().who().equals(who) ? one.usedAt(now) : one);
  }

  /** All who are in. */
  synchronized List<Guest> in() {
    return visits.values().stream().map(Visit::guest).toList();
  }

  /** Sends out whose time is over, and those; all who are out since this was asked before. */
  synchronized Set<String> goneWith(Set<Guest> those) {
    for (Visit one : List.copyOf(visits.values())) {
      if (isOver(one) || those.contains(one.guest())) {
        end(one.guest().number());
      }
    }
    Set<String> gone = new TreeSet<>(left);
    left.clear();
    visits.values().forEach(one -> gone.remove(one.guest().who()));
    return gone;
  }

  private void end(int number) {
    Visit ended = visits.remove(number);
    if (ended != null) {
      left.add(ended.guest().who());
    }
  }

  private boolean isOver(Visit visit) {
    long now = millis.getAsLong();
    return now - visit.used() > stay.idle().toMillis()
        || now - visit.begun() > stay.whole().toMillis();
  }

  /** Looks at all of them, each in the same time whatever it is like. */
  @Override
  public synchronized Optional<Guest> guest(List<String> cookieLines) {
    Optional<Guest> guest = Optional.empty();
    for (String value : Entrance.cookies(cookieLines, cookieName)) {
      byte[] sought = bytes(value);
      for (Visit visit : visits.values()) {
        if (MessageDigest.isEqual(bytes(visit.cookie()), sought) && !isOver(visit)) {
          guest = Optional.of(visit.guest());
        }
      }
    }
    return guest;
  }

  private static byte[] bytes(String cookie) {
    return cookie.getBytes(StandardCharsets.UTF_8);
  }

  @Override
  public synchronized boolean isIn(Guest guest) {
    Visit visit = visits.get(guest.number());
    return visit != null && !isOver(visit);
  }

  @Override
  public Optional<Tickets> tickets() {
    return Optional.empty();
  }

  @Override
  public Optional<Visits> visits() {
    return Optional.of(this);
  }
}
