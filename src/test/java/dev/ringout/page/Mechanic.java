package dev.ringout.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.openqa.selenium.Keys;

/** Somebody at the page with a unit, who does what the page says and nothing else. */
final class Mechanic {
  /** The page takes nothing for a step that has only just come up. */
  static final int LOOKING_MILLIS = 360;

  private static final int MOST_STEPS = 60;

  final Tab tab;

  Mechanic(Tab tab) {
    this.tab = tab;
  }

  /** Makes a unit of a list and begins its test. */
  void begins(String serial, String name) {
    tab.go("#/units");
    tab.waitFor("#field-serial");
    tab.fill("Serial number", serial);
    tab.press("Test a new unit");
    tab.waitFor("#field-tester");
    tab.fill("Who holds the probes", name);
    tab.press("Start");
    tab.waitFor(".run");
  }

  /** Goes on with a unit that was left, from the list of all. */
  void goesOn(String serial, String who) {
    tab.go("#/units");
    tab.press(serial);
    tab.waitFor(".proof");
    tab.press("Go on where it was left");
    tab.waitFor("#field-tester");
    tab.fill("Who holds the probes", who);
    tab.press("Go on");
    tab.waitFor(".run");
  }

  /** What the page asks for: where it is, and the two points. */
  String step() {
    tab.waitFor(".run h1");
    return tab.text(".run h1") + " " + String.join(" to ", points());
  }

  /** The two sides as they stand there; none where nothing is asked. */
  List<String> points() {
    return tab.texts(".points .name");
  }

  /** Whether nothing is left, once the program has looked. */
  boolean isOver() {
    tab.until("looked", () -> !tab.text(".run h1").startsWith("Looking"));
    return tab.text(".run h1").startsWith("All measured");
  }

  private boolean isOffered() {
    return tab.isThere("[data-key=follow]");
  }

  private static String typed(OptionalDouble ohms) {
    return ohms.isPresent() ? String.valueOf(Math.round(ohms.getAsDouble() * 1000) / 1000.0) : "o";
  }

  /** Types a value with the keys of a keyboard, and takes it. */
  void types(String value) {
    Tab.pause(LOOKING_MILLIS);
    tab.keys(Arrays.stream(value.split("")).toArray(String[]::new));
    String before = tab.text(".last");
    String step = step();
    tab.keys(Keys.SPACE);
    tab.until(
        "taken: " + value,
        () -> !tab.text(".last").equals(before) || !step.equals(step()) || isOffered());
  }

  /** Reads the step that is asked, on a unit. */
  void reads(BuiltUnit unit) {
    List<String> points = points();
    types(typed(unit.ohms(points.get(0), points.get(1))));
  }

  /** All that is asked, on a unit; what is offered after a fault is followed. */
  List<String> readsAll(BuiltUnit unit) {
    List<String> asked = new ArrayList<>();
    for (int i = 0; i < MOST_STEPS && !isOver(); i++) {
      if (isOffered()) {
        asked.add("offer: " + tab.text(".gate"));
        Tab.pause(LOOKING_MILLIS);
        tab.keys("f");
        tab.until("chosen", () -> !isOffered());
      } else {
        asked.add(step());
        reads(unit);
      }
    }
    return asked;
  }

  /** Ends the test. */
  void ends() {
    if (!isOver()) {
      tab.keys("+");
    }
    tab.press("End the test");
    tab.waitFor("[data-key=finish-now]");
    tab.press("End the test");
    tab.waitForText("h1", "Unit ");
    tab.waitFor(".proof");
  }
}
