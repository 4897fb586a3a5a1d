package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a list leaves out is not taken out of the unit; what is to be done can be read by programs.
 */
class DiffOfOwnImportTest {
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge");
  private static final Path B = SAMPLE.resolve("junction-box.xlsx");
  private static final Path C = SAMPLE.resolve("junction-box-c.xlsx");

  @TempDir private Path folder;

  @Test
  void what_another_layout_can_t_say_is_not_given_and_asks_for_no_work() {
    Path imported = folder.resolve("imported.xlsx");
    Path received = SAMPLE.resolve("as-received/connector-sheets.xlsx");
    assertEquals(0, Run.of("import", received, "-o", imported).code());
    Run run = Run.of("diff", B, imported);
    assertEquals(1, run.code());
    String page = run.out();
    assertTrue(page.startsWith("ELECTRICALLY CHANGED: the new list has no switch contacts"), page);
    assertTrue(
        page.contains("not given         length is not in the new list: 93 wires (W001,"), page);
    assertFalse(page.contains("nothing now"), page);
    assertFalse(page.contains("to exchange"), "a kind that is not given is no other item");
    String changes = page.substring(page.indexOf("CHANGES"), page.indexOf("\nWORK"));
    assertTrue(changes.lines().count() < 45, "from more than 200 lines:\n" + changes);
  }

  @Test
  void a_wire_that_goes_is_told_with_its_run() {
    String page = Run.of("diff", B, C).out().replaceAll("\\s+", " ");
    assertTrue(page.contains("W013 runs from J1-N to J2-11, AWG 20, WHT/BLU, 0.9 m"), page);
    assertTrue(page.contains("LAMP EAST; removed"), page);
    assertTrue(page.contains("W033: length 0.7 m, now 0.3 m"), page);
  }

  /** The section of the page that a mechanic works from, made from the document alone. */
  @Test
  void the_work_is_rebuilt_from_the_document() throws IOException {
    Map<String, Object> document = JSON.std.mapFrom(Run.of("diff", B, C, "--json").out());
    List<String> work = new ArrayList<>();
    work.add("WORK");
    texts(document, "cautions").forEach(one -> work.add("! " + one));
    texts(document, "risks").forEach(one -> work.add("! " + one));
    heading(work, "Items and parts to exchange", texts(document, "exchange"));
    Map<Object, Object> steps = new HashMap<>();
    objects(document, "rework").forEach(one -> steps.put(one.get("step"), one.get("text")));
    for (Map<String, Object> visit : objects(document, "work")) {
      List<String> lines = new ArrayList<>();
      list(visit, "steps").forEach(one -> lines.add(one + " " + steps.get(one)));
      if (!lines.isEmpty()) {
        heading(work, "At " + visit.get("at"), lines);
      }
    }
    heading(
        work,
        "Labels and sleeves",
        objects(document, "relabel").stream().map(one -> "" + one.get("text")).toList());
    List<String> reaches =
        objects(document, "reach").stream()
            .filter(one -> !"reaches".equals(one.get("verdict")))
            .map(one -> "" + one.get("text"))
            .toList();
    if (!reaches.isEmpty()) {
      work.add("Does it reach");
      work.addAll(reaches);
    }
    String page = Run.of("diff", B, C).out();
    String section = page.substring(page.indexOf("WORK"), page.indexOf("\nPARTS"));
    assertEquals(
        section.replaceAll("\\s+", " ").strip(), String.join(" ", work).replaceAll("\\s+", " "));
  }

  private static void heading(List<String> work, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      work.add(heading);
      lines.forEach(line -> work.add("[ ] " + line));
    }
  }

  private static List<?> list(Map<String, Object> document, String name) {
    return (List<?>) Objects.requireNonNull(document.get(name), name);
  }

  private static List<String> texts(Map<String, Object> document, String name) {
    return list(document, name).stream().map(String::valueOf).toList();
  }

  private static List<Map<String, Object>> objects(Map<String, Object> document, String name) {
    List<Map<String, Object>> objects = new ArrayList<>();
    for (Object one : list(document, name)) {
      Map<String, Object> object = new HashMap<>();
      ((Map<?, ?>) one).forEach((key, value) -> object.put("" + key, value));
      objects.add(object);
    }
    return objects;
  }
}
