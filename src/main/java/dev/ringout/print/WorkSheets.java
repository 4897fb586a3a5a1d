package dev.ringout.print;

import dev.ringout.harness.Item;
import dev.ringout.harness.Wire;
import dev.ringout.pictures.FacePicture;
import dev.ringout.sheet.BarCode;
import dev.ringout.sheet.OutSheet;
import dev.ringout.sheet.OutSheet.Look;
import dev.ringout.standards.Cautions;
import dev.ringout.units.Text;
import dev.ringout.words.FaceWords;
import dev.ringout.words.UnitTitle;
import dev.ringout.work.CutWire;
import dev.ringout.work.ItemSheet;
import dev.ringout.work.WireEnd;
import dev.ringout.work.WorkPapers;
import dev.ringout.work.WorkPapers.Total;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The papers of the bench as sheets: for a workbook, a page or a PDF. */
public final class WorkSheets {
  /** Of the shorter of the two papers, lying. */
  private static final double PAGE_MM = 259;

  private static final List<String> WIRING =
      List.of(
          "Pin",
          "Wire",
          "Color",
          "Gauge",
          "Type",
          "Signal",
          "Goes to",
          "Contact",
          "Tool (* go by its data plate)",
          "Strip",
          "Sleeve",
          "Group",
          "Made",
          "Checked by another");

  private WorkSheets() {}

  /**
   * Every sheet, what to read first in front.
   *
   * @param code the bar code of the sleeves' texts, where one is wanted
   */
  public static List<OutSheet> of(WorkPapers papers, Optional<BarCode> code) {
    String title = UnitTitle.of(papers.harness());
    List<OutSheet> sheets = new ArrayList<>();
    sheets.add(first(papers, title));
    papers.sheets().forEach(sheet -> sheets.add(wiring(sheet, title)));
    sheets.add(cutList(papers, title));
    sheets.add(kit(papers, title));
    sheets.add(markers(papers, title, code));
    sheets.add(asFound(papers, title));
    return sheets;
  }

  private static OutSheet first(WorkPapers papers, String title) {
    List<List<String>> rows = new ArrayList<>();
    for (Cautions.Caution caution : Cautions.published(false)) {
      rows.add(List.of("caution", caution.text()));
    }
    rows.add(
        List.of("paper", "Check part, serial number, revision and changes outstanding first."));
    rows.add(
        List.of(
            "before",
            "Tag every wire and its point alike, and know both ends, before one is taken off. One"
                + " connector at a time, best one wire at a time."));
    rows.add(List.of("order", "Sleeves and backshell parts go on before the contact or lug."));
    rows.add(
        List.of(
            "tools",
            "Tool, positioner and selector by the tool's own data plate, for this wire and this"
                + " contact; calibrated."));
    rows.add(
        List.of(
            "rows",
            "Finish a row before stopping, and write at the foot of the page where to go on."));
    rows.add(
        List.of(
            "faces",
            "Each face is drawn twice: from the side on which the wires go in, and from the mating"
                + " side, its mirror image. Check the letters on the insert before the first"
                + " contact."));
    rows.add(
        List.of(
            "order",
            "Items in this order: "
                + String.join(", ", papers.sheets().stream().map(ItemSheet::ref).toList())));
    for (ItemSheet sheet : papers.sheets()) {
      sheet.noFace().ifPresent(why -> rows.add(List.of(sheet.ref(), FaceWords.sentence(why))));
    }
    String name = papers.harness().headerValue("effectivity");
    rows.add(List.of("for", name.isEmpty() ? "effectivity not stated" : name));
    return new OutSheet("Read first", List.of("About", "What to know"), rows, Look.printed(title));
  }

  private static OutSheet wiring(ItemSheet sheet, String title) {
    List<List<String>> rows = new ArrayList<>();
    sheet.cavities().forEach(cavity -> rows.addAll(rows(cavity)));
    return new OutSheet(
        sheet.ref(),
        WIRING,
        rows,
        Look.printed(title)
            .withToFill(12, 13)
            .withCaution(Cautions.onPageOfHands())
            .withAbout(about(sheet))
            .withPicture(
                sheet.face().map(face -> FacePicture.of(sheet, face, PAGE_MM)).orElse("")));
  }

  /** A row for each wire end of a cavity, and one for its jumpers or for nothing. */
  private static List<List<String>> rows(ItemSheet.Cavity cavity) {
    List<List<String>> rows = new ArrayList<>();
    cavity.ends().forEach(end -> rows.add(row(cavity, end)));
    if (!cavity.jumpers().isEmpty()) {
      rows.add(List.of(cavity.pin(), jumpers(cavity)));
    } else if (cavity.ends().isEmpty()) {
      String plug = cavity.plug().isEmpty() ? "" : "sealing plug " + cavity.plug();
      rows.add(List.of(cavity.pin(), "empty", "", "", "", "", "", plug));
    }
    return rows;
  }

  private static List<String> row(ItemSheet.Cavity cavity, WireEnd end) {
    Wire wire = end.wire();
    return List.of(
        cavity.pin(),
        wire.name(),
        wire.colour(),
        wire.gaugeLabel(),
        wire.type(),
        wire.signal(),
        end.there().toString(),
        end.contact(),
        tool(end),
        end.strip(),
        end.marker(),
        wire.group().isEmpty() ? wire.cable() : wire.group(),
        "",
        "");
  }

  /** A setting from memory says so: the data plate on the tool decides. */
  private static String tool(WireEnd end) {
    return end.tool().map(tool -> tool.text() + (tool.fromMemory() ? " *" : "")).orElse("");
  }

  /** What it is, which part, and where. */
  private static String about(ItemSheet sheet) {
    List<String> words = new ArrayList<>(List.of(sheet.kind()));
    words.add(sheet.item().map(Item::part).orElse(""));
    words.add(sheet.item().map(Item::location).orElse(""));
    words.removeIf(String::isEmpty);
    return String.join(", ", words);
  }

  private static String jumpers(ItemSheet.Cavity cavity) {
    return "jumper to " + String.join(", ", cavity.jumpers());
  }

  private static OutSheet cutList(WorkPapers papers, String title) {
    List<List<String>> rows = new ArrayList<>();
    for (CutWire cut : papers.cuts()) {
      Wire wire = cut.wire();
      rows.add(
          List.of(
              wire.name(),
              wire.type(),
              wire.gaugeLabel(),
              wire.colour(),
              wire.from().toString(),
              wire.to().toString(),
              cut.listedMetres().isPresent()
                  ? WorkPapers.metres(cut.listedMetres().getAsDouble())
                  : "",
              cut.cutMetres().isPresent() ? WorkPapers.metres(cut.cutMetres().getAsDouble()) : "",
              cut.cutMetres().isPresent() ? "" : "no length listed: measure it"));
    }
    return new OutSheet(
        "Cut list",
        List.of("Wire", "Type", "Gauge", "Color", "From", "To", "Listed (m)", "Cut (m)", "Note"),
        rows,
        Look.printed(title).withNumbers(6, 7).withToFill(8));
  }

  private static OutSheet kit(WorkPapers papers, String title) {
    List<List<String>> rows = new ArrayList<>();
    for (Total total : papers.totals()) {
      String kind = total.kind();
      rows.add(
          List.of(
              "wire " + (kind.isEmpty() ? "of no gauge, type or colour listed" : kind),
              "" + total.wires(),
              WorkPapers.metres(total.metres()),
              total.withoutLength().isEmpty()
                  ? ""
                  : Text.of(
                      "without %s, which have no length",
                      String.join(", ", total.withoutLength()))));
    }
    papers.kit().forEach((what, count) -> rows.add(List.of(what, "" + count, "", "")));
    return new OutSheet(
        "Kit",
        List.of("What", "How many", "Metres", "Note"),
        rows,
        Look.printed(title).withNumbers(1, 2));
  }

  /**
   * As label printers take them: a row for each sleeve, in the order in which they go on, which is
   * that of the sheets.
   */
  private static OutSheet markers(WorkPapers papers, String title, Optional<BarCode> code) {
    List<List<String>> rows = new ArrayList<>();
    for (ItemSheet sheet : papers.sheets()) {
      for (ItemSheet.Cavity cavity : sheet.cavities()) {
        for (WireEnd end : cavity.ends()) {
          rows.add(
              List.of(
                  end.marker(),
                  end.wire().name(),
                  end.here().toString(),
                  Integer.toString(rows.size() + 1)));
        }
      }
    }
    Look look = Look.printed(title).withNumbers(3);
    return new OutSheet(
        "Markers",
        List.of("Text", "Wire", "Goes on at", "Turn"),
        rows,
        code.map(one -> look.withCodes(0, one)).orElse(look));
  }

  /** Filled in before anything is taken off: the tag goes on the wire and on its point alike. */
  private static OutSheet asFound(WorkPapers papers, String title) {
    List<List<String>> rows = new ArrayList<>();
    int tag = 0;
    for (ItemSheet sheet : papers.sheets()) {
      for (ItemSheet.Cavity cavity : sheet.cavities()) {
        String point = sheet.ref() + "-" + cavity.pin();
        if (cavity.ends().isEmpty()) {
          rows.add(List.of("", point, cavity.jumpers().isEmpty() ? "empty" : jumpers(cavity)));
        }
        for (WireEnd end : cavity.ends()) {
          tag++;
          rows.add(List.of("T" + tag, point, end.wire().name(), end.wire().colour()));
        }
      }
    }
    return new OutSheet(
        "As found",
        List.of(
            "Tag",
            "Point",
            "Listed wire",
            "Listed color",
            "Found wire",
            "Found color",
            "Goes to",
            "Note"),
        rows,
        Look.printed(title).withCaution(Cautions.onPageOfHands()).withToFill(4, 5, 6, 7));
  }
}
