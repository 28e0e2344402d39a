package baysheet.plan.content;

import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.plan.graph.Lifting;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Under which heading a line stands. Before the vehicle goes up, while it moves and once it is down
 * a heading names no place.
 */
record StepHeading(Sheet.Title title, List<Place> places) {
  private static StepHeading of(Sheet.Title title) {
    return new StepHeading(title, List.of());
  }

  /** One for each line. */
  static List<StepHeading> of(Resolved resolved, List<PlacedStep> lines) {
    Finder finder = new Finder(resolved, lines);
    return IntStream.range(0, lines.size()).mapToObj(finder::heading).toList();
  }

  private record Finder(Resolved resolved, List<PlacedStep> lines) {
    private StepHeading heading(int index) {
      return blocks(index).map(StepHeading::of).orElseGet(() -> heading(lines.get(index)));
    }

    /**
     * From the first step that brings the vehicle onto blocks to the last that takes it off them.
     */
    private Optional<Sheet.Title> blocks(int index) {
      Optional<StepSource.BlocksPart> before =
          blocks(lines.subList(0, index + 1)).reduce((first, last) -> last);
      Optional<StepSource.BlocksPart> after =
          blocks(lines.subList(index, lines.size())).findFirst();
      if (before.isEmpty() || after.isEmpty()) {
        return Optional.empty();
      }
      if (!before.get().isOn()) {
        return after.filter(part -> !part.isOn()).map(part -> Sheet.Title.OFF_BLOCKS);
      }
      boolean there = after.get().compareTo(StepSource.BlocksPart.LOWER_AXLE_ONTO) > 0;
      return Optional.of(there ? Sheet.Title.ON_BLOCKS : Sheet.Title.ONTO_BLOCKS);
    }

    private static Stream<StepSource.BlocksPart> blocks(List<PlacedStep> lines) {
      return lines.stream()
          .map(line -> line.step().source())
          .filter(StepSource.Blocks.class::isInstance)
          .map(source -> ((StepSource.Blocks) source).part());
    }

    private StepHeading heading(PlacedStep line) {
      if (line.step().source() instanceof StepSource.HeightChange change) {
        boolean stays = change.from() == change.to();
        return StepHeading.of(stays ? title(line.moment()) : title(change.to()));
      }
      if (line.step().source() instanceof StepSource.Chocks chocks) {
        boolean raised = line.moment() == Moment.RAISED;
        return StepHeading.of(
            !raised ? title(line.moment()) : chocks.set() ? Sheet.Title.LOWER : Sheet.Title.RAISE);
      }
      // What makes sure that the vehicle stands firmly is still raising it.
      if (Lifting.holds(resolved, line.undo()) || Lifting.isRaising(resolved, line.step())) {
        return StepHeading.of(Sheet.Title.RAISE);
      }
      if (Lifting.holds(resolved, line.doUp()) || Lifting.isLowering(resolved, line.step())) {
        return StepHeading.of(Sheet.Title.LOWER);
      }
      boolean down =
          line.moment().compareTo(Moment.ON_THE_GROUND) > 0
              || (line.step().moment().equals(Optional.of(Moment.ON_THE_GROUND))
                  && line.places().equals(List.of(Place.VEHICLE)));
      Sheet.Phase phase = line.step().phase();
      if (line.height() == Height.WHEELS_CLEAR && isOfAllWheels(line.step())) {
        return StepHeading.of(Sheet.Title.WHEELS_CLEAR);
      }
      if (line.moment() == Moment.BEFORE_LIFTING || down || phase == Sheet.Phase.FINAL) {
        return StepHeading.of(title(line.moment()));
      }
      return new StepHeading(
          switch (phase) {
            case OPEN -> Sheet.Title.REMOVAL;
            case CLOSE, CHECK -> Sheet.Title.REFITTING;
            default -> Sheet.Title.WORK;
          },
          line.places());
    }

    private boolean isOfAllWheels(PlannedStep step) {
      return step.source() instanceof StepSource.Check check
          && resolved.catalogue().rules().get(check.rule()).step().orElseThrow().once();
    }

    private static Sheet.Title title(Moment moment) {
      return switch (moment) {
        case BEFORE_LIFTING -> Sheet.Title.BEFORE_LIFTING;
        case RAISED -> Sheet.Title.BEFORE_LOWERING;
        case BEFORE_MOVING -> Sheet.Title.BEFORE_MOVING;
        case ROAD_TEST -> Sheet.Title.ROAD_TEST;
        case HAND_OVER -> Sheet.Title.HAND_OVER;
        case RE_CHECK -> Sheet.Title.RE_CHECK;
        default -> Sheet.Title.ON_THE_GROUND;
      };
    }

    private static Sheet.Title title(Height to) {
      return switch (to) {
        case GROUND -> Sheet.Title.LOWER;
        case WHEELS_CLEAR -> Sheet.Title.WHEELS_CLEAR;
        case WORKING, STANDS -> Sheet.Title.RAISE;
      };
    }
  }
}
