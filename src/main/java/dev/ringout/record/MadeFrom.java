package dev.ringout.record;

import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.Table;
import dev.ringout.record.RecordBlock.Words;
import java.util.ArrayList;
import java.util.List;

/** What the record rests on: tables, rules, files and the program. */
final class MadeFrom {
  private MadeFrom() {}

  static List<RecordBlock> of(TestRecord record) {
    List<List<String>> tables = new ArrayList<>();
    record.tables().forEach((table, source) -> tables.add(List.of(table, source)));
    List<List<String>> rules = new ArrayList<>();
    record.review().checks().forEach((rule, about) -> rules.add(List.of(rule, about)));
    List<List<String>> files = new ArrayList<>();
    record.inputs().forEach(input -> files.add(List.of(input.name(), input.sha256())));
    return List.of(
        new Heading(2, "Tables and their sources"),
        new Table("Sources", List.of("Table", "Source"), tables, -1),
        new Heading(2, "Rules held against the paper"),
        new Table("Rules", List.of("Rule", "What"), rules, -1),
        new Heading(2, "Made from"),
        new Table("Files", List.of("File", "SHA-256"), files, -1),
        new Words("By " + record.program() + ".", false));
  }
}
