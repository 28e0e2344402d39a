package baysheet.sheet;

import baysheet.books.Bay;
import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.Step;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Where a step of a sheet comes from: a procedure, a rule, or the planner. */
public sealed interface StepSource {
  /** Names the step the same way on every sheet; its place is said beside it. */
  String id();

  Sheet.Phase phase();

  /** Whether the planner has the parking brake applied with it. */
  default boolean appliesBrake() {
    return this instanceof HeightChange change
        ? change.part() == HeightPart.BRAKE
        : this instanceof Blocks blocks
            && blocks.part().isOfBrake()
            && blocks.part() != BlocksPart.LET_ROLL;
  }

  /**
   * A step as a procedure writes it.
   *
   * @param chain {@code OPEN}, {@code WORK} or {@code CLOSE}
   * @param index where it stands in that chain, counted from 1
   */
  record WrittenAt(String procedure, Sheet.Phase chain, int index) {
    /** Where a procedure writes a step in one of its chains. */
    public static WrittenAt of(Procedure procedure, Sheet.Phase chain, Step step) {
      int index = chain(procedure, chain).indexOf(step);
      if (index < 0) {
        throw new IllegalArgumentException(
            procedure.name().value() + " has no step " + step.at() + " in " + chain.word());
      }
      return new WrittenAt(procedure.name().value(), chain, index + 1);
    }

    /** The step of that number, where the procedure has so many. */
    public Optional<Step> in(Procedure from) {
      List<Step> steps = chain(from, chain);
      boolean there = from.name().value().equals(procedure) && index <= steps.size();
      return there ? Optional.of(steps.get(index - 1)) : Optional.empty();
    }

    private static List<Step> chain(Procedure procedure, Sheet.Phase chain) {
      return switch (chain) {
        case OPEN -> procedure.blocks().open();
        case WORK -> procedure.blocks().work();
        case CLOSE -> procedure.blocks().close();
        case CHECK, FINAL, HEIGHT -> throw new IllegalArgumentException(chain + " is no chain");
      };
    }

    @Override
    public String toString() {
      return procedure + "/" + chain.word() + "/" + index;
    }
  }

  /** A step of a procedure, in its words. */
  record Written(WrittenAt at, String text) implements StepSource {
    @Override
    public String id() {
      return at.toString();
    }

    @Override
    public Sheet.Phase phase() {
      return at.chain();
    }
  }

  /** What a step took off goes back on, in the procedure's words for that. */
  record Back(WrittenAt of, String text) implements StepSource {
    @Override
    public String id() {
      return of + "/back";
    }

    @Override
    public Sheet.Phase phase() {
      return Sheet.Phase.CLOSE;
    }
  }

  /**
   * One item that a step took off goes back on.
   *
   * @param text the catalogue's words for that, where it has any
   * @param what what the item is otherwise
   */
  record PutBack(WrittenAt of, String item, Optional<String> text, Name name, What what, int count)
      implements StepSource {
    /** What kind of thing goes back. */
    public enum What {
      FASTENER,
      SLACKENED,
      TEMPORARY,
      OTHER
    }

    @Override
    public String id() {
      return of + "/back/" + item;
    }

    @Override
    public Sheet.Phase phase() {
      return Sheet.Phase.CLOSE;
    }
  }

  /** A check that is a step. */
  record Check(String rule, String text) implements StepSource {
    @Override
    public String id() {
      return "check/" + rule;
    }

    @Override
    public Sheet.Phase phase() {
      return Sheet.Phase.CHECK;
    }
  }

  /**
   * Leads to the checks that are due before the vehicle goes up or comes down.
   *
   * @param lifted whether the job lifts the vehicle at all
   */
  record Checkpoint(Moment moment, boolean lifted) implements StepSource {
    @Override
    public String id() {
      return "checkpoint/" + moment.word();
    }

    @Override
    public Sheet.Phase phase() {
      return Sheet.Phase.FINAL;
    }
  }

  /** The final torque of fasteners that went on while the vehicle was up. */
  record FinalTorque(String item, Name name, int count) implements StepSource {
    @Override
    public String id() {
      return "final-torque/" + item;
    }

    @Override
    public Sheet.Phase phase() {
      return Sheet.Phase.FINAL;
    }
  }

  /**
   * One part of bringing the vehicle onto solid blocks under its wheels, or off them.
   *
   * @param where an axle that is jacked, or the vehicle
   * @param jacking where that axle is jacked, in the book's words; nothing where the book lacks it
   */
  record Blocks(BlocksPart part, Place where, Optional<String> jacking) implements StepSource {
    @Override
    public String id() {
      String name = part.name().toLowerCase(Locale.ROOT).replace('_', '-');
      return "blocks/" + name + (where == Place.VEHICLE ? "" : "/" + where.word());
    }

    @Override
    public Sheet.Phase phase() {
      return Sheet.Phase.FINAL;
    }
  }

  /** What is done to bring the vehicle onto blocks and off them, in order. */
  enum BlocksPart {
    /** It holds the vehicle beside its chocks while it goes onto the blocks. */
    APPLY_BRAKE,
    SET_LIFT_PADS,
    ARM_LOCKS,
    RAISE_CLEAR,
    PUSH,
    RAISE,
    /** Nobody reaches under a wheel before the lift rests on its locks. */
    LOCKS,
    PUT_UNDER,
    FREE_LOCKS,
    LOWER_ONTO,
    RAISE_AXLE,
    PUT_UNDER_AXLE,
    LOWER_AXLE_ONTO,
    /** Only under load the wheels stand where they stay. */
    TYRES_ON,
    LEAVE_ROOM,
    NEUTRAL,
    LET_ROLL,
    SETTLE,
    HOLD_STILL,
    CLOSE_UP,
    /** The height that was measured first is measured a second time, at one wheel. */
    MEASURE,
    SET_LIFT_PADS_TO_LEAVE,
    ARM_LOCKS_TO_LEAVE,
    RAISE_OFF,
    PUSH_OFF,
    NEXT_LOCKS,
    TAKE_OUT,
    FREE_LOCKS_TO_LEAVE,
    LOWER_TO_FLOOR,
    RAISE_AXLE_OFF,
    TAKE_OUT_AXLE,
    LOWER_AXLE_TO_FLOOR;

    /** Whether the vehicle goes onto the blocks with it. */
    public boolean isOn() {
      return compareTo(MEASURE) <= 0;
    }

    /** Whether it is done at one axle after the other, with a jack. */
    public boolean isOfAxle() {
      return switch (this) {
        case RAISE_AXLE,
            PUT_UNDER_AXLE,
            LOWER_AXLE_ONTO,
            RAISE_AXLE_OFF,
            TAKE_OUT_AXLE,
            LOWER_AXLE_TO_FLOOR ->
            true;
        default -> false;
      };
    }

    /** Whether it works the parking brake, which service mode bars. */
    public boolean isOfBrake() {
      return this == APPLY_BRAKE || this == LET_ROLL || this == HOLD_STILL;
    }

    /** Whether a bay has it: the suspension settles in any, other parts belong to lift or jack. */
    private boolean isIn(Bay bay) {
      return switch (this) {
        case APPLY_BRAKE, TYRES_ON, NEUTRAL, LET_ROLL, SETTLE, HOLD_STILL, CLOSE_UP -> true;
        case MEASURE -> false;
        case ARM_LOCKS, ARM_LOCKS_TO_LEAVE -> bay.hasArms();
        default -> (bay.equipment() == Bay.Equipment.JACK) == (isOfAxle() || this == LEAVE_ROOM);
      };
    }

    /** All parts of one direction. */
    public static List<BlocksPart> parts(boolean on, Bay bay) {
      return Stream.of(values()).filter(part -> part.isOn() == on && part.isIn(bay)).toList();
    }
  }

  /**
   * Chocks are set at wheels that carry the vehicle, or taken away.
   *
   * @param where an axle; the vehicle for one wheel on the floor, every wheel on blocks, or all
   *     chocks there are
   */
  record Chocks(boolean set, Place where, boolean onBlocks) implements StepSource {
    @Override
    public String id() {
      return "chocks/" + (set ? "set/" : "take/") + (onBlocks ? "on-blocks/" : "") + where.word();
    }

    @Override
    public Sheet.Phase phase() {
      return Sheet.Phase.HEIGHT;
    }
  }

  /** One part of bringing the vehicle from one height to another, between two steps. */
  record HeightChange(Height from, Height to, HeightPart part) implements StepSource {
    @Override
    public String id() {
      String name = part.name().toLowerCase(Locale.ROOT).replace('_', '-');
      return "height/" + from.word() + "/" + to.word() + "/" + name;
    }

    @Override
    public Sheet.Phase phase() {
      return Sheet.Phase.HEIGHT;
    }
  }

  /** What is done to change the height, each by itself. */
  enum HeightPart {
    /** Nobody is inside or under the vehicle, and nothing is in its way. */
    LOOK,
    /** The pads are where they lift. */
    PADS,
    /** The arms that carry the pads cannot move out. */
    ARM_LOCKS,
    /** The parking brake holds the vehicle from the moment its wheels touch the floor. */
    BRAKE,
    /** The lift is raised until its locks let go. */
    FREE_LOCKS,
    /** A jack takes the vehicle off its stands. */
    FREE_STANDS,
    TAKE_STANDS,
    JACK,
    SET_STANDS,
    /** The vehicle comes to its height. */
    MOVE,
    /** It is tried by a firm push. */
    PUSH,
    /** The lift rests on its locks. */
    LOCKS
  }
}
