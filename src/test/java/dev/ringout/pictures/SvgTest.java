package dev.ringout.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What users write stands in drawings and pages as words and never as marks of the page. */
class SvgTest {
  @Test
  void words_of_a_drawing_are_escaped() {
    Svg svg = new Svg();
    svg.text(1, 2, 3, "start", "<script>R&D \"A\"</script>");
    String drawing = svg.drawing("A < B", 10, 20);
    assertTrue(drawing.contains(">&lt;script&gt;R&amp;D &quot;A&quot;&lt;/script&gt;</text>"));
    assertTrue(drawing.contains("aria-label=\"A &lt; B\""));
  }

  @Test
  void a_drawing_has_its_size_in_millimetres_and_says_what_it_shows() {
    String drawing = new Svg().drawing("Face of J1", 125, 40.25);
    assertTrue(drawing.contains("width=\"125.0mm\" height=\"40.3mm\""), drawing);
    assertTrue(drawing.contains("viewBox=\"0 0 125.0 40.3\""), drawing);
    assertTrue(drawing.contains("role=\"img\" aria-label=\"Face of J1\""), drawing);
  }

  @Test
  void what_is_added_later_lies_on_top() {
    Svg above = new Svg().add("<b/>");
    String drawing = new Svg().add("<a/>").add(above).drawing("", 1, 1);
    assertTrue(drawing.indexOf("<a/>") < drawing.indexOf("<b/>"));
  }

  @Test
  void a_percent_sign_in_a_name_is_a_percent_sign() {
    Svg svg = new Svg();
    svg.text(0, 0, 1, "start", "100 % of W1 %s");
    assertTrue(svg.drawing("", 1, 1).contains(">100 % of W1 %s</text>"));
  }

  @Test
  void what_stands_in_a_margin_can_t_end_the_style_sheet() {
    assertEquals("\\3C /style>\\26 \\\"", Html.inCss("</style>&\""));
    assertFalse(Html.inCss("x".repeat(1000)).length() > 161, "a margin holds one line");
  }
}
