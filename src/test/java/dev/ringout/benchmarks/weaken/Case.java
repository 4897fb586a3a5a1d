package dev.ringout.benchmarks.weaken;

import java.util.ArrayList;
import java.util.List;

/** What is given to one check: files of readings and words of the command line. */
final class Case {
  final Subject subject;
  final List<Folder> files = new ArrayList<>();
  final List<String> options = new ArrayList<>();

  Case(Subject subject, List<Folder> files) {
    this.subject = subject;
    files.forEach(file -> this.files.add(file.copy()));
  }
}
