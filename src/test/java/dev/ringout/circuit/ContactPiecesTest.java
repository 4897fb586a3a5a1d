package dev.ringout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is left of a net once its contacts open. Plain circuit reasoning, no source. */
class ContactPiecesTest {
  @TempDir Path folder;

  private UnitUnderTest unit() {
    return new UnitUnderTest(folder);
  }

  private static List<String> pairs(Circuit circuit) {
    return ContactPieces.of(circuit).stream()
        .flatMap(net -> net.partedByMoreThanOneContact(circuit).stream())
        .map(
            pair ->
                circuit.point(pair.one())
                    + " "
                    + circuit.point(pair.other())
                    + " "
                    + pair.apart().positions())
        .toList();
  }

  @Test
  void contacts_that_are_open_at_rest_hold_no_net_together() {
    Circuit circuit =
        Circuit.of(unit().wire("W1,J1-1,S1-1").contact("S1,OFF,,").contact("S1,ON,1,2").harness());
    assertEquals(List.of(), ContactPieces.of(circuit));
  }

  @Test
  void each_net_that_contacts_hold_together_has_its_pieces_the_largest_first() {
    Circuit circuit =
        Circuit.of(
            unit()
                .wire("W1,J1-1,J2-1")
                .wire("W2,J1-2,S1-1")
                .wire("W3,J1-3,S1-2")
                .wire("W4,J1-4,S1-2")
                .contact("S1,OFF,1,2")
                .contact("S1,OFF,3,4")
                .contact("S1,ON,5,6")
                .harness());
    List<ContactPieces> nets = ContactPieces.of(circuit);
    assertEquals(
        List.of("S1-2", "S1-1"),
        nets.get(0).pieces().stream()
            .map(piece -> circuit.point(piece.terminal()).toString())
            .toList());
    assertEquals(2, nets.size());
    for (ContactPieces net : nets) {
      for (ContactPieces.Piece piece : net.pieces()) {
        assertEquals(net.net(), circuit.normal().of(piece.terminal()));
      }
    }
  }

  /** Either is seen open only while the other is: neither by itself holds them apart. */
  @Test
  void what_two_contacts_join_side_by_side_is_parted_by_both_together() {
    Circuit circuit =
        Circuit.of(
            unit()
                .wire("W1,S1-1,S2-1")
                .wire("W2,S1-2,S2-2")
                .contact("S1,OFF,1,2")
                .contact("S1,ON,,")
                .contact("S2,OFF,1,2")
                .contact("S2,ON,,")
                .harness());
    assertEquals(List.of("S1-1 S1-2 {S1=ON, S2=ON}"), pairs(circuit));
  }

  @Test
  void what_one_contact_parts_is_no_such_pair_and_what_none_parts_neither() {
    Circuit one =
        Circuit.of(unit().wire("W1,J1-1,S1-1").contact("S1,OFF,1,2").contact("S1,ON,,").harness());
    assertEquals(List.of(), pairs(one));
    Circuit never =
        Circuit.of(
            new UnitUnderTest(folder.resolve("never"))
                .wire("W1,J1-1,S1-1")
                .contact("S1,OFF,1,2")
                .contact("S1,ON,1,2")
                .harness());
    assertEquals(List.of(), pairs(never));
  }
}
