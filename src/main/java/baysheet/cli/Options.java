package baysheet.cli;

import baysheet.torque.Unit;
import java.util.List;
import java.util.Optional;
import java.util.Stack;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * What commands take, given to the command-line library in calls. It also reads annotations, but
 * that takes an eighth of the time from a cold start to a sheet.
 */
final class Options {
  private static final String VERSION = "baysheet 0.1.0";

  private static final Pattern BARE_FIGURE = Pattern.compile("[0-9][0-9./-]*");

  private Options() {}

  /** A command that can also tell what it takes, and of which version it is. */
  static CommandSpec command(
      String name, String description, Callable<Integer> command, List<? extends ArgSpec> takes) {
    CommandSpec spec = CommandSpec.wrapWithoutInspection(command).name(name).version(VERSION);
    spec.usageMessage().description(description);
    List<String> examples = Examples.of(name);
    if (!examples.isEmpty()) {
      spec.usageMessage().footerHeading("%nFor example:%n");
      spec.usageMessage().footer(examples.stream().map(Options::shown).toArray(String[]::new));
    }
    takes.forEach(spec::add);
    spec.addOption(
        flag("Show this help and do nothing else.", "-h", "--help").usageHelp(true).build());
    spec.addOption(
        flag("Show the version and do nothing else.", "-V", "--version").versionHelp(true).build());
    return spec;
  }

  /** A line of the help, in which the library takes some signs for its own. */
  private static String shown(String example) {
    return "  " + example.replace("%", "%%");
  }

  /** What is there or not. */
  static OptionSpec flag(String name, String description) {
    return flag(description, name, new String[0]).build();
  }

  /** The same under several names. */
  static OptionSpec.Builder flag(String description, String name, String... others) {
    return OptionSpec.builder(name, others).type(boolean.class).description(description);
  }

  /**
   * An option with one value.
   *
   * @param label what stands for the value in the help
   */
  static OptionSpec one(String name, String label, Class<?> type, String description) {
    return OptionSpec.builder(name).paramLabel(label).type(type).description(description).build();
  }

  /**
   * An option with a quantity. Its unit may stand apart from its figure, and only a unit is taken
   * then: what else follows is none of the option's.
   */
  static OptionSpec quantity(String name, String label, String description) {
    return OptionSpec.builder(name)
        .paramLabel(label)
        .arity("1")
        .type(String.class)
        .parameterConsumer(Options::quantityOf)
        .description(description)
        .build();
  }

  private static void quantityOf(Stack<String> words, ArgSpec option, CommandSpec command) {
    if (words.isEmpty() || words.peek().startsWith("--")) {
      throw new CommandLine.MissingParameterException(command.commandLine(), option, "no value");
    }
    String figure = words.pop();
    boolean apart = BARE_FIGURE.matcher(figure).matches() && !words.isEmpty();
    option.setValue(
        apart && Unit.of(words.peek()).isPresent() ? figure + " " + words.pop() : figure);
  }

  /** All that stands without an option before it. */
  static PositionalParamSpec rest(String label, String arity, Class<?> type, String description) {
    return PositionalParamSpec.builder()
        .paramLabel(label)
        .arity(arity)
        .required(!arity.startsWith("0"))
        .type(List.class)
        .auxiliaryTypes(type)
        .description(description)
        .build();
  }

  /** What stands at one place. */
  static PositionalParamSpec at(
      int place, String label, String arity, Class<?> type, String description) {
    return PositionalParamSpec.builder()
        .index(String.valueOf(place))
        .paramLabel(label)
        .arity(arity)
        .required(!arity.startsWith("0"))
        .type(type)
        .description(description)
        .build();
  }

  /** What was given, if anything was. */
  static <T> Optional<T> given(ArgSpec one) {
    return Optional.ofNullable(one.<T>getValue());
  }

  /** All that was given. */
  static <T> List<T> all(ArgSpec many) {
    List<T> given = many.getValue();
    return given == null ? List.of() : given;
  }

  static boolean isGiven(OptionSpec flag) {
    return Boolean.TRUE.equals(flag.getValue());
  }
}
