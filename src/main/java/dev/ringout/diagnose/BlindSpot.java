package dev.ringout.diagnose;

import dev.ringout.circuit.Conductor;
import dev.ringout.harness.Part;
import java.util.List;

/**
 * What could be wrong without any reading of this kind showing it. Each kind holds its facts; the
 * writers put them into words.
 */
public sealed interface BlindSpot {
  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** Wires from one item that join the same net: crossed, every reading passes. */
  record SameNet(List<Conductor> wires) implements BlindSpot {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.sameNet(this);
    }
  }

  /** Windings of one item that read alike: their leads exchanged, a motor may run backwards. */
  record EqualWindings(List<Part> windings) implements BlindSpot {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.equalWindings(this);
    }
  }

  /** Diodes that no pair of readings shows, one each way and with nothing in parallel. */
  record DiodesNotShown(List<Part> diodes) implements BlindSpot {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.diodesNotShown(this);
    }
  }

  /** Parts that have no ohms to compare with. */
  record PartsWithoutOhms(List<Part> parts) implements BlindSpot {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.partsWithoutOhms(this);
    }
  }

  /** Parts without which, for what is beside them, the very same might be read. */
  record PartsBesideOthers(List<Part> parts) implements BlindSpot {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.partsBesideOthers(this);
    }
  }

  /** Wires that are twisted together, by their groups. */
  record TwistedGroups(List<String> groups) implements BlindSpot {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.twistedGroups(this);
    }
  }

  /**
   * Breaks between two wires at which nothing was read: crossed on the way in and crossed back on
   * the way out, every reading from end to end passes.
   */
  record BreaksNotRead(String item, List<String> pins) implements BlindSpot {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.breaksNotRead(this);
    }
  }

  /**
   * Switches with contacts that are closed at rest: the insulation test takes what they join as one
   * net, and does not see the insulation across them while they are open.
   */
  record AcrossContacts(List<String> switches) implements BlindSpot {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.acrossContacts(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link SameNet}. */
    T sameNet(SameNet spot);

    /** See {@link EqualWindings}. */
    T equalWindings(EqualWindings spot);

    /** See {@link DiodesNotShown}. */
    T diodesNotShown(DiodesNotShown spot);

    /** See {@link PartsWithoutOhms}. */
    T partsWithoutOhms(PartsWithoutOhms spot);

    /** See {@link PartsBesideOthers}. */
    T partsBesideOthers(PartsBesideOthers spot);

    /** See {@link TwistedGroups}. */
    T twistedGroups(TwistedGroups spot);

    /** See {@link BreaksNotRead}. */
    T breaksNotRead(BreaksNotRead spot);

    /** See {@link AcrossContacts}. */
    T acrossContacts(AcrossContacts spot);
  }
}
