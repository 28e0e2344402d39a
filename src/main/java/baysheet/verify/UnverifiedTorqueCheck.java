package baysheet.verify;

import baysheet.books.Fastener;
import baysheet.books.Moment;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Whether every figure that no book gives, or that does not fit its thread and class, is asked for
 * before anything comes off; and whether one that does not fit is used at hold points only, and no
 * mark of a wrench lies ready for it. Whether it fits is reckoned again from the book or the
 * override, not taken from the line's warnings.
 */
final class UnverifiedTorqueCheck {
  private static final Predicate<Fastener> DOUBTED =
      fastener -> fastener.plausibility().isDoubtful();

  private UnverifiedTorqueCheck() {}

  static List<String> faults(Sheet sheet, SheetIndex printed, Resolved resolved) {
    List<TorqueLine> doubtful =
        sheet.torque().stream().filter(line -> is(DOUBTED, resolved, line)).toList();
    List<String> faults = new ArrayList<>();
    for (TorqueLine line : sheet.torque()) {
      if ((doubtful.contains(line) || is(Fastener::isUnknown, resolved, line))
          && !isAskedFor(sheet, line)) {
        faults.add("line " + line.n() + " has no figure to rely on, and no stop asks for one");
      }
    }
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

  /** A check with a hold, and a step before the first that takes anything off leads to it. */
  private static boolean isAskedFor(Sheet sheet, TorqueLine line) {
    boolean stop =
        sheet.checks().stream()
            .anyMatch(
                check ->
                    check.hold()
                        && check.moment() == Moment.BEFORE_LIFTING
                        && check.name().equals("torque-of-" + line.fastener())
                        && check.places().containsAll(line.places()));
    return stop && leadsToIt(sheet);
  }

  private static boolean leadsToIt(Sheet sheet) {
    for (Sheet.SheetStep step : sheet.steps()) {
      boolean opens = !step.undo().isEmpty();
      boolean gate = step.source() instanceof StepSource.Checkpoint;
      if (opens || gate) {
        return gate;
      }
    }
    return false;
  }

  private static boolean isSet(TorqueLine line) {
    Stream<Optional<Quantity>> stages =
        line.method().stages().stream()
            .filter(TorqueLine.StageLine.Torque.class::isInstance)
            .map(stage -> ((TorqueLine.StageLine.Torque) stage).setting());
    Stream<Optional<Quantity>> rounds =
        line.method().rounds().stream().map(TorqueLine.Round::setting);
    return Stream.concat(stages, rounds).anyMatch(Optional::isPresent);
  }

  private static boolean is(Predicate<Fastener> kind, Resolved resolved, TorqueLine line) {
    ItemAt item = new ItemAt(line.fastener(), line.places().get(0));
    return resolved.thing(item) instanceof Bound.OfBook book && kind.test(book.values());
  }

  /** Making a set snug, which is tightened later, needs no figure. */
  private static boolean unasked(Sheet.SheetStep step, TorqueLine line) {
    boolean tightens = !line.visits().two() || step.phase() == Sheet.Phase.FINAL;
    return tightens && !step.hold();
  }
}
