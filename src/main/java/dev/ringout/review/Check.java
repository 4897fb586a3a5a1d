package dev.ringout.review;

/** One check of the paper. Each has a page in {@code docs/reference/checks}. */
interface Check {
  /** Common practice of the trade that nobody has published, as far as is known here. */
  String COMMON = "common practice";

  /** The rule's id, as in every output. */
  String rule();

  /** What it looks for, in one line. */
  String about();

  /** Says what it finds, or why it could not look. */
  void run(Paper paper, Findings findings);
}
