/** Bytes to and from a meter: sockets, HiSLIP, serial ports; every wait is bounded. */
@NullMarked
package dev.ringout.meter.link;

import org.jspecify.annotations.NullMarked;
