/**
 * The server under the bench's page: who may come in, what may be sent, what goes out. It knows
 * nothing of units under test, nor of what the documents say that it carries.
 */
@NullMarked
package dev.ringout.serve;

import org.jspecify.annotations.NullMarked;
