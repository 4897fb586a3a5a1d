/** Paper checks. */
@NullMarked
package dev.ringout.review;

import org.jspecify.annotations.NullMarked;
