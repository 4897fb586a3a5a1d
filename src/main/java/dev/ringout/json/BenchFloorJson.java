package dev.ringout.json;

import dev.ringout.bench.ShopFloor;
import dev.ringout.bench.ShopFloor.Lot;
import dev.ringout.bench.ShopFloor.Meter;
import dev.ringout.bench.ShopFloor.Often;
import dev.ringout.bench.ShopFloor.UnderWay;
import dev.ringout.bench.ShopFloor.Waiting;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The shop as its lead hand sees it, as a page is answered. */
public final class BenchFloorJson {
  private BenchFloorJson() {}

  /** All of it. */
  public static String write(ShopFloor.Seen seen, Instant at) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("at", at.toString());
    json.put("underWay", seen.underWay().stream().map(BenchFloorJson::underWay).toList());
    json.put("waiting", seen.waiting().stream().map(BenchFloorJson::waiting).toList());
    json.put("lots", seen.lots().stream().map(BenchFloorJson::lot).toList());
    json.put("since", seen.since().toString());
    json.put("places", seen.places().stream().map(BenchFloorJson::often).toList());
    json.put("kinds", seen.kinds().stream().map(BenchFloorJson::often).toList());
    json.put("more", seen.more());
    return BenchJson.line(json);
  }

  private static Map<String, Object> underWay(UnderWay one) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("unit", BenchUnitJson.unit(one.unit()));
    json.put("station", one.station());
    json.put("who", one.who());
    json.put("since", one.since());
    json.put("leads", one.leads().name().toLowerCase(Locale.ROOT));
    json.put("silentSeconds", Math.max(0, one.silentSeconds()));
    json.put("asked", one.asked());
    json.put("askedSeconds", one.asked().isEmpty() ? 0 : Math.max(0, one.askedSeconds()));
    json.put("last", one.last());
    json.put("at", one.at());
    json.put("readings", one.readings());
    json.put("meters", one.meters().stream().map(BenchFloorJson::meter).toList());
    return json;
  }

  private static Map<String, Object> meter(Meter meter) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("use", meter.use());
    json.put("name", meter.name());
    json.put("due", meter.due());
    json.put("daysLeft", Json.orNull(meter.daysLeft()));
    return json;
  }

  private static Map<String, Object> waiting(Waiting one) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("unit", BenchUnitJson.unit(one.unit()));
    json.put("day", one.day());
    json.put("who", one.who());
    return json;
  }

  private static Map<String, Object> lot(Lot lot) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", lot.id());
    json.put("title", lot.title());
    json.put("drawing", lot.drawing());
    json.put("revision", lot.revision());
    json.put("conform", lot.conform());
    json.put("faulty", lot.faulty());
    json.put("open", lot.open());
    json.put("underWay", lot.led());
    return json;
  }

  private static Map<String, Object> often(Often one) {
    return Json.object("what", one.what(), "units", one.units());
  }
}
