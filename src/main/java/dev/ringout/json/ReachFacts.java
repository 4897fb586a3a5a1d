package dev.ringout.json;

import dev.ringout.revision.Reach;

/** Why an end gets where it goes or may not: a code and its facts. */
final class ReachFacts implements Reach.Cases<Reason> {
  @Override
  public Reason staysAtItem(Reach.StaysAtItem why) {
    return Reason.of("stays-at-item").with("item", why.item());
  }

  @Override
  public Reason listWantsLess(Reach.ListWantsLess why) {
    return Reason.of("list-wants-less")
        .with("metres", why.metres())
        .with("wantedMetres", why.wantedMetres());
  }

  @Override
  public Reason othersThatWay(Reach.OthersThatWay why) {
    return Reason.of("others-that-way")
        .with("metres", why.metres())
        .with("shortestMetres", why.shortestMetres());
  }

  @Override
  public Reason noLength(Reach.NoLength why) {
    return Reason.of("no-length");
  }

  @Override
  public Reason noOtherThatWay(Reach.NoOtherThatWay why) {
    return Reason.of("no-other-that-way").with("metres", why.metres());
  }
}
