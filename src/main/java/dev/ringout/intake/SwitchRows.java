package dev.ringout.intake;

import dev.ringout.harness.Switch;
import dev.ringout.source.UnusableInput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The sheet {@code Switches}: their positions and the contacts closed in each. */
final class SwitchRows {
  private static final Column STATE = Column.of("State");

  private final SheetsOfHarness sheets;
  private final Map<String, OneSwitch> switches = new LinkedHashMap<>();

  private SwitchRows(SheetsOfHarness sheets) {
    this.sheets = sheets;
  }

  /** A switch as far as its rows have been read. */
  private static final class OneSwitch {
    final String ref;
    final List<String> states = new ArrayList<>();
    final List<Switch.Contact> contacts = new ArrayList<>();

    OneSwitch(String ref) {
      this.ref = ref;
    }

    Switch done() {
      return new Switch(ref, List.copyOf(states), List.copyOf(contacts));
    }
  }

  static List<Switch> read(SheetsOfHarness sheets) throws UnusableInput {
    SwitchRows rows = new SwitchRows(sheets);
    sheets.each(
        "Switches",
        List.of(
            SheetsOfHarness.REF,
            STATE,
            SheetsOfHarness.PIN,
            SheetsOfHarness.TO_PIN,
            SheetsOfHarness.NOTE),
        List.of(SheetsOfHarness.REF, STATE, SheetsOfHarness.PIN, SheetsOfHarness.TO_PIN),
        rows::row);
    return rows.switches.values().stream().map(OneSwitch::done).toList();
  }

  private void row(Entry entry) {
    String refText = entry.text(SheetsOfHarness.REF.name());
    String stateText = entry.text(STATE.name());
    if (refText.isEmpty() || stateText.isEmpty()) {
      entry.error(
          (refText.isEmpty() ? SheetsOfHarness.REF : STATE).name(),
          "a switch row needs the switch and its position",
          "");
      return;
    }
    String ref = sheets.spelling(refText);
    OneSwitch oneSwitch = switches.computeIfAbsent(ref, OneSwitch::new);
    String state =
        oneSwitch.states.stream()
            .filter(known -> known.equalsIgnoreCase(stateText))
            .findFirst()
            .orElse(stateText);
    if (!oneSwitch.states.contains(state)) {
      oneSwitch.states.add(state);
    }
    if (entry.text(SheetsOfHarness.PIN.name()).isEmpty()
        && entry.text(SheetsOfHarness.TO_PIN.name()).isEmpty()) {
      return;
    }
    sheets
        .pair(entry)
        .ifPresent(
            pair ->
                oneSwitch.contacts.add(
                    new Switch.Contact(ref, state, pair.from(), pair.to(), entry.place())));
  }
}
