package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.support.Run;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whoever asks for something wrong is told by which option, and the command has that option. */
class AskedTest {
  private static final Pattern OPTION = Pattern.compile("--[a-z-]+");

  /** Parts that are words on the command line and no option. */
  private static final List<Part> WORDS = List.of(Part.WIRE, Part.POINT, Part.CELL, Part.PERSON);

  /** The commands that ask for a part. */
  private static List<String> commands(Part part) {
    return switch (part) {
      case ONLY -> List.of("plan", "work");
      case TOUCHED, OPENED -> List.of("check", "plan", "report");
      case RENAME -> List.of("diff");
      case SLEEVE -> List.of("work");
      case TABLES -> List.of("check", "diff", "plan", "report", "review", "trace", "work");
      case STATE -> List.of("trace");
      case WIRE -> List.of("found");
      case POINT -> List.of("found", "trace");
      case OTHERS -> List.of("check");
      case CELL -> List.of("store take-back");
      case WHO -> List.of("store note", "store take-back", "store sign");
      case PERSON -> List.of("people add", "people role", "people withdraw");
      case SEAL_KEY, TRUSTED_KEY, KEY_LIST, IDS -> List.of("report");
    };
  }

  @ParameterizedTest
  @EnumSource(Part.class)
  void the_option_that_is_named_is_one_of_every_command_that_asks_for_it(Part part) {
    Matcher named = OPTION.matcher(Asked.before(part));
    assertEquals(!WORDS.contains(part), named.find(), Asked.before(part));
    if (!WORDS.contains(part)) {
      for (String command : commands(part)) {
        String help = Run.of((Object[]) (command + " --help").split(" ")).out();
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
