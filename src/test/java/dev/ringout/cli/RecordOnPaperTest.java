package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The record as who signs it reads it: from the written file, not from what it was made of. */
class RecordOnPaperTest {
  private static final Path BRIDGE = Path.of("harness-samples/swing-bridge/junction-box.xlsx");
  private static final Path READ =
      Path.of("harness-samples/swing-bridge/point-to-point-values.xlsx");

  @TempDir static Path folder;

  private static Path written(String name) {
    Path file = folder.resolve(name);
    if (!Files.exists(file)) {
      Run run = Run.of("report", BRIDGE, READ, "-o", file);
      assertEquals(1, run.code(), run.err());
    }
    return file;
  }

  /** The sizes of all words of a document, and what was first said in each. */
  private static final class Sizes extends PDFTextStripper {
    private final TreeMap<Float, String> first = new TreeMap<>();
    private float ofFault;

    @Override
    protected void writeString(String text, List<TextPosition> positions) {
      float size = positions.get(0).getFontSizeInPt();
      first.putIfAbsent(size, text);
      if (text.startsWith("1 wrong part")) {
        ofFault = size;
      }
    }
  }

  @Test
  void the_verdict_is_the_largest_thing_and_a_fault_s_heading_is_larger_than_text()
      throws IOException {
    try (PDDocument document = Loader.loadPDF(written("record.pdf").toFile())) {
      Sizes sizes = new Sizes();
      sizes.getText(document);
      assertTrue(sizes.first.lastEntry().getValue().startsWith("FAULTS: 5."), "" + sizes.first);
      assertTrue(sizes.ofFault > 9.5, sizes.ofFault + " pt");
    }
  }

  @Test
  void a_fault_stands_on_the_page_of_its_readings_and_every_page_says_which_unit()
      throws IOException {
    try (PDDocument document = Loader.loadPDF(written("record.pdf").toFile())) {
      PDFTextStripper text = new PDFTextStripper();
      List<String> faults = new ArrayList<>();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        text.setStartPage(page);
        text.setEndPage(page);
        String words = text.getText(document).replaceAll("\\s+", " ");
        assertTrue(words.contains("serial number 0419"), words);
        for (String[] fault :
            new String[][] {
              {"1 wrong part (certain)", "101 continuity"},
              {"2 wrong part (likely)", "109 continuity"},
              {"3 wrong part (likely)", "118 continuity"},
              {"4 high resistance (certain)", "76 continuity"},
              {"5 high resistance (likely)", "55 continuity"}
            }) {
          if (words.contains(fault[0])) {
            assertTrue(words.contains(fault[1]), words);
            faults.add(fault[0]);
          }
        }
      }
      assertEquals(5, faults.size(), faults.toString());
    }
  }

  @Test
  void a_workbook_s_readings_can_be_sorted_and_plotted() throws Exception {
    List<String> headings = new ArrayList<>();
    int numbers = 0;
    try (ZipFile zip = new ZipFile(written("record.xlsx").toFile());
        InputStream in = zip.getInputStream(zip.getEntry("xl/workbook.xml"))) {
      NodeList sheets =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(in)
              .getElementsByTagName("sheet");
      int place = 0;
      for (int i = 0; i < sheets.getLength(); i++) {
        if (((Element) sheets.item(i)).getAttribute("name").equals("Readings")) {
          place = i + 1;
        }
      }
      String sheet =
          new String(
              zip.getInputStream(zip.getEntry("xl/worksheets/sheet" + place + ".xml"))
                  .readAllBytes(),
              java.nio.charset.StandardCharsets.UTF_8);
      numbers = sheet.split("t=\"n\"><v>0\\.0", -1).length - 1;
      String shared =
          new String(
              zip.getInputStream(zip.getEntry("xl/sharedStrings.xml")).readAllBytes(),
              java.nio.charset.StandardCharsets.UTF_8);
      for (String heading :
          List.of("Volts (V)", "Seconds (s)", "Reading (Ω)", "Least (Ω)", "Most (Ω)", "Meter")) {
        if (sheet.contains(">" + heading + "<") || shared.contains(">" + heading + "<")) {
          headings.add(heading);
        }
      }
      assertTrue(zip.stream().anyMatch(entry -> entry.getName().endsWith(".png")), "drawings");
    }
    assertEquals(6, headings.size(), headings.toString());
    assertTrue(numbers > 100, numbers + " cells");
  }
}
