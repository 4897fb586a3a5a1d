package dev.ringout.cli;

import dev.ringout.units.Text;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import picocli.AutoComplete;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * What the distribution tells shells and manuals, made from the commands' own options: completion
 * for bash (by the command line library), zsh and fish, and a page of the manual for each command.
 */
final class ShellFiles {
  private final CommandSpec root;

  ShellFiles() {
    PrintStream nowhere =
        new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
    root = Main.all(new Output(nowhere, nowhere, false, 80)).getCommandSpec();
  }

  /** All files by their paths under {@code src/main/launcher}. */
  Map<Path, String> files() {
    Map<Path, String> files = new LinkedHashMap<>();
    files.put(Path.of("completion/ringout.bash"), AutoComplete.bash("ringout", root.commandLine()));
    files.put(Path.of("completion/_ringout"), zsh());
    files.put(Path.of("completion/ringout.fish"), fish());
    files.put(Path.of("man/man1/ringout.1"), manual(root, "ringout"));
    commands(root)
        .forEach(
            (name, command) -> files.put(Path.of(page(name)), manual(command, "ringout " + name)));
    return files;
  }

  private static String page(String command) {
    return "man/man1/ringout-" + command + ".1";
  }

  private static Map<String, CommandSpec> commands(CommandSpec command) {
    Map<String, CommandSpec> commands = new TreeMap<>();
    command.subcommands().forEach((name, one) -> commands.put(name, one.getCommandSpec()));
    return commands;
  }

  private static List<OptionSpec> options(CommandSpec command) {
    List<OptionSpec> options = new ArrayList<>(command.options());
    options.removeIf(OptionSpec::hidden);
    options.sort((one, other) -> one.longestName().compareTo(other.longestName()));
    return options;
  }

  private static String summary(CommandSpec command) {
    String all = String.join(" ", command.usageMessage().description());
    return all.replaceFirst("(?s)[.:;].*", "");
  }

  private static String words(String[] description) {
    return String.join(" ", description);
  }

  /** What an option says of itself, with its values and its default as the help has them. */
  private static String description(OptionSpec option) {
    String candidates = "";
    if (option.completionCandidates() != null) {
      List<String> values = new ArrayList<>();
      option.completionCandidates().forEach(values::add);
      candidates = String.join(", ", values);
    }
    return words(option.description())
        .replace("${COMPLETION-CANDIDATES}", candidates)
        .replace("${DEFAULT-VALUE}", String.valueOf(option.defaultValue()))
        .replace("%%", "%");
  }

  private static boolean takesFile(OptionSpec option) {
    return Stream.of(option.auxiliaryTypes())
        .anyMatch(type -> type == Path.class || type == TablesFile.class);
  }

  /** Those of a command, and of the commands under it. */
  private static List<OptionSpec> optionsOfAll(CommandSpec command) {
    Map<String, OptionSpec> all = new TreeMap<>();
    options(command).forEach(one -> all.put(one.longestName(), one));
    commands(command).values().stream()
        .flatMap(one -> options(one).stream())
        .forEach(one -> all.put(one.longestName(), one));
    return List.copyOf(all.values());
  }

  // ---- fish ----

  private String fish() {
    StringBuilder text =
        new StringBuilder("# Completion of ringout for fish, made from its options.\n");
    commands(root)
        .forEach(
            (name, command) ->
                text.append(
                    Text.of(
                        "complete -c ringout -n __fish_use_subcommand -f -a %s -d %s\n",
                        name, quoted(summary(command)))));
    commands(root)
        .forEach(
            (name, command) -> {
              String when = quoted("__fish_seen_subcommand_from " + name);
              commands(command)
                  .forEach(
                      (sub, one) ->
                          text.append(
                              Text.of(
                                  "complete -c ringout -n %s -f -a %s -d %s\n",
                                  when, sub, quoted(summary(one)))));
              optionsOfAll(command).forEach(option -> text.append(fish(when, option)));
            });
    return text.toString();
  }

  private static String fish(String when, OptionSpec option) {
    StringBuilder line = new StringBuilder("complete -c ringout -n ").append(when);
    for (String name : option.names()) {
      line.append(name.startsWith("--") ? " -l " + name.substring(2) : " -s " + name.substring(1));
    }
    if (option.arity().max() > 0) {
      line.append(takesFile(option) ? " -r -F" : " -x");
      if (option.completionCandidates() != null) {
        line.append(" -a ").append(quoted(String.join(" ", option.completionCandidates())));
      }
    }
    return line.append(" -d ").append(quoted(description(option))).append('\n').toString();
  }

  private static String quoted(String text) {
    return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
  }

  // ---- zsh ----

  private String zsh() {
    StringBuilder text =
        new StringBuilder(
            """
            #compdef ringout ringout.bat
            # Completion of ringout for zsh, made from its options.

            _ringout() {
              local -a commands
              if (( CURRENT == 2 )); then
                commands=(
            """);
    commands(root)
        .forEach(
            (name, command) ->
                text.append("      ").append(inZsh(name + ":" + summary(command))).append('\n'));
    text.append(
        """
            )
            _describe command commands
            return
          fi
          local command=$words[2]
          words=("${(@)words[2,-1]}")
          (( CURRENT-- ))
          case $command in
        """);
    commands(root)
        .forEach(
            (name, command) -> {
              text.append("    ").append(name).append(")\n      _arguments -s \\\n");
              optionsOfAll(command).forEach(option -> text.append(zsh(option)));
              String first =
                  commands(command).isEmpty()
                      ? "'*:file:_files'"
                      : "'1:what:("
                          + String.join(" ", commands(command).keySet())
                          + ")' '*:file:_files'";
              text.append("        ").append(first).append("\n      ;;\n");
            });
    return text.append("  esac\n}\n\n_ringout \"$@\"\n").toString();
  }

  private static String zsh(OptionSpec option) {
    StringBuilder text = new StringBuilder();
    for (String name : option.names()) {
      String value = "";
      if (option.arity().max() > 0) {
        String what =
            option.completionCandidates() != null
                ? "(" + String.join(" ", option.completionCandidates()) + ")"
                : takesFile(option) ? "_files" : "";
        value = ":" + option.paramLabel().replace(":", "\\:") + ":" + what;
      }
      text.append("        ")
          .append(
              inZsh(
                  "*"
                      + name
                      + "["
                      + description(option)
                          .replace("[", "\\[")
                          .replace("]", "\\]")
                          .replace(":", "\\:")
                      + "]"
                      + value))
          .append(" \\\n");
    }
    return text.toString();
  }

  private static String inZsh(String text) {
    return "'" + text.replace("'", "'\\''") + "'";
  }

  // ---- manual ----

  private static String manual(CommandSpec command, String name) {
    StringBuilder page = new StringBuilder(".\\\" Made from the options of the program.\n");
    String title = name.replace(' ', '-');
    page.append(".TH ").append(title.toUpperCase(Locale.ROOT)).append(" 1\n");
    page.append(".SH NAME\n").append(roff(title + " - " + summary(command))).append('\n');
    page.append(".SH SYNOPSIS\n").append(roff(synopsis(command, name))).append('\n');
    page.append(".SH DESCRIPTION\n");
    for (String paragraph : command.usageMessage().description()) {
      page.append(roff(paragraph)).append("\n.PP\n");
    }
    arguments(command, page);
    commands(command)
        .forEach(
            (sub, one) -> {
              page.append(".SH ")
                  .append(roff((name + " " + sub).toUpperCase(Locale.ROOT)))
                  .append('\n');
              page.append(roff(words(one.usageMessage().description()))).append('\n');
              if (command.parent() != null) {
                page.append(".PP\n").append(roff(synopsis(one, name + " " + sub))).append('\n');
                arguments(one, page);
              }
            });
    List<String> footer = List.of(command.usageMessage().footer());
    if (!footer.isEmpty()) {
      page.append(".SH NOTES\n").append(roff(String.join(" ", footer).strip())).append('\n');
    }
    return page.toString();
  }

  private static String synopsis(CommandSpec command, String name) {
    StringBuilder text = new StringBuilder(name);
    if (!options(command).isEmpty()) {
      text.append(" [OPTION]...");
    }
    if (!command.subcommands().isEmpty()) {
      text.append(" COMMAND");
    }
    for (PositionalParamSpec parameter : command.positionalParameters()) {
      boolean needed = parameter.arity().min() > 0;
      boolean several = parameter.arity().max() > 1 || parameter.index().isVariable();
      String label = parameter.paramLabel() + (several ? "..." : "");
      text.append(needed ? " " + label : " [" + label + "]");
    }
    return text.toString();
  }

  private static void arguments(CommandSpec command, StringBuilder page) {
    for (PositionalParamSpec parameter : command.positionalParameters()) {
      page.append(".TP\n.I ").append(roff(parameter.paramLabel())).append('\n');
      page.append(roff(words(parameter.description()))).append('\n');
    }
    for (OptionSpec option : options(command)) {
      String value = option.arity().max() > 0 ? " " + option.paramLabel() : "";
      page.append(".TP\n.B ").append(roff(String.join(", ", option.names()) + value)).append('\n');
      page.append(roff(description(option))).append('\n');
    }
  }

  /**
   * Text for the manual's formatter, to which a dot or a quote at the start of a line is a request.
   */
  private static String roff(String text) {
    String plain = text.replace("\\", "\\e").replace("-", "\\-").strip();
    return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
  }
}
