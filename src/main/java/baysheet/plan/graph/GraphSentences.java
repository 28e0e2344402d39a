package baysheet.plan.graph;

import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Span;
import baysheet.resolve.ItemAt;
import baysheet.sheet.StepSource;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** What problems say of steps and their order. */
public final class GraphSentences {
  static final String ORDERS_NOT_COMPARED =
      "no order was found that allows it; not all orders were compared";
  static final String NO_SUCH_HEIGHT = "a jack has no such height";
  static final String NOT_RAISED = "nothing in this job raises the vehicle";
  static final String OTHERS_ELSEWHERE = "the steps before and after it need another height";
  static final String LESS_WORK = "several job files with less work each";
  static final String LIFT_OR_HEIGHTS = "a bay with a lift, or other heights for this step";
  static final String HEIGHTS_OR_ORDER =
      "other heights for this step, or another order of the steps";

  private GraphSentences() {}

  static Problem leftOff(ItemAt item, Span at) {
    return Problem.of(ProblemCode.LEFT_OFF, at, named(item) + " is removed and never refitted")
        .expecting("a step with do-up after the one with undo, or no step with do-up");
  }

  static Problem offAlready(ItemAt item, Span at) {
    return twice(at, named(item) + " is removed, but it is already off");
  }

  static Problem onAlready(ItemAt item, Span at) {
    return twice(at, named(item) + " is refitted, but it is already on");
  }

  private static Problem twice(Span at, String what) {
    return Problem.of(ProblemCode.DONE_TWICE, at, what)
        .expecting("each item removed once and refitted once in a procedure");
  }

  static Problem neverOff(ItemAt item, Span at) {
    return Problem.of(
            ProblemCode.NEVER_OFF,
            at,
            named(item) + " is refitted, but no step of this job removes it")
        .expecting("a step with undo before it, or no do-up of it");
  }

  private static String named(ItemAt item) {
    return item.item() + " at " + item.place();
  }

  static Problem wrongMoment(boolean takesOff, Moment moment, Span at) {
    return Problem.of(
            ProblemCode.WRONG_MOMENT,
            at,
            "nothing can be %s at the moment %s"
                .formatted(takesOff ? "removed" : "refitted", moment.word()))
        .expecting("no key moment, or the moment at which the work is done");
  }

  static Problem insideRaised(Height height, Span at) {
    return Problem.of(
            ProblemCode.INSIDE_RAISED,
            at,
            "this step is done inside the vehicle, and nobody is inside while it is "
                + words(height))
        .expecting("ground, or wheels-clear for what is reached from outside the vehicle");
  }

  static String barred(ItemAt item, boolean jacked) {
    return "the vehicle cannot be moved while %s at %s is %s"
        .formatted(item.item(), item.place(), jacked ? "in place" : "off");
  }

  static Problem outOfReach(PlannedStep step, Collection<Height> heights, String why) {
    String at =
        heights.stream().sorted().map(GraphSentences::words).collect(Collectors.joining(" or "));
    return Problem.of(
        ProblemCode.HEIGHT_OUT_OF_REACH,
        step.origin(),
        "\"%s\" is done with the vehicle %s, and %s".formatted(words(step), at, why));
  }

  private static String words(Height height) {
    return switch (height) {
      case GROUND -> "on the ground";
      case WHEELS_CLEAR -> "with its wheels just clear of the floor";
      case WORKING -> "at working height";
      case STANDS -> "on stands";
    };
  }

  /** The steps of each wish in the order in which its task needs them. */
  public static Problem loop(List<CycleFinder.Wish> wishes, Span at) {
    String written =
        wishes.stream()
            .map(
                wish ->
                    "%s needs \"%s\" before \"%s\""
                        .formatted(wish.task(), words(wish.earlier()), words(wish.later())))
            .collect(Collectors.joining(", and "));
    return Problem.of(
            ProblemCode.ORDER_LOOP, at, "the steps of this job contradict each other: " + written)
        .expecting(
            "the same order in these procedures: change the order of the steps in one of them,"
                + " delete the \"after\" or \"before\" that contradicts it, or write two job"
                + " files");
  }

  /** What a message calls a step. */
  static String words(PlannedStep step) {
    if (step.source() instanceof StepSource.Written written) {
      return written.text();
    } else if (step.source() instanceof StepSource.Back back) {
      return back.text();
    } else if (step.source() instanceof StepSource.Check check) {
      return check.text();
    } else if (step.source() instanceof StepSource.PutBack back) {
      return back.text().orElse("Refit the " + back.name().british());
    }
    return step.source().id();
  }
}
