/**
 * A test that is led at a bench, reading by reading: which step is asked, what a meter says to it,
 * what is kept, what is likely wrong so far. Above the jobs, below every page.
 */
@NullMarked
package dev.ringout.bench;

import org.jspecify.annotations.NullMarked;
