package dev.ringout.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.support.ReadUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is on the bench before the first wire is cut. */
class WorkPapersTest {
  private static final double MILLIMETRE = 1e-9;

  @TempDir Path folder;

  private WorkPapers papers(String sleeve, Set<String> only, String... wires) throws IOException {
    Files.writeString(
        folder.resolve("wires.csv"),
        "Wire,From,To,Gauge,Length,Colour\n" + String.join("\n", wires) + "\n");
    Files.writeString(
        folder.resolve("limits.csv"),
        "Name,Value,Unit\nre-termination,30,mm\nservice loop,100,mm\n");
    return WorkPapers.of(
        ReadUnit.of(folder),
        Tables.published(),
        CopperWire.published(),
        only,
        SleeveText.of(sleeve, Tables.published()).orElseThrow());
  }

  @Test
  void a_wire_is_cut_for_two_terminations_anew_and_one_service_loop() throws IOException {
    CutWire cut = papers("wire", Set.of(), "W1,J1-A,P2-1,20,2 m,red").cuts().get(0);
    assertEquals(2, cut.listedMetres().orElseThrow(), MILLIMETRE);
    assertEquals(2.16, cut.cutMetres().orElseThrow(), MILLIMETRE);
  }

  @Test
  void a_wire_without_a_length_is_named_and_never_guessed() throws IOException {
    WorkPapers papers = papers("wire", Set.of(), "W1,J1-A,P2-1,20,2 m,red", "W2,J1-B,P2-2,20,,red");
    assertEquals(OptionalDouble.empty(), papers.cuts().get(1).cutMetres());
    WorkPapers.Total total = papers.totals().get(0);
    assertEquals(2, total.wires());
    assertEquals(2.16, total.metres(), MILLIMETRE);
    assertEquals(List.of("W2"), total.withoutLength());
  }

  @Test
  void an_item_shows_each_wire_from_its_own_end_in_the_order_of_its_cavities() throws IOException {
    WorkPapers papers =
        papers("wire", Set.of(), "W1,J1-10,P2-1,20,2 m,red", "W2,P2-2,J1-2,20,2 m,red");
    ItemSheet j1 =
        papers.sheets().stream().filter(one -> one.ref().equals("J1")).findFirst().orElseThrow();
    assertEquals(
        List.of("2 W2 to P2-2", "10 W1 to P2-1"),
        j1.cavities().stream()
            .map(
                cavity ->
                    cavity.pin()
                        + cavity.ends().stream()
                            .map(end -> " " + end.wire().name() + " to " + end.there())
                            .collect(Collectors.joining()))
            .toList());
  }

  @Test
  void only_the_items_asked_for_are_there_and_the_wires_that_end_there() throws IOException {
    WorkPapers papers =
        papers(
            "wire",
            new LinkedHashSet<>(List.of("P3", "P2")),
            "W1,J1-A,P2-1,20,2 m,red",
            "W2,J1-B,P3-1,20,2 m,red",
            "W3,J1-C,P4-1,20,2 m,red");
    assertEquals(List.of("P3", "P2"), papers.sheets().stream().map(ItemSheet::ref).toList());
    assertEquals(
        List.of("W1", "W2"), papers.cuts().stream().map(cut -> cut.wire().name()).toList());
  }

  @ParameterizedTest
  @CsvSource({
    "wire, W1",
    "wire-end, W1 TB401-2A",
    "both-ends, TB401-2A/TB101-7B",
    "far-end, TB101-7B",
    "terminals, 2A-101-7B",
    "{wire}: {here.pin} of {here.ref}, W1: 2A of TB401",
  })
  void a_sleeve_says_what_its_scheme_asks(String scheme, String says) throws IOException {
    WorkPapers papers = papers(scheme, Set.of("TB401"), "W1,TB401-2A,TB101-7B,20,2 m,red");
    assertEquals(says, papers.sheets().get(0).cavities().get(0).ends().get(0).marker());
  }

  @Test
  void a_scheme_that_nobody_knows_is_none() {
    Tables tables = Tables.published();
    assertEquals(Optional.empty(), SleeveText.of("tape", tables));
    assertTrue(SleeveText.schemes(tables).contains("both-ends"));
  }

  @Test
  void the_kit_has_a_sleeve_for_every_end() throws IOException {
    WorkPapers papers =
        papers("wire", Set.of(), "W1,J1-A,P2-1,20,2 m,red", "W2,J1-B,P2-2,20,2 m,red");
    assertEquals(4, papers.kit().get("marker sleeve"));
  }
}
