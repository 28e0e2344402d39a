package baysheet.cli;

import baysheet.torque.Dimension;
import baysheet.torque.ParseFailure;
import baysheet.torque.ParseResult;
import baysheet.torque.Quantity;
import baysheet.torque.QuantityText;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** Reads what was typed behind an option; what cannot be read makes the command line wrong. */
final class OptionParser {
  private final CommandLine command;

  OptionParser(CommandLine command) {
    this.command = command;
  }

  /** A quantity behind an option; empty when nothing was typed. */
  Optional<Quantity> quantity(OptionSpec option, Dimension expected) {
    return word(option, text -> QuantityText.quantity(text, expected));
  }

  /** One word behind an option; empty when nothing was typed. */
  <T> Optional<T> word(OptionSpec option, Function<String, ParseResult<T>> read) {
    return Options.<String>given(option).map(text -> named(option, read.apply(text)));
  }

  private <T> T named(OptionSpec option, ParseResult<T> reading) {
    return reading instanceof ParseFailure<T> misread
        ? read(
            new ParseFailure<>(
                option.longestName() + ": " + misread.what(),
                misread.expected(),
                misread.nearest()))
        : read(reading);
  }

  /** What was read. */
  <T> T read(ParseResult<T> reading) {
    if (reading instanceof ParseFailure<T> misread) {
      throw wrong(misread.what()).expecting(misread.expected(), misread.nearest());
    }
    return reading.found().orElseThrow();
  }

  WrongCommandLine wrong(String what) {
    return new WrongCommandLine(command, what);
  }
}
