package dev.ringout.print;

import dev.ringout.record.RecordBlock;
import dev.ringout.record.RecordContent;
import dev.ringout.sheet.OutPicture;
import dev.ringout.sheet.OutSheet;
import dev.ringout.sheet.OutSheet.Look;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** A record as a workbook: what is said in words on the first sheet, a sheet for each table. */
public final class RecordSheets implements RecordBlock.Cases<List<List<String>>> {
  private static final String PHOTOGRAPHS = "Photographs";

  private static final String DRAWINGS = "Drawings";

  private final String title;
  private final StringBuilder drawings = new StringBuilder();
  private final List<List<String>> captions = new ArrayList<>();
  private final List<RecordBlock.Photograph> photographs = new ArrayList<>();
  private final Map<String, OutSheet> tables = new LinkedHashMap<>();

  private RecordSheets(String title) {
    this.title = title;
  }

  /** The sheets. */
  public static List<OutSheet> of(RecordContent record) {
    RecordSheets form = new RecordSheets(record.title());
    List<List<String>> words = new ArrayList<>();
    record.blocks().forEach(block -> words.addAll(block.match(form)));
    List<OutSheet> sheets = new ArrayList<>();
    sheets.add(
        new OutSheet("Record", List.of("About", "What"), words, Look.printed(record.title())));
    sheets.addAll(form.tables.values());
    if (form.drawings.length() > 0) {
      sheets.add(
          new OutSheet(
              DRAWINGS,
              List.of("What is drawn", "Number"),
              form.captions,
              Look.printed(record.title()).withNumbers(1).withPicture(form.drawings.toString())));
    }
    if (!form.photographs.isEmpty()) {
      sheets.add(form.photographs());
    }
    return sheets;
  }

  private OutSheet photographs() {
    List<OutPicture> pictures = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>();
    for (RecordBlock.Photograph one : photographs) {
      pictures.add(
          new OutPicture(rows.size(), 0, one.base64(), one.width(), one.height(), one.shows()));
      rows.add(List.of("", one.caption()));
    }
    return new OutSheet(PHOTOGRAPHS, List.of("Photograph", "What"), rows, Look.printed(title))
        .with(pictures);
  }

  private static List<List<String>> row(String about, String what) {
    return List.of(List.of(about, what));
  }

  @Override
  public List<List<String>> verdict(RecordBlock.Verdict verdict) {
    return row("verdict", verdict.words());
  }

  @Override
  public List<List<String>> heading(RecordBlock.Heading heading) {
    return row("part", heading.text());
  }

  @Override
  public List<List<String>> words(RecordBlock.Words one) {
    return row(one.warns() ? "note well" : "", one.text());
  }

  @Override
  public List<List<String>> pairs(RecordBlock.Pairs pairs) {
    return pairs.rows();
  }

  @Override
  public List<List<String>> table(RecordBlock.Table table) {
    tables.put(
        table.name(),
        new OutSheet(
            table.name(),
            table.headings(),
            table.rows(),
            Look.printed(title)
                .withFilter()
                .withNumbers(table.numbers().toArray(Integer[]::new))
                .withOnScreen(
                    IntStream.range(table.shown(), table.headings().size())
                        .boxed()
                        .toArray(Integer[]::new))));
    return row("", "sheet " + table.name());
  }

  @Override
  public List<List<String>> picture(RecordBlock.Picture picture) {
    drawings.append(picture.svg());
    captions.add(List.of(picture.caption(), Integer.toString(captions.size() + 1)));
    return row("picture", "sheet " + DRAWINGS + ": " + picture.caption());
  }

  @Override
  public List<List<String>> photograph(RecordBlock.Photograph photograph) {
    photographs.add(photograph);
    return row("photograph", "sheet " + PHOTOGRAPHS + ": " + photograph.caption());
  }

  @Override
  public List<List<String>> signatures(RecordBlock.Signatures signatures) {
    return signatures.who().stream().map(who -> List.of("sign: " + who, "")).toList();
  }

  @Override
  public List<List<String>> newPage(RecordBlock.NewPage newPage) {
    return List.of();
  }
}
