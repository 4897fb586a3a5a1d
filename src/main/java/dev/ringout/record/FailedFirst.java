package dev.ringout.record;

import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Replaced;
import dev.ringout.seal.Seal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What failed on a unit, and in which of its records first: no later record forgets it. */
public final class FailedFirst {
  private FailedFirst() {}

  /** What failed, by the name of the record in which it did first. */
  public static List<Seal.Failed> of(TestRecord record, String name) {
    List<Seal.Failed> failed = new ArrayList<>(record.failedBefore());
    Set<String> known = new TreeSet<>();
    failed.forEach(one -> known.add(one.kind() + "\t" + one.subject()));
    for (Judged judged : failing(record.result().comparison())) {
      String kind = ReadingTable.kind(judged);
      String subject = judged.reading().subject();
      if (known.add(kind + "\t" + subject)) {
        failed.add(new Seal.Failed(name, kind, subject, judged.reading().measured().text()));
      }
    }
    return failed;
  }

  /** In the order in which they were taken: what was replaced and overtaken before what stands. */
  private static List<Judged> failing(Comparison comparison) {
    List<Judged> failing = new ArrayList<>();
    comparison.replaced().stream()
        .map(Replaced::earlier)
        .filter(one -> one.outcome().fails())
        .forEach(failing::add);
    comparison.overtaken().stream().filter(one -> one.outcome().fails()).forEach(failing::add);
    failing.addAll(comparison.failing());
    return failing;
  }
}
