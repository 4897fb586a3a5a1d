package dev.ringout.words;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.MissingWire;
import dev.ringout.compare.Unproven;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;

/** Why each kind of gap in the proof is one. */
public final class UnprovenSentences implements Unproven.Cases<String>, MissingWire.Cases<String> {
  private final Circuit circuit;

  /** In the names of a circuit. */
  public UnprovenSentences(Circuit circuit) {
    this.circuit = circuit;
  }

  /** Why, in words. */
  public static String why(Circuit circuit, Unproven unproven) {
    return unproven.match(new UnprovenSentences(circuit));
  }

  /** What is not proven and why. */
  public static String said(Circuit circuit, Unproven unproven) {
    String subject = unproven.match(new Subject(circuit));
    return (subject.isEmpty() ? "" : subject + ": ") + why(circuit, unproven);
  }

  /** Of what a gap is, where its reason does not say it. */
  private record Subject(Circuit circuit) implements Unproven.Cases<String> {
    @Override
    public String join(Unproven.Join gap) {
      return "";
    }

    @Override
    public String isolation(Unproven.Isolation gap) {
      return "net of " + circuit.point(gap.point());
    }

    @Override
    public String insulation(Unproven.Insulation gap) {
      return "net of " + circuit.point(gap.point());
    }

    @Override
    public String ofWire(Unproven.OfWire gap) {
      String label = circuit.conductors().get(gap.conductor()).label();
      return circuit.isWire(gap.conductor()) ? "wire " + label : label;
    }

    @Override
    public String contact(Unproven.Contact gap) {
      return circuit.conductors().get(gap.conductor()).label();
    }

    @Override
    public String pastContacts(Unproven.PastContacts gap) {
      return Text.of("%s and %s", circuit.point(gap.one()), circuit.point(gap.other()));
    }

    @Override
    public String ofPart(Unproven.OfPart gap) {
      return "";
    }
  }

  @Override
  public String join(Unproven.Join gap) {
    return Text.of("no reading joins %s to %s", circuit.point(gap.from()), circuit.point(gap.to()));
  }

  @Override
  public String isolation(Unproven.Isolation gap) {
    return from("holds it apart", gap.other(), gap.others());
  }

  @Override
  public String insulation(Unproven.Insulation gap) {
    return Text.of(
        "%s, at %s V and %s",
        from("shows its insulation", gap.other(), gap.others()),
        Numbers.plain(gap.level().volts()),
        Ohms.text(gap.level().ohms()));
  }

  private String from(String shows, int other, long others) {
    return others == 1
        ? Text.of("no reading %s from the net of %s", shows, circuit.point(other))
        : Text.of(
            "no reading %s from %d other nets, that of %s among them",
            shows, others, circuit.point(other));
  }

  @Override
  public String ofWire(Unproven.OfWire gap) {
    return gap.missing().match(this);
  }

  @Override
  public String contact(Unproven.Contact gap) {
    return Text.of(
        "no reading shows it %s at %s", gap.closed() ? "closed" : "open", gap.position());
  }

  @Override
  public String pastContacts(Unproven.PastContacts gap) {
    return Text.of(
        "something may join them past the contacts; read between them with %s", gap.state());
  }

  @Override
  public String ofPart(Unproven.OfPart gap) {
    return Text.of(
        "no good reading was made across %s%s",
        circuit.part(gap.part()).label(),
        gap.state().isNormal() ? "" : Text.of(" with %s", gap.state()));
  }

  @Override
  public String notRead(MissingWire.NotRead reason) {
    return "no good reading goes through it";
  }

  @Override
  public String inParallel(MissingWire.InParallel reason) {
    return Text.of(
        "in parallel with %s: continuity can't tell them apart", conductor(reason.other()));
  }

  @Override
  public String inLoop(MissingWire.InLoop reason) {
    return "part of a loop: continuity beeps with it missing; lift one end and read again";
  }

  @Override
  public String eitherSide(MissingWire.EitherSide reason) {
    return Text.of(
        "would read the same %s %s, which a closed contact joins; read it with %s",
        reason.exchangedWith().isPresent()
            ? Text.of("exchanged with %s at", conductor(reason.exchangedWith().getAsInt()))
            : "with an end at",
        circuit.point(reason.other()),
        reason.shows().state());
  }

  private String conductor(int number) {
    return circuit.conductors().get(number).label();
  }
}
