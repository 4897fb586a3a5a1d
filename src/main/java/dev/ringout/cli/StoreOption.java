package dev.ringout.cli;

import dev.ringout.Ringout;
import dev.ringout.jobs.StoreAtHand;
import dev.ringout.units.ShellWord;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** The option {@code --store} of every command that takes a unit of the store. */
final class StoreOption {
  static final String NAME = "--store";

  @Option(
      names = NAME,
      paramLabel = "STORE",
      description =
          "The store of unit:SERIAL: a file, or postgresql://host:port/database. Else RINGOUT_STORE,"
              + " else ringout.db in your data folder.")
  private Optional<String> address = Optional.empty();

  private Optional<StoreAtHand> store = Optional.empty();

  /** The option as it was typed, for a command that goes on; empty where it was not. */
  String typed() {
    return address.map(one -> " " + NAME + " " + ShellWord.of(store().shown())).orElse("");
  }

  private Optional<String> named() {
    return address.or(
        () ->
            Optional.ofNullable(System.getenv().get("RINGOUT_STORE"))
                .filter(one -> !one.isBlank()));
  }

  /** The folder of the store's file; of a server's, where the system keeps such things. */
  Path folder() {
    Path file = store().file().orElse(usual(System.getenv())).toAbsolutePath().normalize();
    Path folder = file.getParent();
    return folder == null ? file : folder;
  }

  /** The store; nothing of it is loaded before something is asked of it. */
  StoreAtHand store() {
    if (store.isEmpty()) {
      Map<String, String> environment = System.getenv();
      store =
          named()
              .map(one -> new StoreAtHand(one, environment))
              .or(() -> Optional.of(StoreAtHand.inFolderOfItsOwn(usual(environment), environment)));
    }
    return store.get();
  }

  /** The store of practice units: the one that was typed, else one of its own in a folder. */
  StoreAtHand practiceStore(Path folder) {
    if (address.isEmpty()) {
      store =
          Optional.of(StoreAtHand.inFolderOfItsOwn(folder.resolve("practice.db"), System.getenv()));
    }
    return store();
  }

  /** Closes what was opened of the store. */
  void close() {
    store.ifPresent(StoreAtHand::close);
  }

  /** The door to files, and to units of the store. */
  Ringout door() {
    return Ringout.onFilesAnd(store());
  }

  /** Where the system keeps what programs keep for their user. */
  private static Path usual(Map<String, String> environment) {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    Path home = Path.of(System.getProperty("user.home", ""));
    Path folder =
        system.startsWith("windows")
            ? first(environment, "LOCALAPPDATA").orElse(home.resolve("AppData/Local"))
            : system.startsWith("mac")
                ? home.resolve("Library/Application Support")
                : first(environment, "XDG_DATA_HOME").orElse(home.resolve(".local/share"));
    return folder.resolve("ringout").resolve("ringout.db");
  }

  private static Optional<Path> first(Map<String, String> environment, String name) {
    return Stream.ofNullable(environment.get(name))
        .filter(value -> !value.isBlank())
        .map(Path::of)
        .findFirst();
  }
}
