package dev.ringout.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.Circuit;
import dev.ringout.harness.Waiver;
import dev.ringout.source.Place;
import dev.ringout.source.Severity;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.support.ReadUnit;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the checks of the paper say together. */
class ReviewTest {
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge");
  private static final Path PAPER_ERRORS = SAMPLE.resolve("paper-errors.xlsx");

  private static Review review(Path list, List<Waiver> waivers, Optional<LocalDate> day) {
    return Review.of(
        Circuit.of(ReadUnit.of(list)), Tables.published(), CopperWire.published(), waivers, day);
  }

  private static Waiver waiver(Remark remark, String until) {
    return new Waiver(
        remark.rule(),
        remark.subject(),
        "L. Berg",
        "as built since 1998",
        until.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(until)),
        Place.of("waivers"));
  }

  @Test
  void errors_come_before_warnings_and_warnings_before_notes() {
    List<Severity> severities =
        review(PAPER_ERRORS, List.of(), Optional.empty()).remarks().stream()
            .map(Remark::severity)
            .toList();
    assertEquals(severities.stream().sorted().toList(), severities);
    assertEquals(EnumSet.allOf(Severity.class), Set.copyOf(severities));
  }

  @Test
  void the_sample_of_paper_errors_has_one_for_every_check() {
    Review review = review(PAPER_ERRORS, List.of(), Optional.empty());
    Set<String> silent = new TreeSet<>(review.checks().keySet());
    review.remarks().forEach(remark -> silent.remove(remark.rule()));
    assertEquals(Set.of(), silent);
  }

  @Test
  void every_remark_is_of_a_rule_and_names_its_source() {
    Review review = review(PAPER_ERRORS, List.of(), Optional.empty());
    for (Remark remark : review.remarks()) {
      assertTrue(review.checks().containsKey(remark.rule()), remark.toString());
      assertTrue(!remark.source().isBlank(), remark.toString());
    }
  }

  @Test
  void a_check_speaks_or_looked_in_vain_and_never_both() {
    Review review = review(SAMPLE.resolve("junction-box.xlsx"), List.of(), Optional.empty());
    Set<String> spoke = review.remarks().stream().map(Remark::rule).collect(Collectors.toSet());
    spoke.retainAll(review.notRun().keySet());
    assertEquals(Set.of(), spoke);
  }

  @Test
  void a_waiver_that_ends_holds_to_its_last_day_and_without_a_day_not_at_all() {
    Remark error = review(PAPER_ERRORS, List.of(), Optional.empty()).remarks().get(0);
    List<Waiver> waivers = List.of(waiver(error, "2027-03-31"));
    LocalDate last = LocalDate.of(2027, 3, 31);
    assertEquals(1, review(PAPER_ERRORS, waivers, Optional.of(last)).waived().size());
    assertEquals(0, review(PAPER_ERRORS, waivers, Optional.of(last.plusDays(1))).waived().size());
    assertEquals(0, review(PAPER_ERRORS, waivers, Optional.empty()).waived().size());
  }

  @Test
  void a_waiver_without_an_end_holds_on_any_day() {
    Remark error = review(PAPER_ERRORS, List.of(), Optional.empty()).remarks().get(0);
    assertEquals(
        1, review(PAPER_ERRORS, List.of(waiver(error, "")), Optional.empty()).waived().size());
  }
}
