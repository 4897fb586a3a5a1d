package dev.ringout.words;

import dev.ringout.revision.Reach;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;

/** Why an end gets where it goes or may not, in words. */
final class ReachWords implements Reach.Cases<String> {
  @Override
  public String staysAtItem(Reach.StaysAtItem why) {
    return "it stays at one item";
  }

  @Override
  public String listWantsLess(Reach.ListWantsLess why) {
    return Text.of(
        "of its %s m the list wants %s m",
        Numbers.plain(why.metres()), Numbers.plain(why.wantedMetres()));
  }

  @Override
  public String othersThatWay(Reach.OthersThatWay why) {
    return Text.of(
        "it is %s m, the shortest other wire that way %s m",
        Numbers.plain(why.metres()), Numbers.plain(why.shortestMetres()));
  }

  @Override
  public String noLength(Reach.NoLength why) {
    return "no length is listed: try it before anything is cut";
  }

  @Override
  public String noOtherThatWay(Reach.NoOtherThatWay why) {
    return "no other wire goes that way: try it before anything is cut";
  }
}
