package baysheet.plan.content;

import baysheet.plan.graph.PlanPhrases;
import baysheet.resolve.Bound;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Quantity;
import java.util.ArrayList;
import java.util.List;

/** The short words behind a step: how many, which socket, which torque line, on what it rests. */
final class StepDetails {
  private static final String NO_BREAK = "\u00a0";

  private StepDetails() {}

  /** Count and head; the name as well where the step undoes several kinds. */
  static String undoing(Bound.OfBook fastener, TorqueLine line, boolean named) {
    List<String> words = new ArrayList<>();
    String name = named ? line.words() + NO_BREAK : "";
    line.head().ifPresent(head -> words.add(name + times(line) + head.replace(" ", NO_BREAK)));
    if (fastener.values().isSingleUse()) {
      words.add("discard");
    }
    return String.join(", ", words);
  }

  /** Whether new, what to put on the thread, and where the figure stands. */
  static String doingUp(TorqueLine line) {
    List<String> words = new ArrayList<>();
    if (line.reuse().equals("new")) {
      words.add(times(line) + "new");
    }
    line.onThread().ifPresent(words::add);
    words.add(line.twoVisits() ? "snug only, line" + NO_BREAK + line.n() : tightening(line));
    return String.join(", ", words);
  }

  /** How many, where it is more than one. */
  private static String times(TorqueLine line) {
    return line.count() == 1 ? "" : line.count() + NO_BREAK + "×" + NO_BREAK;
  }

  /** The figure and what keeps it. */
  static String tightening(TorqueLine line) {
    return figure(line) + line.lock().map(lock -> ", " + lock).orElse("");
  }

  /** The line's number and its figure, as the table has it; none that somebody has yet to clear. */
  private static String figure(TorqueLine line) {
    String number = "line" + NO_BREAK + line.n();
    if (line.inDoubt()) {
      return number + " " + PlanPhrases.AS_WRITTEN_IN;
    }
    List<String> stages = new ArrayList<>();
    for (TorqueLine.StageLine stage : line.stages()) {
      stages.add(stage.print());
    }
    return switch (line.kind()) {
      case PUBLISHED -> number + ": " + String.join(", ", stages);
      case SNUG -> number + ": snug";
      case UNKNOWN -> number + " " + PlanPhrases.AS_WRITTEN_IN;
    };
  }

  /** Where the height was written down that a bush is tightened at. */
  static String height(int step) {
    return PlanPhrases.HEIGHT + " as in step" + NO_BREAK + step;
  }

  static String with(List<String> tools) {
    return "with " + String.join(", ", tools);
  }

  static List<String> support(Sheet.Support support) {
    List<String> words = new ArrayList<>(support.points());
    words.add(carries(support));
    return words;
  }

  private static String carries(Sheet.Support support) {
    Quantity load = support.each().orElse(support.load());
    String what = support.each().isPresent() ? "each stand carries " : "the lift carries ";
    return what + load.print() + " of " + support.rated().print();
  }
}
