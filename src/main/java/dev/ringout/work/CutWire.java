package dev.ringout.work;

import dev.ringout.harness.Wire;
import java.util.OptionalDouble;

/**
 * A wire to cut.
 *
 * @param listedMetres its length on the list; absent where the list has none
 * @param cutMetres with the allowances; absent where the list has no length
 */
public record CutWire(Wire wire, OptionalDouble listedMetres, OptionalDouble cutMetres) {}
