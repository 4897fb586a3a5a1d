package dev.ringout.imports.list;

/**
 * A pin that the list names without a wire.
 *
 * @param note what the list says of it: {@code SPARE}, a signal's name
 */
public record SparePin(End end, String note) {}
