package dev.ringout.store;

import dev.ringout.store.StoreTrouble.Reason;
import dev.ringout.units.Text;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.sqlite.JDBC;
import org.sqlite.NativeLibraryNotFoundException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TransactionMode;

/**
 * One file for one bench. Measured with power cuts replayed from traced writes: with a write-ahead
 * log and {@code synchronous=FULL} no commit is lost; with {@code NORMAL} nearly all are.
 */
final class SqliteEngine implements Engine {
  /** Another program at the same bench writes a sheet in less. */
  private static final int PATIENCE_MILLISECONDS = 10_000;

  private static final int PRIMARY_CODE = 0xff;
  private static final int BUSY = 5;
  private static final int LOCKED = 6;
  private static final int READ_ONLY = 8;
  private static final int IO_ERROR = 10;
  private static final int CORRUPT = 11;
  private static final int FULL = 13;
  private static final int CANT_OPEN = 14;
  private static final int NOT_A_DATABASE = 26;

  private final Path file;

  /** It tells of its own clearing away in the temporary folder with a stack trace. */
  private static final Logger LIBRARY = Logger.getLogger("org.sqlite");

  static {
    LIBRARY.setLevel(Level.OFF);
  }

  SqliteEngine(Path file) {
    this.file = file;
  }

  @Override
  public String shown() {
    return file.toString();
  }

  @Override
  public boolean isThere() {
    return Files.exists(file);
  }

  /** A file put in its place has another key, or where files have none was made at another time. */
  @Override
  public Optional<Object> place() {
    return key(file);
  }

  /** Until the file is closed what was added last may stand in its log alone. */
  @Override
  public Optional<Object> log() {
    return key(logFile());
  }

  @Override
  public Optional<String> save(Connection connection) throws SQLException {
    Path copy = file.resolveSibling(file.getFileName() + ".saved");
    for (int i = 2; Files.exists(copy); i++) {
      copy = file.resolveSibling(file.getFileName() + ".saved-" + i);
    }
    try (PreparedStatement statement = connection.prepareStatement("vacuum into ?")) {
      statement.setString(1, copy.toAbsolutePath().toString());
      statement.execute();
    }
    return Optional.of(copy.toString());
  }

  @Override
  public void settle(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("pragma wal_checkpoint(truncate)");
    }
  }

  @Override
  public void forget(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("pragma shrink_memory");
    }
  }

  private Path logFile() {
    return file.resolveSibling(file.getFileName() + "-wal");
  }

  private static Optional<Object> key(Path file) {
    try {
      BasicFileAttributes about = Files.readAttributes(file, BasicFileAttributes.class);
      Object key = about.fileKey();
      return Optional.of(key == null ? about.creationTime() : key);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  @Override
  public Connection open(boolean toWrite) throws SQLException, StoreTrouble {
    if (Files.isDirectory(file)) {
      throw new StoreTrouble(Reason.NOT_UNDERSTOOD, "is a folder; a store is a file");
    }
    if (!toWrite && !isThere()) {
      throw new StoreTrouble(Reason.MISSING, "there is no such store yet");
    }
    // A pipe would be written to, and waited for.
    if (isThere() && !Files.isRegularFile(file)) {
      throw new StoreTrouble(Reason.MISSING, "is a device or a pipe, not a file");
    }
    if (toWrite && isThere() && isOnReadOnlyMedium()) {
      throw readOnly();
    }
    SQLiteConfig config = new SQLiteConfig();
    config.setBusyTimeout(PATIENCE_MILLISECONDS);
    config.enforceForeignKeys(true);
    boolean readOnly = !toWrite && isOnReadOnlyMedium();
    config.setReadOnly(readOnly);
    config.setSynchronous(SynchronousMode.FULL);
    config.setTransactionMode(toWrite ? TransactionMode.IMMEDIATE : TransactionMode.DEFERRED);
    try {
      return JDBC.createConnection(url(readOnly), config.toProperties());
    } catch (UnsatisfiedLinkError | NoClassDefFoundError | ExceptionInInitializerError e) {
      throw nativePart(e);
    }
  }

  /** Only once it is known for a store: somebody else's file stays as it is. */
  @Override
  public void ready(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("pragma journal_mode = wal");
    }
  }

  /** A write-ahead log can't be looked for where nothing can be written. */
  private boolean isOnReadOnlyMedium() {
    Path folder = file.toAbsolutePath().getParent();
    return !Files.isWritable(file) || (folder != null && !Files.isWritable(folder));
  }

  /**
   * Where nothing may be written the log beside the file is still read: what was acknowledged last
   * stands there alone until the file is closed in order.
   */
  private String url(boolean readOnly) {
    String place = file.toAbsolutePath().toUri().toString().replaceFirst("^file:/+", "file:/");
    return "jdbc:sqlite:" + place + (readOnly && !hasLog() ? "?immutable=1" : "");
  }

  private boolean hasLog() {
    try {
      Path log = logFile();
      return Files.exists(log) && Files.size(log) > 0;
    } catch (IOException e) {
      // A log that can't be looked at is one.
      return true;
    }
  }

  private static StoreTrouble readOnly() {
    return new StoreTrouble(Reason.NOT_WRITTEN, "may only be read: nothing can be added");
  }

  private static StoreTrouble nativePart(Throwable e) {
    return new StoreTrouble(
        Reason.NOT_UNDERSTOOD,
        "needs a library that is unpacked into the temporary folder, from which this machine runs"
            + " no program (noexec, or no space): name another folder with"
            + " RINGOUT_JAVA_OPTS=-Dorg.sqlite.tmpdir=FOLDER",
        e);
  }

  @Override
  public Map<String, String> words() {
    return Map.of("bytes", "blob", "clustered", "without rowid", "unlessThere", "");
  }

  @Override
  public void guard(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      for (String table : JdbcStore.TABLES) {
        for (String act : List.of("update", "delete")) {
          statement.execute(
              Text.of(
                  "create trigger if not exists %1$s_%2$s before %2$s on %1$s"
                      + " begin select raise(abort, 'rows are only added'); end",
                  table, act));
        }
        statement.execute(noReplacing(table));
      }
    }
  }

  /**
   * An insert that replaces is no deletion to a trigger. What may be there already is left as it
   * is; of the others there is one only.
   */
  private static String noReplacing(String table) {
    String same =
        switch (table) {
          case "harness" -> "digest = new.digest";
          case "harness_part" -> "harness = new.harness and number = new.number";
          case "unit" -> "unit_key = new.unit_key and harness = new.harness";
          case "session" ->
              "id = new.id or (unit_key = new.unit_key and harness = new.harness"
                  + " and number = new.number)";
          case "entry" -> "session = new.session and seq = new.seq";
          case "people" -> "seq = new.seq";
          default -> "name = new.name and number = new.number";
        };
    boolean mayBeThere = table.equals("harness") || table.equals("unit");
    return Text.of(
        "create trigger if not exists %1$s_insert before insert on %1$s"
            + " when exists (select 1 from %1$s where %2$s) begin select %3$s; end",
        table, same, mayBeThere ? "raise(ignore)" : "raise(abort, 'rows are only added')");
  }

  @Override
  public void letAdd(Connection connection, String role) throws StoreTrouble {
    throw new StoreTrouble(
        Reason.NOT_UNDERSTOOD,
        "is a file: it has no roles; anyone who may write the file may do everything");
  }

  /** A transaction that writes is alone from its beginning. */
  @Override
  public void alone(Connection connection, String unitKey) {}

  /** The first thing that is read decides. */
  @Override
  public void hold(Connection connection) throws SQLException {
    connection.setAutoCommit(false);
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery("select count(*) from harness")) {
      rows.next();
    }
  }

  @Override
  public Optional<String> damage(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery("pragma integrity_check(1)")) {
      String said = rows.next() ? rows.getString(1) : "";
      return said.equals("ok") ? Optional.empty() : Optional.of(said);
    }
  }

  @Override
  public String second() {
    return "cast(strftime('%s', 'now') as integer)";
  }

  @Override
  public String scanned() {
    return " not indexed";
  }

  @Override
  public boolean isWorthAnotherTry(SQLException e) {
    return false;
  }

  private static boolean isOfNativePart(SQLException e) {
    for (Throwable at = e; at != null; at = at.getCause()) {
      if (at instanceof LinkageError || at instanceof NativeLibraryNotFoundException) {
        return true;
      }
    }
    return false;
  }

  @Override
  public StoreTrouble trouble(SQLException e) {
    if (isOfNativePart(e)) {
      return nativePart(e);
    }
    String message = String.valueOf(e.getMessage());
    return switch (e.getErrorCode() & PRIMARY_CODE) {
      case BUSY, LOCKED ->
          new StoreTrouble(
              Reason.NOT_WRITTEN,
              "is being written by another program; nothing was added, try again",
              e);
      case READ_ONLY -> readOnly();
      case IO_ERROR ->
          new StoreTrouble(
              Reason.NOT_WRITTEN,
              "can't be read or written to its end (disk full?): " + message,
              e);
      case FULL ->
          new StoreTrouble(
              Reason.NOT_WRITTEN, "can't grow: the disk is full; nothing was added", e);
      case CANT_OPEN ->
          new StoreTrouble(
              Reason.MISSING,
              hasLog() && isOnReadOnlyMedium()
                  ? "was not closed properly: what was added last is in the log beside it, which"
                      + " can't be read here; open it once where it may be written"
                  : "can't be opened: " + message,
              e);
      case CORRUPT ->
          new StoreTrouble(
              Reason.NOT_UNDERSTOOD,
              "is damaged: " + message + "; take the last backup, and keep this file",
              e);
      case NOT_A_DATABASE ->
          new StoreTrouble(
              Reason.NOT_UNDERSTOOD, "is not a store, or is damaged at its beginning", e);
      default -> new StoreTrouble(Reason.NOT_UNDERSTOOD, message, e);
    };
  }
}
