package dev.ringout.imports.join;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.Understanding;
import dev.ringout.imports.list.WiringOddity;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One spelling for every item: case does not matter, and a list may shorten its own names. */
final class ItemNames {
  private static final Pattern ASPECTS =
      Pattern.compile("(?:[=+][A-Za-z0-9.]+)*-([A-Z]{1,4}\\d{1,4})");

  private final ListFindings findings;
  private final Map<String, String> spelling = new HashMap<>();
  private final Map<String, String> other = new HashMap<>();
  private final Map<String, String> bySound = new HashMap<>();
  private final Set<String> ambiguous = new HashSet<>();
  private final Map<String, String> settledNames = new HashMap<>();
  private final Set<WiringOddity> said = new HashSet<>();
  private final Map<String, String> merged = new HashMap<>();
  private String prefix = "";

  ItemNames(Understanding list, ListFindings findings) {
    this.findings = findings;
    prefix = commonPrefix(list);
    mergeSpellings(list);
    for (String item : list.namesOfPins().keySet()) {
      String own = withoutPrefix(item);
      spelling.putIfAbsent(upper(own), own);
      String before = bySound.putIfAbsent(CellText.refKey(own), own);
      if (before != null && !upper(before).equals(upper(own))) {
        ambiguous.add(CellText.refKey(own));
      }
    }
    list.otherNames().forEach((name, item) -> other.put(name, withoutPrefix(item)));
  }

  private static String upper(String text) {
    return text.toUpperCase(Locale.ROOT);
  }

  private String withoutPrefix(String item) {
    return !prefix.isEmpty() && item.startsWith(prefix) ? item.substring(prefix.length()) : item;
  }

  /**
   * Digits before every connector's name that the far ends leave out: {@code 12A05} and {@code A5}.
   */
  private static String commonPrefix(Understanding list) {
    Set<String> items = list.namesOfPins().keySet();
    if (items.size() < 2) {
      return "";
    }
    String common = "";
    for (String item : items) {
      int end = 0;
      while (end < item.length() && CellText.isDigit(item.charAt(end))) {
        end++;
      }
      String digits = item.substring(0, end);
      if (digits.isEmpty()
          || end == item.length()
          || !(common.isEmpty() || common.equals(digits))) {
        return "";
      }
      common = digits;
    }
    Set<String> with = new HashSet<>();
    Set<String> without = new HashSet<>();
    for (String item : items) {
      with.add(CellText.refKey(item));
      without.add(CellText.refKey(item.substring(common.length())));
    }
    int fits = 0;
    int fitsShort = 0;
    for (Draft draft : list.drafts()) {
      String far = CellText.refKey(draft.to().item());
      fits += with.contains(far) ? 1 : 0;
      fitsShort += without.contains(far) ? 1 : 0;
    }
    return fitsShort > fits ? common : "";
  }

  /** Says once what was settled for the list as a whole. */
  void report(Place place) {
    if (!prefix.isEmpty()) {
      findings.note(place, new WiringOddity.PrefixLeftOut(prefix));
    }
  }

  /**
   * Spellings of designators that differ in zeros, dashes and blanks alone are one item where no
   * pin of one is a pin of another: {@code J1}, {@code J01} and {@code J-1}.
   */
  private void mergeSpellings(Understanding list) {
    Map<String, Integer> uses = new LinkedHashMap<>();
    for (Draft draft : list.drafts()) {
      uses.merge(draft.from().item(), 1, Integer::sum);
      uses.merge(draft.to().item(), 1, Integer::sum);
    }
    for (Map<String, Set<String>> spellings : spellings(list, uses.keySet())) {
      boolean listed = spellings.keySet().stream().anyMatch(list.namesOfPins()::containsKey);
      if (!listed && haveNoPinInCommon(spellings.values())) {
        String most =
            spellings.keySet().stream()
                .max(
                    Comparator.<String>comparingInt(item -> uses.getOrDefault(item, 0))
                        .thenComparingInt(item -> -item.length()))
                .orElseThrow();
        spellings.keySet().stream()
            .filter(item -> !item.equals(most) && !upper(item).equals(upper(most)))
            .forEach(item -> merged.put(item, most));
      }
    }
  }

  /** Of each item that is spelt in several ways, the pins by spelling. */
  private static List<Map<String, Set<String>>> spellings(
      Understanding list, Collection<String> items) {
    Map<String, List<String>> byKey = new LinkedHashMap<>();
    for (String item : items) {
      if (item.length() < 12) {
        byKey.computeIfAbsent(looseKey(item), key -> new ArrayList<>()).add(item);
      }
    }
    byKey.values().removeIf(same -> same.size() == 1);
    if (byKey.isEmpty()) {
      return List.of();
    }
    Map<String, Set<String>> pins = new HashMap<>();
    byKey.values().forEach(same -> same.forEach(item -> pins.put(item, new HashSet<>())));
    for (Draft draft : list.drafts()) {
      for (End end : List.of(draft.from(), draft.to())) {
        pins.computeIfPresent(
            end.item(),
            (item, own) -> {
              own.add(end.pin());
              return own;
            });
      }
    }
    List<Map<String, Set<String>>> spellings = new ArrayList<>();
    for (List<String> same : byKey.values()) {
      Map<String, Set<String>> own = new LinkedHashMap<>();
      same.forEach(item -> own.put(item, pins.getOrDefault(item, Set.of())));
      spellings.add(own);
    }
    return spellings;
  }

  private static boolean haveNoPinInCommon(Collection<Set<String>> pins) {
    Set<String> all = new HashSet<>();
    for (Set<String> own : pins) {
      for (String pin : own) {
        if (pin.isEmpty() || !all.add(pin)) {
          return false;
        }
      }
    }
    return true;
  }

  /** A designator without what hands leave out; any other text as it is. */
  private static String looseKey(String item) {
    boolean designator = item.matches("[A-Za-z]{1,4}[ _-]?0*\\d{1,4}");
    return designator ? CellText.refKey(item.replaceAll("[ _-]", "")) : item;
  }

  /** The item's name as it is written in the harness. */
  String of(String item, Place place) {
    String settled = settledNames.get(item);
    if (settled == null) {
      settled = settle(item, place);
      settledNames.put(item, settled);
    }
    return settled;
  }

  private String settle(String item, Place place) {
    String text = item.indexOf('\n') >= 0 ? item.replaceAll("\\s+", " ") : item;
    String twin = merged.get(text);
    if (twin != null) {
      if (said.add(new WiringOddity.TakenFor(text, twin))) {
        findings.warning(place, new WiringOddity.TakenFor(text, twin));
      }
      return of(twin, place);
    }
    String known = spelling.get(upper(text));
    if (known != null) {
      if (!known.equals(text)) {
        sayOnce(place, new WiringOddity.ItemOfTwoCases(text, known));
      }
      return known;
    }
    String key = CellText.refKey(text);
    String whole = other.get(key);
    if (whole != null) {
      return whole;
    }
    String sound = ambiguous.contains(key) ? null : bySound.get(key);
    if (sound != null) {
      sayOnce(place, new WiringOddity.TakenFor(text, sound));
      return sound;
    }
    String shorter = withoutPrefix(text);
    if (!shorter.equals(text) && bySound.containsKey(CellText.refKey(shorter))) {
      return of(shorter, place);
    }
    spelling.put(upper(text), text);
    return text;
  }

  /** {@code X1} of {@code -X1} and of {@code =A1+S2-X1}; without a remark behind it. */
  private static String withoutSigns(String item) {
    Matcher aspects = ASPECTS.matcher(item);
    return Ends.withoutBracketBehind(aspects.matches() ? aspects.group(1) : item);
  }

  private void sayOnce(Place place, WiringOddity oddity) {
    if (said.add(oddity)) {
      findings.note(place, oddity);
    }
  }

  /**
   * Items whose names differ in zeros alone, in a remark behind them ({@code GND rail} and {@code
   * GND rail (-)}), or in the signs of aspects before them ({@code -X1} and {@code X1}; signs of
   * IEC 81346-1, from memory): perhaps one.
   */
  void reportTwins(List<String> items, Map<String, Place> places) {
    Map<String, List<String>> byKey = new HashMap<>();
    Set<String> bare = new HashSet<>();
    for (String item : items) {
      String key = CellText.refKey(withoutSigns(item));
      byKey.computeIfAbsent(key, one -> new ArrayList<>()).add(item);
      if (withoutSigns(item).equals(item)) {
        bare.add(key);
      }
    }
    for (String item : items) {
      String key = CellText.refKey(withoutSigns(item));
      List<String> twins = bare.contains(key) ? byKey.getOrDefault(key, List.of()) : List.of();
      if (twins.size() > 1 && twins.get(0).equals(item)) {
        Place place = places.get(twins.get(1));
        findings.warning(place == null ? Place.of("") : place, new WiringOddity.TwinItems(twins));
      }
    }
  }
}
