package dev.ringout.json;

import dev.ringout.harness.Wire;
import dev.ringout.revision.Change;
import dev.ringout.revision.Field;
import dev.ringout.words.ChangeWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Each kind of change with its facts: an entry for each end that moved, else one. */
final class ChangeFacts implements Change.Cases<List<Map<String, Object>>> {
  private static Map<String, Object> change(String kind, Wire wire) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("change", kind);
    json.put("wire", wire.name());
    return json;
  }

  private static Map<String, Object> withEnds(String kind, Wire wire) {
    Map<String, Object> json = change(kind, wire);
    json.put("from", wire.from().toString());
    json.put("to", wire.to().toString());
    return json;
  }

  @Override
  public List<Map<String, Object>> removed(Change.Removed change) {
    return List.of(withEnds("removed", change.wire()));
  }

  @Override
  public List<Map<String, Object>> added(Change.Added change) {
    Map<String, Object> json = withEnds("added", change.wire());
    for (Field field : Field.values()) {
      if (!field.of(change.wire()).isEmpty()) {
        json.put(field.word(), field.of(change.wire()));
      }
    }
    return List.of(json);
  }

  @Override
  public List<Map<String, Object>> moved(Change.Moved change) {
    return change.ends().stream()
        .map(
            end -> {
              Map<String, Object> json = change("moved", change.before());
              json.put("end", end.from().toString());
              json.put("to", end.to().toString());
              return json;
            })
        .toList();
  }

  @Override
  public List<Map<String, Object>> renumbered(Change.Renumbered change) {
    Map<String, Object> json = change("renumbered", change.before());
    json.put("new", change.after().name());
    return List.of(json);
  }

  @Override
  public List<Map<String, Object>> altered(Change.Altered change) {
    Map<String, Object> json = change("altered", change.before());
    json.put("field", change.field().word());
    json.put("old", change.old());
    json.put("new", change.now());
    return List.of(json);
  }

  @Override
  public List<Map<String, Object>> itemAdded(Change.ItemAdded change) {
    return ofItem(change);
  }

  @Override
  public List<Map<String, Object>> itemDropped(Change.ItemDropped change) {
    return ofItem(change);
  }

  @Override
  public List<Map<String, Object>> itemAltered(Change.ItemAltered change) {
    return ofItem(change);
  }

  @Override
  public List<Map<String, Object>> jumper(Change.Jumper change) {
    return ofItem(change);
  }

  @Override
  public List<Map<String, Object>> switchContact(Change.SwitchContact change) {
    return ofItem(change);
  }

  @Override
  public List<Map<String, Object>> normalPosition(Change.NormalPosition change) {
    return ofItem(change);
  }

  @Override
  public List<Map<String, Object>> ofPart(Change.OfPart change) {
    return ofItem(change);
  }

  private static List<Map<String, Object>> ofItem(Change change) {
    ChangeWords.Said said = ChangeWords.of(change);
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("change", said.kind());
    json.put("item", said.subject());
    json.put("text", said.sentence());
    return List.of(json);
  }
}
