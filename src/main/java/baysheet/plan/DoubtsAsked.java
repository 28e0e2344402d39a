package baysheet.plan;

import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.torque.Believability;
import java.util.List;

/**
 * Whether every figure that does not fit its thread and class is used at hold points only. Whether
 * it fits is reckoned again from the book or the override, not taken from the line's warnings.
 */
final class DoubtsAsked {
  private DoubtsAsked() {}

  static List<String> faults(Sheet sheet, Printed printed, Resolved resolved) {
    return sheet.torque().stream()
        .filter(line -> doubtful(resolved, line))
        .flatMap(line -> printed.naming(line).stream().filter(step -> unasked(step, line)))
        .map(step -> "step " + step.n() + " is no hold point, and its figure is in doubt")
        .toList();
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
