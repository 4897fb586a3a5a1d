package dev.ringout.page;

import dev.ringout.Ringout;
import dev.ringout.bench.Bench;
import dev.ringout.bench.Refused;
import dev.ringout.bench.Refused.Reason;
import dev.ringout.bench.ShopFloor;
import dev.ringout.jobs.LotJob;
import dev.ringout.jobs.UnitsJob.Listed;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.json.BenchFloorJson;
import dev.ringout.json.BenchLotJson;
import dev.ringout.lot.Lot;
import dev.ringout.people.Act;
import dev.ringout.print.LotSheets;
import dev.ringout.print.SheetsHtml;
import dev.ringout.serve.Reply;
import dev.ringout.sheet.PrintForm;
import dev.ringout.sheet.PrintForm.PaperSize;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoredUnit;
import dev.ringout.words.UnitTitle;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What goes on at all benches of a shop. */
final class FloorRoutes {
  private final Ringout door;
  private final Bench bench;
  private final UnitsOfPage units;
  private final ShopFloor floor;
  private final Renewed<String> seen;
  private final Map<String, Renewed<LotAt>> lots = new LinkedHashMap<>();

  FloorRoutes(Ringout door, Bench bench, UnitsOfPage units) {
    this.door = door;
    this.bench = bench;
    this.units = units;
    this.floor = new ShopFloor(bench.tests());
    this.seen = new Renewed<>(bench.setup().ticks());
  }

  /** A lot as it was. */
  private record LotAt(Lot lot, List<Listed> listed, Instant at) {}

  void in(Routes routes) {
    routes
        .get(Act.OVERSEE, "/api/shop", (ask, names) -> shop())
        .get(Act.OVERSEE, "/api/lots/*/lot.html", (ask, names) -> paper(lot(names.get(0))))
        .get(Act.OVERSEE, "/api/lots/*", (ask, names) -> shown(names.get(0), lot(names.get(0))));
  }

  private Reply shop() throws Refused {
    return Reply.json(200, seen.get(this::look));
  }

  private String look() throws Refused {
    Instant now = bench.setup().ticks().now();
    LocalDate today = now.atZone(bench.setup().zone()).toLocalDate();
    try {
      return BenchFloorJson.write(floor.look(units.all(), today), now);
    } catch (StoreTrouble e) {
      throw Refused.by(e);
    }
  }

  private static Reply shown(String id, LotAt lot) {
    return Reply.json(200, BenchLotJson.write(id, lot.lot(), lot.listed(), lot.at()));
  }

  /** As {@code ringout lot -o lot.html} writes it. */
  private static Reply paper(LotAt lot) {
    PrintForm form = PrintForm.lot(UnitTitle.of(lot.lot().harness()), PaperSize.A4);
    String page = SheetsHtml.write(form, LotSheets.of(lot.lot()));
    return Reply.paper(page.getBytes(StandardCharsets.UTF_8)).shownAs("lot.html");
  }

  private LotAt lot(String id) throws Refused {
    List<Listed> listed =
        units.all().stream().filter(one -> one.unit().harness().equals(id)).toList();
    if (listed.isEmpty()) {
      throw new Refused(Reason.MISSING, "There is no unit of such a list.");
    }
    return of(id).get(() -> made(listed));
  }

  private synchronized Renewed<LotAt> of(String id) {
    return lots.computeIfAbsent(id, list -> new Renewed<>(bench.setup().ticks()));
  }

  private LotAt made(List<Listed> listed) throws Refused {
    StoredUnit first = listed.get(0).unit();
    Path named = UnitsOfPage.named(first);
    try {
      LotJob.Result made = Refused.given(door.lot(LotJob.Request.of(named, List.of())));
      return new LotAt(made.lot(), listed, bench.setup().ticks().now());
    } catch (WrongRequest e) {
      throw Refused.by(e);
    }
  }
}
