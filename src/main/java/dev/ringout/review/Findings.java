package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.Tables.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes what one check says. */
final class Findings {
  private final String rule;
  private final List<Remark> remarks = new ArrayList<>();
  private Optional<Lack> lack = Optional.empty();
  private boolean looked;

  Findings(String rule) {
    this.rule = rule;
  }

  /**
   * How severe a breach of a table's row is: what is only from memory is no error.
   *
   * @param row the row that speaks
   */
  static Severity breachOf(Entry row) {
    return breach(row.isPublishedFromMemory());
  }

  /** The same of what is, or is not, only from memory. */
  static Severity breach(boolean fromMemory) {
    return fromMemory ? Severity.WARNING : Severity.ERROR;
  }

  void say(Severity severity, Point point, Wire wire, String text, String source) {
    add(severity, point.toString(), wire.name(), text, source);
  }

  void say(Severity severity, Point point, String text, String source) {
    add(severity, point.toString(), "", text, source);
  }

  void say(Severity severity, Wire wire, String text, String source) {
    add(severity, "", wire.name(), text, source);
  }

  void say(Severity severity, String subject, String text, String source) {
    add(severity, subject, "", text, source);
  }

  private void add(Severity severity, String point, String wire, String text, String source) {
    looked = true;
    remarks.add(new Remark(rule, severity, point, wire, text, source));
  }

  /** The check had something to look at, whether or not it found anything. */
  void looked() {
    looked = true;
  }

  boolean hasLooked() {
    return looked;
  }

  /** What the check lacked, where it had nothing to look at. */
  void notRun(Lack what) {
    if (!looked) {
      lack = Optional.of(what);
    }
  }

  List<Remark> remarks() {
    return remarks;
  }

  Optional<Lack> lack() {
    return lack;
  }
}
