package dev.ringout.page;

import dev.ringout.Ringout;
import dev.ringout.bench.Bench;
import dev.ringout.bench.EndTicks;
import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.bench.UnitPage;
import dev.ringout.bench.UnitReadings;
import dev.ringout.check.Checker;
import dev.ringout.jobs.LaterJob;
import dev.ringout.jobs.LedTests.UnitAtBench;
import dev.ringout.jobs.PlanJob;
import dev.ringout.jobs.UnitRequest;
import dev.ringout.jobs.UnitsJob;
import dev.ringout.jobs.WorkJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.BenchUnitJson;
import dev.ringout.json.BenchUnitJson.Link;
import dev.ringout.people.Act;
import dev.ringout.print.PlanSheets;
import dev.ringout.print.SheetsHtml;
import dev.ringout.print.WorkSheets;
import dev.ringout.serve.Ask;
import dev.ringout.serve.Reply;
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
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Units: what is proven of each, its papers, its record. */
final class UnitRoutes {
  private final Ringout door;
  private final Bench bench;
  private final UnitsOfPage units;
  private final Callers callers;

  UnitRoutes(Ringout door, Bench bench, UnitsOfPage units, Callers callers) {
    this.door = door;
    this.bench = bench;
    this.units = units;
    this.callers = callers;
  }

  void in(Routes routes) {
    routes
        .get(Act.LOOK, "/api/units", (ask, names) -> all(ask.query().getOrDefault("search", "")))
        .get(Act.LOOK, "/api/units/*", (ask, names) -> one(names.get(0)))
        .get(Act.LOOK, "/api/units/*/faces", (ask, names) -> faces(names.get(0)))
        .get(Act.LOOK, "/api/units/*/papers/*", (ask, names) -> paper(names.get(0), names.get(1)))
        .get(Act.LOOK, "/api/units/*/ticks", (ask, names) -> ticks(names.get(0)))
        .post(Act.TICK, "/api/units/*/ticks", this::tick)
        .get(Act.LOOK, "/api/units/*/photos/*", (ask, names) -> photo(names.get(0), names.get(1)))
        .get(
            Act.LOOK,
            "/api/units/*/readings",
            (ask, names) -> readings(names.get(0), ask.query().getOrDefault("search", "")))
        .post(Act.TAKE_BACK, "/api/units/*/take-back", this::takeBack)
        .post(Act.NOTE, "/api/units/*/note", this::note);
  }

  private Reply all(String search) throws Refused {
    String sought = search.strip().toLowerCase(Locale.ROOT);
    List<UnitsJob.Listed> found =
        units.all().stream().filter(one -> matches(one.unit(), sought)).toList();
    return Reply.json(200, BenchUnitJson.units(found, units.lists().values()));
  }

  private static boolean matches(StoredUnit unit, String sought) {
    String all = unit.serial() + " " + unit.title() + " " + unit.drawing() + " " + unit.revision();
    return all.toLowerCase(Locale.ROOT).contains(sought);
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
            whole,
            page,
            base + "/photos/",
            List.of(
                new Link("Test sheet", base + "/papers/plan"),
                new Link("Wiring sheets", base + "/papers/wiring")),
            List.of(
                new Link("PDF", base + "/record.pdf"),
                new Link("Page", base + "/record.html"),
                new Link("Workbook", base + "/record.xlsx"))));
  }

  private Reply readings(String id, String search) throws Refused {
    return Reply.json(
        200, BenchUnitJson.readings(UnitReadings.of(units.whole(units.unit(id)), search)));
  }

  private Reply takeBack(Ask ask, List<String> names) throws Refused {
    Body body = Body.of(ask);
    Reply unit =
        later(
            names.get(0),
            callers.name(ask, body, "who"),
            new LaterJob.What.TakeBack(List.of(body.text("cell")), body.text("why")));
    bench.lookForOthers();
    return unit;
  }

  private WorkPapers papers(StoredUnit unit) throws Refused {
    try {
      return Refused.given(
          door.work(
              new WorkJob.Request(UnitsOfPage.named(unit), List.of(), "{wire}", Optional.empty())));
    } catch (WrongRequest e) {
      throw Refused.by(e);
    }
  }

  private Reply faces(String id) throws Refused {
    return Reply.json(200, BenchUnitJson.faces(papers(units.unit(id)).sheets()));
  }

  private Reply paper(String id, String kind) throws Refused {
    StoredUnit unit = units.unit(id);
    return switch (kind) {
      case "plan" ->
          page(plan(unit), PrintForm.tested(title(unit), PrintForm.PaperSize.A4).of(unit.serial()));
      case "wiring" ->
          page(
              WorkSheets.of(papers(unit), Optional.empty()),
              PrintForm.wired(title(unit), PrintForm.PaperSize.A4).of(unit.serial()));
      default -> throw new Refused(Reason.MISSING, "There is no such paper.");
    };
  }

  private List<OutSheet> plan(StoredUnit unit) throws Refused {
    try {
      return PlanSheets.of(
          Refused.given(
              door.plan(
                  PlanJob.Request.whole(
                      UnitRequest.of(UnitsOfPage.named(unit), List.of(UnitsOfPage.named(unit)))))));
    } catch (WrongRequest e) {
      throw Refused.by(e);
    }
  }

  private static String title(StoredUnit unit) {
    return Sentences.named(
        unit.title(), unit.drawing(), unit.revision(), "serial number " + unit.serial());
  }

  private static Reply page(List<OutSheet> sheets, PrintForm form) {
    return Reply.paper(SheetsHtml.write(form, sheets).getBytes(StandardCharsets.UTF_8));
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
        callers.name(ask, body, "who"));
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

  private Reply note(Ask ask, List<String> names) throws Refused {
    Body body = Body.of(ask);
    return later(
        names.get(0), callers.name(ask, body, "who"), new LaterJob.What.Note(body.text("text")));
  }

  /** Adds something that is said of a unit afterwards, and tells the unit with it. */
  Reply later(String id, String who, LaterJob.What what) throws Refused {
    StoredUnit unit = units.unit(id);
    bench.requireItsOwnKind(unit.serial());
    try {
      Refused.given(
          door.later(
              new LaterJob.Request(
                  UnitsOfPage.named(unit), who, what, bench.setup().ticks().now())));
    } catch (WrongRequest e) {
      throw Refused.by(e);
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
    return one(id);
  }
}
