package dev.ringout.harness;

import dev.ringout.source.Place;
import java.util.OptionalDouble;

/**
 * A limit of one net's own, by one of its points.
 *
 * @param insulationMinOhms absent: the harness's
 * @param insulationVolts absent: the harness's
 */
public record NetLimit(
    Point point, OptionalDouble insulationMinOhms, OptionalDouble insulationVolts, Place place) {}
