package dev.ringout.benchmarks;

import dev.ringout.Ringout;
import dev.ringout.jobs.InputName;
import dev.ringout.jobs.LotJob;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.jobs.UnitsJob;
import dev.ringout.seal.Digest;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.FileBytes;
import dev.ringout.source.Problems;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.HarnessFile;
import dev.ringout.store.KeptSheets;
import dev.ringout.store.NewSession;
import dev.ringout.store.Session;
import dev.ringout.store.Store;
import dev.ringout.store.StoreAddress;
import dev.ringout.store.Stores;
import dev.ringout.units.Text;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** How a store grows: units of a cable, in several sizes, and what is asked of each. */
public final class StoreScale {
  private static final int WIRES = 150;
  private static final String JOB =
      "Name,Value\nserial number,%d\ncontinuity range,40 MΩ\nlead null,nulled\nmeter resolution,0.1 mΩ\n";

  private StoreScale() {}

  /** {@code STORE LOT SIZE…}: fills up to each size and times; a lot of LOT units at the end. */
  public static void main(String[] args) throws Exception {
    StoreAddress address = StoreAddress.of(args[0]);
    Stores.migrate(address, System.getenv(), Optional.empty());
    int there = 0;
    int lot = Integer.parseInt(args[1]);
    for (int i = 2; i < args.length; i++) {
      int size = Integer.parseInt(args[i]);
      int before = there;
      long start = System.nanoTime();
      try (Store store = Stores.open(address, System.getenv(), true)) {
        for (; there < size; there++) {
          store.add(unit(there, there < lot ? 0 : 1 + there / lot));
        }
      }
      say("add %d units of 299 readings: %.2f ms each", size - before, ms(start) / (size - before));
      try (StoreAtHand store = new StoreAtHand(args[0], System.getenv())) {
        Ringout ringout = Ringout.onFilesAnd(store);
        time("units, first", () -> ringout.units(new UnitsJob.Request(Optional.empty())));
        time("units", () -> ringout.units(new UnitsJob.Request(Optional.empty())));
        time("units SERIAL, first", () -> ringout.units(new UnitsJob.Request(Optional.of("7"))));
        time("units SERIAL", () -> ringout.units(new UnitsJob.Request(Optional.of("8"))));
      }
    }
    try (StoreAtHand store = new StoreAtHand(args[0], System.getenv())) {
      Ringout ringout = Ringout.onFilesAnd(store);
      time(
          "lot of " + lot,
          () -> ringout.lot(LotJob.Request.of(InputName.ofUnit("7"), List.of())).result());
      time("store check", () -> ringout.store().check());
    }
  }

  private interface Work {
    void run() throws Exception;
  }

  private static void time(String what, Work work) throws Exception {
    long start = System.nanoTime();
    work.run();
    say("%s: %.0f ms", what, ms(start));
  }

  private static double ms(long start) {
    return (System.nanoTime() - start) / 1e6;
  }

  private static void say(String what, Object... values) {
    System.out.println(Text.of(what, values));
  }

  /** The units of one list are a lot; further lists have further units. */
  private static NewSession unit(int serial, int list) throws Exception {
    StringBuilder wires = new StringBuilder("Wire,From,To,Gauge,Length\n");
    StringBuilder rows = new StringBuilder("From,To,Reading\n");
    Random random = new Random(serial);
    for (int wire = 1; wire <= WIRES; wire++) {
      wires.append(Text.of("W%1$d,J1-%1$d,P2-%1$d,20,3 m\n", wire));
      double ohms = 0.106 + 0.0006 * random.nextGaussian();
      rows.append(Text.of("J1-%1$d,P2-%1$d,%2$.4f\n", wire, ohms));
    }
    for (int wire = 1; wire < WIRES; wire++) {
      rows.append(Text.of("J1-%d,REST,OL\n", wire));
    }
    List<FileBytes> parts =
        List.of(
            bytes("header.csv", "Name,Value\ntitle,Cable " + list + "\n"),
            bytes("limits.csv", "Name,Value,Unit\ninsulation test,none,\n"),
            bytes("wires.csv", wires.toString()));
    HarnessFile kept =
        new HarnessFile(
            HarnessFile.digest(true, parts), "Cable " + list, "", "", "cable", true, parts);
    List<FileBytes> sheet =
        List.of(bytes("continuity.csv", rows.toString()), bytes("job.csv", Text.of(JOB, serial)));
    List<Entry.Draft> entries = new ArrayList<>();
    try (TabularFile table = TabularFile.kept(true, sheet, "unit" + serial, new Problems())) {
      entries.addAll(
          KeptSheets.drafts(
              table,
              "unit" + serial,
              List.of(),
              (row, body) -> new Entry.Draft(EntryKind.READING, "", "R. Adeyemi", body)));
    }
    entries.add(new Entry.Draft(EntryKind.VERDICT, "", "", "verdict\tconforms"));
    String digest = HarnessFile.digest(true, sheet);
    Session session =
        new Session(
            digest.replaceFirst("(.{8})(.{4})(.{4})(.{4})(.{12}).*", "$1-$2-$3-$4-$5"),
            Digest.of("" + serial),
            kept.digest(),
            1,
            "",
            "R. Adeyemi",
            "2026-11-30",
            "unit" + serial,
            digest,
            "bench",
            "2026-11-30T10:00:00Z");
    return new NewSession(kept, "" + serial, session, "unit" + serial, entries);
  }

  private static FileBytes bytes(String name, String text) {
    return FileBytes.of(name, text.getBytes(StandardCharsets.UTF_8));
  }
}
