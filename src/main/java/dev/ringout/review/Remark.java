package dev.ringout.review;

import dev.ringout.source.Severity;

/**
 * What is wrong on paper.
 *
 * @param rule the rule's id
 * @param point the point it is about, or empty
 * @param wire the wire's number, or empty
 * @param source the published source of the rule and of the table that spoke
 */
public record Remark(
    String rule, Severity severity, String point, String wire, String text, String source) {

  /** What a waiver names: the point, else the wire, else nothing. */
  public String subject() {
    return point.isEmpty() ? wire : point;
  }
}
