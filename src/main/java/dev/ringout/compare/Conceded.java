package dev.ringout.compare;

import dev.ringout.readings.Concession;

/** A reading out of limits that an inspector's word covers. */
public record Conceded(Judged judged, Concession concession) {}
