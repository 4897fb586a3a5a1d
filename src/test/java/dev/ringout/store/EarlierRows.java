package dev.ringout.store;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/**
 * A unit as each version of the store kept it, written in that version's own statements: these are
 * never changed, whatever becomes of the program.
 */
final class EarlierRows {
  private EarlierRows() {}

  static List<String> of(int version, boolean postgres) {
    return version >= 1 ? version1(postgres) : List.of();
  }

  private static List<String> version1(boolean postgres) {
    NewSession kept = StoreContract.sheet("0418", "a", "1", "2");
    Session session = kept.session();
    List<String> rows = new ArrayList<>();
    rows.add(
        "insert into harness (digest, title, drawing, revision, file, folder) values ('"
            + session.harness()
            + "', 'Bridge cable', 'HSB-1', 'A', 'wires.csv', 0)");
    byte[] list = kept.harness().parts().get(0).first(1000);
    rows.add(
        "insert into harness_part (harness, number, name, content) values ('"
            + session.harness()
            + "', 1, 'wires.csv', "
            + bytes(HexFormat.of().formatHex(list), postgres)
            + ")");
    rows.add(
        "insert into unit (unit_key, harness, serial) values ('"
            + session.unitKey()
            + "', '"
            + session.harness()
            + "', '0418')");
    rows.add(
        "insert into session (id, unit_key, harness, number, station, who, started, file, digest,"
            + " program, added) values ('"
            + String.join(
                "', '", session.id(), session.unitKey(), session.harness(), "1", session.station())
            + "', '"
            + String.join(
                "', '",
                session.who(),
                session.started(),
                session.file(),
                session.digest(),
                session.program(),
                session.added())
            + "')");
    StoredUnit unit =
        new StoredUnit(
            kept.serial(),
            session.unitKey(),
            kept.harness().digest(),
            kept.harness().title(),
            kept.harness().drawing(),
            kept.harness().revision());
    for (Entry entry :
        HashChain.chained(session, HashChain.start(unit, session, ""), kept.entries())) {
      rows.add(
          "insert into entry (session, seq, at, who, kind, body, previous, hash) values ('"
              + session.id()
              + "', "
              + entry.seq()
              + ", '"
              + String.join("', '", entry.at(), entry.who(), entry.kind(), entry.body())
              + "', "
              + bytes(entry.previous(), postgres)
              + ", "
              + bytes(entry.hash(), postgres)
              + ")");
    }
    return rows;
  }

  private static String bytes(String hex, boolean postgres) {
    return postgres ? "'\\x" + hex + "'" : "x'" + hex + "'";
  }
}
