package dev.ringout.cli;

import picocli.CommandLine;

/** Makes the commands, each with where its output goes. */
final class Commands implements CommandLine.IFactory {
  private final Output output;

  Commands(Output output) {
    this.output = output;
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    if (type == AsFoundCommand.class) {
      return type.cast(new AsFoundCommand(output));
    }
    if (type == CheckCommand.class) {
      return type.cast(new CheckCommand(output));
    }
    if (type == DiffCommand.class) {
      return type.cast(new DiffCommand(output));
    }
    if (type == FoundCommand.class) {
      return type.cast(new FoundCommand(output));
    }
    if (type == ImportCommand.class) {
      return type.cast(new ImportCommand(output));
    }
    if (type == PlanCommand.class) {
      return type.cast(new PlanCommand(output));
    }
    if (type == ReportCommand.class) {
      return type.cast(new ReportCommand(output));
    }
    if (type == ReviewCommand.class) {
      return type.cast(new ReviewCommand(output));
    }
    if (type == TraceCommand.class) {
      return type.cast(new TraceCommand(output));
    }
    if (type == WorkCommand.class) {
      return type.cast(new WorkCommand(output));
    }
    return CommandLine.defaultFactory().create(type);
  }
}
