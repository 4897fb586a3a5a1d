package dev.ringout.lot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.Ringout;
import dev.ringout.jobs.LotJob;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.support.LotFolder;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Joints that pass, and yet are not like those of their siblings. */
class StandingOutTest {
  @TempDir private Path folder;

  private Lot lot(LotFolder cables) throws WrongRequest {
    cables.write();
    return Ringout.onFiles()
        .lot(LotJob.Request.of(cables.list(), List.of(cables.sheets())))
        .result()
        .orElseThrow()
        .lot();
  }

  private LotFolder cables(long seed) {
    return new LotFolder(folder.resolve("lot-" + seed), 16, seed);
  }

  private static List<String> outstanding(Lot lot) {
    return lot.outstanding().stream()
        .map(one -> one.of().unit() + " " + one.spread().join())
        .toList();
  }

  @Test
  void a_joint_within_its_limit_that_is_8_milliohms_above_its_siblings_is_named()
      throws WrongRequest {
    LotFolder cables = cables(1).good(20);
    cables.unit("0014").poor(7, 0.008);
    Lot lot = lot(cables);
    assertEquals(List.of("0014 J1-7 to P2-7"), outstanding(lot));
    Lot.Outstanding one = lot.outstanding().get(0);
    assertTrue(!one.of().fails());
    assertEquals(0.008, one.of().ohms(), 0.002);
    assertEquals(20, lot.with(dev.ringout.check.CheckResult.Verdict.CONFORMS).size());
  }

  @Test
  void what_all_units_have_at_one_join_is_the_join_s_and_no_unit_stands_out() throws WrongRequest {
    LotFolder cables = cables(2).good(12);
    for (int i = 1; i <= 12; i++) {
      cables.unit(String.format(java.util.Locale.ROOT, "%04d", i)).poor(3, 0.007);
    }
    assertEquals(List.of(), outstanding(lot(cables)));
  }

  @Test
  void what_one_unit_has_at_all_joins_is_its_level_and_no_join_stands_out() throws WrongRequest {
    LotFolder cables = cables(3).good(12);
    cables.unit("0005").level(0.006);
    Lot lot = lot(cables);
    assertEquals(List.of(), outstanding(lot));
    assertEquals(0.006, lot.levelsOhms().get(4), 0.001);
  }

  @Test
  void of_four_units_none_stands_out_for_there_is_no_middle() throws WrongRequest {
    LotFolder cables = cables(4).good(4);
    cables.unit("0002").poor(7, 0.009);
    Lot lot = lot(cables);
    assertEquals(List.of(), outstanding(lot));
    assertTrue(!lot.hasSiblings());
  }

  @Test
  void a_coarse_display_makes_nothing_stand_out_that_is_a_digit_off() throws WrongRequest {
    LotFolder cables = cables(5).good(12);
    for (int i = 1; i <= 12; i++) {
      for (int wire = 1; wire <= 16; wire++) {
        cables
            .unit(String.format(java.util.Locale.ROOT, "%04d", i))
            .job("meter resolution", "10 mΩ")
            .job("meter accuracy", "0.5 % + 1 digits")
            .reads(wire, i == 3 && wire == 4 ? "0.11" : "0.10");
      }
    }
    assertEquals(List.of(), outstanding(lot(cables)));
  }

  /** A lead hand who is sent to good joints looks at no more of them. */
  @Test
  void in_good_lots_hardly_anything_stands_out() throws WrongRequest {
    int named = 0;
    for (long seed = 100; seed < 120; seed++) {
      named += lot(cables(seed).good(10)).outstanding().size();
    }
    assertTrue(named <= 4, named + " named in 20 good lots of 10 units with 16 joins");
  }
}
