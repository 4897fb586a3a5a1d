package dev.ringout.jobs;

import dev.ringout.store.Store;
import dev.ringout.store.StoreAddress;
import dev.ringout.store.StoreState;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.StoreTrouble.Reason;
import dev.ringout.store.StoredUnit;
import dev.ringout.store.Stores;
import dev.ringout.store.Stores.Taking;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** What a store needs besides units and readings: to be made, looked through and copied. */
public final class StoreCare {
  private final StoreAtHand store;

  /** Of one store. */
  public StoreCare(StoreAtHand store) {
    this.store = store;
  }

  /**
   * What a copy came to.
   *
   * @param copy what was copied
   * @param isComplete whether nothing is left to copy: the other may have more
   * @param from all chains of the one
   * @param to all chains of the other
   */
  public record Copied(Stores.Copy copy, boolean isComplete, StoreState from, StoreState to) {
    /** Whether the other holds all of it, as it was written. */
    public boolean isDone() {
      return isComplete && from.findings().isEmpty() && to.findings().isEmpty();
    }

    /** Whether both hold the same, and all of it as it was written. */
    public boolean isSame() {
      return isDone() && from.digest().equals(to.digest());
    }
  }

  /**
   * Makes the store, or takes one of an earlier version along.
   *
   * @param role of the server that may read and add from then on, and nothing else
   */
  public void migrate(Optional<String> role) throws StoreTrouble {
    store.migrate(role);
  }

  /** Reads all of it and looks whether its chains hold. */
  public StoreState check() throws StoreTrouble {
    return Stores.check(store.open());
  }

  /**
   * Copies everything into a new file, which has its name once it holds all of it.
   *
   * @throws StoreTrouble where it can't be written
   */
  public Copied backUp(Path file, Map<String, String> environment) throws StoreTrouble {
    return backUp(file, environment, true, Taken.ALL, Copied::isSame);
  }

  /**
   * Copies one unit with its list and all its tests into a new file, which has its name once it
   * holds all of it. What else the store holds, people too, is not in it.
   *
   * @param unit as every command names it
   * @throws StoreTrouble where there is no such unit, or the file can't be written
   */
  public Copied archive(Path unit, Path file, Map<String, String> environment) throws StoreTrouble {
    InputName.Unit named =
        InputName.unit(unit)
            .orElseThrow(
                () ->
                    StoreTrouble.of(
                        Reason.MISSING, unit + " is not a unit of a store: unit:SERIAL"));
    StoredUnit one = new FromStore(store).unit(named, Optional.empty());
    return backUp(
        file,
        environment,
        false,
        (from, into) -> Taking.only(one),
        copied -> copied.isComplete() && copied.to().findings().isEmpty());
  }

  private Copied backUp(
      Path file,
      Map<String, String> environment,
      boolean withLeases,
      Taken taken,
      Predicate<Copied> isWhole)
      throws StoreTrouble {
    Path part = file.resolveSibling(file.getFileName() + ".part");
    try {
      remove(part);
      Copied copied = copyTo(part.toString(), environment, withLeases, taken);
      if (isWhole.test(copied)) {
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
      }
      return copied;
    } catch (IOException e) {
      throw StoreTrouble.of(Reason.NOT_WRITTEN, "can't be written: " + e.getMessage());
    } finally {
      removeQuietly(part);
    }
  }

  /** A file that an earlier run left half way, with its log. */
  private static void remove(Path part) throws IOException {
    for (String end : List.of("", "-wal", "-shm")) {
      Files.deleteIfExists(part.resolveSibling(part.getFileName() + end));
    }
  }

  private static void removeQuietly(Path part) {
    try {
      remove(part);
    } catch (IOException e) {
      // It is called what it is, and the next run removes it.
    }
  }

  /**
   * Copies everything into another store that is empty, or has part of it already.
   *
   * @param to its address; a file that is not there yet is made
   * @param decisions whether what was decided of people is taken by a store that has people
   * @param now no reading is later
   */
  public Copied copyTo(String to, Map<String, String> environment, boolean decisions, Instant now)
      throws StoreTrouble {
    return copyTo(
        to,
        environment,
        false,
        (from, into) -> new Taking(decisions, new ClocksOfTests(store, from, into, now).refused()));
  }

  /** What is taken, where both stores are known. */
  private interface Taken {
    Taken ALL = (from, into) -> Taking.ALL;

    Taking of(Store from, Store into) throws StoreTrouble;
  }

  private Copied copyTo(String to, Map<String, String> environment, boolean withLeases, Taken taken)
      throws StoreTrouble {
    StoreAddress address = StoreAddress.of(to);
    if (address.isSameAs(StoreAddress.of(store.address()))) {
      throw StoreTrouble.of(Reason.NOT_UNDERSTOOD, "is the store itself");
    }
    Store from = store.open();
    // Others go on adding meanwhile: what is copied is what was there at the beginning.
    from.hold();
    try (StoreAtHand other = new StoreAtHand(to, environment)) {
      Store into = other.openToWrite();
      Taking taking = taken.of(from, into);
      Stores.Copy copied = Stores.copy(from, into, taking);
      if (withLeases) {
        Stores.copyLeases(from, into);
      }
      // Copied once more it must be nothing: so all of it is there, hash by hash.
      boolean isComplete = copied.parted().isEmpty() && Stores.copy(from, into, taking).isNothing();
      return new Copied(copied, isComplete, Stores.check(from), Stores.check(into));
    }
  }
}
