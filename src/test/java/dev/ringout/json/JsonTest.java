package dev.ringout.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import java.io.IOException;
import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** How a document is written, whatever it holds. */
class JsonTest {
  private static Map<String, Object> document(Object... pairs) {
    Map<String, Object> document = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      document.put(pairs[i].toString(), pairs[i + 1]);
    }
    return document;
  }

  private static String written(Map<String, Object> document) throws IOException {
    StringWriter text = new StringWriter();
    Json.write(document, text);
    return text.toString();
  }

  @Test
  void names_stand_in_the_order_in_which_they_were_put_in_and_a_line_feed_ends_it() {
    assertEquals(
        "{\n  \"wire\" : \"W1\",\n  \"from\" : \"J1-A\",\n  \"cut\" : true\n}\n",
        Json.text(document("wire", "W1", "from", "J1-A", "cut", true)));
  }

  @Test
  void numbers_are_numbers_with_a_point_whatever_the_locale() {
    assertEquals(
        "{\n  \"ohms\" : 0.25,\n  \"row\" : 4\n}\n", Json.text(document("ohms", 0.25, "row", 4)));
  }

  @Test
  void quotes_and_control_characters_are_escaped_and_units_are_not() {
    assertEquals(
        "{\n  \"text\" : \"\\\"5 Ω\\\"\\n\"\n}\n", Json.text(document("text", "\"5 Ω\"\n")));
  }

  @Test
  void what_is_not_there_is_null() throws IOException {
    assertEquals(
        "{\n  \"volts\" : null,\n  \"by\" : null,\n  \"ohms\" : 0.5\n}\n",
        written(
            document(
                "volts", Json.orNull(OptionalDouble.empty()),
                "by", Json.orNull(Optional.empty()),
                "ohms", Json.orNull(OptionalDouble.of(0.5)))));
  }

  @Test
  void a_document_written_in_pieces_is_the_one_written_at_once() throws IOException {
    Map<String, Object> document = document("steps", List.of(document("from", "J1-A")), "n", 1);
    assertEquals(Json.text(document), written(document));
  }

  @Test
  void a_problem_names_file_sheet_cell_and_heading() {
    Problem problem =
        new Problem(
            new Place("box.xlsx", "Wires", 4, 2), "From", Severity.ERROR, "no such item", "J1");
    assertEquals(
        document(
            "file", "box.xlsx",
            "sheet", "Wires",
            "cell", "B4",
            "heading", "From",
            "severity", "error",
            "text", "no such item",
            "maybe", "J1"),
        Json.problem(problem));
    assertFalse(
        Json.problem(new Problem(Place.of("box.xlsx"), "", Severity.NOTE, "empty", ""))
            .containsKey("maybe"),
        "a guess that there is none of is not there");
  }
}
