package dev.ringout.benchmarks.damage;

import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Chance, seeded, and what damage likes to put in places. */
final class Chance {
  static final List<String> WORDS =
      List.of(
          "",
          " ",
          "0",
          "-1",
          "1",
          "1e308",
          "1e-308",
          "-0.02",
          "NaN",
          "INF",
          "2147483647",
          "2000000000",
          "-2147483648",
          "99999999999999999999",
          "1048577",
          "A1",
          "XFE1",
          "ZZZZ1",
          "A1:B2",
          "A0",
          "J1-A",
          "J1",
          "OL",
          ">200 M",
          "4/0",
          "0.75 mm²",
          "=1+1",
          "_x0000_",
          "_x000D_",
          "\ufeff",
          "\u202e",
          "2-Jan",
          "REST",
          "S1=ON",
          "1,5",
          "\"",
          "''",
          ";",
          "\t",
          "\n",
          "a\tb\nc",
          "µΩ",
          "12 ft 3 in",
          "#REF!",
          "J1-1..J1-99999999",
          "TB1-1+TB1-2",
          "s",
          "str",
          "e",
          "b",
          "d",
          "inlineStr",
          "true",
          "1904",
          "#ff0000",
          "float",
          "boolean",
          "time",
          "PT1H",
          "2027-13-45",
          "collapse",
          "x".repeat(40_000));

  private final Random random;

  Chance(long seed) {
    this.random = new Random(seed);
  }

  int below(int bound) {
    return random.nextInt(Math.max(1, bound));
  }

  boolean oneIn(int times) {
    return random.nextInt(times) == 0;
  }

  <T> T of(List<T> some) {
    return some.get(random.nextInt(some.size()));
  }

  String word() {
    return of(WORDS);
  }

  /** Bytes changed, put in, taken away, or the rest of them cut off. */
  byte[] bytes(byte[] whole) {
    byte[] bytes = whole.clone();
    for (int i = 1 + below(8); i > 0 && bytes.length > 0; i--) {
      int at = below(bytes.length);
      switch (below(4)) {
        case 0 -> bytes[at] = (byte) random.nextInt(256);
        case 1 -> bytes[at] ^= (byte) (1 << below(8));
        case 2 -> {
          int to = Math.min(bytes.length, at + 1 + below(16));
          byte[] less = Arrays.copyOf(bytes, bytes.length - (to - at));
          System.arraycopy(bytes, to, less, at, bytes.length - to);
          bytes = less;
        }
        default -> {
          int length = Math.min(8, bytes.length - at);
          int from = below(bytes.length - length + 1);
          System.arraycopy(bytes.clone(), from, bytes, at, length);
        }
      }
    }
    return oneIn(12) ? Arrays.copyOf(bytes, below(bytes.length + 1)) : bytes;
  }
}
