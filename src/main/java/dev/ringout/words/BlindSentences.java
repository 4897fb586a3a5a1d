package dev.ringout.words;

import dev.ringout.circuit.Conductor;
import dev.ringout.diagnose.BlindSpot;
import dev.ringout.harness.Part;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.List;
import java.util.stream.Collectors;

/** What could be wrong without any reading showing it, as sentences. */
public final class BlindSentences implements BlindSpot.Cases<String> {
  private static final int MOST_NAMED = 6;

  private BlindSentences() {}

  /** One blind spot in words. */
  public static String of(BlindSpot spot) {
    return spot.match(new BlindSentences());
  }

  @Override
  public String sameNet(BlindSpot.SameNet spot) {
    List<String> names = spot.wires().stream().map(Conductor::label).toList();
    return Text.of(
        "%s join the same net%s: if they were crossed, no reading here would show it",
        several(names), names.size() > 2 ? " (any two of them)" : "");
  }

  private static String several(List<String> names) {
    if (names.size() > MOST_NAMED) {
      return String.join(", ", names.subList(0, MOST_NAMED))
          + Text.of(" and %s more", names.size() - MOST_NAMED);
    }
    return WordList.of(names, "and");
  }

  @Override
  public String equalWindings(BlindSpot.EqualWindings spot) {
    return Text.of(
        "the windings of %s read alike (%s): if their leads were exchanged, no reading here"
            + " would show it; check the direction from each control position",
        spot.windings().get(0).ref(),
        spot.windings().stream()
            .map(part -> part.from().pin() + "/" + part.to().pin())
            .collect(Collectors.joining(", ")));
  }

  @Override
  public String diodesNotShown(BlindSpot.DiodesNotShown spot) {
    return Text.of(
        "no pair of readings, one each way and with nothing in parallel, shows %s%s: if it is"
            + " reversed or missing, no reading here shows it; lift one lead and read both ways",
        spot.diodes().size() == 1 ? "the diode " : "the diodes ",
        Text.first(spot.diodes().stream().map(Part::ref).toList(), MOST_NAMED));
  }

  @Override
  public String partsWithoutOhms(BlindSpot.PartsWithoutOhms spot) {
    return Text.of(
        "no ohms are listed for the %s: if it is missing or wrong, no reading here shows it",
        labels(spot.parts()));
  }

  @Override
  public String partsBesideOthers(BlindSpot.PartsBesideOthers spot) {
    boolean one = spot.parts().size() == 1;
    return Text.of(
        "the %s may be missing and the reading stays the same, because of what is beside %s:"
            + " read %s with one lead lifted",
        labels(spot.parts()), one ? "it" : "them", one ? "it" : "each");
  }

  private static String labels(List<Part> parts) {
    return Text.first(parts.stream().map(Part::label).toList(), MOST_NAMED);
  }

  @Override
  public String twistedGroups(BlindSpot.TwistedGroups spot) {
    return Text.of(
        "continuity does not see which wires are twisted together (%s): look at the pairs",
        spot.groups().size() > MOST_NAMED
            ? Numbers.count(spot.groups().size(), "group")
            : String.join(", ", spot.groups()));
  }

  @Override
  public String acrossContacts(BlindSpot.AcrossContacts spot) {
    return Text.of(
        "the insulation across the open contacts of %s: what a contact joins at rest is tested as"
            + " one net",
        several(spot.switches()));
  }

  @Override
  public String breaksNotRead(BlindSpot.BreaksNotRead spot) {
    return Text.of(
        "nothing was read at %s (%s): two errors there that cancel each other would not show;"
            + " read at every break",
        spot.item(), Text.first(spot.pins(), MOST_NAMED));
  }
}
