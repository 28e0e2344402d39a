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
import picocli.CommandLine.Option;

/** A torque wrench described on the command line. */
final class BenchWrench {
  // ISO 6789 permits hand torque tools 4 % above 10 N·m.
  private static final BigDecimal USUAL_ACCURACY = new BigDecimal(4);

  @Option(
      names = "--from",
      arity = "1..2",
      paramLabel = "TORQUE",
      description = "The lowest mark of a wrench that is not in the crib.")
  private List<String> from = List.of();

  @Option(
      names = "--to",
      arity = "1..2",
      paramLabel = "TORQUE",
      description = "The end of its scale.")
  private List<String> to = List.of();

  @Option(
      names = "--step",
      arity = "1..2",
      paramLabel = "TORQUE",
      description = "From one mark to the next.")
  private List<String> step = List.of();

  @Option(
      names = "--length",
      arity = "1..2",
      paramLabel = "LENGTH",
      description = "From its square to the middle of the hand.")
  private List<String> length = List.of();

  /** Whether anything was said about a wrench. */
  boolean given() {
    return !(from.isEmpty() && to.isEmpty() && step.isEmpty() && length.isEmpty());
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
            torque(typed, "--from", from),
            torque(typed, "--to", to),
            torque(typed, "--step", step),
            USUAL_ACCURACY,
            lengthOf(typed),
            day));
  }

  private static Quantity torque(Typed typed, String option, List<String> words) {
    return typed
        .quantity(option, words, Dimension.TORQUE)
        .orElseThrow(() -> typed.wrong("a wrench needs " + option + ", as in 20 N·m"));
  }

  /** The length matters only with an extension; without one, any will do. */
  private Quantity lengthOf(Typed typed) {
    Optional<Quantity> given = typed.quantity("--length", length, Dimension.LENGTH);
    return given.orElse(new Quantity(BigDecimal.ONE, Unit.METRE));
  }

  boolean hasLength() {
    return !length.isEmpty();
  }
}
