package dev.ringout.people;

import dev.ringout.seal.KeyList.Listed;
import dev.ringout.seal.KeyList.Standing;
import dev.ringout.store.Entry;
import dev.ringout.store.Fields;
import dev.ringout.store.SaidOfPeople.Kind;
import dev.ringout.store.Signature;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Whose signatures count in a shop: made with a key that its list has as the person's own, in a
 * role that the person has. A store of no people takes each at his word.
 */
public final class Signers {
  private final People people;
  private final ShopKeys keys;
  private final Map<String, Set<Role>> ever = new LinkedHashMap<>();

  private Signers(List<Entry> said) {
    this.people = People.of(said);
    this.keys = ShopKeys.of(said);
    for (Entry entry : said) {
      boolean roles =
          Kind.of(entry.kind())
              .filter(kind -> kind == Kind.ADDED || kind == Kind.ROLES)
              .isPresent();
      List<String> fields = Fields.of(entry.body()).get(0);
      if (roles && fields.size() > 1) {
        ever.computeIfAbsent(People.asCompared(fields.get(0)), name -> EnumSet.noneOf(Role.class))
            .addAll(Role.ofWords(fields.get(1)));
      }
    }
  }

  /** Made of all that was said of people, in its order. */
  public static Signers of(List<Entry> said) {
    return new Signers(said);
  }

  /** Why somebody can't sign so now; absent where the person can. */
  public Optional<String> refused(String who, String role, String fingerprint, Instant now) {
    if (people.all().isEmpty()) {
      return Optional.empty();
    }
    Optional<Member> member = people.named(who).filter(Member::isIn);
    if (member.isEmpty()) {
      return Optional.of("nobody called " + who + " signs in here");
    }
    if (member.get().roles().stream().map(Role::word).noneMatch(role::equals)) {
      return Optional.of(member.get().name() + " is not " + role + " here");
    }
    return ofKey(who, fingerprint, Optional.of(now)).map(why -> "this key is not good: " + why);
  }

  /** Why a signature does not count; absent where it does. */
  public Optional<String> doubt(Signature signature) {
    return doubt(signature.who(), signature.role(), signature.fingerprint(), signature.at());
  }

  /**
   * Why what somebody signed does not count; absent where it does.
   *
   * @param at when it was made, by its own word
   */
  public Optional<String> doubt(String who, String role, String fingerprint, String at) {
    if (people.all().isEmpty()) {
      return Optional.empty();
    }
    boolean wasSo =
        ever.getOrDefault(People.asCompared(who), Set.of()).stream()
            .map(Role::word)
            .anyMatch(role::equals);
    return wasSo
        ? ofKey(who, fingerprint, instant(at))
        : Optional.of("nobody of this name was ever " + role + " here");
  }

  private Optional<String> ofKey(String who, String fingerprint, Optional<Instant> at) {
    Optional<Listed> key =
        keys.list().keys().stream()
            .filter(one -> one.fingerprint().equals(fingerprint))
            .findFirst();
    if (key.isEmpty()) {
      return Optional.of("the shop's list of keys does not have it");
    }
    if (!People.asCompared(key.get().person()).equals(People.asCompared(who))) {
      return Optional.of("by the shop's list of keys it is another's");
    }
    Standing standing = key.get().at(at);
    return standing == Standing.GOOD || standing == Standing.GOOD_AT_ITS_TIME
        ? Optional.empty()
        : Optional.of("by the shop's list of keys it did not count then");
  }

  private static Optional<Instant> instant(String at) {
    try {
      return Optional.of(Instant.parse(at));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
