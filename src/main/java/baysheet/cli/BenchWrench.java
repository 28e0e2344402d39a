package baysheet.cli;

import baysheet.torque.Dimension;
import baysheet.torque.Drive;
import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import baysheet.torque.Wrench;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;

/** A torque wrench described on the command line. */
final class BenchWrench {
  // ISO 6789 permits hand torque tools 4 % above 10 N·m.
  private static final BigDecimal USUAL_ACCURACY = new BigDecimal(4);

  private final OptionSpec from =
      Options.quantity("--from", "TORQUE", "The lowest mark of a wrench that is not in the crib.");

  private final OptionSpec to = Options.quantity("--to", "TORQUE", "The end of its scale.");

  private final OptionSpec step =
      Options.quantity("--step", "TORQUE", "From one mark to the next.");

  private final OptionSpec length =
      Options.quantity("--length", "LENGTH", "From its square to the middle of the hand.");

  List<OptionSpec> options() {
    return List.of(from, to, step, length);
  }

  /** Whether anything was said about a wrench. */
  boolean given() {
    return options().stream().anyMatch(option -> !Options.all(option).isEmpty());
  }

  /**
   * The wrench.
   *
   * @param day taken as the day of its calibration, for nothing else is known
   */
  Wrench wrench(Typed typed, LocalDate day) {
    return typed.read(
        Wrench.read(
            "the wrench",
            // A square that is not asked for: no socket is chosen here.
            Drive.HALF,
            torque(typed, from),
            torque(typed, to),
            torque(typed, step),
            USUAL_ACCURACY,
            lengthOf(typed),
            day));
  }

  private static Quantity torque(Typed typed, OptionSpec option) {
    return typed
        .quantity(option, Dimension.TORQUE)
        .orElseThrow(
            () -> typed.wrong("a wrench needs " + option.longestName() + ", as in 20 N·m"));
  }

  /** The length matters only with an extension; without one, any will do. */
  private Quantity lengthOf(Typed typed) {
    Optional<Quantity> given = typed.quantity(length, Dimension.LENGTH);
    return given.orElse(new Quantity(BigDecimal.ONE, Unit.METRE));
  }

  boolean hasLength() {
    return !Options.all(length).isEmpty();
  }
}
