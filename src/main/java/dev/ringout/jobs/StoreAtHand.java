package dev.ringout.jobs;

import dev.ringout.store.Store;
import dev.ringout.store.StoreAddress;
import dev.ringout.store.StoreTrouble;
import dev.ringout.store.Stores;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** A store that is opened where something is asked of it, and once. */
public final class StoreAtHand implements AutoCloseable {
  private final String address;
  private final Map<String, String> environment;
  private final boolean hasOwnFolder;
  private Optional<Store> reading = Optional.empty();
  private Optional<Store> writing = Optional.empty();

  /**
   * A store by its address.
   *
   * @param environment where a server's user and password may stand
   */
  public StoreAtHand(String address, Map<String, String> environment) {
    this(address, environment, false);
  }

  private StoreAtHand(String address, Map<String, String> environment, boolean hasOwnFolder) {
    this.address = address;
    this.environment = Map.copyOf(environment);
    this.hasOwnFolder = hasOwnFolder;
  }

  /** A file whose folder is made with it: nobody typed its name. */
  public static StoreAtHand inFolderOfItsOwn(Path file, Map<String, String> environment) {
    return new StoreAtHand(file.toString(), environment, true);
  }

  private void makeFolder(StoreAddress at) throws StoreTrouble {
    Optional<Path> folder = at.onDisk().map(file -> file.toAbsolutePath().getParent());
    if (!hasOwnFolder || folder.isEmpty()) {
      return;
    }
    try {
      Files.createDirectories(folder.get());
    } catch (IOException e) {
      throw StoreTrouble.of(
          StoreTrouble.Reason.NOT_WRITTEN, "its folder can't be made: " + e.getMessage());
    }
  }

  /** As it was typed: a password may stand in it. */
  String address() {
    return address;
  }

  /** The file that it is; absent where it is a server's, or none. */
  public Optional<Path> file() {
    try {
      return StoreAddress.of(address).onDisk();
    } catch (StoreTrouble e) {
      return Optional.empty();
    }
  }

  /** Whether it is a server's; no where it is a file, or none. */
  public boolean isOnServer() {
    try {
      return StoreAddress.of(address).onDisk().isEmpty();
    } catch (StoreTrouble e) {
      return false;
    }
  }

  /** Where it is: never with a password. */
  public String shown() {
    if (address.isEmpty()) {
      return "--store";
    }
    try {
      return StoreAddress.of(address).shown();
    } catch (StoreTrouble e) {
      return "--store";
    }
  }

  /** The store, to be read. */
  synchronized Store open() throws StoreTrouble {
    if (writing.isPresent()) {
      return writing.get();
    }
    if (reading.isEmpty()) {
      if (address.isEmpty()) {
        throw StoreTrouble.of(StoreTrouble.Reason.MISSING, "no store was named");
      }
      reading = Optional.of(Stores.open(StoreAddress.of(address), environment, false));
    }
    return reading.get();
  }

  /** The store, to be added to; a file that is not there yet is made. */
  synchronized Store openToWrite() throws StoreTrouble {
    if (writing.isEmpty()) {
      StoreAddress at = StoreAddress.of(address);
      if (!Stores.isThere(at)) {
        makeFolder(at);
        Stores.migrate(at, environment, Optional.empty());
      }
      writing = Optional.of(Stores.open(at, environment, true));
    }
    return writing.get();
  }

  /** Makes the store, or takes it along to this version. */
  synchronized void migrate(Optional<String> role) throws StoreTrouble {
    StoreAddress at = StoreAddress.of(address);
    makeFolder(at);
    Stores.migrate(at, environment, role);
  }

  @Override
  public synchronized void close() {
    reading.ifPresent(Store::close);
    writing.ifPresent(Store::close);
  }
}
