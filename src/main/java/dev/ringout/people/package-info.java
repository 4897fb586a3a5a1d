/** Who may sign in to a shop's benches, as what, and what each may do there. */
@NullMarked
package dev.ringout.people;

import org.jspecify.annotations.NullMarked;
