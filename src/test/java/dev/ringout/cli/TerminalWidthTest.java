package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a terminal shows keeps within it, from 60 columns on. Problems of files are one line each,
 * on standard error, for whoever searches them.
 */
class TerminalWidthTest {
  private static final Map<String, String> NAMES =
      Map.of(
          "LIST", "harness-samples/swing-bridge/junction-box.xlsx",
          "NEXT", "harness-samples/swing-bridge/junction-box-c.xlsx",
          "TEST", "harness-samples/swing-bridge/point-to-point.xlsx",
          "VALUES", "harness-samples/swing-bridge/point-to-point-values.xlsx",
          "GOOD", "harness-samples/swing-bridge/point-to-point-clean.xlsx",
          "PAPER", "harness-samples/swing-bridge/paper-errors.xlsx",
          "SHOP", "harness-samples/swing-bridge/as-received/net-table.csv");

  private static String shown(String command) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    String[] words = command.split(" ");
    for (int i = 0; i < words.length; i++) {
      words[i] = NAMES.getOrDefault(words[i], words[i]);
    }
    PrintStream nowhere =
        new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
    int code =
        Main.run(new PrintStream(out, true, StandardCharsets.UTF_8), nowhere, false, 60, words);
    assertTrue(code < 64, command);
    return out.toString(StandardCharsets.UTF_8);
  }

  /** A name that is longer than the line, as in a command to be typed, is not broken. */
  private static boolean isOneWord(String line) {
    return line.strip().split(" ").length <= 3 && line.contains("harness-samples/");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check LIST TEST",
        "check LIST VALUES",
        "check LIST TEST --touched W008",
        "plan LIST",
        "plan LIST --touched W008,W043 --after TEST",
        "work LIST",
        "diff LIST NEXT",
        "found LIST W043",
        "trace LIST J1-A",
        "review PAPER",
        "import SHOP",
        "lot LIST TEST VALUES GOOD",
        "help import"
      })
  void no_line_is_longer_than_a_terminal_of_60_columns(String command) {
    List<String> tooLong =
        shown(command).lines().filter(line -> line.length() > 60 && !isOneWord(line)).toList();
    assertEquals(List.of(), tooLong);
  }
}
