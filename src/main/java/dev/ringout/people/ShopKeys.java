package dev.ringout.people;

import dev.ringout.people.People.Refusal;
import dev.ringout.seal.KeyList;
import dev.ringout.seal.KeyList.Listed;
import dev.ringout.seal.Keys;
import dev.ringout.store.Entry;
import dev.ringout.store.Fields;
import dev.ringout.store.SaidOfPeople;
import dev.ringout.store.SaidOfPeople.Kind;
import dev.ringout.units.Text;
import java.security.GeneralSecurityException;
import java.security.PublicKey;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The keys with which the people of a shop sign, as what was said of people leaves them. Only the
 * public halves are kept in the store. Who is withdrawn signs no more, with any key.
 */
public final class ShopKeys {
  private final Map<String, Listed> keys = new LinkedHashMap<>();

  private ShopKeys() {}

  /** Made of all that was said of people, in its order. */
  public static ShopKeys of(List<Entry> said) {
    ShopKeys all = new ShopKeys();
    said.forEach(all::take);
    return all;
  }

  private void take(Entry entry) {
    Optional<Kind> kind = Kind.of(entry.kind());
    List<String> fields = Fields.of(entry.body()).get(0);
    if (kind.equals(Optional.of(Kind.KEY_ADDED))) {
      add(fields, Instant.parse(entry.at()));
    } else if (kind.equals(Optional.of(Kind.KEY_WITHDRAWN))) {
      keys.computeIfPresent(
          fields.get(1), (print, key) -> withdrawn(key, entry.at(), fields.get(2)));
    } else if (kind.equals(Optional.of(Kind.WITHDRAWN))) {
      keys.replaceAll(
          (print, key) ->
              isOf(key, fields.get(0)) ? withdrawn(key, entry.at(), fields.get(1)) : key);
    }
  }

  private void add(List<String> fields, Instant from) {
    try {
      PublicKey key = Keys.publicKey(Base64.getDecoder().decode(fields.get(1)));
      String fingerprint = Keys.fingerprint(key);
      Optional<LocalDate> until =
          Optional.of(fields.get(2)).filter(day -> !day.isEmpty()).map(LocalDate::parse);
      keys.putIfAbsent(
          fingerprint, new Listed(fields.get(0), fingerprint, from, until, Optional.empty(), ""));
    } catch (GeneralSecurityException | IllegalArgumentException | DateTimeParseException e) {
      // Whoever wrote this past the program made nobody a signer by it.
      return;
    }
  }

  /** Withdrawn once, it was withdrawn then. */
  private static Listed withdrawn(Listed key, String at, String why) {
    return key.withdrawn().isPresent()
        ? key
        : new Listed(
            key.person(),
            key.fingerprint(),
            key.from(),
            key.until(),
            Optional.of(Instant.parse(at)),
            why);
  }

  private static boolean isOf(Listed key, String person) {
    return People.asCompared(key.person()).equals(People.asCompared(person));
  }

  /** All of them, to be written and given to whoever checks records. */
  public KeyList list() {
    return new KeyList(new ArrayList<>(keys.values()));
  }

  /** Those of a person. */
  public List<Listed> of(String person) {
    return keys.values().stream().filter(key -> isOf(key, person)).toList();
  }

  /**
   * A key is somebody's.
   *
   * @param until its last day; absent where it counts until it is withdrawn
   * @throws Refusal where it is, or was, anybody's already
   */
  public SaidOfPeople added(
      Member member, PublicKey key, Optional<LocalDate> until, String who, String at)
      throws Refusal {
    String fingerprint = Keys.fingerprint(key);
    if (keys.containsKey(fingerprint)) {
      throw new Refusal(
          "key " + fingerprint + " is in the list, as " + keys.get(fingerprint).person() + "'s");
    }
    return new SaidOfPeople(
        Kind.KEY_ADDED,
        at,
        who,
        Fields.line(
            member.name(),
            Base64.getEncoder().encodeToString(key.getEncoded()),
            until.map(LocalDate::toString).orElse("")));
  }

  /**
   * A key counts no more.
   *
   * @throws Refusal where there is no such key that counts, or nothing says why
   */
  public SaidOfPeople withdrawn(String fingerprint, String why, String who, String at)
      throws Refusal {
    String plain = fingerprint.replaceAll("\\s", "").replaceAll("(.{4})(?=.)", "$1 ");
    Listed key = keys.get(plain);
    if (key == null || key.withdrawn().isPresent()) {
      throw new Refusal(
          "no key that counts has the fingerprint \"" + Text.visibleInOneLine(plain) + "\"");
    }
    if (why.isBlank()) {
      throw new Refusal("say why the key is withdrawn");
    }
    return new SaidOfPeople(
        Kind.KEY_WITHDRAWN, at, who, Fields.line(key.person(), plain, why.strip()));
  }
}
