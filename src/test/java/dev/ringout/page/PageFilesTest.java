package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the files of the bench's page are held to, before any browser sees them. */
class PageFilesTest {
  private static final int SPEECH_LIMIT_BYTES = 300 * 1024;
  private static final String SVG_NAMESPACE = "http://www.w3.org/2000/svg";

  @Test
  void the_page_holds_no_code_and_no_style_of_its_own() throws IOException {
    String html = text("index.html");
    assertEquals(
        Set.of("<script type=\"module\" src=\"/bench.js\">"), all(html, "(<script[^>]*>)"));
    assertEquals(Set.of(), all(html, "(<style|\\sstyle=|\\son[a-z]+=)"));
  }

  @Test
  void the_page_takes_nothing_from_a_network() throws IOException {
    String files =
        text("index.html") + text("bench.css") + text("bench.js").replace(SVG_NAMESPACE, "");
    assertEquals(Set.of(), all(files, "(https?:|@import|url\\(|\\bimport\\b)"));
  }

  @Test
  void no_text_of_the_user_can_become_markup_or_code() throws IOException {
    assertEquals(
        Set.of(),
        all(
            text("bench.js"),
            "(innerHTML|outerHTML|insertAdjacentHTML|document\\.write|DOMParser|srcdoc|\\beval\\(|new Function|javascript:)"));
  }

  @Test
  void every_request_of_the_page_stands_in_the_reference() throws IOException {
    String reference = Files.readString(Path.of("docs/reference/bench-api.md"));
    Set<String> acts = all(text("bench.js"), "\\bact\\('([a-z]+)'");
    assertTrue(acts.containsAll(List.of("take", "back", "skip", "confirm", "start", "finish")));
    Set<String> requests = all(text("bench.js"), "['`](/api/[a-z]+)");
    assertTrue(requests.containsAll(List.of("/api/state", "/api/events", "/api/units")));
    acts.forEach(act -> requests.add("/api/session/" + act));
    for (String request : requests) {
      assertTrue(reference.contains(request), request);
    }
  }

  @Test
  void what_the_page_speaks_is_one_small_file_with_every_letter_and_number() throws IOException {
    assertTrue(bytes("speech.ogg").length <= SPEECH_LIMIT_BYTES);
    Set<String> words = all(text("speech.json"), "\"([a-z]+)\": \\[\\d");
    for (char letter = 'a'; letter <= 'z'; letter++) {
      assertTrue(words.contains(String.valueOf(letter)), String.valueOf(letter));
    }
    assertTrue(words.containsAll(numbersOfThePage()));
    assertTrue(words.containsAll(List.of("small", "large", "to", "the", "rest", "shell")));
  }

  private static Set<String> numbersOfThePage() throws IOException {
    Set<String> lists = all(text("bench.js"), "(?s)const (?:ONES|TENS) = \\[(.*?)]");
    Set<String> numbers = all(String.join(",", lists), "'([a-z]+)'");
    assertEquals(20 + 8, numbers.size());
    return numbers;
  }

  private static Set<String> all(String text, String pattern) {
    Set<String> found = new TreeSet<>();
    Pattern.compile(pattern).matcher(text).results().forEach(hit -> found.add(hit.group(1)));
    return found;
  }

  private static String text(String name) throws IOException {
    return new String(bytes(name), StandardCharsets.UTF_8);
  }

  private static byte[] bytes(String name) throws IOException {
    try (InputStream in =
        Objects.requireNonNull(
            PageFilesTest.class.getResourceAsStream("/dev/ringout/page/" + name), name)) {
      return in.readAllBytes();
    }
  }
}
