package dev.ringout.page;

import dev.ringout.Ringout;
import dev.ringout.bench.Bench;
import dev.ringout.bench.EndTicks;
import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.bench.UnitPage;
import dev.ringout.check.Checker;
import dev.ringout.jobs.Answer;
import dev.ringout.jobs.InputName;
import dev.ringout.jobs.LaterJob;
import dev.ringout.jobs.LedTests.UnitAtBench;
import dev.ringout.jobs.PlanJob;
import dev.ringout.jobs.RecordJob;
import dev.ringout.jobs.Stopped;
import dev.ringout.jobs.UnitRequest;
import dev.ringout.jobs.UnitsJob;
import dev.ringout.jobs.WorkJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.BenchUnitJson;
import dev.ringout.json.BenchUnitJson.Link;
import dev.ringout.print.PdfFile;
import dev.ringout.print.PlanSheets;
import dev.ringout.print.RecordHtml;
import dev.ringout.print.RecordSheets;
import dev.ringout.print.SheetsHtml;
import dev.ringout.print.WorkSheets;
import dev.ringout.record.RecordContent;
import dev.ringout.seal.Digest;
import dev.ringout.seal.KeyFile;
import dev.ringout.serve.Ask;
import dev.ringout.serve.Reply;
import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.OutSheet;
import dev.ringout.sheet.PrintForm;
import dev.ringout.standards.Tables;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.Photo;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoredUnit;
import dev.ringout.store.Tick;
import dev.ringout.words.Sentences;
import dev.ringout.work.WorkPapers;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Units: what is proven of each, its papers, its record. */
final class UnitRoutes {
  private static final Pattern KEY = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._ -]{0,80}");

  private final Ringout door;
  private final Bench bench;
  private final UnitsOfPage units;

  UnitRoutes(Ringout door, Bench bench, UnitsOfPage units) {
    this.door = door;
    this.bench = bench;
    this.units = units;
  }

  void in(Routes routes) {
    routes
        .get("/api/units", (ask, names) -> all(ask.query().getOrDefault("search", "")))
        .get("/api/units/*", (ask, names) -> one(names.get(0)))
        .get("/api/units/*/faces", (ask, names) -> faces(names.get(0)))
        .get("/api/units/*/papers/*", (ask, names) -> paper(names.get(0), names.get(1)))
        .get("/api/units/*/record.*.seal", (ask, names) -> seal(names, Optional.empty()))
        .get("/api/units/*/record.*", (ask, names) -> record(names.get(0), names.get(1)))
        .post("/api/units/*/record.*.seal", this::sealed)
        .get("/api/units/*/ticks", (ask, names) -> ticks(names.get(0)))
        .post("/api/units/*/ticks", this::tick)
        .get("/api/units/*/photos/*", (ask, names) -> photo(names.get(0), names.get(1)))
        .get("/api/keys", (ask, names) -> keyNames())
        .post("/api/units/*/note", this::note)
        .post("/api/units/*/sign", this::sign);
  }

  private Reply all(String search) throws Refused {
    String sought = search.strip().toLowerCase(Locale.ROOT);
    List<UnitsJob.Listed> found =
        units.all().stream().filter(one -> matches(one.unit(), sought)).toList();
    return Reply.json(
        200, BenchUnitJson.units(found, units.lists().values(), bench.setup().practice()));
  }

  private static boolean matches(StoredUnit unit, String sought) {
    String all = unit.serial() + " " + unit.title() + " " + unit.drawing() + " " + unit.revision();
    return all.toLowerCase(Locale.ROOT).contains(sought);
  }

  private static Path named(StoredUnit unit) {
    return InputName.ofUnit(unit.serial(), unit.harness());
  }

  private Reply one(String id) throws Refused {
    StoredUnit unit = units.unit(id);
    UnitAtBench whole = units.whole(unit);
    UnitPage page =
        UnitPage.of(
            Checker.of(whole.list().harness(), Tables.published())
                .check(whole.readings(), Optional.empty(), List.of()));
    String base = "/api/units/" + id;
    return Reply.json(
        200,
        BenchUnitJson.unit(
            unit,
            bench.setup().practice(),
            whole.underWay().isPresent(),
            page,
            tests(unit),
            List.of(
                new Link("Test sheet", base + "/papers/plan"),
                new Link("Wiring sheets", base + "/papers/wiring")),
            List.of(
                new Link("PDF", base + "/record.pdf"),
                new Link("Page", base + "/record.html"),
                new Link("Workbook", base + "/record.xlsx"))));
  }

  private List<UnitsJob.Test> tests(StoredUnit unit) throws Refused {
    try {
      return door.units(new UnitsJob.Request(Optional.of(unit.serial()))).histories().stream()
          .filter(history -> history.unit().equals(unit))
          .flatMap(history -> history.tests().stream())
          .toList();
    } catch (StoreTrouble e) {
      throw new Refused(Reason.NOT_WRITTEN, "The store " + e.text());
    }
  }

  private WorkPapers papers(StoredUnit unit) throws Refused {
    try {
      return UnitsOfPage.given(
          door.work(new WorkJob.Request(named(unit), List.of(), "{wire}", Optional.empty())));
    } catch (WrongRequest e) {
      throw new Refused(Reason.NOT_UNDERSTOOD, e.text());
    }
  }

  private Reply faces(String id) throws Refused {
    return Reply.json(200, BenchUnitJson.faces(papers(units.unit(id)).sheets()));
  }

  private Reply paper(String id, String kind) throws Refused {
    StoredUnit unit = units.unit(id);
    return switch (kind) {
      case "plan" -> page(plan(unit), PrintForm.tested(title(unit), PrintForm.PaperSize.A4));
      case "wiring" ->
          page(
              WorkSheets.of(papers(unit), Optional.empty()),
              PrintForm.wired(title(unit), PrintForm.PaperSize.A4));
      default -> throw new Refused(Reason.MISSING, "There is no such paper.");
    };
  }

  private List<OutSheet> plan(StoredUnit unit) throws Refused {
    try {
      return PlanSheets.of(
          UnitsOfPage.given(
              door.plan(PlanJob.Request.whole(UnitRequest.of(named(unit), List.of(named(unit)))))));
    } catch (WrongRequest e) {
      throw new Refused(Reason.NOT_UNDERSTOOD, e.text());
    }
  }

  private static String title(StoredUnit unit) {
    return Sentences.named(
        unit.title(), unit.drawing(), unit.revision(), "serial number " + unit.serial());
  }

  private static Reply page(List<OutSheet> sheets, PrintForm form) {
    return Reply.paper(SheetsHtml.write(form, sheets).getBytes(StandardCharsets.UTF_8));
  }

  private Reply record(String id, String form) throws Refused {
    StoredUnit unit = units.unit(id);
    String name = unit.serial() + "." + form;
    try {
      Answer<RecordJob.Result> made =
          door.record(
              RecordJob.Request.of(
                  UnitRequest.of(named(unit), List.of(named(unit))), Path.of(fileName(name))));
      return record(UnitsOfPage.given(made).content(), form, name);
    } catch (WrongRequest e) {
      throw new Refused(Reason.NOT_UNDERSTOOD, e.text());
    } catch (Stopped e) {
      throw new Refused(Reason.NOT_UNDERSTOOD, e.text());
    } catch (IOException e) {
      throw new Refused(Reason.NOT_WRITTEN, "The record can't be made: " + e.getMessage());
    }
  }

  private Reply sealed(Ask ask, List<String> names) throws Refused {
    return seal(names, Optional.of(key(Body.of(ask))));
  }

  /** The seal of a record as it is made: the same record has the same bytes each time. */
  private Reply seal(List<String> names, Optional<KeyFile> key) throws Refused {
    StoredUnit unit = units.unit(names.get(0));
    String form = names.get(1);
    String name = unit.serial() + "." + form;
    RecordJob.Request plain =
        RecordJob.Request.of(
            UnitRequest.of(named(unit), List.of(named(unit))), Path.of(fileName(name)));
    try {
      RecordJob.Result made =
          UnitsOfPage.given(
              door.record(
                  new RecordJob.Request(
                      plain.unit(),
                      plain.waivers(),
                      plain.date(),
                      plain.before(),
                      plain.done(),
                      key,
                      plain.to())));
      byte[] record = record(made.content(), form, name).bytes();
      return Reply.of(
              200,
              "text/plain; charset=utf-8",
              made.seal(Digest.of(record)).getBytes(StandardCharsets.UTF_8))
          .savedAs(fileName(name) + ".seal");
    } catch (WrongRequest e) {
      throw new Refused(Reason.NOT_UNDERSTOOD, e.text());
    } catch (Stopped e) {
      throw new Refused(Reason.NOT_UNDERSTOOD, e.text());
    } catch (IOException e) {
      throw new Refused(Reason.NOT_WRITTEN, "The record can't be made: " + e.getMessage());
    }
  }

  private Reply ticks(String id) throws Refused {
    StoredUnit unit = units.unit(id);
    return Reply.json(
        200,
        BenchUnitJson.ticks(EndTicks.of(papers(unit), units.whole(unit).tests().values()).ends()));
  }

  private Reply tick(Ask ask, List<String> names) throws Refused {
    Body body = Body.of(ask);
    StoredUnit unit = units.unit(names.get(0));
    Tick.What what =
        Tick.What.of(body.text("what"))
            .orElseThrow(
                () -> new Refused(Reason.NOT_UNDERSTOOD, "what is made, checked or undone."));
    bench.tick(
        unit,
        papers(unit),
        new Tick(what, body.text("wire"), body.text("item"), body.text("pin")),
        body.text("who"));
    return ticks(names.get(0));
  }

  private Reply photo(String id, String digest) throws Refused {
    for (List<Entry> entries : units.whole(units.unit(id)).tests().values()) {
      for (Entry entry : entries) {
        Optional<Photo> photo =
            entry.is(EntryKind.PHOTO) ? Photo.of(entry.body()) : Optional.empty();
        if (photo.filter(one -> one.digest().equals(digest)).isPresent()) {
          return Reply.of(200, photo.get().type(), photo.get().bytes());
        }
      }
    }
    throw new Refused(Reason.MISSING, "There is no such picture.");
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
    return Reply.json(200, BenchUnitJson.keys(keys().toString(), names));
  }

  private static String fileName(String name) {
    return name.replaceAll("[^A-Za-z0-9._ -]", "_");
  }

  private static Reply record(RecordContent content, String form, String name)
      throws IOException, Refused {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    switch (form) {
      case "html":
        return Reply.paper(
            RecordHtml.write(content, PrintForm.PaperSize.A4).getBytes(StandardCharsets.UTF_8));
      case "pdf":
        PdfFile.writeTagged(bytes, RecordHtml.forPaper(content, PrintForm.PaperSize.A4));
        return Reply.of(200, "application/pdf", bytes.toByteArray()).shownAs(name);
      case "xlsx":
        OutFile.workbook(
            bytes,
            RecordSheets.of(content),
            PrintForm.tested(content.title(), PrintForm.PaperSize.A4));
        return Reply.of(
                200,
                "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
                bytes.toByteArray())
            .savedAs(name);
      default:
        throw new Refused(Reason.MISSING, "A record is a .pdf, an .html or an .xlsx.");
    }
  }

  private Reply note(Ask ask, List<String> names) throws Refused {
    Body body = Body.of(ask);
    return later(names.get(0), body.text("who"), new LaterJob.What.Note(body.text("text")));
  }

  private Reply sign(Ask ask, List<String> names) throws Refused {
    Body body = Body.of(ask);
    LaterJob.Role role =
        List.of(LaterJob.Role.values()).stream()
            .filter(one -> one.word().equals(textOf(body, "role")))
            .findFirst()
            .orElseThrow(
                () ->
                    new Refused(
                        Reason.NOT_UNDERSTOOD, "role is tester, inspector, engineer or lead."));
    return later(names.get(0), body.text("who"), new LaterJob.What.Sign(role, key(body)));
  }

  private KeyFile key(Body body) throws Refused {
    String passphrase = body.text("passphrase");
    return new KeyFile(
        keyFile(body.text("key")), Optional.of(passphrase).filter(one -> !one.isEmpty()));
  }

  private static String textOf(Body body, String name) {
    try {
      return body.text(name);
    } catch (Refused e) {
      return "";
    }
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

  private Reply later(String id, String who, LaterJob.What what) throws Refused {
    StoredUnit unit = units.unit(id);
    try {
      UnitsOfPage.given(
          door.later(new LaterJob.Request(named(unit), who, what, bench.setup().ticks().now())));
    } catch (WrongRequest e) {
      throw new Refused(Reason.NOT_UNDERSTOOD, e.text());
    } catch (StoreTrouble e) {
      throw new Refused(Reason.NOT_WRITTEN, "The store " + e.text());
    }
    return one(id);
  }
}
