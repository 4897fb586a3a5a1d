package dev.ringout.json;

import dev.ringout.seal.KeyList.Listed;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The keys that somebody can sign with at a bench, for a page. */
public final class KeysJson {
  private KeysJson() {}

  /**
   * All of them.
   *
   * @param names of the files that lie on the bench
   * @param open those of them that others than their owner can read
   * @param own what the shop's list says of the keys of who asks
   * @param byFingerprint the file of each of these that lies on this bench
   */
  public static String write(
      String folder,
      List<String> names,
      List<String> open,
      List<Listed> own,
      Map<String, String> byFingerprint) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("folder", folder);
    json.put("keys", names);
    json.put("open", open);
    json.put("own", own.stream().map(key -> key(key, byFingerprint)).toList());
    return BenchJson.line(json);
  }

  private static Map<String, Object> key(Listed key, Map<String, String> byFingerprint) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", byFingerprint.getOrDefault(key.fingerprint(), ""));
    json.put("fingerprint", key.fingerprint());
    json.put("from", key.from().toString());
    json.put("until", key.until().map(LocalDate::toString).orElse(""));
    json.put("withdrawn", key.withdrawn().map(Instant::toString).orElse(""));
    json.put("why", key.why());
    return json;
  }
}
