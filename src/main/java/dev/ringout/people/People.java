package dev.ringout.people;

import dev.ringout.readings.Person;
import dev.ringout.store.Entry;
import dev.ringout.store.Fields;
import dev.ringout.store.SaidOfPeople;
import dev.ringout.store.SaidOfPeople.Kind;
import dev.ringout.units.Text;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The people of a shop, as what was said of them leaves them. A name is one person's for ever: no
 * two people have names that may be the same, withdrawn ones among them, so who tested and who
 * inspects are told apart by their names.
 */
public final class People {
  private static final int LONGEST_NAME = 60;

  /** Letters and what stands between them: nothing that nobody sees. */
  private static final Pattern NAME =
      Pattern.compile("[\\p{L}\\p{N}](?:[ .,'’-]{0,2}[\\p{L}\\p{M}\\p{N}]|[.])*");

  private final Map<String, Member> members;
  private final int known;

  private People(Map<String, Member> members, int known) {
    this.members = members;
    this.known = known;
  }

  /** Made of what was said, in its order. */
  public static People of(List<Entry> said) {
    Map<String, Member> members = new LinkedHashMap<>();
    int known = 0;
    for (Entry entry : said) {
      take(entry, members);
      known = entry.seq();
    }
    return new People(members, known);
  }

  private static void take(Entry entry, Map<String, Member> all) {
    List<String> fields = Fields.of(entry.body()).get(0);
    Optional<Kind> kind = Kind.of(entry.kind());
    String name = fields.get(0);
    String second = fields.size() > 1 ? fields.get(1) : "";
    if (kind.equals(Optional.of(Kind.ADDED))) {
      all.put(asCompared(name), new Member(name, Role.ofWords(second), "", 0, entry.at(), ""));
    } else {
      Member before = all.get(asCompared(name));
      if (before != null && kind.isPresent()) {
        all.put(asCompared(name), after(before, kind.get(), second, entry.seq()));
      }
    }
  }

  private static Member after(Member before, Kind kind, String second, int seq) {
    return switch (kind) {
      case ROLES -> with(before, Role.ofWords(second), before.kept(), before.since());
      case PASSPHRASE -> with(before, before.roles(), second, seq);
      case OUT_EVERYWHERE -> with(before, before.roles(), before.kept(), seq);
      case WITHDRAWN -> new Member(before.name(), before.roles(), "", seq, before.added(), second);
      case ADDED, SIGNED_IN, SIGNED_OUT, TURNED_AWAY, KEY_ADDED, KEY_WITHDRAWN -> before;
    };
  }

  private static Member with(Member of, Set<Role> roles, String kept, int since) {
    return new Member(of.name(), roles, kept, since, of.added(), of.withdrawn());
  }

  /** A name as it is compared where somebody signs in: blanks and case do not matter. */
  public static String asCompared(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFKC)
        .strip()
        .replaceAll("\\s+", " ")
        .toLowerCase(Locale.ROOT);
  }

  /** All of them, in the order in which they came. */
  public List<Member> all() {
    return List.copyOf(members.values());
  }

  /** Number of the last entry of which this is made; 0 where nothing was said. */
  public int known() {
    return known;
  }

  /** Who has a name; absent where nobody has. */
  public Optional<Member> named(String name) {
    return Optional.ofNullable(members.get(asCompared(name)));
  }

  /** Whether anybody may sign in. */
  public boolean canSignIn() {
    return members.values().stream().anyMatch(Member::isIn);
  }

  /**
   * Somebody comes to the shop.
   *
   * @param kept what is kept of the passphrase
   * @throws Refusal where the name is another's, or the shop would have no administrator
   */
  public List<SaidOfPeople> added(String name, Set<Role> roles, String kept, String who, String at)
      throws Refusal {
    String plain = name.strip();
    if (plain.length() > LONGEST_NAME || !NAME.matcher(plain).matches() || !Person.isNamed(plain)) {
      throw new Refusal("\"" + Text.visibleInOneLine(plain) + "\" is no name of a person");
    }
    for (Member other : members.values()) {
      if (Person.isSame(other.name(), plain)) {
        throw new Refusal(
            plain.equals(other.name())
                ? plain + " is known already" + (other.withdrawn().isEmpty() ? "" : ", withdrawn")
                : plain
                    + " may be "
                    + other.name()
                    + ", who is known: write the name in full, so that nobody takes one for the"
                    + " other");
      }
    }
    requireRoles(roles);
    if (!canSignIn() && !roles.contains(Role.ADMINISTRATOR)) {
      throw new Refusal(
          "the first is an administrator, who lets the others in (--role administrator)");
    }
    return List.of(
        new SaidOfPeople(Kind.ADDED, at, who, Fields.line(plain, Role.words(roles))),
        new SaidOfPeople(Kind.PASSPHRASE, at, who, Fields.line(plain, kept)));
  }

  /**
   * Somebody works as something else from now on.
   *
   * @throws Refusal where there is no such person, or no administrator would be left
   */
  public List<SaidOfPeople> roles(String name, Set<Role> roles, String who, String at)
      throws Refusal {
    Member member = present(name);
    requireRoles(roles);
    if (!roles.contains(Role.ADMINISTRATOR)) {
      requireAnotherAdministrator(member);
    }
    return List.of(
        new SaidOfPeople(Kind.ROLES, at, who, Fields.line(member.name(), Role.words(roles))));
  }

  /**
   * Somebody has another passphrase; whoever came in with the one before is out.
   *
   * @throws Refusal where there is no such person
   */
  public List<SaidOfPeople> passphrase(String name, String kept, String who, String at)
      throws Refusal {
    return List.of(
        new SaidOfPeople(Kind.PASSPHRASE, at, who, Fields.line(present(name).name(), kept)));
  }

  /**
   * Somebody signs in no more. The name stays with what the person did.
   *
   * @throws Refusal where there is no such person, nothing says why, or no administrator would be
   *     left
   */
  public List<SaidOfPeople> withdrawn(String name, String why, String who, String at)
      throws Refusal {
    Member member = present(name);
    if (why.isBlank()) {
      throw new Refusal("say why " + member.name() + " is withdrawn");
    }
    requireAnotherAdministrator(member);
    return List.of(
        new SaidOfPeople(Kind.WITHDRAWN, at, who, Fields.line(member.name(), why.strip())));
  }

  /**
   * Wherever somebody is in, the person is out.
   *
   * @throws Refusal where there is no such person
   */
  public List<SaidOfPeople> outEverywhere(String name, String who, String at) throws Refusal {
    return List.of(
        new SaidOfPeople(Kind.OUT_EVERYWHERE, at, who, Fields.line(present(name).name())));
  }

  private Member present(String name) throws Refusal {
    return named(name)
        .filter(Member::isIn)
        .orElseThrow(() -> new Refusal("nobody called " + Text.visible(name) + " signs in here"));
  }

  private static void requireRoles(Set<Role> roles) throws Refusal {
    if (roles.isEmpty()) {
      throw new Refusal("say as what: tester, inspector, engineer, lead, administrator");
    }
  }

  private void requireAnotherAdministrator(Member than) throws Refusal {
    List<Member> others = new ArrayList<>(members.values());
    others.remove(than);
    if (than.may(Act.PEOPLE) && others.stream().noneMatch(one -> one.may(Act.PEOPLE))) {
      throw new Refusal(
          than.name() + " is the last administrator: nobody could let anybody in any more");
    }
  }

  /** Something that can't be said of people, in words. */
  public static final class Refusal extends Exception {
    private static final long serialVersionUID = 1L;

    /** Of a reason. */
    public Refusal(String text) {
      super(text);
    }

    /** Why. */
    public String text() {
      return String.valueOf(getMessage());
    }
  }
}
