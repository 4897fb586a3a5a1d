package dev.ringout.store;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** Where a store is. */
public sealed interface StoreAddress {

  /** What is made of it, by its kind. */
  <T> T match(Cases<T> cases);

  /** As shown to the user: never with a password. */
  String shown();

  /** A file for one bench. */
  record OnFile(Path file) implements StoreAddress {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.onFile(this);
    }

    @Override
    public String shown() {
      return file.toString();
    }

    @Override
    public Optional<Path> onDisk() {
      return Optional.of(file);
    }
  }

  /**
   * A server for a shop.
   *
   * @param server host and port, as in an address
   * @param user absent where the address gives none
   * @param password absent where the address gives none
   * @param parameters behind the question mark, or empty
   */
  record OnServer(
      String server,
      String database,
      Optional<String> user,
      Optional<String> password,
      String parameters)
      implements StoreAddress {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.onServer(this);
    }

    @Override
    public String shown() {
      return "postgresql://" + server + "/" + database;
    }

    @Override
    public String toString() {
      return shown();
    }
  }

  /** Whether both are one store, however they are spelled. */
  default boolean isSameAs(StoreAddress other) {
    return equals(other)
        || (onDisk().isPresent()
            && other.onDisk().isPresent()
            && isOneFile(onDisk().get(), other.onDisk().get()));
  }

  /** The file, where it is one. */
  default Optional<Path> onDisk() {
    return Optional.empty();
  }

  private static boolean isOneFile(Path one, Path other) {
    try {
      return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize())
          || (Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other));
    } catch (IOException e) {
      // What can't be looked at is told when it is opened.
      return false;
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link OnFile}. */
    T onFile(OnFile address);

    /** See {@link OnServer}. */
    T onServer(OnServer address);
  }

  /**
   * The address that a text is: {@code postgresql://host:port/database}, else a file.
   *
   * @throws StoreTrouble where it begins like a server's and is none
   */
  static StoreAddress of(String text) throws StoreTrouble {
    if (!text.startsWith("postgresql://") && !text.startsWith("postgres://")) {
      return file(text);
    }
    try {
      URI uri = new URI(text);
      String database = uri.getPath() == null ? "" : uri.getPath().replaceFirst("^/", "");
      if (uri.getHost() == null || database.isEmpty()) {
        throw noAddress();
      }
      String[] who = uri.getUserInfo() == null ? new String[0] : uri.getUserInfo().split(":", 2);
      return new OnServer(
          uri.getHost() + (uri.getPort() < 0 ? "" : ":" + uri.getPort()),
          database,
          who.length > 0 ? Optional.of(who[0]) : Optional.empty(),
          who.length > 1 ? Optional.of(who[1]) : Optional.empty(),
          uri.getRawQuery() == null ? "" : uri.getRawQuery());
    } catch (URISyntaxException e) {
      throw noAddress();
    }
  }

  /** What the library would take for something else than a file's name is none. */
  private static StoreAddress file(String text) throws StoreTrouble {
    if (text.isBlank() || text.startsWith(":") || text.startsWith("file:")) {
      throw noFile();
    }
    try {
      return new OnFile(Path.of(text));
    } catch (InvalidPathException e) {
      throw noFile();
    }
  }

  private static StoreTrouble noFile() {
    return new StoreTrouble(
        StoreTrouble.Reason.NOT_UNDERSTOOD,
        "is not a file's name; a store is a file, or postgresql://host:port/database");
  }

  private static StoreTrouble noAddress() {
    // Not repeated: a password may stand in it.
    return new StoreTrouble(
        StoreTrouble.Reason.NOT_UNDERSTOOD,
        "the address of a server is postgresql://host:port/database");
  }
}
