package baysheet.cli;

import baysheet.output.Console;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * What the package holds beside the jar, written from the commands at build time: the manual page,
 * and the completion for bash, zsh and fish.
 */
final class PackageFiles {
  private PackageFiles() {}

  /** Writes them below the folder that is given. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    for (Map.Entry<String, String> file : files().entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
  }

  /** Texts by file. */
  static Map<String, String> files() {
    Console silent =
        new Console(
            new PrintWriter(PrintWriter.nullWriter()),
            new PrintWriter(PrintWriter.nullWriter()),
            false);
    CommandLine program = Main.commandLine("", silent, LocalDate::now);
    return Map.of(
        "man/man1/baysheet.1", ManualPage.of(program),
        "completion/baysheet.bash", AutoComplete.bash("baysheet", program),
        "completion/baysheet.fish", FishCompletion.of(program));
  }

  /** What the shell fish completes: the commands, and the options of each. */
  private static final class FishCompletion {
    private static final String PROGRAM = "complete -c baysheet";

    private FishCompletion() {}

    static String of(CommandLine program) {
      List<CommandSpec> commands =
          program.getSubcommands().values().stream().map(CommandLine::getCommandSpec).toList();
      StringBuilder lines = new StringBuilder("# Completion of baysheet for fish.\n");
      for (CommandSpec command : commands) {
        String description = String.join(" ", command.usageMessage().description());
        lines
            .append(PROGRAM)
            .append(" -f -n __fish_use_subcommand -a ")
            .append(command.name())
            .append(" -d ")
            .append(quoted(description))
            .append('\n');
      }
      for (CommandSpec command : commands) {
        command.options().forEach(option -> lines.append(line(command, option)));
        command.positionalParameters().stream()
            .filter(it -> it.completionCandidates() != null)
            .forEach(
                it -> lines.append(start(command)).append(" -f").append(words(it)).append('\n'));
      }
      return lines.toString();
    }

    private static String line(CommandSpec command, OptionSpec option) {
      StringBuilder line = new StringBuilder(start(command));
      Stream.of(option.names())
          .forEach(
              name ->
                  line.append(name.startsWith("--") ? " -l " : " -s ")
                      .append(name.replaceFirst("^-+", "")));
      line.append(option.arity().max() == 0 ? "" : " -r");
      line.append(option.completionCandidates() == null ? "" : " -f" + words(option));
      String description = String.join(" ", option.description()).replace("%%", "%");
      return line.append(" -d ").append(quoted(description)).append('\n').toString();
    }

    private static String start(CommandSpec command) {
      return PROGRAM + " -n " + quoted("__fish_seen_subcommand_from " + command.name());
    }

    /** What can stand there. */
    private static String words(ArgSpec argument) {
      return " -a " + quoted(String.join(" ", argument.completionCandidates()));
    }

    /** In fish, only the quote itself and a backslash have a meaning between single quotes. */
    private static String quoted(String text) {
      return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
    }
  }
}
