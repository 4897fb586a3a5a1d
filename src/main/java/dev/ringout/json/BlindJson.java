package dev.ringout.json;

import dev.ringout.circuit.Conductor;
import dev.ringout.diagnose.BlindSpot;
import dev.ringout.harness.Part;
import dev.ringout.words.BlindSentences;
import java.util.List;
import java.util.Map;

/** Each kind of blind spot with its code, its facts and its sentence. */
final class BlindJson implements BlindSpot.Cases<Reason> {
  private BlindJson() {}

  static List<Map<String, Object>> of(List<BlindSpot> spots) {
    return spots.stream().map(BlindJson::of).toList();
  }

  private static Map<String, Object> of(BlindSpot spot) {
    return spot.match(new BlindJson()).said(BlindSentences.of(spot));
  }

  private static List<String> labels(List<Part> parts) {
    return parts.stream().map(Part::label).toList();
  }

  @Override
  public Reason sameNet(BlindSpot.SameNet spot) {
    return Reason.of("same-net")
        .with("wires", spot.wires().stream().map(Conductor::label).toList());
  }

  @Override
  public Reason equalWindings(BlindSpot.EqualWindings spot) {
    return Reason.of("equal-windings")
        .with("item", spot.windings().get(0).ref())
        .with(
            "windings",
            spot.windings().stream().map(one -> List.of("" + one.from(), "" + one.to())).toList());
  }

  @Override
  public Reason diodesNotShown(BlindSpot.DiodesNotShown spot) {
    return Reason.of("diodes-not-shown").with("parts", labels(spot.diodes()));
  }

  @Override
  public Reason partsWithoutOhms(BlindSpot.PartsWithoutOhms spot) {
    return Reason.of("parts-without-ohms").with("parts", labels(spot.parts()));
  }

  @Override
  public Reason partsBesideOthers(BlindSpot.PartsBesideOthers spot) {
    return Reason.of("parts-beside-others").with("parts", labels(spot.parts()));
  }

  @Override
  public Reason twistedGroups(BlindSpot.TwistedGroups spot) {
    return Reason.of("twisted-groups").with("groups", spot.groups());
  }

  @Override
  public Reason acrossContacts(BlindSpot.AcrossContacts spot) {
    return Reason.of("across-contacts").with("switches", spot.switches());
  }

  @Override
  public Reason breaksNotRead(BlindSpot.BreaksNotRead spot) {
    return Reason.of("breaks-not-read").with("item", spot.item()).with("pins", spot.pins());
  }
}
