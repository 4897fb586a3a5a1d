package dev.ringout.benchmarks;

import dev.ringout.seal.Digest;
import dev.ringout.source.FileBytes;
import dev.ringout.store.Entry;
import dev.ringout.store.EntryKind;
import dev.ringout.store.HarnessFile;
import dev.ringout.store.NewSession;
import dev.ringout.store.Session;
import dev.ringout.store.Store;
import dev.ringout.store.StoreAddress;
import dev.ringout.store.StoreState;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoredUnit;
import dev.ringout.store.Stores;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Adds tests to a store one after the other and says of each that it was acknowledged; or says what
 * a store holds. To be killed at any moment: see src/bench/store-crash.sh.
 */
public final class StoreWriter {
  private static final int ROWS = 40;

  private StoreWriter() {}

  /** {@code make STORE}, {@code add STORE PREFIX FIRST LAST} or {@code holds STORE}. */
  public static void main(String[] args) throws StoreTrouble {
    StoreAddress address = StoreAddress.of(args[1]);
    switch (args[0]) {
      case "make" -> Stores.migrate(address, System.getenv(), Optional.empty());
      case "add" -> add(address, args[2], Integer.parseInt(args[3]), Integer.parseInt(args[4]));
      default -> holds(address);
    }
  }

  private static void add(StoreAddress address, String prefix, int first, int last)
      throws StoreTrouble {
    try (Store store = Stores.open(address, System.getenv(), true)) {
      for (int i = first; i <= last; i++) {
        NewSession session = session(prefix, i);
        store.add(session);
        System.out.println("ack " + session.session().id());
        System.out.flush();
      }
    }
  }

  private static void holds(StoreAddress address) throws StoreTrouble {
    try (Store store = Stores.open(address, System.getenv(), false)) {
      for (String list : store.harnesses()) {
        for (StoredUnit unit : store.siblings(list)) {
          for (Session session : store.sessions(unit)) {
            System.out.println("has " + session.id() + " " + store.entries(session).size());
          }
        }
      }
      StoreState state = Stores.check(store);
      System.out.println("findings " + state.findings().size());
    }
  }

  private static NewSession session(String prefix, int number) {
    List<FileBytes> parts =
        List.of(
            FileBytes.of(
                "wires.csv", "Wire,From,To\nW1,J1-1,P2-1\n".getBytes(StandardCharsets.UTF_8)));
    HarnessFile list =
        new HarnessFile(HarnessFile.digest(false, parts), "", "", "", "wires.csv", false, parts);
    String serial = prefix + number / 3;
    List<Entry.Draft> entries = new ArrayList<>();
    for (int row = 1; row <= ROWS; row++) {
      entries.add(
          new Entry.Draft(
              EntryKind.READING, "", "R. Adeyemi", row + "\nA\t\tJ1-" + row + "\nC\t\t0.106"));
    }
    entries.add(new Entry.Draft(EntryKind.VERDICT, "", "", "verdict\tconforms"));
    String digest = Digest.of(prefix + number);
    String id = digest.replaceFirst("(.{8})(.{4})(.{4})(.{4})(.{12}).*", "$1-$2-$3-$4-$5");
    Session session =
        new Session(
            id,
            Digest.of(serial),
            list.digest(),
            1,
            "",
            "R. Adeyemi",
            "2026-11-30",
            "sheet" + number + ".csv",
            digest,
            "bench",
            "2026-11-30T10:00:00Z");
    return new NewSession(list, serial, session, "sheet" + number + ".csv", entries);
  }
}
