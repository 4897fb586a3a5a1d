package dev.ringout.json;

import dev.ringout.jobs.MetersJob;
import dev.ringout.jobs.TryMeterJob;
import dev.ringout.meter.Exchange;
import dev.ringout.meter.MeterIdentity;
import dev.ringout.meter.MeterReading;
import dev.ringout.meter.MeterTrouble;
import dev.ringout.meter.Sample;
import dev.ringout.meter.drive.Trial;
import dev.ringout.meter.link.SerialPorts;
import dev.ringout.readings.Measured;
import dev.ringout.words.MeterWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Meters as one JSON document, {@code ringout-meters/1}. */
public final class MetersJson {
  private static final String FORMAT = "ringout-meters/1";

  private MetersJson() {}

  private static Map<String, Object> document() {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    return document;
  }

  /** What is left to say where nothing can be listed. */
  public static String refused(MeterTrouble trouble) {
    Map<String, Object> document = document();
    document.put("failure", failure(trouble));
    document.put("problems", List.of());
    return Json.text(document);
  }

  /** Ports and profiles. */
  public static String write(MetersJob.Result result) {
    Map<String, Object> document = document();
    document.put("ports", result.ports().stream().map(MetersJson::port).toList());
    document.put("profiles", result.profiles().stream().map(MetersJson::profile).toList());
    result.noPorts().ifPresent(trouble -> document.put("failure", failure(trouble)));
    document.put("problems", List.of());
    return Json.text(document);
  }

  private static Map<String, Object> port(SerialPorts.Port port) {
    return Json.object("path", port.path(), "about", port.about());
  }

  private static Map<String, Object> profile(MetersJob.Listed listed) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", listed.profile().name());
    json.put("about", listed.profile().about());
    json.put("own", listed.own());
    return json;
  }

  /** A trial with the whole talk. */
  public static String write(TryMeterJob.Result result) {
    Map<String, Object> document = document();
    document.put("address", result.address());
    result.profile().ifPresent(profile -> document.put("profile", profile.name()));
    result.identity().ifPresent(identity -> document.put("meter", identity(identity)));
    document.put("talk", result.talk().stream().map(MetersJson::exchange).toList());
    result.trial().ifPresent(trial -> seen(document, trial));
    result.leads().ifPresent(leads -> document.put("leadNull", leads.text()));
    result.trouble().ifPresent(trouble -> document.put("failure", failure(trouble)));
    document.put("problems", List.of());
    return Json.text(document);
  }

  private static Map<String, Object> identity(MeterIdentity identity) {
    return Json.object("text", identity.text(), "practice", identity.practice());
  }

  private static Map<String, Object> exchange(Exchange exchange) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("ms", exchange.millis());
    json.put("kind", exchange.kind().name().toLowerCase(Locale.ROOT));
    json.put("text", exchange.text());
    return json;
  }

  private static void seen(Map<String, Object> document, Trial trial) {
    document.put("values", trial.samples().stream().map(MetersJson::sample).toList());
    trial.reading().ifPresent(reading -> document.put("settled", reading(reading)));
    trial.settleMillis().ifPresent(millis -> document.put("settleMs", millis));
    trial.noiseOhms().ifPresent(ohms -> document.put("noiseOhms", ohms));
    trial.stepOhms().ifPresent(ohms -> document.put("stepOhms", ohms));
  }

  private static Map<String, Object> sample(Sample sample) {
    return Json.object("raw", sample.raw(), "means", MeterWords.shown(sample.shown()));
  }

  private static Map<String, Object> reading(MeterReading reading) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("raw", reading.raw());
    json.put("overRange", reading.isOverRange());
    reading.measured().value().map(Measured.Value::ohms).ifPresent(v -> json.put("ohms", v));
    reading.volts().ifPresent(volts -> json.put("volts", volts));
    json.put("at", reading.at().toString());
    return json;
  }

  private static Map<String, Object> failure(MeterTrouble trouble) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("code", MeterWords.code(trouble.failure()));
    json.put("text", MeterWords.failure(trouble.failure()));
    json.put("talk", trouble.talk().stream().map(MetersJson::exchange).toList());
    return json;
  }
}
