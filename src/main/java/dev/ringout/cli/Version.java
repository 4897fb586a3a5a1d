package dev.ringout.cli;

import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the jar. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {text()};
  }

  static String text() {
    String version = Version.class.getPackage().getImplementationVersion();
    return "ringout " + (version == null ? "(development)" : version);
  }
}
