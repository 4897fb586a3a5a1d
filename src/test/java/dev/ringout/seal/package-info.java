@NullMarked
package dev.ringout.seal;

import org.jspecify.annotations.NullMarked;
