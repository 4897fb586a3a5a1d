package dev.ringout.record;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.UnitMap;
import dev.ringout.readings.UnitHistory;
import dev.ringout.review.Review;
import dev.ringout.seal.KeptInput;
import dev.ringout.seal.Seal;
import dev.ringout.work.ItemSheet;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that a record is made from; nothing else goes into it, no clock and no chance.
 *
 * @param review the paper's remarks, with what was waived
 * @param date of the test: by which calibrations and waivers are held; absent where nothing says
 * @param inputs every file with its digest
 * @param kept every input of a store
 * @param earlier the records that this one continues, the first first
 * @param failedBefore what failed first in them
 * @param notes what was done between
 * @param history what was said of the unit where it is kept
 * @param faces the items with what is known of their faces
 * @param tables each table of published values with where it stands
 * @param program name and version
 */
public record TestRecord(
    CheckResult result,
    Review review,
    Optional<LocalDate> date,
    List<Seal.Named> inputs,
    List<KeptInput> kept,
    List<Seal.Earlier> earlier,
    List<Seal.Failed> failedBefore,
    List<String> notes,
    UnitHistory history,
    List<ItemSheet> faces,
    UnitMap map,
    Map<String, String> tables,
    String program) {
  /** What is given can't be changed afterwards. */
  public TestRecord {
    inputs = List.copyOf(inputs);
    kept = List.copyOf(kept);
    notes = List.copyOf(notes);
    tables = Collections.unmodifiableMap(new LinkedHashMap<>(tables));
  }
}
