package dev.ringout.words;

import dev.ringout.imports.list.KblOddity;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.List;

/** What is odd in a harness file in KBL, as a sentence. */
final class KblOddityWords implements KblOddity.Cases<OddityWords> {

  private static String element(String name, String id) {
    return id.isEmpty() ? name + " without an id" : name + " " + id;
  }

  private static String few(List<String> names, int all) {
    return String.join(", ", names) + (names.size() < all ? " …" : "");
  }

  @Override
  public OddityWords referenceNotThere(KblOddity.ReferenceNotThere odd) {
    return OddityWords.of(
        Text.of(
            "%s: %s refers to %s, and the file has no such element",
            element(odd.element(), odd.id()), odd.role(), odd.reference()));
  }

  @Override
  public OddityWords referencesNotThere(KblOddity.ReferencesNotThere odd) {
    return OddityWords.of(
        Text.of(
            "%s: %s refers to %s that the file does not have: %s",
            element(odd.element(), odd.id()),
            odd.role(),
            Numbers.count(odd.references(), "element"),
            few(odd.first(), odd.references())));
  }

  @Override
  public OddityWords referenceEmpty(KblOddity.ReferenceEmpty odd) {
    return OddityWords.of(
        element(odd.element(), odd.id()) + ": " + odd.role() + " is empty or absent");
  }

  @Override
  public OddityWords referenceToOtherKind(KblOddity.ReferenceToOtherKind odd) {
    return OddityWords.of(
        Text.of(
            "%s: %s refers to %s, a %s, which can't be meant",
            element(odd.element(), odd.id()), odd.role(), odd.reference(), odd.found()));
  }

  @Override
  public OddityWords idUsedAgain(KblOddity.IdUsedAgain odd) {
    return OddityWords.of(
        Text.of(
            "%s: the element of line %d has the same id, so what refers to it is not clear",
            element(odd.element(), odd.id()), odd.otherLine()));
  }

  @Override
  public OddityWords nameEmpty(KblOddity.NameEmpty odd) {
    return OddityWords.of(
        Text.of(
            "%s: %s is empty or absent, and a point is named by it",
            element(odd.element(), odd.id()), odd.name()));
  }

  @Override
  public OddityWords cavitiesOfOneName(KblOddity.CavitiesOfOneName odd) {
    return OddityWords.of(odd.item() + " has more than one cavity " + odd.pin());
  }

  @Override
  public OddityWords cavityOfOtherItem(KblOddity.CavityOfOtherItem odd) {
    return OddityWords.of(
        Text.of(
            "%s is one of %s, and contacts the cavity %s of %s; it is not clear which is meant",
            element("Contact_points", odd.id()), odd.item(), odd.cavity(), odd.other()));
  }

  @Override
  public OddityWords itemsOfOneName(KblOddity.ItemsOfOneName odd) {
    return OddityWords.of(
        Text.of(
            "two items are called %s (%s and %s), and both have wires; it is not clear which is meant",
            odd.item(), odd.otherId(), odd.id()),
        "--module, where they are variants of one another");
  }

  @Override
  public OddityWords variantsOfOneName(KblOddity.VariantsOfOneName odd) {
    return OddityWords.of(
        Text.of(
            "two items of different modules are called %s (%s and %s): taken for one",
            odd.item(), odd.otherId(), odd.id()));
  }

  @Override
  public OddityWords tooFewEnds(KblOddity.TooFewEnds odd) {
    return OddityWords.of(
        Text.of(
            "%s has %s; a wire has two",
            element("Connection", odd.id()), Numbers.count(odd.ends(), "end")));
  }

  @Override
  public OddityWords ofAssemblyPart(KblOddity.OfAssemblyPart odd) {
    return OddityWords.of(
        Text.of(
            "%s is one of the assembly part %s, not of the harness; not read",
            element("Connection", odd.id()), odd.assembly()));
  }

  @Override
  public OddityWords positionsUnclear(KblOddity.PositionsUnclear odd) {
    return OddityWords.of(
        Text.of(
            "%s: the positions of its %d contacts on the wire are not all given, or the same;"
                + " taken in their order in the file",
            element("Connection", odd.id()), odd.ends()));
  }

  @Override
  public OddityWords contactsAlongWire(KblOddity.ContactsAlongWire odd) {
    return OddityWords.of(
        Text.of(
            "wire %s has contacts between its ends, and is a wire for each piece: %s",
            odd.wire(), String.join(" > ", odd.points())));
  }

  @Override
  public OddityWords contactOverCavities(KblOddity.ContactOverCavities odd) {
    return OddityWords.of(
        "one contact stands in several cavities, which are linked: "
            + String.join(", ", odd.points()));
  }

  @Override
  public OddityWords severalLengths(KblOddity.SeveralLengths odd) {
    return OddityWords.of(
        Text.of(
            "%s with several lengths: the one called %s was taken",
            Numbers.count(odd.wires(), "wire"), odd.taken()));
  }

  @Override
  public OddityWords lengthOfNothing(KblOddity.LengthOfNothing odd) {
    return OddityWords.of(
        Text.of(
            "%s with the length 0, taken as it stands: %s",
            Numbers.count(odd.wires(), "wire"), few(odd.first(), odd.wires())));
  }

  @Override
  public OddityWords notConnected(KblOddity.NotConnected odd) {
    return OddityWords.of(
        Text.of(
            "%s in no connection, so it is not known where they go: %s",
            Numbers.count(odd.wires(), "wire"), few(odd.first(), odd.wires())));
  }

  @Override
  public OddityWords allModules(KblOddity.AllModules odd) {
    return OddityWords.of(
        Text.of(
            "the file holds %d modules, and all were read together: a unit has only some of them",
            odd.modules()),
        "--module " + odd.first().get(0) + " (they are " + few(odd.first(), odd.modules()) + ")");
  }

  @Override
  public OddityWords modulesChosen(KblOddity.ModulesChosen odd) {
    return OddityWords.of(
        Text.of(
            "%s of %s read; %s of other modules or of none left out",
            Numbers.count(odd.connections(), "connection"),
            String.join(", ", odd.modules()),
            Numbers.count(odd.leftOut(), "connection")));
  }

  @Override
  public OddityWords ofNoModule(KblOddity.OfNoModule odd) {
    return OddityWords.of(
        Numbers.count(odd.connections(), "connection")
            + " belong to no module, and were left out; without --module all are read");
  }

  @Override
  public OddityWords partsNotRead(KblOddity.PartsNotRead odd) {
    return OddityWords.of(
        Text.of(
            "%s and %s are in the file; what they join or hold apart inside is not read",
            odd.boxes() == 1 ? "1 component box" : odd.boxes() + " component boxes",
            Numbers.count(odd.components(), "component")));
  }

  @Override
  public OddityWords editionNotKnown(KblOddity.EditionNotKnown odd) {
    return OddityWords.of(
        "the file is of edition \""
            + odd.edition()
            + "\"; editions 2.3 to 2.5 are known, and it was read like these");
  }
}
