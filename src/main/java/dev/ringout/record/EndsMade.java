package dev.ringout.record;

import dev.ringout.harness.NaturalOrder;
import dev.ringout.readings.Noted;
import dev.ringout.readings.Person;
import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.Table;
import dev.ringout.record.RecordBlock.Words;
import dev.ringout.units.Numbers;
import dev.ringout.work.ItemSheet;
import dev.ringout.work.WireEnd;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Which ends of wires somebody made and a second person looked at: as the last tick on each says.
 * Who made an end does not check it.
 */
final class EndsMade implements Noted.Cases<Boolean> {
  private final Map<Key, End> ends = new LinkedHashMap<>();
  private final Set<String> ticked = new LinkedHashSet<>();
  private final List<String> unknown = new ArrayList<>();

  private record Key(String item, String pin, String wire) {}

  private record End(Optional<String> maker, Optional<String> checker) {
    static final End OPEN = new End(Optional.empty(), Optional.empty());

    /** By somebody else than who made it; of whom nobody knows who it was checked nothing. */
    boolean isChecked() {
      return maker.filter(Person::isNamed).isPresent()
          && checker.filter(Person::isNamed).isPresent()
          && !isByOneAlone();
    }

    private boolean isByOneAlone() {
      return Person.isSame(maker.orElse(""), checker.orElse(""));
    }

    String lacks() {
      if (maker.isEmpty()) {
        return checker.isPresent() ? "checked, and not marked as made" : "not made";
      }
      if (checker.isEmpty()) {
        return "made, not checked";
      }
      return isByOneAlone() ? "checked by who made it" : "made or checked by nobody named";
    }
  }

  private EndsMade(List<ItemSheet> items) {
    for (ItemSheet item : items) {
      for (ItemSheet.Cavity cavity : item.cavities()) {
        for (WireEnd end : cavity.ends()) {
          ends.put(new Key(item.ref(), cavity.pin(), end.wire().name()), End.OPEN);
        }
      }
    }
  }

  /** Nothing where nobody ticked any. */
  static List<RecordBlock> of(TestRecord record) {
    EndsMade made = new EndsMade(record.faces());
    boolean any = false;
    for (Noted one : record.history().noted()) {
      any |= one.match(made);
    }
    return any ? made.blocks() : List.of();
  }

  private List<RecordBlock> blocks() {
    Map<Key, End> unchecked = new LinkedHashMap<>(ends);
    unchecked.values().removeIf(End::isChecked);
    int open = unchecked.size();
    unchecked.keySet().removeIf(key -> !ticked.contains(key.item()));
    List<RecordBlock> blocks = new ArrayList<>();
    blocks.add(new Heading(3, "Ends made and checked"));
    blocks.add(
        new Table(
            "Ends",
            List.of("Item", "Ends", "Made", "By", "Checked by a second person", "By"),
            byItem(),
            -1));
    if (open > 0) {
      blocks.add(
          new Words(
              open
                  + " of "
                  + Numbers.count(ends.size(), "end")
                  + " not made and checked by a second person"
                  + (unchecked.isEmpty() ? "." : "; at the items where any was ticked:"),
              true));
    }
    if (!unchecked.isEmpty()) {
      blocks.add(
          FilledColumns.of(
              "Ends not checked",
              List.of("Item", "Pin", "Wire", "Is", "Made by"),
              unchecked.entrySet().stream().map(EndsMade::row).toList(),
              ""));
    }
    unknown.forEach(
        end -> blocks.add(new Words("Ticked, and not in the list: " + end + ".", true)));
    return blocks;
  }

  private static List<String> row(Map.Entry<Key, End> one) {
    Key key = one.getKey();
    End end = one.getValue();
    return List.of(key.item(), key.pin(), key.wire(), end.lacks(), end.maker().orElse(""));
  }

  private List<List<String>> byItem() {
    Map<String, List<End>> items = new LinkedHashMap<>();
    ends.forEach(
        (key, end) -> items.computeIfAbsent(key.item(), item -> new ArrayList<>()).add(end));
    List<List<String>> rows = new ArrayList<>();
    items.forEach(
        (item, of) -> {
          List<End> made = of.stream().filter(end -> end.maker().isPresent()).toList();
          List<End> checked = of.stream().filter(End::isChecked).toList();
          rows.add(
              List.of(
                  item,
                  "" + of.size(),
                  "" + made.size(),
                  names(made, End::maker),
                  "" + checked.size(),
                  names(checked, End::checker)));
        });
    return rows;
  }

  private static String names(List<End> ends, Function<End, Optional<String>> who) {
    return ends.stream()
        .flatMap(end -> who.apply(end).stream())
        .collect(Collectors.toCollection(() -> new TreeSet<>(NaturalOrder.INSTANCE)))
        .stream()
        .collect(Collectors.joining(", "));
  }

  @Override
  public Boolean words(Noted.Words noted) {
    return false;
  }

  @Override
  public Boolean takenBack(Noted.ReadingTakenBack noted) {
    return false;
  }

  @Override
  public Boolean photograph(Noted.Photograph noted) {
    return false;
  }

  @Override
  public Boolean endTicked(Noted.EndTicked tick) {
    Key key = new Key(tick.item(), tick.pin(), tick.wire());
    End end = ends.get(key);
    if (end == null) {
      unknown.add(tick.wire() + " at " + tick.item() + "-" + tick.pin());
      return true;
    }
    ticked.add(tick.item());
    Optional<String> who = Optional.of(tick.who());
    ends.put(
        key,
        switch (tick.state()) {
          case MADE -> new End(who, Optional.empty());
          case CHECKED -> new End(end.maker(), who);
          case UNDONE -> End.OPEN;
        });
    return true;
  }

  @Override
  public Boolean signed(Noted.Signed noted) {
    return false;
  }
}
