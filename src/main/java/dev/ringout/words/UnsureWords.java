package dev.ringout.words;

import dev.ringout.revision.Unsure;
import dev.ringout.units.Text;

/** What makes one doubt a comparison of two lists, in words. */
final class UnsureWords implements Unsure.Cases<String> {
  @Override
  public String twoDrawings(Unsure.TwoDrawings unsure) {
    return Text.of("these are two drawings: %s and %s", unsure.old(), unsure.now());
  }

  @Override
  public String oneLetterTwice(Unsure.OneLetterTwice unsure) {
    return Text.of("both say revision %s, and differ", unsure.revision());
  }

  @Override
  public String eitherOfTwo(Unsure.EitherOfTwo unsure) {
    return Text.of(
        "%s and %s: which of the two is which in the later revision, the lists do not tell",
        unsure.one().name(), unsure.other().name());
  }

  @Override
  public String matchedOneByOne(Unsure.MatchedOneByOne unsure) {
    return Text.of(
        "%d and %d wires from %s on could be each other: they were matched one by one",
        unsure.earlier(), unsure.later(), unsure.first().name());
  }
}
