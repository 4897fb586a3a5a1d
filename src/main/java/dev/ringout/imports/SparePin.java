package dev.ringout.imports;

/**
 * A pin that the list names without a wire.
 *
 * @param note what the list says of it: {@code SPARE}, a signal's name
 */
record SparePin(End end, String note) {}
