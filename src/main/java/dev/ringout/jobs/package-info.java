/**
 * One class a use case: a request in, a result out. The floor on which a command line, a bench page
 * or another program stands.
 */
@NullMarked
package dev.ringout.jobs;

import org.jspecify.annotations.NullMarked;
