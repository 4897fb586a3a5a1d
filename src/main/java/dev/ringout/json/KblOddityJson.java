package dev.ringout.json;

import dev.ringout.imports.list.KblOddity;

/** What is odd in a harness file in KBL, as facts by their names. */
final class KblOddityJson implements KblOddity.Cases<Reason> {

  @Override
  public Reason referenceNotThere(KblOddity.ReferenceNotThere odd) {
    return Reason.of("reference-not-there")
        .with("element", odd.element())
        .with("id", odd.id())
        .with("role", odd.role())
        .with("reference", odd.reference());
  }

  @Override
  public Reason referencesNotThere(KblOddity.ReferencesNotThere odd) {
    return Reason.of("references-not-there")
        .with("element", odd.element())
        .with("id", odd.id())
        .with("role", odd.role())
        .with("references", odd.references())
        .with("first", odd.first());
  }

  @Override
  public Reason referenceEmpty(KblOddity.ReferenceEmpty odd) {
    return Reason.of("reference-empty")
        .with("element", odd.element())
        .with("id", odd.id())
        .with("role", odd.role());
  }

  @Override
  public Reason referenceToOtherKind(KblOddity.ReferenceToOtherKind odd) {
    return Reason.of("reference-to-other-kind")
        .with("element", odd.element())
        .with("id", odd.id())
        .with("role", odd.role())
        .with("reference", odd.reference())
        .with("found", odd.found());
  }

  @Override
  public Reason idUsedAgain(KblOddity.IdUsedAgain odd) {
    return Reason.of("id-used-again")
        .with("element", odd.element())
        .with("id", odd.id())
        .with("otherLine", odd.otherLine());
  }

  @Override
  public Reason nameEmpty(KblOddity.NameEmpty odd) {
    return Reason.of("name-empty")
        .with("element", odd.element())
        .with("id", odd.id())
        .with("name", odd.name());
  }

  @Override
  public Reason cavitiesOfOneName(KblOddity.CavitiesOfOneName odd) {
    return Reason.of("cavities-of-one-name").with("item", odd.item()).with("pin", odd.pin());
  }

  @Override
  public Reason cavityOfOtherItem(KblOddity.CavityOfOtherItem odd) {
    return Reason.of("cavity-of-other-item")
        .with("id", odd.id())
        .with("item", odd.item())
        .with("cavity", odd.cavity())
        .with("other", odd.other());
  }

  @Override
  public Reason itemsOfOneName(KblOddity.ItemsOfOneName odd) {
    return Reason.of("items-of-one-name")
        .with("item", odd.item())
        .with("id", odd.id())
        .with("otherId", odd.otherId());
  }

  @Override
  public Reason variantsOfOneName(KblOddity.VariantsOfOneName odd) {
    return Reason.of("variants-of-one-name")
        .with("item", odd.item())
        .with("id", odd.id())
        .with("otherId", odd.otherId());
  }

  @Override
  public Reason tooFewEnds(KblOddity.TooFewEnds odd) {
    return Reason.of("too-few-ends").with("id", odd.id()).with("ends", odd.ends());
  }

  @Override
  public Reason ofAssemblyPart(KblOddity.OfAssemblyPart odd) {
    return Reason.of("of-assembly-part").with("id", odd.id()).with("assembly", odd.assembly());
  }

  @Override
  public Reason positionsUnclear(KblOddity.PositionsUnclear odd) {
    return Reason.of("positions-unclear").with("id", odd.id()).with("ends", odd.ends());
  }

  @Override
  public Reason contactsAlongWire(KblOddity.ContactsAlongWire odd) {
    return Reason.of("contacts-along-wire").with("wire", odd.wire()).with("points", odd.points());
  }

  @Override
  public Reason contactOverCavities(KblOddity.ContactOverCavities odd) {
    return Reason.of("contact-over-cavities").with("points", odd.points());
  }

  @Override
  public Reason severalLengths(KblOddity.SeveralLengths odd) {
    return Reason.of("several-lengths").with("wires", odd.wires()).with("taken", odd.taken());
  }

  @Override
  public Reason lengthOfNothing(KblOddity.LengthOfNothing odd) {
    return Reason.of("length-of-nothing").with("wires", odd.wires()).with("first", odd.first());
  }

  @Override
  public Reason notConnected(KblOddity.NotConnected odd) {
    return Reason.of("not-connected").with("wires", odd.wires()).with("first", odd.first());
  }

  @Override
  public Reason allModules(KblOddity.AllModules odd) {
    return Reason.of("all-modules").with("modules", odd.modules()).with("first", odd.first());
  }

  @Override
  public Reason modulesChosen(KblOddity.ModulesChosen odd) {
    return Reason.of("modules-chosen")
        .with("modules", odd.modules())
        .with("connections", odd.connections())
        .with("leftOut", odd.leftOut());
  }

  @Override
  public Reason ofNoModule(KblOddity.OfNoModule odd) {
    return Reason.of("of-no-module").with("connections", odd.connections());
  }

  @Override
  public Reason partsNotRead(KblOddity.PartsNotRead odd) {
    return Reason.of("parts-not-read")
        .with("boxes", odd.boxes())
        .with("components", odd.components());
  }

  @Override
  public Reason editionNotKnown(KblOddity.EditionNotKnown odd) {
    return Reason.of("edition-not-known").with("edition", odd.edition());
  }
}
