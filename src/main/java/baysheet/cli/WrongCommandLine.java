package baysheet.cli;

import baysheet.report.Nearest;
import baysheet.report.ProblemText;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * A slip in the command line, in one sentence with what was meant or expected below it. What the
 * command-line library found is put into our own words: it speaks to programmers.
 */
final class WrongCommandLine extends CommandLine.ParameterException {
  private static final long serialVersionUID = 1;

  private final String near;
  private final String expected;

  WrongCommandLine(CommandLine command, String what) {
    this(command, what, "", "");
  }

  private WrongCommandLine(CommandLine command, String what, String near, String expected) {
    super(command, what);
    this.near = near;
    this.expected = expected;
  }

  /** With the known name that was probably meant, or else with all of them. */
  WrongCommandLine near(String written, Collection<String> known) {
    return near(written, known, known.isEmpty() ? "" : "one of " + String.join(", ", known));
  }

  /** With the known name that was probably meant, or else with what would be right. */
  WrongCommandLine near(String written, Collection<String> known, String right) {
    return Nearest.of(written, known)
        .map(name -> new WrongCommandLine(getCommandLine(), getMessage(), name, ""))
        .orElseGet(() -> expecting(right));
  }

  /** With the spelling that was probably meant, or else with what would be right. */
  WrongCommandLine expecting(String right, Optional<String> meant) {
    return meant
        .map(it -> new WrongCommandLine(getCommandLine(), getMessage(), it, ""))
        .orElseGet(() -> expecting(right));
  }

  WrongCommandLine expecting(String right) {
    return new WrongCommandLine(getCommandLine(), getMessage(), "", right);
  }

  /** The answer to a wrong command line. */
  static String print(CommandLine.ParameterException fault) {
    WrongCommandLine wrong = fault instanceof WrongCommandLine ours ? ours : of(fault);
    return ProblemText.print(
        "baysheet",
        wrong.getMessage(),
        Optional.of(wrong.near).filter(it -> !it.isEmpty()),
        Optional.of(wrong.expected).filter(it -> !it.isEmpty()),
        wrong.getCommandLine().getCommandSpec().qualifiedName() + " --help");
  }

  private static WrongCommandLine of(CommandLine.ParameterException fault) {
    CommandLine command = fault.getCommandLine();
    if (fault instanceof CommandLine.UnmatchedArgumentException unmatched) {
      String first = unmatched.getUnmatched().get(0);
      return unmatched.isUnknownOption() ? unknownOption(command, first) : tooMany(command, first);
    }
    if (fault instanceof CommandLine.MissingParameterException missing) {
      return missing(command, missing.getMissing().get(0));
    }
    if (fault instanceof CommandLine.OverwrittenOptionException twice) {
      return new WrongCommandLine(
          command, "the option " + name(twice.getOverwritten()) + " is given twice");
    }
    return fault.getArgSpec() == null || fault.getValue() == null
        ? new WrongCommandLine(command, fault.getMessage())
        : notTaken(command, fault.getArgSpec(), fault.getValue());
  }

  private static WrongCommandLine unknownOption(CommandLine command, String written) {
    CommandSpec spec = command.getCommandSpec();
    String option = written.replaceFirst("=.*", "");
    List<String> known =
        spec.options().stream().flatMap(it -> Stream.of(it.names())).sorted().toList();
    return isProgram(spec)
        ? new WrongCommandLine(command, "baysheet itself has no option " + quoted(option))
            .expecting("a command first, and its options behind it")
        : new WrongCommandLine(
                command, "the command " + spec.name() + " has no option " + quoted(option))
            .near(option, known);
  }

  private static WrongCommandLine tooMany(CommandLine command, String written) {
    CommandSpec spec = command.getCommandSpec();
    for (ArgSpec list : spec.positionalParameters()) {
      if (list.arity().isVariable()) {
        // No word is too many here: it is one that the library could not read.
        return notTaken(command, list, written);
      }
    }
    return isProgram(spec)
        ? new WrongCommandLine(command, "baysheet has no command " + quoted(written))
            .near(written, command.getSubcommands().keySet())
        : new WrongCommandLine(
                command, quoted(written) + " is one word too many for the command " + spec.name())
            .expecting(
                spec.positionalParameters().stream()
                    .map(it -> it.required() ? it.paramLabel() : "[" + it.paramLabel() + "]")
                    .collect(
                        Collectors.joining(" ", spec.qualifiedName() + " ", " and no more words")));
  }

  private static WrongCommandLine missing(CommandLine command, ArgSpec what) {
    return what instanceof OptionSpec
        ? new WrongCommandLine(command, "the option " + name(what) + " needs a value")
            .expecting(name(what) + " " + what.paramLabel())
        : new WrongCommandLine(
                command,
                "the command " + command.getCommandName() + " needs a " + what.paramLabel())
            .expecting(what.paramLabel() + " is " + described(what));
  }

  /** What an argument is for, without what the library needs to have escaped. */
  private static String described(ArgSpec what) {
    String description = what.description()[0].replace("%%", "%");
    return description.substring(0, 1).toLowerCase(Locale.ROOT) + description.substring(1);
  }

  private static WrongCommandLine notTaken(CommandLine command, ArgSpec what, String value) {
    if (what.type() == boolean.class) {
      return new WrongCommandLine(
          command, "the option " + name(what) + " takes no value, not " + quoted(value));
    }
    String taken = what.type() == Integer.class ? "a whole number from 1" : "a file or folder";
    return new WrongCommandLine(command, name(what) + " takes " + taken + ", not " + quoted(value));
  }

  private static boolean isProgram(CommandSpec spec) {
    return spec.parent() == null;
  }

  private static String name(ArgSpec what) {
    return what instanceof OptionSpec option ? option.longestName() : what.paramLabel();
  }

  private static String quoted(String written) {
    return '"' + written + '"';
  }
}
