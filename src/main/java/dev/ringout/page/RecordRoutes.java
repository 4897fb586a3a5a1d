package dev.ringout.page;

import dev.ringout.Ringout;
import dev.ringout.bench.Bench;
import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.jobs.LaterJob;
import dev.ringout.jobs.LaterJob.Role;
import dev.ringout.jobs.RecordJob;
import dev.ringout.jobs.Stopped;
import dev.ringout.jobs.UnitRequest;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.people.Act;
import dev.ringout.seal.Digest;
import dev.ringout.seal.KeyFile;
import dev.ringout.serve.Ask;
import dev.ringout.serve.Reply;
import dev.ringout.store.StoredUnit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The record of a unit, its seal, and who signs. */
final class RecordRoutes {
  private final Ringout door;
  private final Bench bench;
  private final UnitsOfPage units;
  private final UnitRoutes ofUnits;
  private final Callers callers;
  private final KeyRoutes keys;

  RecordRoutes(
      Ringout door,
      Bench bench,
      UnitsOfPage units,
      UnitRoutes ofUnits,
      Callers callers,
      KeyRoutes keys) {
    this.door = door;
    this.bench = bench;
    this.units = units;
    this.ofUnits = ofUnits;
    this.callers = callers;
    this.keys = keys;
  }

  void in(Routes routes) {
    routes
        .get(Act.LOOK, "/api/units/*/record.*.seal", (ask, names) -> seal(names, Optional.empty()))
        .post(
            Act.SIGN,
            "/api/units/*/record.*.seal",
            (ask, names) -> seal(names, Optional.of(keys.signing(ask, Body.of(ask)))))
        .get(Act.LOOK, "/api/units/*/record.*", (ask, names) -> record(names))
        .post(Act.SIGN, "/api/units/*/sign", this::sign);
  }

  private Reply record(List<String> names) throws Refused {
    StoredUnit unit = units.unit(names.get(0));
    RecordForm form = RecordForm.named(names.get(1));
    return of(form, made(unit, names.get(1), Optional.empty()), unit.serial() + "." + names.get(1));
  }

  /** The seal of a record as it is made: the same record has the same bytes each time. */
  private Reply seal(List<String> names, Optional<KeyFile> key) throws Refused {
    StoredUnit unit = units.unit(names.get(0));
    RecordForm form = RecordForm.named(names.get(1));
    RecordJob.Result made = made(unit, names.get(1), key);
    String name = fileName(unit, names.get(1));
    String seal = made.seal(Digest.of(of(form, made, name).bytes()), bench.setup().ticks().now());
    return Reply.of(200, "text/plain; charset=utf-8", seal.getBytes(StandardCharsets.UTF_8))
        .savedAs(name + ".seal");
  }

  private RecordJob.Result made(StoredUnit unit, String ending, Optional<KeyFile> key)
      throws Refused {
    Path named = UnitsOfPage.named(unit);
    RecordJob.Request request =
        new RecordJob.Request(
            UnitRequest.of(named, List.of(named)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            key,
            Path.of(fileName(unit, ending)));
    try {
      return Refused.given(door.record(request));
    } catch (WrongRequest e) {
      throw Refused.by(e);
    } catch (Stopped e) {
      throw new Refused(Reason.NOT_UNDERSTOOD, e.text());
    }
  }

  private static Reply of(RecordForm form, RecordJob.Result made, String name) throws Refused {
    try {
      return form.of(made.content(), name);
    } catch (IOException e) {
      throw new Refused(Reason.NOT_WRITTEN, "The record can't be made: " + e.getMessage());
    }
  }

  private static String fileName(StoredUnit unit, String ending) {
    return (unit.serial() + "." + ending).replaceAll("[^A-Za-z0-9._ -]", "_");
  }

  private Reply sign(Ask ask, List<String> names) throws Refused {
    Body body = Body.of(ask);
    String word = body.text("role");
    Role role =
        Stream.of(Role.values())
            .filter(one -> one.word().equals(word))
            .findFirst()
            .orElseThrow(
                () ->
                    new Refused(
                        Reason.NOT_UNDERSTOOD, "role is tester, inspector, engineer or lead."));
    callers.requireRole(ask, word);
    return ofUnits.later(
        names.get(0),
        callers.name(ask, body, "who"),
        new LaterJob.What.Sign(role, keys.signing(ask, body)));
  }
}
