package dev.ringout.json;

import dev.ringout.jobs.LotJob;
import dev.ringout.lot.ByFactor;
import dev.ringout.lot.Counted;
import dev.ringout.lot.Drift;
import dev.ringout.lot.JoinSpread;
import dev.ringout.lot.Lot;
import dev.ringout.lot.LotUnit;
import dev.ringout.lot.Origin;
import dev.ringout.lot.Proportion;
import dev.ringout.lot.SharedFault;
import dev.ringout.source.Problem;
import dev.ringout.words.FaultSentences;
import java.io.IOException;
import java.io.Writer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A lot as one JSON document, {@code ringout-lot/1}. */
public final class LotJson {
  private static final String FORMAT = "ringout-lot/1";

  private LotJson() {}

  /** What is left to say where the list can't be understood. */
  public static String write(List<Problem> problems) {
    return Json.refused(FORMAT, problems);
  }

  /** All of it, piece by piece: a lot may have hundreds of thousands of values. */
  public static void write(LotJob.Result result, List<Problem> problems, Writer to)
      throws IOException {
    Lot lot = result.lot();
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    document.put("harness", harness(lot));
    document.put("verdict", lot.verdict().word());
    document.put("firstPassYield", proportion(lot.firstPassYield()));
    document.put("units", units(lot));
    document.put("refused", lot.refused().stream().map(LotJson::refused).toList());
    document.put("shared", lot.shared().stream().map(LotJson::shared).toList());
    document.put("limitScore", lot.limitScore());
    document.put("outstanding", lot.outstanding().stream().map(LotJson::outstanding).toList());
    document.put("factors", lot.factors().stream().map(LotJson::factor).toList());
    document.put("drift", Json.orNull(lot.drift().map(LotJson::drift)));
    document.put("sameValues", lot.sameValues());
    document.put("kinds", lot.kinds().stream().map(LotJson::counted).toList());
    document.put("places", lot.places().stream().map(LotJson::counted).toList());
    document.put("problems", Json.problems(problems));
    Iterable<Map<String, Object>> joins = () -> lot.joins().stream().map(LotJson::join).iterator();
    document.put("joins", joins);
    Json.write(document, to);
  }

  private static Map<String, Object> harness(Lot lot) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("title", lot.harness().headerValue("title"));
    json.put("drawing", lot.harness().headerValue("drawing"));
    json.put("revision", lot.harness().headerValue("revision"));
    return json;
  }

  private static Map<String, Object> proportion(Proportion one) {
    Map<String, Object> json = Json.object("count", one.count(), "of", one.of());
    json.put("share", one.share());
    json.put("low95", one.lowShare());
    json.put("high95", one.highShare());
    return json;
  }

  private static Iterable<Map<String, Object>> units(Lot lot) {
    return () -> {
      var levels = lot.levelsOhms().iterator();
      return lot.units().stream().map(unit -> unit(unit, levels.next())).iterator();
    };
  }

  private static Map<String, Object> unit(LotUnit unit, double levelOhms) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("unit", unit.name());
    json.put("files", unit.files());
    json.put("verdict", unit.verdict().word());
    json.put("passedAtOnce", unit.passedAtOnce());
    json.put("failedBefore", unit.failedBefore());
    json.put("fail", unit.failing());
    json.put("conceded", unit.conceded());
    json.put("notTested", unit.notTested());
    json.put("notProven", unit.notProven());
    json.put("unread", unit.unread());
    json.put("faults", unit.faults().stream().map(FaultJson::of).toList());
    json.put("levelOhms", levelOhms);
    json.put("day", unit.origin().day().map(Object::toString).orElse(""));
    for (Origin.Factor factor : Origin.Factor.values()) {
      json.put(name(factor), unit.origin().of(factor));
    }
    json.put("problems", Json.problems(unit.problems()));
    return json;
  }

  private static String name(Origin.Factor factor) {
    return factor == Origin.Factor.CRIMP_TOOL ? "crimpTool" : factor.word();
  }

  private static Map<String, Object> refused(Lot.Refused refused) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("unit", refused.name());
    json.put("files", refused.files());
    json.put("problems", Json.problems(refused.problems()));
    return json;
  }

  private static Map<String, Object> shared(SharedFault shared) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", shared.sort().word());
    json.put("points", shared.fault().points().stream().map(Object::toString).toList());
    json.put("wires", shared.fault().wires().stream().map(wire -> wire.name()).toList());
    json.put("units", shared.units());
    json.put("byChance", shared.byChance());
    json.put("moreThanChance", shared.isMoreThanChance());
    json.put("suspect", shared.sort().suspect().name().toLowerCase(Locale.ROOT));
    json.put("summary", FaultSentences.summary(shared.fault()));
    return json;
  }

  private static Map<String, Object> outstanding(Lot.Outstanding one) {
    Map<String, Object> json = of(one.spread());
    json.put("unit", one.of().unit());
    json.put("reading", one.of().value().judged().reading().place().toString());
    json.put("ohms", one.of().ohms());
    json.put("score", one.of().score());
    json.put("fails", one.of().fails());
    json.put("accepted", one.of().isAccepted());
    return json;
  }

  private static Map<String, Object> of(JoinSpread spread) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("from", spread.join().from().toString());
    json.put("to", spread.join().to().toString());
    json.put("state", spread.join().state().toString());
    return json;
  }

  private static Map<String, Object> join(JoinSpread spread) {
    Map<String, Object> json = of(spread);
    json.put("units", spread.units());
    json.put("wiresTakenOff", spread.accounted());
    json.put("middleOhms", spread.middleOhms());
    json.put("spreadOhms", spread.spreadOhms());
    json.put("lowOhms", spread.lowOhms());
    json.put("highOhms", spread.highOhms());
    json.put("outstanding", spread.outstanding().stream().map(JoinSpread.OfUnit::unit).toList());
    return json;
  }

  private static Map<String, Object> factor(ByFactor by) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("factor", by.factor().word());
    json.put("notStated", by.notStated());
    json.put("byChance", Json.orNull(by.byChance()));
    json.put("differs", by.differs());
    json.put("groups", by.groups().stream().map(LotJson::group).toList());
    return json;
  }

  private static Map<String, Object> group(ByFactor.Group group) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", group.name());
    json.put("units", group.units());
    json.put("faulty", group.faulty());
    json.put("levelOhms", group.levelOhms());
    return json;
  }

  private static Map<String, Object> drift(Drift drift) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("units", drift.units());
    json.put("first", drift.first().toString());
    json.put("last", drift.last().toString());
    json.put("ohmsADay", drift.ohmsADay());
    json.put("byChance", drift.byChance());
    json.put("moreThanChance", drift.isMoreThanChance());
    return json;
  }

  private static Map<String, Object> counted(Counted one) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", one.name());
    json.put("faults", one.faults());
    json.put("units", one.units());
    return json;
  }
}
