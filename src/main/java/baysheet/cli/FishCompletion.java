package baysheet.cli;

import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** What the shell fish completes: the commands, and the options of each. */
final class FishCompletion {
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
    }
    return lines.toString();
  }

  private static String line(CommandSpec command, OptionSpec option) {
    StringBuilder line = new StringBuilder(PROGRAM);
    line.append(" -n ").append(quoted("__fish_seen_subcommand_from " + command.name()));
    Stream.of(option.names())
        .forEach(
            name ->
                line.append(name.startsWith("--") ? " -l " : " -s ")
                    .append(name.replaceFirst("^-+", "")));
    line.append(option.arity().max() == 0 ? "" : " -r");
    String description = String.join(" ", option.description()).replace("%%", "%");
    return line.append(" -d ").append(quoted(description)).append('\n').toString();
  }

  /** In fish, only the quote itself and a backslash have a meaning between single quotes. */
  private static String quoted(String text) {
    return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
  }
}
