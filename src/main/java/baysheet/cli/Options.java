package baysheet.cli;

import baysheet.torque.Unit;
import java.util.List;
import java.util.Optional;
import java.util.Stack;
import java.util.regex.Pattern;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Makes what commands take, and reads what was given. */
final class Options {
  private static final Pattern BARE_FIGURE = Pattern.compile("[0-9][0-9./-]*");

  private Options() {}

  /** What is there or not. */
  static OptionSpec.Builder flag(String description, String name, String... others) {
    return OptionSpec.builder(name, others).type(boolean.class).description(description);
  }

  /**
   * An option with one value.
   *
   * @param label what stands for the value in the help, or the values with a line between two
   */
  static OptionSpec one(String name, String label, Class<?> type, String description) {
    OptionSpec.Builder option =
        OptionSpec.builder(name).paramLabel(label).type(type).description(description);
    return (label.contains("|") ? option.completionCandidates(List.of(label.split("\\|"))) : option)
        .build();
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
