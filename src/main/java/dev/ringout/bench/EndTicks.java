package dev.ringout.bench;

import dev.ringout.bench.Refused.Reason;
import dev.ringout.readings.Person;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.Tick;
import dev.ringout.work.ItemSheet;
import dev.ringout.work.WireEnd;
import dev.ringout.work.WorkPapers;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is made of a unit and looked at by a second person, end by end: as the last tick on each
 * says.
 */
public final class EndTicks {
  private final Map<String, End> ends = new LinkedHashMap<>();

  /** Everybody who had a hand in an end since it was undone last. */
  private final Map<String, Set<String>> makers = new HashMap<>();

  /** Who ticked, and when. */
  public record Ticked(String who, String at) {}

  /** An end of a wire. */
  public record End(
      String wire, String item, String pin, Optional<Ticked> made, Optional<Ticked> checked) {}

  private EndTicks() {}

  /** As the entries of a unit's tests say. */
  public static EndTicks of(WorkPapers papers, Iterable<List<Entry>> tests) {
    EndTicks ticks = new EndTicks();
    for (ItemSheet sheet : papers.sheets()) {
      for (ItemSheet.Cavity cavity : sheet.cavities()) {
        for (WireEnd end : cavity.ends()) {
          ticks.put(
              new End(
                  end.wire().name(),
                  sheet.ref(),
                  cavity.pin(),
                  Optional.empty(),
                  Optional.empty()));
        }
      }
    }
    for (List<Entry> entries : tests) {
      for (Entry entry : entries) {
        Tick.in(entry).ifPresent(tick -> ticks.take(tick, entry));
      }
    }
    return ticks;
  }

  /**
   * What a rework undoes: each end of a touched wire that was ticked before the last reading. What
   * was ticked since then is of the rework itself.
   *
   * @param tests of the unit, each with all that happened in it
   */
  static List<Tick> undoneBy(Set<String> touched, Iterable<List<Entry>> tests) {
    Map<String, Tick> ticked = new LinkedHashMap<>();
    Map<String, Tick> undone = new LinkedHashMap<>();
    for (List<Entry> entries : tests) {
      for (Entry entry : entries) {
        if (entry.is(EntryKind.READING)) {
          undone.putAll(ticked);
        }
        Optional<Tick> tick = Tick.in(entry).filter(one -> touched.contains(one.wire()));
        if (tick.isPresent()) {
          Tick one = tick.get();
          String key = key(one.wire(), one.item(), one.pin());
          ticked.remove(key);
          undone.remove(key);
          if (one.what() != Tick.What.UNDONE) {
            ticked.put(key, new Tick(Tick.What.UNDONE, one.wire(), one.item(), one.pin()));
          }
        }
      }
    }
    return List.copyOf(undone.values());
  }

  private static String key(String wire, String item, String pin) {
    return wire + "\n" + item + "\n" + pin;
  }

  private void put(End end) {
    ends.put(key(end.wire(), end.item(), end.pin()), end);
  }

  private void take(Tick tick, Entry entry) {
    End end = ends.get(key(tick.wire(), tick.item(), tick.pin()));
    if (end == null) {
      return;
    }
    String key = key(tick.wire(), tick.item(), tick.pin());
    if (tick.what() == Tick.What.MADE) {
      makers.computeIfAbsent(key, one -> new LinkedHashSet<>()).add(entry.who());
    } else if (tick.what() == Tick.What.UNDONE) {
      makers.remove(key);
    }
    Optional<Ticked> ticked = Optional.of(new Ticked(entry.who(), entry.at()));
    put(
        switch (tick.what()) {
          case MADE -> new End(end.wire(), end.item(), end.pin(), ticked, Optional.empty());
          case CHECKED -> new End(end.wire(), end.item(), end.pin(), end.made(), ticked);
          case UNDONE ->
              new End(end.wire(), end.item(), end.pin(), Optional.empty(), Optional.empty());
        });
  }

  /** Every end, item by item. */
  public List<End> ends() {
    return new ArrayList<>(ends.values());
  }

  /**
   * Whether a tick may stand.
   *
   * @throws Refused where there is no such end, or who checks is who made it
   */
  void require(Tick tick, String who) throws Refused {
    End end = ends.get(key(tick.wire(), tick.item(), tick.pin()));
    if (end == null) {
      throw new Refused(Reason.MISSING, "The list has no such end.");
    }
    if (!Person.isNamed(who)) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "Say who ticks.");
    }
    if (tick.what() != Tick.What.CHECKED) {
      return;
    }
    if (end.made().isEmpty()) {
      throw new Refused(Reason.MEANWHILE, "This end is not made yet.");
    }
    String key = key(tick.wire(), tick.item(), tick.pin());
    if (makers.getOrDefault(key, Set.of()).stream().anyMatch(one -> Person.isSame(one, who))) {
      throw new Refused(Reason.NOT_UNDERSTOOD, who + " made this end: a second person checks it.");
    }
  }
}
