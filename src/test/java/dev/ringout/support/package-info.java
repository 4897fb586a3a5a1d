/**
 * What tests of several packages share: units, lists and plain values as a test writes them down,
 * and a run of the command line. It may know all of the program and no other test.
 */
@org.jspecify.annotations.NullMarked
package dev.ringout.support;
