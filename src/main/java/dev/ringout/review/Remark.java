package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;

/**
 * What is wrong on paper.
 *
 * @param rule the rule's id
 * @param source the published source of the rule
 */
public record Remark(
    String rule, Severity severity, Point point, Wire wire, String text, String source) {}
