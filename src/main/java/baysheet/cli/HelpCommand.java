package baysheet.cli;

import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.report.ProblemCode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that prints the page of a problem, or the help of the program or of a command. */
final class HelpCommand extends Command {

  private final PositionalParamSpec topic =
      add(
          Options.at(
                  0,
                  "CODE|COMMAND",
                  "0..1",
                  String.class,
                  "The code of a problem, such as unknown-key; or a command. Without it: the list"
                      + " of commands.")
              .toBuilder()
              .completionCandidates(() -> known().iterator())
              .build());

  HelpCommand(Console console) {
    super(console, "help", "Explain a problem by its code, or show the help of a command.");
  }

  @Override
  public Integer call() {
    CommandLine program = line().getParent();
    Optional<String> asked = Options.given(topic);
    Optional<CommandLine> usage =
        asked
            .map(name -> Optional.ofNullable(program.getSubcommands().get(name)))
            .orElse(Optional.of(program));
    console.print(usage.map(this::usage).orElseGet(() -> page(asked.orElseThrow())));
    return Exit.DONE;
  }

  private String usage(CommandLine command) {
    return command.getUsageMessage(console.coloured() ? Ansi.ON : Ansi.OFF);
  }

  private String page(String code) {
    return ProblemCode.of(code)
        .map(ProblemCode::page)
        .orElseThrow(
            () ->
                wrong("there is no problem code and no command \"" + code + "\"")
                    .near(code, known(), "a code, which the last line of each problem names"));
  }

  private List<String> known() {
    return Stream.concat(
            line().getParent().getSubcommands().keySet().stream(),
            Stream.of(ProblemCode.values()).map(ProblemCode::word))
        .toList();
  }
}
