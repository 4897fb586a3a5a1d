package dev.ringout.jobs;

/** The name and version that the build wrote into the jar. */
public final class Program {
  private Program() {}

  /** Such as "ringout 0.1.0". */
  public static String text() {
    String version = Program.class.getPackage().getImplementationVersion();
    return "ringout " + (version == null ? "(development)" : version);
  }
}
