package dev.ringout.seal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.seal.Seal.Earlier;
import dev.ringout.seal.Seal.Failed;
import dev.ringout.seal.Seal.Named;
import dev.ringout.seal.Seal.Said;
import java.security.KeyPair;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands beside a record, and what of it can be shown to be unchanged. */
class SealTest {
  private static final Seal SEAL =
      new Seal(
          new Named("record.html", "aa11"),
          "bb22",
          Optional.of(new TestedUnit("SB-0042", "Junction box", "SB-1200", "B")),
          List.of(new Named("junction-box.xlsx", "cc33"), new Named("point-to-point.xlsx", "dd44")),
          List.of("sheets", "tables"),
          List.of(
              new KeptInput.ListFile("cable", "a1b2", "wires.csv", "c3d4"),
              new KeptInput.Test("SB-0042", "a1b2", 2, "again.xlsx", 131, "e5f6")),
          List.of(new Said("--serial", "SB-0042"), new Said("--any-revision", "")),
          "ringout 0.1.0",
          "faults",
          List.of(
              new Earlier("first.html", "ee55", "faults", "", false),
              new Earlier("second.html", "ff66", "incomplete", "", true),
              new Earlier("third.html", "a077", "faults", "b188", false),
              new Earlier("fourth.html", "c299", "incomplete", "d3aa", true)),
          List.of(new Failed("first.html", "continuity", "J1-A to P2-1", "OL")),
          List.of("W1 was opened and crimped anew"));

  private static Seal noted(String note) {
    return new Seal(
        SEAL.record(),
        SEAL.content(),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        SEAL.program(),
        SEAL.verdict(),
        List.of(),
        List.of(),
        List.of(note));
  }

  @Test
  void it_is_read_back_as_it_was_written() throws Exception {
    Seal.Read read = Seal.read(SEAL.text());
    assertEquals(SEAL, read.seal());
    assertEquals(Optional.empty(), read.key());
    assertFalse(read.isSignedWell(), "nobody signed it");
  }

  @Test
  void a_line_stands_for_each_fact() {
    assertTrue(SEAL.text().startsWith("ringout-seal/1\nrecord\trecord.html\taa11\n"));
    assertTrue(SEAL.text().contains("\nunit\tSB-0042\tJunction box\tSB-1200\tB\n"));
    assertTrue(SEAL.text().contains("\nearlier\tsecond.html\tff66\tincomplete\tvouched\n"));
    assertTrue(SEAL.text().contains("\nfailed\tfirst.html\tcontinuity\tJ1-A to P2-1\tOL\n"));
  }

  @Test
  void a_note_can_not_write_a_line_of_its_own() throws Exception {
    Seal seal = noted("good\nverdict\tconforms");
    assertEquals("faults", Seal.read(seal.text()).seal().verdict());
    assertEquals(List.of("good verdict conforms"), Seal.read(seal.text()).seal().notes());
  }

  @Test
  void a_signed_seal_is_shown_to_be_of_its_key() throws Exception {
    KeyPair pair = Keys.create();
    Seal.Read read = Seal.read(SEAL.signed(pair));
    assertTrue(read.isSignedWell());
    assertEquals(SEAL, read.seal());
    assertEquals(Keys.fingerprint(pair.getPublic()), Keys.fingerprint(read.key().orElseThrow()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"faults", "OL", "bb22", "SB-0042", "W1 was opened", "ringout 0.1.0"})
  void a_signature_holds_no_longer_when_any_fact_is_changed(String fact) throws Exception {
    String signed = SEAL.signed(Keys.create());
    int at = signed.indexOf(fact);
    assertTrue(at >= 0);
    // The facts stand first: by chance the key or the signature may have the same letters.
    String changed = signed.substring(0, at) + "other" + signed.substring(at + fact.length());
    assertFalse(Seal.read(changed).isSignedWell());
  }

  @Test
  void another_s_key_in_the_place_of_the_signer_s_is_no_good_signature() throws Exception {
    String[] mine = SEAL.signed(Keys.create()).split("\n", -1);
    String[] theirs = SEAL.signed(Keys.create()).split("\n", -1);
    int key = mine.length - 3;
    assertTrue(mine[key].startsWith("key\t"));
    mine[key] = theirs[key];
    assertFalse(Seal.read(String.join("\n", mine)).isSignedWell());
  }

  @Test
  void nothing_may_stand_behind_the_signature() {
    String more = SEAL.signed(Keys.create()) + "note\tit conforms after all\n";
    Seal.Unusable refused = assertThrows(Seal.Unusable.class, () -> Seal.read(more));
    assertEquals("something stands after the signature", refused.getMessage());
  }

  @Test
  void what_is_no_seal_is_refused_with_its_line() {
    assertEquals("it does not begin with ringout-seal/1", refusal("verdict\tconforms\n"));
    assertEquals("it names no record", refusal("ringout-seal/1\nverdict\tconforms\n"));
    assertEquals("line 2 can't be understood", refusal("ringout-seal/1\nrecord\tr.html\n"));
    assertEquals("line 2 is none that a seal has", refusal("ringout-seal/1\nrecords\ta\tb\n"));
    assertEquals("line 2 can't be understood", refusal("ringout-seal/1\nkey\tno key\n"));
  }

  private static String refusal(String text) {
    return String.valueOf(assertThrows(Seal.Unusable.class, () -> Seal.read(text)).getMessage());
  }
}
