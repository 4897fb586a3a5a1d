/**
 * The bench's page: what docs/reference/bench-api.md names, each address with what it asks of the
 * bench or at the library's door.
 */
@NullMarked
package dev.ringout.page;

import org.jspecify.annotations.NullMarked;
