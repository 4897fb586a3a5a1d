package dev.ringout.json;

import dev.ringout.bench.ListPage;
import dev.ringout.imports.list.ColumnChoice;
import dev.ringout.review.Remark;
import dev.ringout.source.Problem;
import dev.ringout.words.RemarkWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A list that was handed in, as the bench's page is answered: docs/reference/bench-api.md. */
public final class BenchListJson {
  private BenchListJson() {}

  /** The list as it was understood, in one line. */
  public static String write(ListPage list) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", list.id());
    json.put("file", list.file());
    json.put("title", list.title().title());
    json.put("drawing", list.title().drawing());
    json.put("revision", list.title().revision());
    json.put("taken", list.taken().isPresent());
    json.put("list", Json.orNull(list.taken()));
    json.put("ours", list.understood().ours());
    json.put("state", list.state().name().toLowerCase(Locale.ROOT));
    json.put("options", list.options());
    json.put("says", list.understood().says());
    json.put("wires", list.understood().wires().stream().map(BenchListJson::wire).toList());
    json.put("more", list.understood().more());
    json.put("columns", list.understood().columns().stream().map(BenchListJson::column).toList());
    json.put("roles", list.understood().ours() ? List.of() : ColumnChoice.titles());
    json.put("choices", list.understood().choices().stream().map(BenchListJson::choice).toList());
    json.put("problems", list.problems().stream().map(BenchListJson::problem).toList());
    json.put("remarks", list.remarks().stream().map(BenchListJson::remark).toList());
    return BenchJson.line(json);
  }

  private static Map<String, Object> wire(ListPage.Line line) {
    return Json.object("sentence", line.sentence(), "place", line.place().toString());
  }

  private static Map<String, Object> column(ListPage.Column column) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("table", column.table());
    json.put("name", column.name());
    json.put("heading", column.heading());
    json.put("role", column.role());
    json.put("certainty", column.certainty());
    return json;
  }

  private static Map<String, Object> choice(ListPage.Choice choice) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("text", choice.text());
    json.put("options", choice.options());
    json.put("first", choice.first());
    json.put("why", choice.why());
    return json;
  }

  private static Map<String, Object> problem(Problem problem) {
    Map<String, Object> json = BenchJson.problem(problem);
    json.put("heading", problem.heading());
    json.put("severity", problem.severity().word());
    return json;
  }

  private static Map<String, Object> remark(Remark remark) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("severity", remark.severity().word());
    json.put("text", RemarkWords.sentence(remark));
    json.put("rule", remark.rule());
    json.put("source", remark.source());
    return json;
  }
}
