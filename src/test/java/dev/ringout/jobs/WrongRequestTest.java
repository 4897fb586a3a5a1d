package dev.ringout.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.Ringout;
import dev.ringout.jobs.UnitRequest.Touched;
import dev.ringout.jobs.WrongRequest.Part;
import dev.ringout.people.Role;
import dev.ringout.seal.KeyFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A request that names what the list does not have says which part of it is wrong. */
class WrongRequestTest {
  private static final Ringout DOOR = Ringout.onFiles();

  private final Path folder;
  private final Path list;
  private final Path readings;

  WrongRequestTest(@TempDir Path folder) throws Exception {
    this.folder = folder;
    BoxOfTwoWires box = new BoxOfTwoWires(folder);
    list = box.list();
    readings = box.readings("monday", "revision,B");
    Files.writeString(folder.resolve("no-key.pem"), "no key");
    Files.createDirectories(folder.resolve("tables"));
    Files.writeString(folder.resolve("tables").resolve("no-such-table.csv"), "a,b\n");
  }

  private UnitRequest unit() {
    return UnitRequest.of(list, List.of(readings));
  }

  private Executable request(Part part) {
    return switch (part) {
      case ONLY -> work(List.of("J11"), "{wire}", Optional.empty());
      case SLEEVE -> work(List.of(), "no-such-scheme", Optional.empty());
      case TABLES -> work(List.of(), "{wire}", Optional.of(folder.resolve("tables")));
      case TOUCHED -> check(unit().with(new Touched(List.of("W11"), List.of())), List.of());
      case OPENED -> check(unit().with(new Touched(List.of(), List.of("J11"))), List.of());
      case OTHERS -> check(unit(), List.of(readings));
      case RENAME ->
          () ->
              DOOR.diff(
                  new DiffJob.Request(
                      list,
                      list,
                      Optional.empty(),
                      List.of("J1"),
                      true,
                      OptionalInt.empty(),
                      Optional.empty()));
      case STATE -> trace(List.of("J1-A"), "S9=ON");
      case POINT -> trace(List.of("J9-A"), "");
      case WIRE -> () -> DOOR.found(new FoundJob.Request(list, "W11 on J1-A"));
      case CELL -> later("R. Adeyemi", new LaterJob.What.TakeBack(List.of("G14"), "slipped"));
      case WHO -> later("n/a", new LaterJob.What.Note("lid missing"));
      case PERSON -> firstOfTheShop(Role.TESTER);
      case SEAL_KEY ->
          () ->
              DOOR.record(
                  new RecordJob.Request(
                      unit(),
                      Optional.empty(),
                      Optional.empty(),
                      Optional.empty(),
                      List.of(),
                      Optional.of(KeyFile.of(folder.resolve("no-key.pem"))),
                      folder.resolve("record.html")));
      case TRUSTED_KEY ->
          () ->
              DOOR.verify(
                  VerifyJob.Request.of(
                      folder.resolve("record.html"), List.of(folder.resolve("no-key.pem"))));
      case KEY_LIST ->
          () ->
              DOOR.verify(
                  new VerifyJob.Request(
                      folder.resolve("record.html"),
                      List.of(),
                      Optional.of(folder.resolve("no-key.pem")),
                      Optional.empty()));
      case IDS ->
          () ->
              DOOR.record(
                  new RecordJob.Request(
                      unit(),
                      Optional.empty(),
                      Optional.empty(),
                      Optional.empty(),
                      List.of(),
                      Optional.empty(),
                      folder.resolve("record.html"),
                      Optional.of(folder.resolve("no-ids.txt"))));
    };
  }

  private Executable firstOfTheShop(Role role) {
    return () -> {
      String file = folder.resolve("people.db").toString();
      try (StoreAtHand store = new StoreAtHand(file, Map.of())) {
        Instant now = Instant.parse("2026-11-30T10:00:00Z");
        Ringout.onFilesAnd(store)
            .people()
            .add(
                "Rotimi Adeyemi",
                Set.of(role),
                "four lamps on a bridge",
                new PeopleJob.Said("Rotimi Adeyemi", now));
      }
    };
  }

  private Executable later(String who, LaterJob.What what) {
    return () -> {
      Path sheet = new BoxOfTwoWires(folder).readings("tuesday", "serial number,7");
      String file = folder.resolve("bench.db").toString();
      try (StoreAtHand store = new StoreAtHand(file, Map.of())) {
        Ringout door = Ringout.onFilesAnd(store);
        Instant now = Instant.parse("2026-11-30T10:00:00Z");
        door.add(new AddJob.Request(list, List.of(sheet), now));
        door.later(new LaterJob.Request(InputName.ofUnit("7"), who, what, now));
      }
    };
  }

  private Executable work(List<String> only, String sleeve, Optional<Path> tables) {
    return () -> DOOR.work(new WorkJob.Request(list, only, sleeve, tables));
  }

  private static Executable check(UnitRequest unit, List<Path> others) {
    return () -> DOOR.check(new CheckJob.Request(unit, others));
  }

  private Executable trace(List<String> words, String state) {
    return () -> DOOR.trace(new TraceJob.Request(list, words, state, Optional.empty()));
  }

  @ParameterizedTest
  @EnumSource(Part.class)
  void each_part_of_a_request_can_be_wrong_and_says_why(Part part) {
    WrongRequest wrong = assertThrows(WrongRequest.class, request(part));
    assertEquals(part, wrong.part());
    assertTrue(!wrong.text().isBlank() && !wrong.text().equals("null"), wrong.text());
  }

  @Test
  void a_name_that_is_none_comes_with_the_nearest_that_is_one() {
    assertEquals(
        "the harness has no wire W11; maybe W1",
        assertThrows(WrongRequest.class, request(Part.WIRE)).text());
  }

  @Test
  void the_same_point_twice_is_no_question() {
    WrongRequest wrong =
        assertThrows(WrongRequest.class, trace(List.of("J1-A", "J1", "pin", "A"), ""));
    assertEquals("point J1-A and point J1-A are the same point", wrong.text());
  }

  @Test
  void names_are_found_in_whichever_case() throws Exception {
    assertTrue(DOOR.found(new FoundJob.Request(list, "w1 j1 a")).result().isPresent());
  }
}
