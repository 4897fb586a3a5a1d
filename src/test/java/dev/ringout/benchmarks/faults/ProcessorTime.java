package dev.ringout.benchmarks.faults;

import java.lang.management.ManagementFactory;

/**
 * What this thread has taken of a processor: on a busy machine the clock on the wall tells less.
 */
final class ProcessorTime {
  private ProcessorTime() {}

  static long nanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}
