package baysheet.sheet;

import baysheet.books.Bay;
import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.Step;
import java.util.List;
import java.util.Optional;

/** Where a step of a sheet comes from: a procedure, a rule, or the planner. */
public sealed interface StepSource {
  /** Names the step the same way on every sheet; its place is said beside it. */
  String id();

  Sheet.Phase phase();

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
        case OPEN -> procedure.open();
        case WORK -> procedure.work();
        case CLOSE -> procedure.close();
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
   * The vehicle goes on to solid blocks under its wheels, or off them.
   *
   * @param on whether it goes on to them
   * @param jacking where it is jacked; none where it is lifted, and none that the book lacks
   */
  record Blocks(boolean on, Bay.Equipment equipment, List<JackingPoint> jacking)
      implements StepSource {
    public Blocks {
      jacking = List.copyOf(jacking);
    }

    @Override
    public String id() {
      return "blocks/" + (on ? "on" : "off");
    }

    @Override
    public Sheet.Phase phase() {
      return Sheet.Phase.FINAL;
    }
  }

  /** The vehicle is brought from one height to another between two steps. */
  record HeightChange(Height from, Height to) implements StepSource {
    @Override
    public String id() {
      return "height/" + from.word() + "/" + to.word();
    }

    @Override
    public Sheet.Phase phase() {
      return Sheet.Phase.HEIGHT;
    }
  }

  /** Where an axle is jacked, in the book's words. */
  record JackingPoint(Place axle, String text) {}
}
