/** The trade as a specification: worked examples, read through real files. */
@NullMarked
package dev.ringout.trade;

import org.jspecify.annotations.NullMarked;
