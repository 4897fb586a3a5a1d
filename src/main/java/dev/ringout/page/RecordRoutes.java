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
import dev.ringout.json.BenchUnitJson;
import dev.ringout.people.Act;
import dev.ringout.seal.Digest;
import dev.ringout.seal.KeyFile;
import dev.ringout.seal.Keys;
import dev.ringout.serve.Ask;
import dev.ringout.serve.Reply;
import dev.ringout.store.StoredUnit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The record of a unit, its seal, and who signs. */
final class RecordRoutes {
  private static final Pattern KEY = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._ -]{0,80}");

  private final Ringout door;
  private final Bench bench;
  private final UnitsOfPage units;
  private final UnitRoutes ofUnits;
  private final Callers callers;

  RecordRoutes(Ringout door, Bench bench, UnitsOfPage units, UnitRoutes ofUnits, Callers callers) {
    this.door = door;
    this.bench = bench;
    this.units = units;
    this.ofUnits = ofUnits;
    this.callers = callers;
  }

  void in(Routes routes) {
    routes
        .get(Act.LOOK, "/api/units/*/record.*.seal", (ask, names) -> seal(names, Optional.empty()))
        .post(
            Act.SIGN,
            "/api/units/*/record.*.seal",
            (ask, names) -> seal(names, Optional.of(key(Body.of(ask)))))
        .get(Act.LOOK, "/api/units/*/record.*", (ask, names) -> record(names))
        .get(Act.SIGN, "/api/keys", (ask, names) -> keyNames())
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
    String seal = made.seal(Digest.of(of(form, made, name).bytes()));
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
        names.get(0), callers.name(ask, body, "who"), new LaterJob.What.Sign(role, key(body)));
  }

  private KeyFile key(Body body) throws Refused {
    String passphrase = body.text("passphrase");
    Path key = keyFile(body.text("key"));
    if (callers.shop().isPresent() && !Keys.isProtected(key)) {
      throw new Refused(
          Reason.NOT_ALLOWED,
          "This key has no passphrase of its own: anybody here could sign with it. Make one with"
              + " ringout report --new-key.");
    }
    return new KeyFile(key, Optional.of(passphrase).filter(one -> !one.isEmpty()));
  }

  /** Keys lie beside the store: a page names one, and no other file of the machine. */
  private Path keyFile(String name) throws Refused {
    if (!KEY.matcher(name).matches()) {
      throw new Refused(Reason.NOT_UNDERSTOOD, "key is the name of a key file in " + keys() + ".");
    }
    return keys().resolve(name);
  }

  private Path keys() {
    return bench.setup().data().resolve("keys");
  }

  private Reply keyNames() throws Refused {
    List<String> names = new ArrayList<>();
    if (Files.isDirectory(keys())) {
      try (Stream<Path> files = Files.list(keys())) {
        files
            .map(file -> String.valueOf(file.getFileName()))
            .filter(name -> KEY.matcher(name).matches() && !name.endsWith(".pub"))
            .sorted()
            .forEach(names::add);
      } catch (IOException e) {
        throw new Refused(Reason.MISSING, "The keys can't be listed: " + e.getMessage());
      }
    }
    List<String> open =
        names.stream().filter(name -> Keys.isOpenToOthers(keys().resolve(name))).toList();
    return Reply.json(200, BenchUnitJson.keys(keys().toString(), names, open));
  }
}
