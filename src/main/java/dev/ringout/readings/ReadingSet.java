package dev.ringout.readings;

import java.util.List;

/** Every reading of every file, in the order given, with the job sheets. */
public record ReadingSet(List<Reading> readings, List<Job> jobs) {}
