package dev.ringout.imports.list;

import java.util.List;

/**
 * What is odd in a harness file in KBL (VDA 4964). Each kind holds its facts; the writers put them
 * into words. Elements are named by the schema's names and their ids.
 */
public sealed interface KblOddity extends Oddity {

  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  @Override
  default <T> T matchFamily(Oddity.Families<T> families) {
    return families.kblOddity(this);
  }

  /** A reference leads to an id that no element of the file has. */
  record ReferenceNotThere(String element, String id, String role, String reference)
      implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.REFERENCE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.referenceNotThere(this);
    }
  }

  /** References of one element lead to ids that no element of the file has. */
  record ReferencesNotThere(
      String element, String id, String role, int references, List<String> first)
      implements KblOddity {
    /** Keeps a copy of what is listed. */
    public ReferencesNotThere {
      first = List.copyOf(first);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.REFERENCE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.referencesNotThere(this);
    }
  }

  /** A reference that the connection needs is empty or absent. */
  record ReferenceEmpty(String element, String id, String role) implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.REFERENCE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.referenceEmpty(this);
    }
  }

  /** A reference leads to an element of a kind that can't be meant. */
  record ReferenceToOtherKind(
      String element, String id, String role, String reference, String found) implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.REFERENCE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.referenceToOtherKind(this);
    }
  }

  /** Two elements have one id. */
  record IdUsedAgain(String element, String id, int otherLine) implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.REFERENCE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.idUsedAgain(this);
    }
  }

  /** An element has no name, and a point needs it. */
  record NameEmpty(String element, String id, String name) implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.REFERENCE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.nameEmpty(this);
    }
  }

  /** Two cavities of an item have one name. */
  record CavitiesOfOneName(String item, String pin) implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.ALIAS;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.cavitiesOfOneName(this);
    }
  }

  /** A contact point of one item contacts a cavity of another. */
  record CavityOfOtherItem(String id, String item, String cavity, String other)
      implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.REFERENCE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.cavityOfOtherItem(this);
    }
  }

  /** Two items have one name. */
  record ItemsOfOneName(String item, String id, String otherId) implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.ALIAS;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.itemsOfOneName(this);
    }
  }

  /** Two items of different modules have one name, and are taken for one. */
  record VariantsOfOneName(String item, String id, String otherId) implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.ALIAS;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.variantsOfOneName(this);
    }
  }

  /** A connection has fewer than two ends. */
  record TooFewEnds(String id, int ends) implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.NO_END;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.tooFewEnds(this);
    }
  }

  /** A connection stands in an assembly part, not in the harness. */
  record OfAssemblyPart(String id, String assembly) implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.REFERENCE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.ofAssemblyPart(this);
    }
  }

  /** A wire has several contacts, and their order along it is not clear. */
  record PositionsUnclear(String id, int ends) implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.SEVERAL;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.positionsUnclear(this);
    }
  }

  /** A wire has contacts between its ends. */
  record ContactsAlongWire(String wire, List<String> points) implements KblOddity {
    /** Keeps a copy of what is listed. */
    public ContactsAlongWire {
      points = List.copyOf(points);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.SEVERAL;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.contactsAlongWire(this);
    }
  }

  /** One contact joins several cavities. */
  record ContactOverCavities(List<String> points) implements KblOddity {
    /** Keeps a copy of what is listed. */
    public ContactOverCavities {
      points = List.copyOf(points);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.SEVERAL;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.contactOverCavities(this);
    }
  }

  /** Wires have several lengths; one sort was taken. */
  record SeveralLengths(int wires, String taken) implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.LENGTH;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.severalLengths(this);
    }
  }

  /** Wires have the length 0, which was taken. */
  record LengthOfNothing(int wires, List<String> first) implements KblOddity {
    /** Keeps a copy of what is listed. */
    public LengthOfNothing {
      first = List.copyOf(first);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.LENGTH;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.lengthOfNothing(this);
    }
  }

  /** Wires stand in no connection. */
  record NotConnected(int wires, List<String> first) implements KblOddity {
    /** Keeps a copy of what is listed. */
    public NotConnected {
      first = List.copyOf(first);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.NO_END;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.notConnected(this);
    }
  }

  /** The file holds several modules, and all were read together. */
  record AllModules(int modules, List<String> first) implements KblOddity {
    /** Keeps a copy of what is listed. */
    public AllModules {
      first = List.copyOf(first);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.MODULES;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.allModules(this);
    }
  }

  /** The connections of some modules were read. */
  record ModulesChosen(List<String> modules, int connections, int leftOut) implements KblOddity {
    /** Keeps a copy of what is listed. */
    public ModulesChosen {
      modules = List.copyOf(modules);
    }

    @Override
    public OddityKind kind() {
      return OddityKind.MODULES;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.modulesChosen(this);
    }
  }

  /** Connections belong to no module, and were left out. */
  record OfNoModule(int connections) implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.MODULES;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.ofNoModule(this);
    }
  }

  /** Boxes and components are in the file, and what they join is not read. */
  record PartsNotRead(int boxes, int components) implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.PARTS;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.partsNotRead(this);
    }
  }

  /** The file names an edition of the schema that is not known. */
  record EditionNotKnown(String edition) implements KblOddity {
    @Override
    public OddityKind kind() {
      return OddityKind.REFERENCE;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.editionNotKnown(this);
    }
  }

  /**
   * What a writer makes of each kind.
   *
   * @param <T> what it makes
   */
  interface Cases<T> {
    T referenceNotThere(ReferenceNotThere odd);

    T referencesNotThere(ReferencesNotThere odd);

    T referenceEmpty(ReferenceEmpty odd);

    T referenceToOtherKind(ReferenceToOtherKind odd);

    T idUsedAgain(IdUsedAgain odd);

    T nameEmpty(NameEmpty odd);

    T cavitiesOfOneName(CavitiesOfOneName odd);

    T cavityOfOtherItem(CavityOfOtherItem odd);

    T itemsOfOneName(ItemsOfOneName odd);

    T variantsOfOneName(VariantsOfOneName odd);

    T tooFewEnds(TooFewEnds odd);

    T ofAssemblyPart(OfAssemblyPart odd);

    T positionsUnclear(PositionsUnclear odd);

    T contactsAlongWire(ContactsAlongWire odd);

    T contactOverCavities(ContactOverCavities odd);

    T severalLengths(SeveralLengths odd);

    T lengthOfNothing(LengthOfNothing odd);

    T notConnected(NotConnected odd);

    T allModules(AllModules odd);

    T modulesChosen(ModulesChosen odd);

    T ofNoModule(OfNoModule odd);

    T partsNotRead(PartsNotRead odd);

    T editionNotKnown(EditionNotKnown odd);
  }
}
