package dev.ringout.cli;

import dev.ringout.text.Look;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The options of every command that prints a page: as JSON, or into a file. */
final class Destination {
  @Option(names = "--json", description = "One JSON document on standard output.")
  private boolean json;

  @Option(
      names = "-o",
      converter = PathOfResult.class,
      paramLabel = "FILE",
      description = "Write to FILE instead.")
  private Optional<Path> file = Optional.empty();

  @Option(names = "--force", description = "Write over an existing FILE.")
  private boolean force;

  boolean json() {
    return json;
  }

  /** Whether a file is asked for. */
  boolean isFile() {
    return file.isPresent();
  }

  /** The name of the file without its ending; empty where none is asked for. */
  String name() {
    return file.map(one -> ("" + one.getFileName()).replaceFirst("\\.[^.]*$", "")).orElse("");
  }

  /** How a page looks: in a file it has no colours, and the width that every file has. */
  Look look(Output output) {
    return file.isPresent() ? Look.PLAIN : output.look();
  }

  /** A page that is too long to be held as one text. */
  interface LongPage {
    void writeTo(Writer to) throws IOException;
  }

  /** Writes a page piece by piece; gives the exit code. */
  int write(Output output, LongPage page) {
    if (file.isPresent()) {
      return told(
          output,
          output.write(
              file.get(),
              out -> {
                Writer to = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
                page.writeTo(to);
                to.flush();
              },
              force));
    }
    try {
      page.writeTo(new OntoStream(output.out()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return ExitCode.DONE;
  }

  /** With --json nothing but a document is ever said. */
  private int told(Output output, int code) {
    if (code == ExitCode.DONE && !json) {
      output.written(file.orElseThrow(), "");
    }
    return code;
  }

  /** Text onto a stream in the stream's own encoding. */
  private static final class OntoStream extends Writer {
    private final PrintStream stream;

    OntoStream(PrintStream stream) {
      this.stream = stream;
    }

    @Override
    public void write(char[] text, int offset, int length) {
      stream.append(CharBuffer.wrap(text, offset, length));
    }

    @Override
    public void flush() {
      stream.flush();
    }

    @Override
    public void close() {
      flush();
    }
  }

  /** Writes a page; gives the exit code. */
  int write(Output output, String text) {
    if (file.isPresent()) {
      return told(output, output.write(file.get(), text, force));
    }
    output.out().print(text);
    return ExitCode.DONE;
  }
}
