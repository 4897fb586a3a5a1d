/**
 * Harness files in KBL (VDA 4964, Harness Description List, editions 2.3 to 2.5): XML, whose
 * elements refer to each other by their ids. Makes a wire of each connection, or says why not.
 */
@NullMarked
package dev.ringout.imports.kbl;

import org.jspecify.annotations.NullMarked;
