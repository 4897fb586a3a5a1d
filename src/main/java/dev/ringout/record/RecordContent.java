package dev.ringout.record;

import dev.ringout.record.RecordBlock.Words;
import dev.ringout.seal.Digest;
import dev.ringout.words.UnitTitle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What a record says: one row of pieces, first page first, made once for every form.
 *
 * @param title which unit it is of
 * @param serial its serial number; empty where none is given
 * @param digest of all that the record says, which is printed at its end
 */
public record RecordContent(String title, String serial, List<RecordBlock> blocks, String digest) {

  private static final List<Function<TestRecord, List<RecordBlock>>> PARTS =
      List.of(
          FirstPage::of,
          WhatIsWrong::of,
          ToLookAt::of,
          NotProven::of,
          History::of,
          WhatWasNoted::of,
          Remarks::of,
          LimitsUsed::of,
          ReadingTable::all,
          MadeFrom::of);

  /** The content of a record, its own digest last. */
  public static RecordContent of(TestRecord record) {
    return of(record, NamesByIds.NONE);
  }

  /** The same with ids where names of people stood. */
  public static RecordContent of(TestRecord record, NamesByIds names) {
    List<RecordBlock> all = new ArrayList<>();
    PARTS.forEach(part -> all.addAll(part.apply(record)));
    List<RecordBlock> blocks = new ArrayList<>(names.in(all));
    String digest = Digest.of(CanonicalForm.of(blocks));
    blocks.add(new Words("Content digest " + digest, false));
    return new RecordContent(
        UnitTitle.of(record.result().harness()),
        record.result().readings().serialNumber(),
        List.copyOf(blocks),
        digest);
  }
}
