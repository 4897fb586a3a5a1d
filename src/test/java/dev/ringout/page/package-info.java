/** The files of the bench's page, as they are before any browser sees them. */
@NullMarked
package dev.ringout.page;

import org.jspecify.annotations.NullMarked;
