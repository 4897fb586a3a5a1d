package dev.ringout.words;

import dev.ringout.revision.RetestReason;
import dev.ringout.units.Text;

/** Why a reading is to be taken again, in words. */
final class RetestWords implements RetestReason.Cases<String> {
  @Override
  public String wiresTouched(RetestReason.WiresTouched why) {
    return Text.of("%s touched", String.join(", ", why.wires()));
  }

  @Override
  public String itemsOpened(RetestReason.ItemsOpened why) {
    return isolation(why.isolation()) + String.join(", ", why.items()) + " opened";
  }

  @Override
  public String besideTheWork(RetestReason.BesideTheWork why) {
    return isolation(why.isolation()) + "beside what was touched";
  }

  private static String isolation(boolean isolation) {
    return isolation ? "isolation: " : "";
  }
}
