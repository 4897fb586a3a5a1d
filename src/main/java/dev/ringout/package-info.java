/** Proves cable harnesses and junction boxes point by point. */
@NullMarked
package dev.ringout;

import org.jspecify.annotations.NullMarked;
