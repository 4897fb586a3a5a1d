/** What src/bench measures with. No timing is a pass or a fail. */
@NullMarked
package dev.ringout.bench;

import org.jspecify.annotations.NullMarked;
