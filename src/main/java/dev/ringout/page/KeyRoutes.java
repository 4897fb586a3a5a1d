package dev.ringout.page;

import static dev.ringout.page.PeopleRoutes.said;

import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.json.KeysJson;
import dev.ringout.meter.Ticks;
import dev.ringout.people.Act;
import dev.ringout.people.Attempts;
import dev.ringout.people.Member;
import dev.ringout.people.Passphrases;
import dev.ringout.people.People;
import dev.ringout.people.ShopKeys;
import dev.ringout.seal.KeyFile;
import dev.ringout.seal.KeyList.Listed;
import dev.ringout.seal.KeyList.Standing;
import dev.ringout.seal.Keys;
import dev.ringout.serve.Ask;
import dev.ringout.serve.Reply;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.PublicKey;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The keys with which people sign: in a shop each has his own, and no other's. */
final class KeyRoutes {
  private static final int FREE_TRIES = 5;

  private final KeyFolder folder;
  private final Optional<Shop> shop;
  private final Ticks ticks;

  /** Who sits at a tablet at which another is signed in may try that one's passphrase of a key. */
  private final Attempts tries = new Attempts(FREE_TRIES);

  KeyRoutes(KeyFolder folder, Optional<Shop> shop, Ticks ticks) {
    this.folder = folder;
    this.shop = shop;
    this.ticks = ticks;
  }

  void in(Routes routes) {
    routes.get(Act.SIGN, "/api/keys", (ask, names) -> keys(ask));
    if (shop.isEmpty()) {
      return;
    }
    Shop here = shop.get();
    routes
        .post(Act.SIGN, "/api/keys", (ask, names) -> make(here, ask))
        .get(Act.SIGN, "/api/keys/*", (ask, names) -> file(here, ask, names.get(0)))
        .post(Act.SIGN, "/api/keys/withdraw", (ask, names) -> withdrawOwn(here, ask))
        .get(Act.LOOK, "/api/key-list", (ask, names) -> list(said(() -> here.people().keys())))
        .post(
            Act.PEOPLE,
            "/api/people/*/withdraw-key",
            (ask, names) -> withdraw(here, ask, names.get(0)));
  }

  private Reply keys(Ask ask) throws Refused {
    if (shop.isEmpty()) {
      return listed(folder.names(), List.of(), Map.of());
    }
    Shop here = shop.get();
    Member member = here.require(ask, Act.SIGN);
    return keysOf(member, said(() -> here.people().keys()));
  }

  private Reply keysOf(Member member, ShopKeys keys) throws Refused {
    List<Listed> own = keys.of(member.name());
    Map<String, String> byPrint = new LinkedHashMap<>();
    List<String> names = new ArrayList<>();
    for (String name : folder.names()) {
      if (!Keys.isProtected(folder.file(name))) {
        continue;
      }
      String print = print(name);
      if (own.stream().anyMatch(key -> key.fingerprint().equals(print))) {
        byPrint.put(print, name);
        names.add(name);
      }
    }
    return listed(names, own, byPrint);
  }

  /** The fingerprint of a key's other half; empty where it has none here. */
  private String print(String name) {
    try {
      return Keys.fingerprint(folder.open(name));
    } catch (Refused e) {
      return "";
    }
  }

  private Reply listed(List<String> names, List<Listed> own, Map<String, String> byPrint)
      throws Refused {
    List<String> open = new ArrayList<>();
    for (String name : names) {
      if (Keys.isOpenToOthers(folder.file(name))) {
        open.add(name);
      }
    }
    return Reply.json(200, KeysJson.write(folder.folder().toString(), names, open, own, byPrint));
  }

  private static List<Listed> own(Shop here, Member member) throws Refused {
    return said(() -> here.people().keys().of(member.name()));
  }

  /** A new key of who asks: the secret half stays here, behind its passphrase. */
  private Reply make(Shop here, Ask ask) throws Refused {
    Body body = Body.of(ask);
    Member member = here.require(ask, Act.SIGN);
    String passphrase = body.text("passphrase");
    Optional<LocalDate> until = day(body.text("until"));
    try {
      Passphrases.require(passphrase, member.name());
    } catch (People.Refusal e) {
      throw new Refused(Reason.NOT_UNDERSTOOD, e.text());
    }
    String name = folder.make(member.name(), passphrase);
    return keysOf(
        member,
        said(
            () ->
                here.people().addKey(member.name(), folder.open(name), until, here.said(member))));
  }

  private static Optional<LocalDate> day(String text) throws Refused {
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "until is a day such as 2027-12-31.");
    }
  }

  private Reply file(Shop here, Ask ask, String name) throws Refused {
    requireOwn(here, here.require(ask, Act.SIGN), name);
    return Reply.of(200, "application/x-pem-file", folder.bytes(name)).savedAs(name);
  }

  private Reply withdrawOwn(Shop here, Ask ask) throws Refused {
    Body body = Body.of(ask);
    Member member = here.require(ask, Act.SIGN);
    requireOf(here, member.name(), body.text("fingerprint"));
    return keysOf(member, withdrawn(here, body, member));
  }

  private static Reply withdraw(Shop here, Ask ask, String person) throws Refused {
    Body body = Body.of(ask);
    Member by = here.require(ask, Act.PEOPLE);
    requireOf(here, person, body.text("fingerprint"));
    return list(withdrawn(here, body, by));
  }

  private static ShopKeys withdrawn(Shop here, Body body, Member by) throws Refused {
    return said(
        () -> here.people().withdrawKey(body.text("fingerprint"), body.text("why"), here.said(by)));
  }

  private static void requireOf(Shop here, String person, String fingerprint) throws Refused {
    List<Listed> theirs = said(() -> here.people().keys().of(person));
    if (theirs.stream().noneMatch(key -> key.fingerprint().equals(fingerprint))) {
      throw new Refused(Reason.MISSING, "There is no such key.");
    }
  }

  private static Reply list(ShopKeys keys) {
    byte[] text = keys.list().text().getBytes(StandardCharsets.UTF_8);
    return Reply.of(200, "text/plain; charset=utf-8", text).savedAs("keys.txt");
  }

  /**
   * The key that somebody signs with.
   *
   * @throws Refused in a shop, where it has no passphrase or is not his own, or counts no more
   */
  KeyFile signing(Ask ask, Body body) throws Refused {
    String name = body.text("key");
    Path file = folder.file(name);
    if (shop.isEmpty()) {
      return keyFile(file, body);
    }
    if (!Keys.isProtected(file)) {
      throw new Refused(
          Reason.NOT_ALLOWED,
          "This key has no passphrase of its own: anybody here could sign with it. Make one"
              + " under Record.");
    }
    Member member = shop.get().require(ask, Act.SIGN);
    if (requireOwn(shop.get(), member, name).at(Optional.of(ticks.now())) != Standing.GOOD) {
      throw new Refused(
          Reason.NOT_ALLOWED, "This key counts no more: it was withdrawn, or its day is over.");
    }
    KeyFile key = keyFile(file, body);
    requirePassphrase(member, key);
    return key;
  }

  private static KeyFile keyFile(Path file, Body body) throws Refused {
    return new KeyFile(file, Optional.of(body.text("passphrase")).filter(one -> !one.isEmpty()));
  }

  private void requirePassphrase(Member member, KeyFile key) throws Refused {
    long waits = tries.tries(member.name(), ticks.millis());
    if (waits > 0) {
      throw new Refused(
          Reason.TOO_OFTEN, "Too many wrong tries. Wait " + Attempts.seconds(waits) + " seconds.");
    }
    try {
      Keys.pair(key);
      tries.cameIn(member.name());
    } catch (Keys.Unusable e) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "The passphrase is not that of this key.");
    }
  }

  /** Whether another has such a key, or nobody, is not told. */
  private Listed requireOwn(Shop here, Member member, String name) throws Refused {
    PublicKey open = folder.open(name);
    String print = Keys.fingerprint(open);
    return own(here, member).stream()
        .filter(key -> key.fingerprint().equals(print))
        .findFirst()
        .orElseThrow(() -> new Refused(Reason.MISSING, "No key of this name lies on the bench."));
  }
}
