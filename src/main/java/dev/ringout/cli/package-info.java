/** The command line: the only place of picocli and of exit codes. */
@NullMarked
package dev.ringout.cli;

import org.jspecify.annotations.NullMarked;
