package dev.ringout.compare;

import java.util.List;

/**
 * Readings that can't all be true at once: two points read apart, while others join them.
 *
 * @param apart the reading that says apart
 * @param joins the readings that together join its two sides
 */
public record Contradiction(Judged apart, List<Judged> joins) {}
