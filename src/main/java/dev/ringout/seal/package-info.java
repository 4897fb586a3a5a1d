/** What makes a record trustworthy years later: digests, signatures, the chain of retests. */
@NullMarked
package dev.ringout.seal;

import org.jspecify.annotations.NullMarked;
