package dev.ringout.people;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** As what somebody works in a shop. One person may be several. */
public enum Role {
  /** Holds the probes. */
  TESTER,
  /** Looks at what others made and measured. */
  INSPECTOR,
  /** Answers for lists, and for what is made of a fault. */
  ENGINEER,
  /** Leads the benches. */
  LEAD,
  /** Says who may sign in. */
  ADMINISTRATOR;

  /** As it is kept and typed. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Of a word; absent where it is none. */
  public static Optional<Role> of(String word) {
    return Arrays.stream(values()).filter(role -> role.word().equals(word)).findFirst();
  }

  /** As they are kept: with commas between, always in one order. */
  static String words(Set<Role> roles) {
    return Arrays.stream(values())
        .filter(roles::contains)
        .map(Role::word)
        .collect(Collectors.joining(","));
  }

  /** Of words with commas between; what a later program kept besides says nothing to this one. */
  static Set<Role> ofWords(String words) {
    Set<Role> roles = EnumSet.noneOf(Role.class);
    for (String word : words.split(",", -1)) {
      of(word).ifPresent(roles::add);
    }
    return roles;
  }
}
