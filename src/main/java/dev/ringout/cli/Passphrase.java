package dev.ringout.cli;

import dev.ringout.seal.KeyFile;
import dev.ringout.seal.Keys;
import java.io.Console;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/**
 * What protects a key: from a file, or typed unseen. Never a word of the command line, which every
 * user of the machine can see.
 */
final class Passphrase {
  /** No passphrase is so long; what is given may be a device that never ends. */
  private static final int MOST_BYTES = 4096;

  private final Output output;
  private final CommandLine command;

  Passphrase(Output output, CommandLine command) {
    this.output = output;
    this.command = command;
  }

  /** The first line of a file, or of a pipe in which another program keeps it. */
  Optional<String> in(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      String text = new String(in.readNBytes(MOST_BYTES), StandardCharsets.ISO_8859_1);
      return Optional.of(text.lines().findFirst().orElse(""));
    } catch (IOException e) {
      throw wrong(file + " can't be read");
    }
  }

  /** A key with what it takes to read it: of a file, or asked for where it is protected. */
  KeyFile keyFile(Path key, Optional<Path> file) {
    Optional<String> secret =
        file.isPresent() ? in(file.get()) : Keys.isProtected(key) ? of(key) : Optional.empty();
    return new KeyFile(key, secret);
  }

  /** Asks for that of a key; absent where nobody can be asked. */
  Optional<String> of(Path key) {
    return typed("Passphrase of " + key + ": ");
  }

  /** Asks for a new one, twice; absent where nobody can be asked or none is wanted. */
  Optional<String> ofNew(Path key) {
    return typedAgain(
        typed("Passphrase for " + key + " (empty for none): ").filter(one -> !one.isEmpty()));
  }

  /** Nobody sees what is typed: so a new one is typed twice. */
  private Optional<String> typedAgain(Optional<String> first) {
    if (first.isPresent() && !first.equals(typed("The same again: "))) {
      throw wrong("the two are not the same");
    }
    return first;
  }

  /** That of a person who is to sign in: of a file, or asked for twice. */
  String ofPerson(String name, Optional<Path> file) {
    Optional<String> given =
        file.isPresent()
            ? in(file.get()).map(Passphrase::asUtf8)
            : typedAgain(typed("Passphrase for " + name + ": "));
    return given.orElseThrow(
        () -> wrong("name a file whose first line it is; there is no terminal to ask at"));
  }

  /** A key's is of ASCII letters; a person's may be of any. */
  private static String asUtf8(String read) {
    return new String(read.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8);
  }

  private Optional<String> typed(String prompt) {
    Console console = output.terminal() ? System.console() : null;
    if (console == null) {
      return Optional.empty();
    }
    char[] typed = console.readPassword("%s", prompt);
    return typed == null ? Optional.empty() : Optional.of(new String(typed));
  }

  ParameterException wrong(String text) {
    return new ParameterException(command, "--passphrase: " + text);
  }
}
