package dev.ringout.imports.kbl;

import dev.ringout.imports.list.Finding;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.Oddity;
import dev.ringout.source.Place;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What is odd in a file, each with its line, and each once. */
final class Findings {
  private final String shownName;
  private final ListFindings findings = new ListFindings();
  private final Set<Said> said = new HashSet<>();

  private record Said(int line, Oddity oddity) {}

  Findings(String shownName) {
    this.shownName = shownName;
  }

  /** A line of the file: it stands where tables have their row. */
  Place line(int line) {
    return new Place(shownName, "", line, 0);
  }

  Place of(Element element) {
    return line(element.line());
  }

  /** Why a connection was not read. */
  void error(NotRead why) {
    if (said.add(new Said(why.line(), why.oddity()))) {
      findings.error(line(why.line()), why.oddity());
    }
  }

  /** What a wire lacks, though it was read. */
  void warning(NotRead why) {
    if (said.add(new Said(why.line(), why.oddity()))) {
      findings.warning(line(why.line()), why.oddity());
    }
  }

  void warning(Element at, Oddity oddity) {
    if (said.add(new Said(at.line(), oddity))) {
      findings.warning(of(at), oddity);
    }
  }

  void warning(Place at, Oddity oddity) {
    findings.warning(at, oddity);
  }

  void note(Element at, Oddity oddity) {
    if (said.add(new Said(at.line(), oddity))) {
      findings.note(of(at), oddity);
    }
  }

  List<Finding> list() {
    return findings.list();
  }
}
