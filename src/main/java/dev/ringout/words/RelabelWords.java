package dev.ringout.words;

import dev.ringout.revision.Relabel;
import dev.ringout.units.Text;

/** Sleeves and labels to renew, in words. */
public final class RelabelWords implements Relabel.Cases<RelabelWords.Said> {
  /**
   * What is said of a label.
   *
   * @param at the point, the item or the sleeves it is on
   */
  public record Said(String at, String old, String now) {
    /** All of it. */
    public String sentence() {
      return Text.of("at %s: \"%s\" becomes \"%s\"", at, old, now);
    }
  }

  private RelabelWords() {}

  /** What is said of a label. */
  public static Said of(Relabel label) {
    return label.match(new RelabelWords());
  }

  @Override
  public Said wireNumber(Relabel.WireNumber label) {
    return new Said(label.at().toString(), label.old(), label.now());
  }

  @Override
  public Said itemName(Relabel.ItemName label) {
    return new Said(label.now() + " and every sleeve that names it", label.old(), label.now());
  }

  @Override
  public Said pinNames(Relabel.PinNames label) {
    return new Said(
        "every sleeve that names a pin of " + label.item(), run(label.old()), run(label.now()));
  }

  private static String run(Relabel.Run pins) {
    return pins.first() + " … " + pins.last();
  }
}
