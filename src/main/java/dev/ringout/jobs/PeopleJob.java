package dev.ringout.jobs;

import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.people.Member;
import dev.ringout.people.Passphrases;
import dev.ringout.people.People;
import dev.ringout.people.People.Refusal;
import dev.ringout.people.Role;
import dev.ringout.people.ShopKeys;
import dev.ringout.readings.Person;
import dev.ringout.store.Entry;
import dev.ringout.store.Fields;
import dev.ringout.store.SaidOfPeople;
import dev.ringout.store.SaidOfPeople.Kind;
import dev.ringout.store.Store;
import dev.ringout.store.StoreTrouble;
import dev.ringout.units.Text;
import java.security.PublicKey;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The people of a shop: who may sign in, as what; and who does. */
public final class PeopleJob {
  private final StoreAtHand store;
  private final Passphrases passphrases = new Passphrases();

  /** Of one store. */
  public PeopleJob(StoreAtHand store) {
    this.store = store;
  }

  /**
   * Who says something, and when.
   *
   * @param who says it
   */
  public record Said(String who, Instant now) {
    private String at() {
      return now.truncatedTo(ChronoUnit.SECONDS).toString();
    }
  }

  /** The people as they are now. */
  public People people() throws StoreTrouble {
    return People.of(store.open().peopleWhoMay());
  }

  /**
   * All people.
   *
   * @param history whatever was said of them, and who came in; empty where it was not asked for
   */
  public record Listed(String store, List<Member> members, List<Entry> history) {
    /** What is given can't be changed afterwards. */
    public Listed {
      members = List.copyOf(members);
      history = List.copyOf(history);
    }
  }

  /** Lists them; with whatever was said and who came in and went out, where that is asked for. */
  public Listed list(boolean history) throws StoreTrouble {
    return new Listed(store.shown(), people().all(), history ? store.open().people() : List.of());
  }

  /** The keys with which they sign. */
  public ShopKeys keys() throws StoreTrouble {
    return ShopKeys.of(store.open().people());
  }

  /**
   * Somebody signs with a key from now on.
   *
   * @param until its last day
   * @throws WrongRequest where there is no such person, or the key is known already
   */
  public ShopKeys addKey(String name, PublicKey key, Optional<LocalDate> until, Said said)
      throws StoreTrouble, WrongRequest {
    return tellOfKey(
        said,
        keys ->
            keys.added(
                people().named(name).filter(Member::isIn).orElseThrow(() -> nobody(name)),
                key,
                until,
                said.who(),
                said.at()));
  }

  private static Refusal nobody(String name) {
    return new Refusal("nobody called " + Text.visible(name) + " signs in here");
  }

  /**
   * A key counts no more, from now on.
   *
   * @param fingerprint by what it is known
   * @throws WrongRequest where there is no such key, or nothing says why
   */
  public ShopKeys withdrawKey(String fingerprint, String why, Said said)
      throws StoreTrouble, WrongRequest {
    return tellOfKey(said, keys -> keys.withdrawn(fingerprint, why, said.who(), said.at()));
  }

  /** What is said of a key. */
  private interface OfKey {
    SaidOfPeople said(ShopKeys keys) throws Refusal, StoreTrouble;
  }

  private ShopKeys tellOfKey(Said said, OfKey ofKey) throws StoreTrouble, WrongRequest {
    requireNamed(said);
    Store open = store.openToWrite();
    try {
      open.tell(ofKey.said(ShopKeys.of(open.people())));
    } catch (Refusal e) {
      throw new WrongRequest(Part.PERSON, e.text());
    }
    return ShopKeys.of(open.people());
  }

  private static void requireNamed(Said said) throws WrongRequest {
    if (!Person.isNamed(said.who()) || !Text.visibleInOneLine(said.who()).equals(said.who())) {
      throw new WrongRequest(Part.WHO, "\"" + Text.visible(said.who()) + "\" names nobody");
    }
  }

  /** What is decided of people as they are. */
  private interface Decision {
    List<SaidOfPeople> of(People people) throws Refusal;
  }

  private Member decide(String name, Said said, Decision decision)
      throws StoreTrouble, WrongRequest {
    requireNamed(said);
    Store open = store.openToWrite();
    People people = People.of(open.peopleWhoMay());
    try {
      open.decide(people.known(), decision.of(people));
    } catch (Refusal e) {
      throw new WrongRequest(Part.PERSON, e.text());
    }
    return people().named(name).orElseThrow(StoreTrouble::torn);
  }

  private String kept(String name, String passphrase) throws Refusal {
    Passphrases.require(passphrase, name);
    return passphrases.kept(passphrase);
  }

  /**
   * Somebody comes to the shop.
   *
   * @throws WrongRequest where the name is another's, the passphrase is none, or the shop would
   *     have no administrator
   */
  public Member add(String name, Set<Role> roles, String passphrase, Said said)
      throws StoreTrouble, WrongRequest {
    return decide(
        name,
        said,
        people -> people.added(name, roles, kept(name, passphrase), said.who(), said.at()));
  }

  /**
   * Somebody works as something else.
   *
   * @throws WrongRequest where there is no such person, or no administrator would be left
   */
  public Member roles(String name, Set<Role> roles, Said said) throws StoreTrouble, WrongRequest {
    return decide(name, said, people -> people.roles(name, roles, said.who(), said.at()));
  }

  /**
   * Somebody has another passphrase.
   *
   * @throws WrongRequest where there is no such person, or the passphrase is none
   */
  public Member passphrase(String name, String passphrase, Said said)
      throws StoreTrouble, WrongRequest {
    return decide(
        name,
        said,
        people -> people.passphrase(name, kept(name, passphrase), said.who(), said.at()));
  }

  /**
   * Somebody signs in no more.
   *
   * @throws WrongRequest where there is no such person, nothing says why, or no administrator would
   *     be left
   */
  public Member withdraw(String name, String why, Said said) throws StoreTrouble, WrongRequest {
    return decide(name, said, people -> people.withdrawn(name, why, said.who(), said.at()));
  }

  /**
   * Wherever somebody is in, the person is out.
   *
   * @throws WrongRequest where there is no such person
   */
  public Member outEverywhere(String name, Said said) throws StoreTrouble, WrongRequest {
    return decide(name, said, people -> people.outEverywhere(name, said.who(), said.at()));
  }

  /**
   * Whether somebody may come in. It takes the same time for who has no name here.
   *
   * @return who it is; absent where it is nobody, and nothing says whether the name is one
   */
  public Optional<Member> known(String name, String passphrase) throws StoreTrouble {
    Optional<Member> member = people().named(name).filter(Member::isIn);
    boolean same = passphrases.isOf(member.map(Member::kept), passphrase);
    return member.filter(one -> same);
  }

  /**
   * Keeps that somebody came in, went out, or was turned away.
   *
   * @param name of a person that is known; what else was typed is not kept, for it may be a
   *     passphrase in the wrong place
   * @param from the machine from which it was asked
   */
  public void tell(Kind kind, String name, String station, String from, Instant now)
      throws StoreTrouble {
    String known = people().named(name).map(Member::name).orElse("");
    Said said = new Said(known, now);
    store
        .openToWrite()
        .tell(new SaidOfPeople(kind, said.at(), known, Fields.line(known, station, from)));
  }
}
