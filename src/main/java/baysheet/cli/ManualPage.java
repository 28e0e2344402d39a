package baysheet.cli;

import baysheet.output.Console;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The manual page of the program, in the language of man(7), from what its commands take. */
final class ManualPage {
  private static final Map<String, String> EXITS =
      new TreeMap<>(
          Map.of(
              "0", "Done.",
              "1", "There are problems in files. What could be written was written.",
              "2", "The command line is wrong.",
              "3", "Something could not be read or written, or there is no suitable Java.",
              "70", "An internal error."));

  private static final Map<String, String> ENVIRONMENT =
      new TreeMap<>(
          Map.of(
              "JAVA_HOME",
              "The folder of the Java to use. Without it, the one in PATH is used.",
              "XDG_CACHE_HOME",
              "Below it, in baysheet, is the class-data archive that shortens the start. The"
                  + " default is .cache in the home folder. The archive can be deleted at any"
                  + " time.",
              ShopChoice.VARIABLE,
              "The shop folder for the commands whose --shop says so: if none is named, and neither"
                  + " this folder, nor one above it, nor jobs is one.",
              "NO_COLOR",
              "If it is set, nothing is printed in bold.",
              Console.TRACE,
              "If it is set, an internal error prints its stack trace."));

  private final StringBuilder page = new StringBuilder();

  private ManualPage() {}

  static String of(CommandLine program) {
    ManualPage manual = new ManualPage();
    manual.write(program);
    return manual.page.toString();
  }

  private void write(CommandLine program) {
    CommandSpec spec = program.getCommandSpec();
    macro("TH", spec.name().toUpperCase(Locale.ROOT), "1", "", spec.version()[0], "");
    macro("SH", "NAME");
    text(spec.name() + " - " + first(spec.usageMessage().description()));
    macro("SH", "SYNOPSIS");
    text(spec.name() + " COMMAND [OPTION ...] [ARGUMENT ...]");
    macro("SH", "COMMANDS");
    program.getSubcommands().values().forEach(this::command);
    macro("SH", "EXIT STATUS");
    EXITS.forEach(this::entry);
    macro("SH", "ENVIRONMENT");
    ENVIRONMENT.forEach(this::entry);
  }

  private void command(CommandLine command) {
    CommandSpec spec = command.getCommandSpec();
    macro("SS", spec.qualifiedName());
    text(first(spec.usageMessage().description()));
    macro("PP");
    text(command.getHelp().synopsis(0).strip().replaceAll("\\s+", " "));
    spec.positionalParameters().forEach(it -> entry(it.paramLabel(), described(it)));
    spec.options().stream()
        .filter(it -> !it.usageHelp() && !it.versionHelp())
        .forEach(it -> entry(String.join(", ", names(it)), described(it)));
    List<String> examples = Examples.of(spec.name());
    if (!examples.isEmpty()) {
      macro("PP");
      macro("EX");
      examples.forEach(this::text);
      macro("EE");
    }
  }

  private static List<String> names(OptionSpec option) {
    String value = option.arity().max() == 0 ? "" : " " + option.paramLabel();
    return Stream.of(option.names()).map(name -> name + value).toList();
  }

  /** The library takes a percent sign for the start of a format. */
  private static String described(ArgSpec argument) {
    return String.join(" ", argument.description()).replace("%%", "%");
  }

  private static String first(String[] lines) {
    return String.join(" ", lines);
  }

  private void entry(String name, String text) {
    macro("TP");
    page.append("\\fB").append(escaped(name)).append("\\fR\n");
    text(text);
  }

  private void macro(String name, String... arguments) {
    page.append('.').append(name);
    for (String argument : arguments) {
      page.append(" \"").append(escaped(argument)).append('"');
    }
    page.append('\n');
  }

  private void text(String line) {
    // A point or an apostrophe at the beginning of a line would begin a request.
    page.append("\\&").append(escaped(line)).append('\n');
  }

  private static String escaped(String text) {
    // Not every terminal has the sign for three points.
    return text.replace("…", "...").replace("\\", "\\e").replace("-", "\\-").replace("\"", "\\(dq");
  }
}
