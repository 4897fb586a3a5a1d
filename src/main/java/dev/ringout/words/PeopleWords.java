package dev.ringout.words;

import dev.ringout.people.Member;
import dev.ringout.people.Role;
import dev.ringout.store.Entry;
import dev.ringout.store.Fields;
import dev.ringout.store.SaidOfPeople.Kind;
import dev.ringout.units.Text;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is said of the people of a shop, as sentences. */
public final class PeopleWords {
  private PeopleWords() {}

  /** As what somebody signs in, or that nobody does any more. */
  public static String standing(Member member) {
    String roles = member.roles().stream().map(Role::word).collect(Collectors.joining(", "));
    return member.withdrawn().isEmpty()
        ? roles
        : "withdrawn: " + Text.visibleInOneLine(member.withdrawn()) + " (was " + roles + ")";
  }

  /** What was said, and who came in. */
  public static String said(Entry entry) {
    List<String> fields = Fields.of(entry.body()).get(0);
    String name = fields.get(0).isEmpty() ? "somebody" : fields.get(0);
    String second = fields.size() > 1 ? fields.get(1) : "";
    Optional<Kind> kind = Kind.of(entry.kind());
    String by = entry.who().equals(name) ? "" : ", says " + entry.who();
    return kind.map(one -> name + " " + what(one, second) + (one == Kind.TURNED_AWAY ? "" : by))
        .orElse(name + ": " + entry.kind() + ", of a later program");
  }

  private static String what(Kind kind, String second) {
    return switch (kind) {
      case ADDED -> "is " + second.replace(",", ", ");
      case ROLES -> "is from now on " + second.replace(",", ", ");
      case PASSPHRASE -> "has a new passphrase";
      case WITHDRAWN -> "is withdrawn (" + Text.visibleInOneLine(second) + ")";
      case OUT_EVERYWHERE -> "is signed out everywhere";
      case SIGNED_IN -> "signed in at " + second;
      case SIGNED_OUT -> "signed out at " + second;
      case TURNED_AWAY -> "was turned away at " + second;
      case KEY_ADDED -> "has another key to sign with";
      case KEY_WITHDRAWN -> "signs no more with key " + Text.visibleInOneLine(second);
    };
  }
}
