package dev.ringout.cli;

import dev.ringout.jobs.Program;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the jar. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {text()};
  }

  static String text() {
    return Program.text();
  }
}
