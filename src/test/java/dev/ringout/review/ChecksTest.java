package dev.ringout.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Waiver;
import dev.ringout.source.Place;
import dev.ringout.source.Severity;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every check has a page, a unit at which it fires, and one at which it does not. */
class ChecksTest {
  private static final Path CASES = Path.of("src/test/resources/checks");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @TempDir Path folder;

  static Stream<String> rules() {
    return Review.all().stream().map(Check::rule);
  }

  private static List<Remark> of(Review review, String rule) {
    return review.remarks().stream().filter(remark -> remark.rule().equals(rule)).toList();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void a_check_fires_where_it_should_and_is_quiet_where_it_should_be(String rule) throws Exception {
    boolean fired = false;
    boolean quiet = false;
    for (CheckCase one : CheckCase.read(CASES.resolve(rule + ".txt"))) {
      Review review = one.review(folder, List.of(), DAY);
      List<Remark> remarks = of(review, rule);
      if (one.fires()) {
        fired = true;
        assertTrue(
            remarks.stream().anyMatch(remark -> remark.text().contains(one.says())),
            one.says() + " among " + remarks);
        assertTrue(remarks.stream().noneMatch(remark -> remark.source().isEmpty()));
      } else {
        quiet = true;
        assertEquals(List.of(), remarks);
        assertFalse(review.notRun().containsKey(rule), "it looked, and found nothing");
      }
    }
    assertTrue(fired && quiet);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void a_check_has_a_page_that_says_what_it_looks_for(String rule) throws Exception {
    String page = Files.readString(Path.of("docs/reference/checks/" + rule + ".md"));
    Check check =
        Review.all().stream().filter(one -> one.rule().equals(rule)).findFirst().orElseThrow();
    assertTrue(page.contains("# `" + rule + "`"));
    assertTrue(
        page.toLowerCase(java.util.Locale.ROOT)
            .contains(check.about().toLowerCase(java.util.Locale.ROOT)));
    assertTrue(
        Files.readString(Path.of("docs/reference/review.md")).contains("(checks/" + rule + ".md)"));
  }

  @Test
  void a_check_that_is_written_is_run() throws Exception {
    Set<String> written = new TreeSet<>();
    try (Stream<Path> files = Files.list(Path.of("src/main/java/dev/ringout/review"))) {
      for (Path file : files.toList()) {
        if (Files.readString(file).contains(" implements Check {")) {
          written.add(("" + file.getFileName()).replace(".java", ""));
        }
      }
    }
    Set<String> run = new TreeSet<>();
    Review.all().forEach(check -> run.add(check.getClass().getSimpleName()));
    assertEquals(written, run);
  }

  /** Else its silence would be taken for a good paper. */
  @ParameterizedTest
  @MethodSource("rules")
  void a_check_looks_at_a_unit_or_says_what_it_lacks_to_do_so(String rule) throws Exception {
    Check check =
        Review.all().stream().filter(one -> one.rule().equals(rule)).findFirst().orElseThrow();
    for (CheckCase one : CheckCase.read(CASES.resolve(rule + ".txt"))) {
      Findings findings = new Findings(rule);
      check.run(one.paper(folder), findings);
      assertTrue(findings.hasLooked() || findings.lack().isPresent());
    }
  }

  @Test
  void a_check_that_lacked_its_input_says_what_it_lacked() throws Exception {
    CheckCase bare = CheckCase.read(CASES.resolve("wire-number-twice.txt")).get(1);
    Review review = bare.review(folder, List.of(), DAY);
    assertEquals(Lack.CRIMP_PULLS, review.notRun().get("crimp-pull"));
    assertFalse(review.notRun().containsKey("wire-number-twice"));
  }

  private static Waiver waiver(String rule, String subject, LocalDate until) {
    return new Waiver(
        rule, subject, "L. Berg", "as built since 1998", Optional.of(until), Place.of("waivers"));
  }

  @Test
  void a_waived_remark_is_counted_and_shown_apart() throws Exception {
    CheckCase one = CheckCase.read(CASES.resolve("crimp-gauge.txt")).get(0);
    Review review = one.review(folder, List.of(waiver("crimp-gauge", "J1-1", DAY)), DAY);
    assertEquals(0, review.count(Severity.ERROR));
    assertEquals(1, review.waived().size());
    assertEquals("L. Berg", review.waived().get(0).waiver().who());
  }

  @Test
  void an_expired_or_unused_waiver_is_itself_a_remark() throws Exception {
    CheckCase one = CheckCase.read(CASES.resolve("crimp-gauge.txt")).get(0);
    Review review =
        one.review(
            folder,
            List.of(
                waiver("crimp-gauge", "J1-1", DAY.minusDays(1)), waiver("lug-stud", "TB9-1", DAY)),
            DAY);
    assertEquals(1, review.count(Severity.ERROR), "the remark stands again");
    assertEquals(
        List.of(
            "the waiver of crimp-gauge at J1-1 by L. Berg expired on 2026-11-24",
            "the waiver of lug-stud at TB9-1 by L. Berg covers nothing: remove it"),
        of(review, "waiver").stream().map(Remark::text).toList());
  }
}
