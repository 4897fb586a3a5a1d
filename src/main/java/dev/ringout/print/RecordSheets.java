package dev.ringout.print;

import dev.ringout.record.RecordBlock;
import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.Pairs;
import dev.ringout.record.RecordBlock.Picture;
import dev.ringout.record.RecordBlock.Table;
import dev.ringout.record.RecordBlock.Words;
import dev.ringout.record.RecordContent;
import dev.ringout.sheet.OutSheet;
import dev.ringout.sheet.OutSheet.Look;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A record as a workbook: what is said in words on the first sheet, a sheet for each table. */
public final class RecordSheets {
  private RecordSheets() {}

  /** The sheets. */
  public static List<OutSheet> of(RecordContent record) {
    String title = record.title();
    List<List<String>> words = new ArrayList<>();
    Map<String, OutSheet> tables = new LinkedHashMap<>();
    for (RecordBlock block : record.blocks()) {
      if (block instanceof Heading heading) {
        words.add(List.of("part", heading.text()));
      } else if (block instanceof RecordBlock.Verdict verdict) {
        words.add(List.of("verdict", verdict.words()));
      } else if (block instanceof Words one) {
        words.add(List.of(one.warns() ? "note well" : "", one.text()));
      } else if (block instanceof Pairs pairs) {
        words.addAll(pairs.rows());
      } else if (block instanceof Picture picture) {
        words.add(List.of("picture", "in the page and the PDF: " + picture.caption()));
      } else if (block instanceof RecordBlock.Signatures signatures) {
        signatures.who().forEach(who -> words.add(List.of("sign: " + who, "")));
      } else if (block instanceof Table table) {
        words.add(List.of("", "sheet " + table.name()));
        tables.put(
            table.name(),
            new OutSheet(
                table.name(), table.headings(), table.rows(), Look.printed(title).withFilter()));
      }
    }
    List<OutSheet> sheets = new ArrayList<>();
    sheets.add(new OutSheet("Record", List.of("About", "What"), words, Look.printed(title)));
    sheets.addAll(tables.values());
    return sheets;
  }
}
