/**
 * The whole diagnosis in its order: faults of the test, of the wiring, of values, then what to read
 * next and what no reading sees. It knows {@code diagnose.wiring} and {@code diagnose.values}, and
 * neither knows it.
 */
@NullMarked
package dev.ringout.diagnose.run;

import org.jspecify.annotations.NullMarked;
