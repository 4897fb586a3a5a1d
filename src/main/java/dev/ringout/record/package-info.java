/** What is signed: the content of the record. */
@NullMarked
package dev.ringout.record;

import org.jspecify.annotations.NullMarked;
