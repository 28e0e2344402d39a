package baysheet.plan;

import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.torque.Believability;
import baysheet.torque.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether every figure that does not fit its thread and class is used at hold points only, and no
 * mark of a wrench lies ready for it. Whether it fits is reckoned again from the book or the
 * override, not taken from the line's warnings.
 */
final class DoubtsAsked {
  private DoubtsAsked() {}

  static List<String> faults(Sheet sheet, Printed printed, Resolved resolved) {
    List<TorqueLine> doubtful =
        sheet.torque().stream().filter(line -> doubtful(resolved, line)).toList();
    List<String> faults = new ArrayList<>();
    for (TorqueLine line : doubtful) {
      printed.naming(line).stream()
          .filter(step -> unasked(step, line))
          .map(step -> "step " + step.n() + " is no hold point, and its figure is in doubt")
          .forEach(faults::add);
      if (isSet(line)) {
        faults.add("line " + line.n() + " gives a mark to set, and its figure is in doubt");
      }
    }
    return faults;
  }

  private static boolean isSet(TorqueLine line) {
    Stream<Optional<Quantity>> stages =
        line.stages().stream()
            .filter(TorqueLine.StageLine.Torque.class::isInstance)
            .map(stage -> ((TorqueLine.StageLine.Torque) stage).setting());
    Stream<Optional<Quantity>> rounds = line.rounds().stream().map(TorqueLine.Round::setting);
    return Stream.concat(stages, rounds).anyMatch(Optional::isPresent);
  }

  private static boolean doubtful(Resolved resolved, TorqueLine line) {
    return resolved.thing(new ItemAt(line.fastener(), line.places().get(0)))
            instanceof Bound.OfBook book
        && Believability.of(
                book.values().tightening().value(),
                book.values().thread().map(Located::value),
                book.values().strength().map(Located::value))
            .isPresent();
  }

  /** Making a set snug, which is tightened later, needs no figure. */
  private static boolean unasked(Sheet.SheetStep step, TorqueLine line) {
    boolean tightens = !line.twoVisits() || step.phase() == Sheet.Phase.FINAL;
    return tightens && !step.hold();
  }
}
