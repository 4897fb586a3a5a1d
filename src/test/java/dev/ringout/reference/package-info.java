/** Checks against published tables, data and reference libraries; each names its source. */
@NullMarked
package dev.ringout.reference;

import org.jspecify.annotations.NullMarked;
