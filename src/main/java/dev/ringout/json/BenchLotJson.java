package dev.ringout.json;

import dev.ringout.bench.UnitPage;
import dev.ringout.jobs.UnitsJob.Listed;
import dev.ringout.lot.Counted;
import dev.ringout.lot.Lot;
import dev.ringout.lot.LotUnit;
import dev.ringout.lot.Origin;
import dev.ringout.lot.SharedFault;
import dev.ringout.units.Numbers;
import dev.ringout.words.LotWords;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A lot as a page shows it: the sentences of {@code ringout lot}, and its units. */
public final class BenchLotJson {
  private BenchLotJson() {}

  /**
   * All of it.
   *
   * @param id of the list
   * @param listed the units of the list
   * @param at when it was made
   */
  public static String write(String id, Lot lot, List<Listed> listed, Instant at) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", id);
    json.put("title", lot.harness().headerValue("title"));
    json.put("drawing", lot.harness().headerValue("drawing"));
    json.put("revision", lot.harness().headerValue("revision"));
    json.put("at", at.toString());
    json.put("verdict", LotWords.verdict(lot));
    json.put("passedAtOnce", LotWords.firstPass(lot));
    json.put("limits", LotWords.limits(lot));
    json.put("copied", lot.sameValues().stream().map(LotWords::sameValues).toList());
    json.put("shared", lot.shared().stream().map(BenchLotJson::shared).toList());
    json.put("outstanding", lot.outstanding().stream().map(LotWords::outstanding).toList());
    json.put("units", units(lot, listed));
    json.put("kinds", lot.kinds().stream().map(BenchLotJson::counted).toList());
    json.put("places", lot.places().stream().map(BenchLotJson::counted).toList());
    return BenchJson.line(json);
  }

  private static Map<String, Object> shared(SharedFault shared) {
    return Json.object("text", LotWords.shared(shared), "suspect", LotWords.suspect(shared));
  }

  private static Map<String, Object> counted(Counted one) {
    return Json.object("what", one.name(), "units", one.units());
  }

  private static List<Map<String, Object>> units(Lot lot, List<Listed> listed) {
    Map<String, String> ids = new LinkedHashMap<>();
    listed.forEach(one -> ids.put(one.unit().serial(), UnitPage.id(one.unit())));
    List<Map<String, Object>> units = new ArrayList<>();
    for (LotUnit unit : lot.units()) {
      Map<String, Object> json = unit(unit.name(), ids);
      json.put("verdict", LotWords.verdict(unit));
      json.put("stands", unit.unread() > 0 ? "incomplete" : unit.verdict().word());
      json.put("what", LotWords.what(unit));
      json.put("day", unit.origin().day().map(Object::toString).orElse(""));
      json.put("station", unit.origin().of(Origin.Factor.STATION));
      json.put("who", unit.origin().of(Origin.Factor.PERSON));
      units.add(json);
    }
    for (Lot.Refused refused : lot.refused()) {
      Map<String, Object> json = unit(refused.name(), ids);
      json.put("verdict", "can't be checked");
      json.put("stands", "incomplete");
      json.put("what", Numbers.count(refused.problems().size(), "problem") + " in its files");
      json.put("day", "");
      json.put("station", "");
      json.put("who", "");
      units.add(json);
    }
    return units;
  }

  private static Map<String, Object> unit(String name, Map<String, String> ids) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", ids.getOrDefault(name, ""));
    json.put("serial", name);
    return json;
  }
}
