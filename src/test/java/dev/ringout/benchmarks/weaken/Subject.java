package dev.ringout.benchmarks.weaken;

import java.nio.file.Path;
import java.util.List;

/**
 * A unit with its list on disk and good readings of it.
 *
 * @param good a complete set
 * @param sister a complete set of another unit of the same list
 * @param strangers complete sets of units of other lists
 */
record Subject(
    Unit unit,
    Style style,
    Path harness,
    Folder good,
    Folder sister,
    List<Folder> strangers,
    Oracle oracle) {}
