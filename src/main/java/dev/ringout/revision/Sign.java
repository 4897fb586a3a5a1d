package dev.ringout.revision;

import dev.ringout.revision.ItemEnds.End;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * By what a wire's end may be known again at an item of another name.
 *
 * @param sureness how sure a sign it is
 * @param farItem the item at the far end by its name in the later revision; empty where that is not
 *     known
 * @param farPin the pin there; empty where it does not count
 * @param pin the pin here; empty where it does not count
 * @param wire the wire's number, else its signal; empty where it does not count
 */
record Sign(Sureness sureness, String farItem, String farPin, String pin, String wire) {

  /** Kinds of signs, the surest first. */
  enum Sureness {
    /** The same far point, from the same pin. */
    FAR_POINT_AND_PIN,
    /** The same far point. */
    FAR_POINT,
    /** A wire of that name to the same far item. */
    FAR_ITEM_AND_WIRE,
    /** A wire of that name between pins of the same names, the far item being unknown. */
    BOTH_PINS_AND_WIRE
  }

  /**
   * The signs of an end, the surest first.
   *
   * @param known an item by its name in the later revision, where that is known
   */
  static List<Sign> of(End end, Function<String, Optional<String>> known) {
    Optional<String> far = known.apply(end.far().ref());
    String name = end.wire().isEmpty() ? end.signal() : end.wire();
    String farPin = end.far().pin();
    List<Sign> signs = new ArrayList<>();
    if (far.isPresent()) {
      signs.add(new Sign(Sureness.FAR_POINT_AND_PIN, far.get(), farPin, end.pin(), ""));
      signs.add(new Sign(Sureness.FAR_POINT, far.get(), farPin, "", ""));
      if (!name.isEmpty()) {
        signs.add(new Sign(Sureness.FAR_ITEM_AND_WIRE, far.get(), "", "", name));
      }
    } else if (!name.isEmpty()) {
      signs.add(new Sign(Sureness.BOTH_PINS_AND_WIRE, "", farPin, end.pin(), name));
    }
    return signs;
  }

  /**
   * How many ends are found again, each by its surest sign first and none twice.
   *
   * @param olds the signs of each end of an old item
   * @param news the signs of each end of a new item
   */
  static int agreeing(List<List<Sign>> olds, List<List<Sign>> news) {
    Map<Sign, List<Integer>> endsWith = new HashMap<>();
    for (int i = 0; i < news.size(); i++) {
      for (Sign sign : news.get(i)) {
        endsWith.computeIfAbsent(sign, k -> new ArrayList<>()).add(i);
      }
    }
    boolean[] taken = new boolean[news.size()];
    List<List<Sign>> open = new ArrayList<>(olds);
    for (Sureness sureness : Sureness.values()) {
      open.removeIf(
          signs ->
              signs.stream()
                  .filter(sign -> sign.sureness() == sureness)
                  .anyMatch(sign -> take(endsWith.getOrDefault(sign, List.of()), taken)));
    }
    return olds.size() - open.size();
  }

  private static boolean take(List<Integer> candidates, boolean[] taken) {
    for (int candidate : candidates) {
      if (!taken[candidate]) {
        taken[candidate] = true;
        return true;
      }
    }
    return false;
  }
}
