package dev.ringout.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Map;
import java.util.Optional;

/** What differs between SQLite and PostgreSQL. */
interface Engine {
  /** As shown to the user. */
  String shown();

  /** Opens a connection; one that may be written, where it is asked for. */
  Connection open(boolean toWrite) throws SQLException, StoreTrouble;

  /** From now on no answer is waited for longer than a store at work ever takes. */
  default void waitNoLonger(Connection connection, boolean toWrite) throws SQLException {}

  /** Makes a connection to a store that is known for one ready to be written. */
  void ready(Connection connection) throws SQLException;

  /** Whether there is anything at the address yet. */
  boolean isThere();

  /** By which it is known that it is still the same thing at its address; absent of a server. */
  default Optional<Object> place() {
    return Optional.empty();
  }

  /**
   * By which it is known that what was added last still stands beside it; absent where nothing
   * stands beside it.
   */
  default Optional<Object> log() {
    return Optional.empty();
  }

  /**
   * Writes all that a connection still sees into a file of its own, where what it is open to has
   * been taken away.
   *
   * @return the file; absent of a server, which holds what it has by itself
   */
  default Optional<String> save(Connection connection) throws SQLException {
    return Optional.empty();
  }

  /** Brings what was kept from where it is kept first to where it stays; nothing of a server. */
  default void settle(Connection connection) throws SQLException {}

  /** Lets go of pages that were read: what is read next is as it lies there now. */
  default void forget(Connection connection) throws SQLException {}

  /** For the migrations: the words of its own. */
  Map<String, String> words();

  /** Keeps rows from being changed by whoever comes past this program. */
  void guard(Connection connection) throws SQLException;

  /** Lets a role of a server read and add, and nothing else. */
  void letAdd(Connection connection, String role) throws SQLException, StoreTrouble;

  /** Another was quicker: the same once more may succeed. */
  boolean isWorthAnotherTry(SQLException e);

  /** Until its end no other transaction adds to the same unit. */
  void alone(Connection connection, String unitKey) throws SQLException;

  /** Begins a transaction in which all is read as it is now. */
  void hold(Connection connection) throws SQLException;

  /** Whether its own pages are sound; what is wrong with them, else nothing. */
  Optional<String> damage(Connection connection) throws SQLException;

  /** The second that it is by the store's own clock, as an expression. */
  String second();

  /** What stands behind a table's name so that its rows are read and no index is believed. */
  String scanned();

  /** What went wrong, for the user. */
  StoreTrouble trouble(SQLException e);
}
