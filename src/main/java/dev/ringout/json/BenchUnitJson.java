package dev.ringout.json;

import dev.ringout.bench.Bench;
import dev.ringout.bench.BenchState;
import dev.ringout.bench.EndTicks;
import dev.ringout.bench.UnitEvents;
import dev.ringout.bench.UnitPage;
import dev.ringout.bench.UnitReadings;
import dev.ringout.jobs.LedTests.ListAtHand;
import dev.ringout.jobs.LedTests.UnitAtBench;
import dev.ringout.jobs.UnitsJob;
import dev.ringout.store.Lease;
import dev.ringout.store.Session;
import dev.ringout.store.StoredUnit;
import dev.ringout.words.Sentences;
import dev.ringout.work.Face;
import dev.ringout.work.ItemSheet;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Units, their lists and their faces, as the bench's page is answered. */
public final class BenchUnitJson {
  private BenchUnitJson() {}

  /** A paper or a record to open. */
  public record Link(String title, String href) {}

  /** All units of a store, and the lists that new ones can be made to. */
  public static String units(List<UnitsJob.Listed> units, Collection<ListAtHand> lists) {
    return BenchJson.line(
        Json.object(
            "units",
            units.stream().map(BenchUnitJson::listed).toList(),
            "lists",
            lists.stream().map(BenchUnitJson::list).toList()));
  }

  private static Map<String, Object> listed(UnitsJob.Listed one) {
    Map<String, Object> json = unit(one.unit());
    json.put("tests", one.sessions());
    json.put("day", one.started());
    json.put("who", one.who());
    json.put("asWritten", one.asWritten());
    boolean said = one.asWritten() && one.verdict().isPresent();
    json.put(
        "verdict",
        said ? one.verdict().get().verdict().map(verdict -> verdict.word()).orElse("") : "");
    json.put("faults", said ? one.verdict().get().faults() : 0);
    json.put("notProven", said ? one.verdict().get().notProven() : 0);
    json.put("underWay", one.verdict().isEmpty());
    return json;
  }

  static Map<String, Object> unit(StoredUnit unit) {
    return BenchJson.unit(
        new BenchState.UnitState(
            UnitPage.id(unit),
            unit.serial(),
            unit.title(),
            unit.drawing(),
            unit.revision(),
            Bench.isPractice(unit)));
  }

  private static Map<String, Object> list(ListAtHand list) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", list.file().digest());
    json.put("title", list.file().title());
    json.put("drawing", list.file().drawing());
    json.put("revision", list.file().revision());
    json.put("file", list.file().file());
    return json;
  }

  /**
   * One unit as it stands.
   *
   * @param photos the address at which its pictures begin
   */
  public static String unit(
      UnitAtBench unit, UnitPage page, String photos, List<Link> papers, List<Link> record) {
    Map<String, Object> json = unit(unit.unit());
    Optional<Session> last = unit.tests().keySet().stream().reduce((one, other) -> other);
    json.put("tests", unit.tests().size());
    json.put("day", last.map(Session::started).orElse(""));
    json.put("who", last.map(Session::who).orElse(""));
    json.put("underWay", unit.underWay().isPresent());
    json.put(
        "leads",
        (unit.underWay().isPresent() ? unit.leads() : List.<Lease>of())
            .stream().map(BenchUnitJson::lease).toList());
    json.put("verdict", page.verdict());
    json.put("headline", page.headline());
    json.put("shown", page.shown());
    json.put("demanded", page.demanded());
    json.put("faults", BenchJson.faults(page.faults()));
    json.put("open", BenchJson.open(page.open()));
    json.put("proof", page.proof().stream().map(BenchUnitJson::proof).toList());
    json.put("history", UnitEvents.of(unit).stream().map(one -> happened(one, photos)).toList());
    json.put("cavities", page.cavities().stream().map(BenchUnitJson::cavity).toList());
    json.put("papers", papers.stream().map(BenchUnitJson::link).toList());
    json.put("record", record.stream().map(BenchUnitJson::link).toList());
    return BenchJson.line(json);
  }

  /** Who leads a test, and whether anything is heard of that bench. */
  static Map<String, Object> lease(Lease lease) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("station", lease.station());
    json.put("who", lease.who());
    json.put("silent", lease.isSilent());
    return json;
  }

  private static Map<String, Object> link(Link link) {
    return Json.object("title", link.title(), "href", link.href());
  }

  private static Map<String, Object> proof(UnitPage.Proof proof) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("what", proof.what());
    json.put("shown", proof.shown());
    json.put("demanded", proof.demanded());
    return json;
  }

  private static Map<String, Object> cavity(UnitPage.Cavity cavity) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("item", cavity.item());
    json.put("pin", cavity.pin());
    json.put("state", cavity.state());
    return json;
  }

  private static Map<String, Object> happened(UnitEvents.Event event, String photos) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", event.kind());
    json.put("at", event.at());
    json.put("who", event.who());
    json.put("station", event.station());
    json.put("text", event.text());
    json.put("photo", event.photo().isEmpty() ? "" : photos + event.photo());
    return json;
  }

  /** What was read of a unit. */
  public static String readings(UnitReadings readings) {
    return BenchJson.line(
        Json.object(
            "readings",
            readings.rows().stream().map(BenchUnitJson::reading).toList(),
            "more",
            readings.more()));
  }

  private static Map<String, Object> reading(UnitReadings.Row row) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("cell", row.cell());
    json.put("text", row.text());
    json.put("value", row.value());
    json.put("outcome", BenchJson.word(row.outcome()));
    json.put("at", row.at());
    json.put("who", row.who());
    json.put("takenBack", row.takenBack());
    return json;
  }

  /** Which ends are made and checked. */
  public static String ticks(List<EndTicks.End> ends) {
    return BenchJson.line(
        Map.of(
            "ends",
            ends.stream()
                .map(
                    end -> {
                      Map<String, Object> json = new LinkedHashMap<>();
                      json.put("wire", end.wire());
                      json.put("item", end.item());
                      json.put("pin", end.pin());
                      json.put("made", Json.orNull(end.made().map(BenchUnitJson::ticked)));
                      json.put("checked", Json.orNull(end.checked().map(BenchUnitJson::ticked)));
                      return json;
                    })
                .toList()));
  }

  private static Map<String, Object> ticked(EndTicks.Ticked ticked) {
    return Json.object("who", ticked.who(), "at", ticked.at());
  }

  private static double hundredths(double millimetres) {
    return Math.round(millimetres * 100) / 100.0;
  }

  /** Where each cavity of each item stands, where that is known: a face is never made up. */
  public static String faces(List<ItemSheet> sheets) {
    return BenchJson.line(Map.of("items", sheets.stream().map(BenchUnitJson::face).toList()));
  }

  private static Map<String, Object> face(ItemSheet sheet) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("ref", sheet.ref());
    json.put(
        "title",
        sheet
            .item()
            .map(item -> Sentences.named(item.part(), item.location()))
            .filter(title -> !title.isEmpty())
            .orElse(sheet.kind()));
    boolean isInsert = sheet.face().isPresent();
    json.put("from", isInsert ? "wiring side" : "");
    json.put("shape", isInsert && sheet.face().get().hasMatingSide() ? "insert" : "strip");
    Map<String, double[]> spots = new LinkedHashMap<>();
    sheet
        .face()
        .map(Face::wiringSide)
        .orElse(List.of())
        .forEach(
            spot ->
                spots.put(spot.contact(), new double[] {spot.xMillimetres(), spot.yMillimetres()}));
    List<Map<String, Object>> cavities = new ArrayList<>();
    for (ItemSheet.Cavity cavity : sheet.cavities()) {
      cavities.add(cavity(cavity, Optional.ofNullable(spots.get(cavity.pin()))));
    }
    json.put("cavities", cavities);
    return json;
  }

  private static Map<String, Object> cavity(ItemSheet.Cavity cavity, Optional<double[]> spot) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("pin", cavity.pin());
    json.put("x", Json.orNull(spot.map(one -> hundredths(one[0]))));
    json.put("y", Json.orNull(spot.map(one -> hundredths(one[1]))));
    json.put(
        "signal",
        cavity.ends().stream()
            .map(end -> end.wire().name())
            .distinct()
            .reduce((one, other) -> one + ", " + other)
            .orElse(""));
    return json;
  }
}
