package dev.ringout.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.ringout.seal.Digest;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the content digest of a record is a digest of. */
class CanonicalFormTest {
  @Test
  void every_fact_stands_on_a_line_with_its_name() {
    assertEquals(
        """
        ringout-record-content/1
        piece\tverdict
        words\tCONFORMS
        conforms\tyes
        piece\theading
        level\t2
        words\tReadings
        piece\twords
        words\tTwo probes.
        warns\tno
        piece\tpairs
        pair\tUnit\tSpan lock box
        piece\ttable
        name\tCounts
        headings\tTested\tFailed
        row\t12\t0
        piece\tpicture
        svg\t<svg/>
        caption\tJ1 from both sides
        piece\tsignatures
        who\tTester\tInspector
        piece\tnew page
        """,
        CanonicalForm.of(
            List.of(
                new RecordBlock.Verdict("CONFORMS", true),
                new RecordBlock.Heading(2, "Readings"),
                new RecordBlock.Words("Two probes.", false),
                new RecordBlock.Pairs(List.of(List.of("Unit", "Span lock box"))),
                new RecordBlock.Table(
                    "Counts", List.of("Tested", "Failed"), List.of(List.of("12", "0")), -1),
                new RecordBlock.Picture("<svg/>", "J1 from both sides"),
                new RecordBlock.Signatures(List.of("Tester", "Inspector")),
                new RecordBlock.NewPage())));
  }

  @Test
  void a_value_that_looks_like_a_line_of_its_own_is_none() {
    assertEquals(
        "ringout-record-content/1\npiece\twords\nwords\tA\\npiece\\tnew page \\\\n\nwarns\tno\n",
        CanonicalForm.of(List.of(new RecordBlock.Words("A\npiece\tnew page \\n", false))));
  }

  @Test
  void cells_that_are_parted_otherwise_have_another_digest() {
    assertNotEquals(digest("a b", "c"), digest("a", "b c"));
    assertNotEquals(digest("a\tb", "c"), digest("a", "b\tc"));
    assertNotEquals(digest("a, b", "c"), digest("a", "b, c"));
  }

  private static String digest(String... row) {
    return Digest.of(CanonicalForm.of(List.of(new RecordBlock.Pairs(List.of(List.of(row))))));
  }
}
