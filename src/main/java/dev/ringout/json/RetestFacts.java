package dev.ringout.json;

import dev.ringout.revision.RetestReason;

/** Why a reading is to be taken again: a code and its facts. */
final class RetestFacts implements RetestReason.Cases<Reason> {
  @Override
  public Reason wiresTouched(RetestReason.WiresTouched why) {
    return Reason.of("wires-touched").with("wires", why.wires());
  }

  @Override
  public Reason itemsOpened(RetestReason.ItemsOpened why) {
    return Reason.of("items-opened").with("items", why.items()).with("isolation", why.isolation());
  }

  @Override
  public Reason besideTheWork(RetestReason.BesideTheWork why) {
    return Reason.of("beside-the-work").with("isolation", why.isolation());
  }
}
