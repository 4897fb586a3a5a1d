package dev.ringout.imports.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The trade's words in seven languages, all known at once. Common practice, no source. */
class WordsTest {
  private final Words words = Words.standard();

  private ListColumn column(String heading) {
    return HeadingReader.unsaid(words).understand(1, heading);
  }

  @ParameterizedTest
  @CsvSource({
    "Von, FROM",
    "Nach Klemme, TO_PIN",
    "Ziel 1, FROM",
    "Ziel 2, TO",
    "Quelle Anschluss, FROM_PIN",
    "Adernummer, WIRE",
    "Aderquerschnitt, GAUGE",
    "Drahtfarbe, COLOR",
    "Länge, LENGTH",
    "Laenge, LENGTH",
    "Betriebsmittelkennzeichen, ITEM",
    "De, FROM",
    "Vers, TO",
    "Tenant, FROM",
    "Aboutissant, TO",
    "De borne, FROM_PIN",
    "Vers borne, TO_PIN",
    "Connecteur, ITEM",
    "N° de fil, WIRE",
    "Nº fil, WIRE",
    "Numéro de fil, WIRE",
    "numero du fil, WIRE",
    "Section (mm²), GAUGE",
    "Couleur du fil, COLOR",
    "Couleur de l'isolant, COLOR",
    "Longueur, LENGTH",
    "Origen, FROM",
    "Destino, TO",
    "Desde, FROM",
    "Hasta, TO",
    "Borne de destino, TO_PIN",
    "N.º de hilo, WIRE",
    "Seccion, GAUGE",
    "Señal, SIGNAL",
    "Color de cable, COLOR",
    "Da morsetto, FROM_PIN",
    "Verso, TO",
    "N. filo, WIRE",
    "Sezione cavo, GAUGE",
    "Colore, COLOR",
    "Lunghezza, LENGTH",
    "Van, FROM",
    "Naar klem, TO_PIN",
    "Draadnummer, WIRE",
    "Doorsnede, GAUGE",
    "Kleur van draad, COLOR",
    "Para, TO",
    "Nº do fio, WIRE",
    "Cor do fio, COLOR",
    "Seção do cabo, GAUGE",
    "Pino, PIN",
    "Upstream Pin, FROM_PIN",
    "Downstream Terminal No, TO_PIN",
    "endpoint_a, FROM",
    "endpoint_b, TO",
    "Start, FROM",
    "End, TO",
    "Socket, ITEM",
    "Header, ITEM",
    "Port, ITEM",
    "SrcTag, FROM",
    "SrcPort, FROM_PIN",
    "To Port, TO_PIN",
    "comes out of, FROM",
    "Terminal No, PIN",
    "Strand, WIRE"
  })
  void a_heading_is_understood_in_seven_languages(String heading, Role role) {
    assertEquals(role, column(heading).role());
  }

  @ParameterizedTest
  @CsvSource({"De borne", "Numéro de fil", "Nº do fio", "Couleur du fil", "Borne de destino"})
  void a_word_that_only_joins_others_leaves_a_heading_certain(String heading) {
    assertEquals("", column(heading).item());
    assertEquals("CERTAIN", column(heading).certainty().name());
  }

  @ParameterizedTest
  @CsvSource({
    "DO, KEEP",
    "A, KEEP",
    "Data, KEEP",
    "Pin A, PIN",
    "Net, SIGNAL",
    "Cores, KEEP",
    "Term No, PIN",
    "ID, WIRE",
    "Long, KEEP",
    "Red, KEEP",
    "Output, KEEP",
    "Value, KEEP",
    "Part Number, TYPE",
    "J1, KEEP"
  })
  void other_languages_leave_english_headings_as_they_were(String heading, Role role) {
    assertEquals(role, column(heading).role());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"DATA", "RAIL A", "Term no", "INDEX", "OR", "LAS", "Motor no", "Port no", "ID"})
  void a_short_word_of_another_language_is_nothing_in_a_cell(String cell) {
    for (String kind : List.of("spare", "stow", "joint", "switch", "furniture", "deleted")) {
      assertFalse(words.is(kind, cell) || words.mentions(kind, cell), kind);
    }
    assertFalse(words.isDitto(cell));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Reserve",
        "nicht angeschlossen",
        "réserve",
        "RESERVE",
        "non connecté",
        "NON CONNECTE",
        "no conectado",
        "riserva",
        "non collegato",
        "niet aangesloten",
        "vrij",
        "não conectado",
        "nao ligado",
        "livre"
      })
  void a_pin_that_is_not_used_is_said_in_seven_languages(String cell) {
    assertTrue(words.isNothing(cell));
  }

  @Test
  void an_accent_may_be_missing_or_typed_as_a_mark_of_its_own() {
    assertTrue(words.is("deleted", "supprimé"));
    assertTrue(words.is("deleted", "SUPPRIME"));
    assertTrue(words.is("deleted", "supprime\u0301"));
    assertEquals("white", words.color("weiß"));
    assertEquals("white", words.color("weiss"));
    assertEquals(List.of("no", "fil"), Words.tokens("N° fil"));
    assertEquals(List.of("no", "fil"), Words.tokens("Nº FIL"));
    assertEquals(List.of("no", "hilo"), Words.tokens("N.º hilo"));
    assertEquals(List.of("no", "cabo"), Words.tokens("№ cabo"));
    assertEquals(List.of("extremite"), Words.tokens("l'extrémité"));
    assertEquals(List.of("gauge", "mm²"), Words.tokens("Gauge mm²"));
    assertEquals(List.of("plan", "20"), Words.tokens("plan 20°"));
  }

  @Test
  void colours_of_seven_languages_are_the_same_colours() {
    List<String> reds = List.of("rot", "rouge", "rojo", "rosso", "rood", "vermelho", "red", "RD");
    reds.forEach(red -> assertEquals("red", words.color(red), red));
    List<String> browns = List.of("braun", "marron", "marrón", "marrone", "bruin", "castanho");
    browns.forEach(brown -> assertEquals("brown", words.color(brown), brown));
  }

  /** With all languages at once a word must not be one thing here and another there. */
  @Test
  void a_word_of_two_languages_means_the_same_in_both() throws Exception {
    // What a heading is about and what a cell says are asked for apart.
    Set<String> things =
        Set.of(
            "from", "to", "far", "item", "pin", "wire", "gauge", "type", "color", "length",
            "signal", "cable", "group", "contact", "note", "parts");
    Set<String> cells = Set.of("spare", "stow", "joint", "shell", "ditto", "deleted", "furniture");
    List<String> clashes = new ArrayList<>();
    for (Set<String> asked : List.of(things, cells)) {
      kindsByPhrase()
          .forEach(
              (phrase, byLanguage) -> {
                Set<Set<String>> meanings = new LinkedHashSet<>();
                byLanguage.forEach(
                    (language, kinds) -> {
                      Set<String> own = new LinkedHashSet<>(kinds);
                      own.retainAll(asked);
                      if (!own.isEmpty()) {
                        meanings.add(own);
                      }
                    });
                if (meanings.size() > 1) {
                  clashes.add(phrase + " " + byLanguage);
                }
              });
    }
    assertEquals(List.of(), clashes);
  }

  /** Phrases of headings are looked up with at most three words. */
  @Test
  void no_phrase_of_a_heading_is_longer_than_is_looked_for() throws Exception {
    Set<String> cells =
        Set.of("spare", "stow", "joint", "shell", "ditto", "deleted", "furniture", "switch");
    List<String> tooLong = new ArrayList<>();
    kindsByPhrase()
        .forEach(
            (phrase, byLanguage) -> {
              boolean heading =
                  byLanguage.values().stream().anyMatch(kinds -> !cells.containsAll(kinds));
              if (heading && phrase.split(" ", -1).length > 3) {
                tooLong.add(phrase);
              }
            });
    assertEquals(List.of(), tooLong);
  }

  private static Map<String, Map<String, Set<String>>> kindsByPhrase() throws Exception {
    Map<String, Map<String, Set<String>>> kinds = new LinkedHashMap<>();
    for (String language : lines("languages.txt")) {
      for (String line : lines("words." + language + ".txt")) {
        int colon = line.indexOf(':');
        if (line.startsWith("#") || colon < 0) {
          continue;
        }
        for (String word : line.substring(colon + 1).split(",", -1)) {
          kinds
              .computeIfAbsent(String.join(" ", Words.tokens(word)), key -> new LinkedHashMap<>())
              .computeIfAbsent(language, key -> new LinkedHashSet<>())
              .add(line.substring(0, colon));
        }
      }
    }
    return kinds;
  }

  private static List<String> lines(String resource) throws Exception {
    try (InputStream in = Objects.requireNonNull(Words.class.getResourceAsStream(resource))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }
}
