/** Writers. They compute nothing. */
@NullMarked
package dev.ringout.report;

import org.jspecify.annotations.NullMarked;
