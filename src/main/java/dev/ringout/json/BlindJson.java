package dev.ringout.json;

import dev.ringout.circuit.Conductor;
import dev.ringout.diagnose.BlindSpot;
import dev.ringout.harness.Part;
import dev.ringout.words.BlindSentences;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Each kind of blind spot with its code, its facts and its sentence. */
public final class BlindJson implements BlindSpot.Cases<Map<String, Object>> {
  private BlindJson() {}

  public static List<Map<String, Object>> of(List<BlindSpot> spots) {
    return spots.stream().map(BlindJson::of).toList();
  }

  private static Map<String, Object> of(BlindSpot spot) {
    Map<String, Object> json = spot.match(new BlindJson());
    json.put("text", BlindSentences.of(spot));
    return json;
  }

  private static Map<String, Object> code(String code, String name, Object fact) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("code", code);
    json.put(name, fact);
    return json;
  }

  private static List<String> labels(List<Part> parts) {
    return parts.stream().map(Part::label).toList();
  }

  @Override
  public Map<String, Object> sameNet(BlindSpot.SameNet spot) {
    return code("same-net", "wires", spot.wires().stream().map(Conductor::label).toList());
  }

  @Override
  public Map<String, Object> equalWindings(BlindSpot.EqualWindings spot) {
    Map<String, Object> json = code("equal-windings", "item", spot.windings().get(0).ref());
    json.put(
        "windings",
        spot.windings().stream().map(one -> List.of("" + one.from(), "" + one.to())).toList());
    return json;
  }

  @Override
  public Map<String, Object> diodesNotShown(BlindSpot.DiodesNotShown spot) {
    return code("diodes-not-shown", "parts", labels(spot.diodes()));
  }

  @Override
  public Map<String, Object> partsWithoutOhms(BlindSpot.PartsWithoutOhms spot) {
    return code("parts-without-ohms", "parts", labels(spot.parts()));
  }

  @Override
  public Map<String, Object> partsBesideOthers(BlindSpot.PartsBesideOthers spot) {
    return code("parts-beside-others", "parts", labels(spot.parts()));
  }

  @Override
  public Map<String, Object> twistedGroups(BlindSpot.TwistedGroups spot) {
    return code("twisted-groups", "groups", spot.groups());
  }

  @Override
  public Map<String, Object> breaksNotRead(BlindSpot.BreaksNotRead spot) {
    Map<String, Object> json = code("breaks-not-read", "item", spot.item());
    json.put("pins", spot.pins());
    return json;
  }
}
