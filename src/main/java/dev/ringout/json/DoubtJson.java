package dev.ringout.json;

import dev.ringout.check.Doubt;
import dev.ringout.readings.Instrument;
import dev.ringout.words.DoubtSentences;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Each kind of doubt with its facts. */
public final class DoubtJson implements Doubt.Cases<Map<String, Object>> {
  private DoubtJson() {}

  /** Every doubt, what the verdict waits for first. */
  public static List<Map<String, Object>> of(List<Doubt.Raised> doubts) {
    return doubts.stream().map(DoubtJson::of).toList();
  }

  private static Map<String, Object> of(Doubt.Raised raised) {
    Map<String, Object> facts = raised.doubt().match(new DoubtJson());
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", facts.get("kind"));
    json.put("withholds", raised.withholds());
    json.put("text", raised.doubt().match(new DoubtSentences()));
    facts.forEach(json::putIfAbsent);
    return json;
  }

  private static Map<String, Object> kind(String kind) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", kind);
    return json;
  }

  private static Map<String, Object> kind(String kind, String name, Object fact) {
    Map<String, Object> json = kind(kind);
    json.put(name, fact);
    return json;
  }

  static Map<String, Object> instrument(Instrument instrument) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("use", instrument.use());
    json.put("name", instrument.name());
    json.put("number", instrument.number());
    json.put("calibrationDue", instrument.calibrationDue());
    return json;
  }

  @Override
  public Map<String, Object> leadsNotNulled(Doubt.LeadsNotNulled doubt) {
    return kind("leads-not-nulled", "reading", doubt.leads().first().toString());
  }

  @Override
  public Map<String, Object> calibrationExpired(Doubt.CalibrationExpired doubt) {
    Map<String, Object> json =
        kind("calibration-expired", "instrument", instrument(doubt.instrument()));
    json.put("due", doubt.dueDay().toString());
    json.put("testDay", doubt.testDay().toString());
    return json;
  }

  @Override
  public Map<String, Object> calibrationNotStated(Doubt.CalibrationNotStated doubt) {
    Map<String, Object> json = kind("calibration-not-stated", "file", doubt.file());
    json.put("instrument", instrument(doubt.instrument()));
    return json;
  }

  @Override
  public Map<String, Object> calibrationNotADay(Doubt.CalibrationNotADay doubt) {
    Map<String, Object> json = kind("calibration-not-a-day", "found", doubt.text());
    json.put("instrument", instrument(doubt.instrument()));
    return json;
  }

  @Override
  public Map<String, Object> testDayNotStated(Doubt.TestDayNotStated doubt) {
    Map<String, Object> json = kind("test-day-not-stated", "file", doubt.file());
    doubt.instrument().ifPresent(one -> json.put("instrument", instrument(one)));
    return json;
  }

  @Override
  public Map<String, Object> testDayNotADay(Doubt.TestDayNotADay doubt) {
    Map<String, Object> json = kind("test-day-not-a-day", "found", doubt.text());
    json.put("cell", doubt.place().toString());
    return json;
  }

  @Override
  public Map<String, Object> serialNumberNotStated(Doubt.SerialNumberNotStated doubt) {
    return kind("serial-number-not-stated");
  }

  @Override
  public Map<String, Object> notEffective(Doubt.NotEffective doubt) {
    Map<String, Object> json = kind("not-effective", "serialNumber", doubt.serial());
    json.put("effectivity", doubt.effectivity());
    return json;
  }

  @Override
  public Map<String, Object> effectivityNotUnderstood(Doubt.EffectivityNotUnderstood doubt) {
    return kind("effectivity-not-understood", "found", doubt.text());
  }

  @Override
  public Map<String, Object> testerIsInspector(Doubt.TesterIsInspector doubt) {
    return kind("tester-is-inspector", "name", doubt.name());
  }

  @Override
  public Map<String, Object> noInspector(Doubt.NoInspector doubt) {
    return kind("no-inspector", "file", doubt.file());
  }

  @Override
  public Map<String, Object> noTester(Doubt.NoTester doubt) {
    return kind("no-tester", "file", doubt.file());
  }

  @Override
  public Map<String, Object> beyondRange(Doubt.BeyondRange doubt) {
    Map<String, Object> json =
        kind("beyond-range", "test", doubt.kind().name().toLowerCase(Locale.ROOT));
    json.put("count", doubt.count());
    json.put("first", doubt.first().toString());
    json.put("range", doubt.rangeOhms());
    json.put("unit", "ohm");
    return json;
  }

  @Override
  public Map<String, Object> withinADigit(Doubt.WithinADigit doubt) {
    Map<String, Object> json = kind("within-a-digit", "first", doubt.first().toString());
    json.put("count", doubt.count());
    return json;
  }
}
