package baysheet.cli;

import baysheet.torque.Dimension;
import baysheet.torque.Misread;
import baysheet.torque.Quantity;
import baysheet.torque.QuantityText;
import baysheet.torque.Reading;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** Reads what was typed behind an option; what cannot be read makes the command line wrong. */
final class Typed {
  private final CommandLine command;

  Typed(CommandLine command) {
    this.command = command;
  }

  /** A quantity behind an option; empty when nothing was typed. */
  Optional<Quantity> quantity(OptionSpec option, Dimension expected) {
    return word(option, text -> QuantityText.quantity(text, expected));
  }

  /** One word behind an option; empty when nothing was typed. */
  <T> Optional<T> word(OptionSpec option, Function<String, Reading<T>> read) {
    return Options.<String>given(option).map(text -> named(option, read.apply(text)));
  }

  private <T> T named(OptionSpec option, Reading<T> reading) {
    return reading instanceof Misread<T> misread
        ? read(new Misread<>(option.longestName() + ": " + misread.what(), misread.expected()))
        : read(reading);
  }

  /** What was read. */
  <T> T read(Reading<T> reading) {
    if (reading instanceof Misread<T> misread) {
      throw wrong(misread.what()).expecting(misread.expected());
    }
    return reading.found().orElseThrow();
  }

  WrongCommandLine wrong(String what) {
    return new WrongCommandLine(command, what);
  }
}
