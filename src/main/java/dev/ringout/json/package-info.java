/** JSON documents, one schema each; see docs/reference. */
@NullMarked
package dev.ringout.json;

import org.jspecify.annotations.NullMarked;
