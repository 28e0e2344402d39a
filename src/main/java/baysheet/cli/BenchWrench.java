package baysheet.cli;

import baysheet.record.BenchTorque.Accuracy;
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
  // ISO 6789-1, as a wrench maker's manual gives it: 4 % where the maximum is above 10 N·m, else 6.
  private static final Quantity SMALL = Quantity.of("10", Unit.NEWTON_METRE);
  private static final BigDecimal OF_SMALL = new BigDecimal(6);
  private static final BigDecimal OF_OTHERS = new BigDecimal(4);

  private final OptionSpec from =
      Options.quantity("--from", "TORQUE", "The lowest mark of a wrench that is not in the crib.");

  private final OptionSpec to = Options.quantity("--to", "TORQUE", "The end of its scale.");

  private final OptionSpec step =
      Options.quantity("--step", "TORQUE", "From one mark to the next.");

  private final OptionSpec length =
      Options.quantity(
          "--length", "LENGTH", "From its square to the middle of the hand; counts with --reach.");

  private final OptionSpec accuracy =
      Options.quantity(
          "--accuracy",
          "SHARE",
          "Its permissible deviation (default: by ISO 6789-1, 6 %% up to a maximum of 10 N·m, else"
              + " 4 %%).");

  List<OptionSpec> options() {
    return List.of(from, to, step, length, accuracy);
  }

  /** Whether anything was said about a wrench. */
  boolean given() {
    return options().stream().anyMatch(option -> Options.given(option).isPresent());
  }

  /**
   * The wrench.
   *
   * @param day taken as the day of its calibration, for nothing else is known
   */
  Wrench wrench(OptionParser typed, LocalDate day) {
    Quantity most = torque(typed, to);
    return typed.read(
        Wrench.read(
            "the wrench",
            // A square that is not asked for: no socket is chosen here.
            Drive.HALF,
            torque(typed, from),
            most,
            torque(typed, step),
            accuracy(typed).percent(),
            Optional.of(lengthOf(typed)),
            day));
  }

  /** Its deviation as given, or that of its class. */
  Accuracy accuracy(OptionParser typed) {
    return typed
        .quantity(accuracy, Dimension.SHARE)
        .map(given -> new Accuracy(given.value(), false))
        .orElseGet(
            () -> new Accuracy(torque(typed, to).isAbove(SMALL) ? OF_OTHERS : OF_SMALL, true));
  }

  private static Quantity torque(OptionParser typed, OptionSpec option) {
    return typed
        .quantity(option, Dimension.TORQUE)
        .orElseThrow(
            () ->
                typed.wrong(
                    "a wrench needs --from, --to and --step, as in 20 N·m; there is no "
                        + option.longestName()));
  }

  /** The length matters only with an extension; without one, any will do. */
  private Quantity lengthOf(OptionParser typed) {
    Optional<Quantity> given = typed.quantity(length, Dimension.LENGTH);
    return given.orElse(new Quantity(BigDecimal.ONE, Unit.METRE));
  }

  /** Reports what is missing or would be ignored. */
  void refuse(OptionParser typed, boolean extension) {
    List.of(from, to, step).forEach(option -> torque(typed, option));
    boolean given = Options.given(length).isPresent();
    if (extension && !given) {
      throw typed.wrong("with --reach the wrench's --length counts: give it as well");
    }
    if (given && !extension) {
      throw typed.wrong("--length would be ignored: it counts with --reach only");
    }
  }
}
