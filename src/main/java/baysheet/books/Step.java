package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Span;
import baysheet.torque.ThreePoint;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A step of a procedure as written.
 *
 * @param text one verb-first sentence
 * @param hold whether work stops here until a second person has looked
 * @param back the wording for putting back what this step took off
 * @param moment when it is done, where the block alone does not say
 * @param heights at which heights of the vehicle it can be done; none where kind and place say it
 * @param onlyIn kinds of lift, one of which the bay must have; any bay where it names none
 * @param measure figures that are taken here and written down, a line for each
 */
public record Step(
    Located<String> text,
    Touched touched,
    Demands demands,
    Teaching teaching,
    boolean hold,
    Optional<Located<String>> back,
    Optional<Located<Moment>> moment,
    List<Located<Height>> heights,
    List<Located<String>> onlyIn,
    List<Located<String>> measure,
    Span at) {
  public Step {
    heights = List.copyOf(heights);
    onlyIn = List.copyOf(onlyIn);
    measure = List.copyOf(measure);
  }

  /**
   * What it does to the vehicle.
   *
   * @param undo items taken off, unplugged, opened
   * @param slacken items turned back that stay where they are: a fastener stays in its thread
   * @param doUp items put back, tightened, plugged in
   * @param disturb items moved or relieved without being taken off
   * @param ends items whose `left` no longer holds behind it: a brake that is applied again
   * @param takesAway the same, of a step that falls away where no other has left them
   * @param circuits hydraulic or other circuits opened
   * @param apply what goes on what
   */
  public record Touched(
      List<Located<String>> undo,
      List<Located<String>> slacken,
      List<Located<String>> doUp,
      List<Located<String>> disturb,
      List<Located<String>> ends,
      List<Located<String>> takesAway,
      List<Located<String>> circuits,
      List<Located<Apply>> apply) {
    public Touched {
      undo = List.copyOf(undo);
      slacken = List.copyOf(slacken);
      doUp = List.copyOf(doUp);
      disturb = List.copyOf(disturb);
      ends = List.copyOf(ends);
      takesAway = List.copyOf(takesAway);
      circuits = List.copyOf(circuits);
      apply = List.copyOf(apply);
    }

    /** Every item it names, without the place behind it. */
    public Stream<Located<String>> items() {
      return Stream.concat(
              Stream.of(undo, slacken, doUp, disturb, ends, takesAway).flatMap(List::stream),
              apply.stream()
                  .flatMap(it -> it.value().item().stream().map(on -> new Located<>(on, it.at()))))
          .map(name -> name.map(Step::withoutPlace));
    }
  }

  /**
   * What it needs and brings with it.
   *
   * @param uses tools, beyond those of the procedure
   * @param hazards names of cautions
   * @param takes minutes
   * @param impact whether an impact wrench is meant to be used
   * @param seizes how likely the part is stuck
   */
  public record Demands(
      List<Located<Procedure.Use>> uses,
      List<Located<String>> hazards,
      Optional<Located<ThreePoint>> takes,
      boolean impact,
      Seizes seizes) {
    public Demands {
      uses = List.copyOf(uses);
      hazards = List.copyOf(hazards);
    }
  }

  /**
   * What whoever learns or is stuck wants to know.
   *
   * @param because the reason
   * @param good what it looks like when it is right
   * @param ifStuck ways out, in order
   */
  public record Teaching(
      Optional<Located<String>> because,
      Optional<Located<String>> good,
      List<Located<String>> ifStuck) {
    public Teaching {
      ifStuck = List.copyOf(ifStuck);
    }
  }

  /** Whether it is done in a bay. */
  public boolean isFor(Bay bay) {
    return onlyIn.isEmpty() || onlyIn.stream().anyMatch(it -> bay.isOf(it.value()));
  }

  /** Whether it only turns back an item, without its place. */
  public boolean slackens(String item) {
    return touched.slacken.stream().anyMatch(it -> withoutPlace(it.value()).equals(item));
  }

  /** The name in {@code anti-roll-bar at front}. */
  public static String withoutPlace(String item) {
    int at = item.indexOf(" at ");
    return at < 0 ? item : item.substring(0, at);
  }

  /** How likely a part is stuck. */
  public enum Seizes {
    NEVER,
    POSSIBLE,
    LIKELY
  }

  /** A product, and the item it goes on where one is named: {@code brake grease on caliper-pin}. */
  public record Apply(String product, Optional<String> item) {}
}
