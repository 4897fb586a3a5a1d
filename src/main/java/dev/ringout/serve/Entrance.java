package dev.ringout.serve;

import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/** How browsers come in, and which are in. */
interface Entrance {
  /** Which browser it is, by its cookies; absent where it was not let in, or is out again. */
  Optional<Guest> guest(List<String> cookieLines);

  /** Whether a browser is in still. */
  boolean isIn(Guest guest);

  /** The tickets by which one comes in; absent where who wants to come in signs in. */
  Optional<Tickets> tickets();

  /** Those who signed in; absent where one comes in by tickets. */
  Optional<Visits> visits();

  /** What nobody guesses: a ticket, a cookie's value. */
  static String secret(SecureRandom random) {
    byte[] bytes = new byte[32];
    random.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** The cookies of a request with a name. */
  static List<String> cookies(List<String> lines, String name) {
    return lines.stream()
        .flatMap(line -> List.of(line.split(";", -1)).stream())
        .map(String::strip)
        .filter(pair -> pair.startsWith(name + "="))
        // RFC 6265 allows quotes, and some clients write them.
        .map(pair -> pair.substring(name.length() + 1).replace("\"", ""))
        .toList();
  }
}
