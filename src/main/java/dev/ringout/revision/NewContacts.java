package dev.ringout.revision;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.revision.Change.Altered;
import java.util.HashMap;
import java.util.Map;

/** The ends that get another contact, and which. */
final class NewContacts {
  private final Map<ListedEnd, String> contactOf = new HashMap<>();

  NewContacts(Difference difference) {
    for (Altered altered : difference.changes(Altered.class)) {
      if (isOfContact(altered)) {
        contactOf.put(end(altered), altered.now());
      }
    }
  }

  /** Whether a change gives an end another contact; what was not said is no other one. */
  static boolean isOfContact(Altered change) {
    return (change.field() == Field.FROM_CONTACT || change.field() == Field.TO_CONTACT)
        && change.isSaidByBoth();
  }

  /** The end that a change of contact is of. */
  static ListedEnd end(Altered change) {
    Wire.End end = change.field() == Field.FROM_CONTACT ? Wire.End.FROM : Wire.End.TO;
    Point at = change.before().at(end);
    return new ListedEnd(change.before(), at);
  }

  /** The contact that an end gets; empty where it keeps its own. */
  String of(ListedEnd end) {
    return contactOf.getOrDefault(end, "");
  }
}
