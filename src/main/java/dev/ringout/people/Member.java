package dev.ringout.people;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * A person of the shop.
 *
 * @param name as it stands beside what the person does
 * @param kept what is kept of the passphrase
 * @param since number of the entry from which on a sign-in is good: of the last passphrase, or of
 *     the last time that the person went out everywhere
 * @param added when
 * @param withdrawn why the person signs in no more; empty where the person does
 */
public record Member(
    String name, Set<Role> roles, String kept, int since, String added, String withdrawn) {
  /** What is given can't be changed afterwards. */
  public Member {
    EnumSet<Role> own = EnumSet.noneOf(Role.class);
    own.addAll(roles);
    roles = Collections.unmodifiableSet(own);
  }

  /** Whether the person may sign in. */
  public boolean isIn() {
    return withdrawn.isEmpty() && !kept.isEmpty();
  }

  /** Whether the person may do something. */
  public boolean may(Act act) {
    return isIn() && act.isFor(roles);
  }
}
