/** What src/bench measures with. No timing is a pass or a fail. */
@NullMarked
package dev.ringout.benchmarks;

import org.jspecify.annotations.NullMarked;
