package dev.ringout.support;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What keeps the rows of a store's file as they are: whoever changes one takes it away first. */
public final class Triggers {
  private Triggers() {}

  /** Takes all of them away; gives what makes each anew. */
  public static List<String> takenFrom(Statement statement) throws SQLException {
    Map<String, String> triggers = new LinkedHashMap<>();
    try (ResultSet all =
        statement.executeQuery("select name, sql from sqlite_schema where type = 'trigger'")) {
      while (all.next()) {
        triggers.put(all.getString(1), all.getString(2));
      }
    }
    for (String name : triggers.keySet()) {
      statement.execute("drop trigger " + name);
    }
    return List.copyOf(triggers.values());
  }

  /** Makes them anew. */
  public static void putBack(Statement statement, List<String> triggers) throws SQLException {
    for (String trigger : triggers) {
      statement.execute(trigger);
    }
  }
}
