package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The guide to a shop's first list is what its commands print. */
class HowToImportTest {
  private static final Path PAGE = Path.of("docs/how-to/import-a-list.md");

  /** A file of the guide, or a command with what it prints. */
  private static final Pattern BLOCK =
      Pattern.compile(
          "(?m)^```(?:csv (?<list>\\S+)\\n|text (?<shown>\\S+)\\n|text\\n(?<command>\\$ ringout .*)\\n)"
              + "(?<text>(?:(?!```).*\\n)*)```$");

  private String printed(Path folder, String command) {
    List<Object> words = new ArrayList<>();
    for (String word : command.substring("$ ringout ".length()).split(" ", -1)) {
      words.add(word.matches("\\w+\\.\\w+") ? folder.resolve(word) : word);
    }
    Run run = Run.of(words.toArray());
    return (run.out() + run.err()).replace(folder + "/", "").stripTrailing() + "\n";
  }

  @Test
  void every_command_of_the_guide_prints_what_the_guide_shows(@TempDir Path folder)
      throws IOException {
    String page = Files.readString(PAGE);
    StringBuilder anew = new StringBuilder();
    Matcher block = BLOCK.matcher(page);
    int commands = 0;
    while (block.find()) {
      String text = block.group("text");
      String head = block.group().lines().findFirst().orElseThrow();
      if (block.group("list") != null) {
        Files.writeString(folder.resolve(block.group("list")), text);
      } else if (block.group("shown") != null) {
        text = Files.readString(folder.resolve(block.group("shown")));
      } else {
        head = head + "\n" + block.group("command");
        text = printed(folder, block.group("command"));
        commands++;
      }
      block.appendReplacement(anew, Matcher.quoteReplacement(head + "\n" + text + "```"));
    }
    block.appendTail(anew);
    assertTrue(commands >= 4, "the guide has its commands");
    if (Boolean.getBoolean("ringout.updateGolden") && !page.equals(anew.toString())) {
      Files.writeString(PAGE, anew.toString());
      fail("the guide was written anew; read the difference and run again");
    }
    assertEquals(page, anew.toString());
  }
}
