/** Diagnosis judged by physics. */
@NullMarked
package dev.ringout.diagnose;

import org.jspecify.annotations.NullMarked;
