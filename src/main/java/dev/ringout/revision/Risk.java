package dev.ringout.revision;

import dev.ringout.harness.Point;

/**
 * Power and ground that are joined while the work is half done, though neither revision joins them.
 *
 * @param afterStep the step that joins them
 * @param untilStep the step that parts them again
 */
public record Risk(
    int afterStep,
    int untilStep,
    Point power,
    String powerSignal,
    Point ground,
    String groundSignal) {}
