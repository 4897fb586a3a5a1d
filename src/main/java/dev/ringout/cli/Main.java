package dev.ringout.cli;

import dev.ringout.jobs.InputName;
import dev.ringout.jobs.Stopped;
import dev.ringout.jobs.WrongRequest;
import dev.ringout.text.Look;
import dev.ringout.units.Text;
import dev.ringout.words.ProblemText;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command {@code ringout}. */
@Command(
    name = "ringout",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Proves cable harnesses and junction boxes point by point.",
    footer = {
      "",
      "ringout help COMMAND says more of a command.",
      "",
      "Exit codes: 0 done, 1 faults or differences, 2 not everything proven,",
      "64 wrong command line,",
      "65 a file can't be understood, 66 a file is missing, 70 defect in ringout,",
      "73 the output can't be written."
    })
public final class Main implements Runnable {
  @Spec private CommandSpec spec = CommandSpec.create();

  private Main() {}

  /** Runs a command and ends the process with its exit code. */
  public static void main(String[] args) {
    CodePage codePage = CodePage.setBackWhenInterrupted();
    // The launcher knows whether standard output is a terminal; Java itself does not tell reliably.
    // Readings are written in Ω and µ whatever the system's own encoding.
    PrintStream out =
        new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
    PrintStream err =
        new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
    // Of threads of the bench and of practice meters, too, nothing but one line is told.
    Thread.setDefaultUncaughtExceptionHandler((thread, e) -> defect(e, err));
    boolean terminal = Boolean.getBoolean("ringout.terminal");
    int width = Integer.getInteger("ringout.width", Look.PLAIN.width());
    int code = run(out, err, terminal, width, args);
    // It flushes what is left; only then may the launcher have the window back.
    boolean lost = out.checkError();
    codePage.leaveToLauncher();
    System.exit(lost ? ExitCode.CANNOT_WRITE : code);
  }

  /**
   * Runs a command.
   *
   * @param terminal whether standard output is a terminal, which may show colours
   * @return the exit code
   */
  public static int run(PrintStream out, PrintStream err, boolean terminal, String... args) {
    return run(out, err, terminal, Look.PLAIN.width(), args);
  }

  /**
   * Runs a command.
   *
   * @param terminal whether standard output is a terminal, which may show colours
   * @param width signs in a line of it
   * @return the exit code
   */
  public static int run(
      PrintStream out, PrintStream err, boolean terminal, int width, String... args) {
    try (PrintStream shown =
        new PrintStream(new VisibleStream(err), true, StandardCharsets.UTF_8)) {
      return runShown(new Output(out, shown, terminal, width), args);
    } catch (RuntimeException | Error e) {
      // The last net: whatever falls through all others is no verdict, and no page of stack traces.
      return defect(e, err);
    }
  }

  private static int runShown(Output output, String... args) {
    PrintStream out = output.out();
    PrintStream err = output.err();
    if (args.length == 1 && (args[0].equals("--version") || args[0].equals("-V"))) {
      // Answered without loading the command line library, which takes longer than the answer.
      out.println(Version.text());
      return ExitCode.DONE;
    }
    Commands commands = new Commands(output);
    String[] asked = commands.forHelp(args);
    CommandLine commandLine = new CommandLine(new Main());
    commands.addTo(commandLine, asked);
    commandLine
        .setOut(new PrintWriter(out, true, StandardCharsets.UTF_8))
        .setErr(new PrintWriter(err, true, StandardCharsets.UTF_8))
        .setCaseInsensitiveEnumValuesAllowed(true)
        .registerConverter(Path.class, InputName::parse)
        .setUsageHelpWidth(output.look().width())
        .setColorScheme(
            CommandLine.Help.defaultColorScheme(
                output.terminal() ? CommandLine.Help.Ansi.AUTO : CommandLine.Help.Ansi.OFF))
        .setExecutionStrategy(OwnInput::run)
        .setParameterExceptionHandler((e, given) -> wrongUsage(e, err))
        .setExecutionExceptionHandler((e, command, parsed) -> ended(e, command, err));
    return commandLine.execute(asked);
  }

  /** All commands, for what is made of their list: completion in shells, pages of a manual. */
  static CommandLine all(Output output) {
    CommandLine all = new CommandLine(new Main());
    new Commands(output).addTo(all);
    return all;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "which command?");
  }

  /** A job that could not be done, or a defect. */
  private static int ended(Exception e, CommandLine command, PrintStream err) {
    if (e instanceof WrongRequest wrong) {
      err.print(ProblemText.write(wrong.problems()));
      return wrongUsage(new ParameterException(command, Asked.inWords(wrong)), err);
    }
    if (e instanceof Stopped stopped) {
      err.println("ringout: " + stopped.text());
      return stopped.isMissing() ? ExitCode.MISSING_INPUT : ExitCode.NOT_UNDERSTOOD;
    }
    return defect(e, err);
  }

  private static int wrongUsage(ParameterException e, PrintStream err) {
    err.println("ringout: " + e.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(
        e, new PrintWriter(err, true, StandardCharsets.UTF_8));
    String command = e.getCommandLine().getCommandSpec().qualifiedName();
    err.println("Try " + command + " --help");
    return ExitCode.USAGE;
  }

  /** Says in one line what nothing else has caught; gives the exit code. */
  static int defect(Throwable thrown, PrintStream err) {
    Throwable e = thrown;
    while (e instanceof CommandLine.ExecutionException wrapped && wrapped.getCause() != null) {
      // The command line library puts what a subcommand throws into one of its own.
      e = wrapped.getCause();
    }
    if (e instanceof OutOfMemoryError) {
      err.println("ringout: out of memory; give Java more with RINGOUT_JAVA_OPTS=-Xmx2g");
      return ExitCode.DEFECT;
    }
    String where =
        Arrays.stream(e.getStackTrace())
            .map(StackTraceElement::toString)
            .filter(frame -> frame.startsWith("dev.ringout"))
            .findFirst()
            .orElse("");
    err.println(
        Text.visible(
                "ringout: a defect in ringout itself, not in your files: "
                    + e.toString().lines().findFirst().orElse(""))
            + "; please report it with: "
            + where);
    return ExitCode.DEFECT;
  }
}
