package dev.ringout.review;

import dev.ringout.harness.Item;
import dev.ringout.standards.ContactSizes.ContactSize;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Pin or socket: what a contact is, and what an insert is made for. */
enum ContactGender {
  PIN("pin"),
  SOCKET("socket");

  /** {@code 17-26PN}, {@code 17-26 S}: an arrangement with its contacts and, often, its keying. */
  private static final Pattern ARRANGEMENT =
      Pattern.compile("\\d{1,2}S?L?-\\d{1,3}\\s*([PS])[NA-EWXYZ]?");

  /**
   * Part numbers of military circular connectors end in shell and insert, {@code P} or {@code S}
   * and the keying; those of D-subminiature connectors in the number of contacts and that letter.
   */
  private static final Pattern PART =
      Pattern.compile(
          "(?:D38999/\\d{2}[A-Z]{1,2}\\d{1,3}|(?:MS|M|AN)\\d{3,5}[A-Z0-9/]*-?\\d{1,2}S?L?-\\d{1,3}"
              + "|D[A-E]M?-?\\d{1,2})([PS])[NA-EWXYZ]?");

  private final String text;

  ContactGender(String text) {
    this.text = text;
  }

  /** As a mechanic says it. */
  String text() {
    return text;
  }

  private static ContactGender of(String letter) {
    return letter.equals("P") ? PIN : SOCKET;
  }

  /** What a contact of a part number is; absent where the tables do not have it. */
  static Optional<ContactGender> of(Optional<ContactSize> size, String part) {
    return size.flatMap(
        one ->
            one.isPin(part)
                ? Optional.of(PIN)
                : one.isSocket(part) ? Optional.of(SOCKET) : Optional.empty());
  }

  /** What an item's insert is made for, by its arrangement or part number. */
  static Optional<ContactGender> of(Item item) {
    Optional<ContactGender> arrangement = last(ARRANGEMENT, item.arrangement());
    return arrangement.isPresent() ? arrangement : last(PART, item.part());
  }

  private static Optional<ContactGender> last(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text.toUpperCase(Locale.ROOT).strip());
    return matcher.matches() ? Optional.of(of(matcher.group(1))) : Optional.empty();
  }
}
