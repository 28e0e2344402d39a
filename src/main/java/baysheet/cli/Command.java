package baysheet.cli;

import baysheet.output.Console;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * A command: its fields are the options and words that it takes, {@link #call} reads them. They are
 * given to the command-line library in calls, for reading annotations takes an eighth of the time
 * from a cold start to a sheet.
 */
abstract class Command implements Callable<Integer> {
  private static final String VERSION = "baysheet 0.1.0";

  final Console console;

  private final CommandSpec spec;

  Command(Console console, String name, String description) {
    this.console = console;
    spec = CommandSpec.wrapWithoutInspection(this).name(name).version(VERSION);
    spec.usageMessage().description(description);
    List<String> examples = Examples.of(name);
    if (!examples.isEmpty()) {
      spec.usageMessage().footerHeading("%nFor example:%n");
      spec.usageMessage().footer(examples.stream().map(Command::shown).toArray(String[]::new));
    }
    spec.addOption(
        Options.flag("Show this help and do nothing else.", "-h", "--help")
            .usageHelp(true)
            .build());
    spec.addOption(
        Options.flag("Show the version and do nothing else.", "-V", "--version")
            .versionHelp(true)
            .build());
  }

  /** A line of the help, in which the library takes some signs for its own. */
  private static String shown(String example) {
    return "  " + example.replace("%", "%%");
  }

  final CommandSpec spec() {
    return spec;
  }

  final CommandLine line() {
    return spec.commandLine();
  }

  final WrongCommandLine wrong(String what) {
    return new WrongCommandLine(line(), what);
  }

  /** Takes an option or a word. */
  final <T extends ArgSpec> T add(T argument) {
    spec.add(argument);
    return argument;
  }

  /**
   * Takes an option with one value.
   *
   * @param label what stands for the value in the help
   */
  final OptionSpec option(String name, String label, Class<?> type, String description) {
    return add(Options.one(name, label, type, description));
  }

  final OptionSpec flag(String name, String description) {
    return add(Options.flag(description, name).build());
  }

  final OptionSpec shop() {
    return option("--shop", "DIR", Path.class, "The shop folder (default: the one here or jobs/).");
  }

  /** Takes what stands at one place. */
  final PositionalParamSpec at(
      int place, String label, String arity, Class<?> type, String description) {
    return add(Options.at(place, label, arity, type, description));
  }

  /** Takes all that stands without an option before it. */
  final PositionalParamSpec rest(String label, String arity, Class<?> type, String description) {
    return add(Options.rest(label, arity, type, description));
  }
}
