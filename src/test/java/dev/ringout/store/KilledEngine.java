package dev.ringout.store;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/** A program that is killed after so many statements: its connection is gone, nothing is told. */
final class KilledEngine implements Engine {
  private final Engine engine;
  private final AtomicInteger left;

  KilledEngine(Engine engine, int statements) {
    this.engine = engine;
    this.left = new AtomicInteger(statements);
  }

  @Override
  public Connection open(boolean toWrite) throws SQLException, StoreTrouble {
    if (left.get() <= 0) {
      throw killed();
    }
    Connection connection = engine.open(toWrite);
    return proxy(Connection.class, connection, connection);
  }

  private static SQLException killed() {
    return new SQLException("killed", "08006");
  }

  private <T> T proxy(Class<T> as, T of, Connection connection) {
    InvocationHandler handler =
        (self, method, values) -> {
          boolean isDone =
              method.getName().startsWith("execute") || method.getName().equals("commit");
          if (isDone && left.decrementAndGet() <= 0) {
            connection.abort(Runnable::run);
            connection.close();
            throw killed();
          }
          try {
            Object result = method.invoke(of, values);
            if (result instanceof PreparedStatement statement) {
              return proxy(PreparedStatement.class, statement, connection);
            }
            return result instanceof Statement statement
                ? proxy(Statement.class, statement, connection)
                : result;
          } catch (InvocationTargetException e) {
            throw e.getCause();
          }
        };
    return as.cast(Proxy.newProxyInstance(as.getClassLoader(), new Class<?>[] {as}, handler));
  }

  @Override
  public String shown() {
    return engine.shown();
  }

  @Override
  public void ready(Connection connection) throws SQLException {
    engine.ready(connection);
  }

  @Override
  public boolean isThere() {
    return engine.isThere();
  }

  @Override
  public Map<String, String> words() {
    return engine.words();
  }

  @Override
  public void guard(Connection connection) throws SQLException {
    engine.guard(connection);
  }

  @Override
  public void letAdd(Connection connection, String role) throws SQLException, StoreTrouble {
    engine.letAdd(connection, role);
  }

  @Override
  public boolean isWorthAnotherTry(SQLException e) {
    return engine.isWorthAnotherTry(e);
  }

  @Override
  public void alone(Connection connection, String unitKey) throws SQLException {
    engine.alone(connection, unitKey);
  }

  @Override
  public void hold(Connection connection) throws SQLException {
    engine.hold(connection);
  }

  @Override
  public java.util.Optional<String> damage(Connection connection) throws SQLException {
    return engine.damage(connection);
  }

  @Override
  public String second() {
    return engine.second();
  }

  @Override
  public String scanned() {
    return engine.scanned();
  }

  @Override
  public StoreTrouble trouble(SQLException e) {
    return engine.trouble(e);
  }
}
