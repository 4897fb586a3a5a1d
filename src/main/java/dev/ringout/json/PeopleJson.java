package dev.ringout.json;

import dev.ringout.jobs.PeopleJob;
import dev.ringout.people.Act;
import dev.ringout.people.Member;
import dev.ringout.people.Role;
import dev.ringout.store.Entry;
import dev.ringout.store.Fields;
import dev.ringout.store.SaidOfPeople;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The people of a shop as one JSON document, {@code ringout-people/1}; what is kept of a passphrase
 * is in none.
 */
public final class PeopleJson {
  private static final String FORMAT = "ringout-people/1";

  private PeopleJson() {}

  /** What is left to say where the store can't be used. */
  public static String refused(String store, String why) {
    return Json.refused(FORMAT, store, why);
  }

  /** All of it. */
  public static String write(PeopleJob.Listed listed) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("format", FORMAT);
    document.put("store", listed.store());
    document.put("people", listed.members().stream().map(PeopleJson::member).toList());
    document.put("history", listed.history().stream().map(PeopleJson::entry).toList());
    document.put("problems", List.of());
    return Json.text(document);
  }

  /**
   * Who asks, for a page.
   *
   * @param shop whether one signs in here
   */
  public static String who(boolean shop, Optional<Member> member) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("shop", shop);
    json.put("name", member.map(Member::name).orElse(""));
    json.put(
        "roles", member.stream().flatMap(one -> one.roles().stream()).map(Role::word).toList());
    json.put(
        "may",
        Arrays.stream(Act.values())
            .filter(act -> !shop || member.filter(one -> one.may(act)).isPresent())
            .map(Act::word)
            .toList());
    return BenchJson.line(json);
  }

  private static Map<String, Object> member(Member member) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", member.name());
    json.put("roles", member.roles().stream().map(Role::word).toList());
    json.put("signsIn", member.isIn());
    json.put("added", member.added());
    json.put("withdrawn", member.withdrawn());
    return json;
  }

  private static Map<String, Object> entry(Entry entry) {
    List<String> fields = Fields.of(entry.body()).get(0);
    boolean secret = entry.kind().equals(SaidOfPeople.Kind.PASSPHRASE.word());
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("at", entry.at());
    json.put("who", entry.who());
    json.put("what", entry.kind().replace('_', '-'));
    json.put("name", fields.get(0));
    json.put("more", secret ? List.of() : fields.subList(1, fields.size()));
    return json;
  }
}
