package dev.ringout.record;

import dev.ringout.record.RecordBlock.Heading;
import dev.ringout.record.RecordBlock.Table;
import dev.ringout.record.RecordBlock.Words;
import dev.ringout.seal.KeptInput;
import dev.ringout.words.KeptInputWords;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What the record rests on: tables, rules, inputs and the program. */
final class MadeFrom {
  private static final String DIGEST = "SHA-256";

  private static final String FROM_MEMORY = " (this row from memory)";
  private static final String MEMORY = "†";

  private MadeFrom() {}

  static List<RecordBlock> of(TestRecord record) {
    List<List<String>> tables = new ArrayList<>();
    record.tables().forEach((table, source) -> tables.add(List.of(table, once(source))));
    List<List<String>> rules = new ArrayList<>();
    record.review().checks().forEach((rule, about) -> rules.add(List.of(rule, about)));
    List<RecordBlock> blocks =
        new ArrayList<>(
            List.of(
                new Heading(2, "Tables and their sources"),
                new Table("Sources", List.of("Table", "Source"), tables, -1),
                new Words(MEMORY + " some of its rows are from memory, and say so there.", false),
                new Heading(2, "Rules by which the paper was checked"),
                new Table("Rules", List.of("Rule", "What"), rules, -1),
                new Heading(2, "Input files")));
    blocks.addAll(inputs(record));
    blocks.add(new Words("By " + record.program() + ".", false));
    return blocks;
  }

  /** Each source of a table once; what of it is from memory is a mark. */
  private static String once(String source) {
    Set<String> sources = new LinkedHashSet<>();
    boolean fromMemory = false;
    for (String one : source.split("; ", -1)) {
      fromMemory |= one.endsWith(FROM_MEMORY);
      sources.add(one.replace(FROM_MEMORY, ""));
    }
    return String.join("; ", sources) + (fromMemory ? " " + MEMORY : "");
  }

  private static List<RecordBlock> inputs(TestRecord record) {
    List<List<String>> files = new ArrayList<>();
    record.inputs().forEach(input -> files.add(List.of(input.name(), input.sha256())));
    List<List<String>> kept = new ArrayList<>();
    record
        .kept()
        .forEach(
            input -> kept.add(List.of(KeptInputWords.of(input), input.match(new KeptDigest()))));
    List<RecordBlock> blocks = new ArrayList<>();
    if (!files.isEmpty()) {
      blocks.add(new Table("Files", List.of("File", DIGEST), files, -1));
    }
    if (!kept.isEmpty()) {
      blocks.add(new Table("Store", List.of("In the store", DIGEST), kept, -1));
    }
    return blocks;
  }

  private record KeptDigest() implements KeptInput.Cases<String> {
    @Override
    public String listFile(KeptInput.ListFile input) {
      return input.sha256();
    }

    @Override
    public String test(KeptInput.Test input) {
      return input.lastHash();
    }
  }
}
