/** Drawings: faces, joins, nets, charts, bar codes. */
@NullMarked
package dev.ringout.pictures;

import org.jspecify.annotations.NullMarked;
