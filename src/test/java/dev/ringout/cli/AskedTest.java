package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.support.Run;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whoever asks for something wrong is told by which option, and the command has that option. */
class AskedTest {
  private static final Pattern OPTION = Pattern.compile("--[a-z-]+");

  /** Parts that are words on the command line and no option. */
  private static final List<Part> WORDS = List.of(Part.WIRE, Part.POINT);

  /** Which commands ask for a part. */
  private static final Map<Part, List<String>> ASKED_BY =
      Map.ofEntries(
          Map.entry(Part.ONLY, List.of("plan", "work")),
          Map.entry(Part.TOUCHED, List.of("check", "plan", "report")),
          Map.entry(Part.OPENED, List.of("check", "plan", "report")),
          Map.entry(Part.RENAME, List.of("diff")),
          Map.entry(Part.SLEEVE, List.of("work")),
          Map.entry(
              Part.TABLES, List.of("check", "diff", "plan", "report", "review", "trace", "work")),
          Map.entry(Part.STATE, List.of("trace")),
          Map.entry(Part.WIRE, List.of("found")),
          Map.entry(Part.POINT, List.of("found", "trace")),
          Map.entry(Part.OTHERS, List.of("check")),
          Map.entry(Part.SEAL_KEY, List.of("report")),
          Map.entry(Part.TRUSTED_KEY, List.of("report")));

  @ParameterizedTest
  @EnumSource(Part.class)
  void the_option_that_is_named_is_one_of_every_command_that_asks_for_it(Part part) {
    Matcher named = OPTION.matcher(Asked.before(part));
    assertEquals(!WORDS.contains(part), named.find(), Asked.before(part));
    if (!WORDS.contains(part)) {
      for (String command : ASKED_BY.get(part)) {
        String help = Run.of(command, "--help").out();
        assertTrue(
            Pattern.compile("(?<![a-z-])" + named.group() + "(?![a-z-])").matcher(help).find(),
            command + " has no " + named.group());
      }
    }
  }

  @Test
  void no_two_parts_are_asked_for_by_one_option() {
    List<String> options =
        List.of(Part.values()).stream()
            .map(Asked::before)
            .filter(words -> words.startsWith("--"))
            .toList();
    assertEquals(List.copyOf(new LinkedHashSet<>(options)), options);
  }
}
