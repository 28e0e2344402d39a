package baysheet.sheet;

import baysheet.books.Catalogue;
import java.util.List;
import java.util.Optional;

/**
 * A caution of this job.
 *
 * @param letter A, B, C …
 * @param name its name in the catalogue
 * @param protect ISO 7010 numbers: {@code M004}
 * @param steps the numbers of the steps it belongs to; empty for one that the vehicle brings
 * @param waivedBy who answers for leaving it out
 */
public record CautionLine(
    String letter,
    String name,
    Catalogue.Signal signal,
    Text text,
    List<String> protect,
    String source,
    List<Integer> steps,
    Shown shown,
    Optional<String> waivedBy) {
  public CautionLine {
    protect = List.copyOf(protect);
    steps = List.copyOf(steps);
  }

  /** What to do, what could happen, and what would come of it. */
  public record Text(String command, String hazard, String consequence) {}

  /**
   * Where it stands.
   *
   * @param onTop whether it stands in the block on top
   * @param wholeJob whether it holds all the time, and not only at its steps
   * @param collapsed whether it is a minor one that shares the one "also" line, because there are
   *     many
   */
  public record Shown(boolean onTop, boolean wholeJob, boolean collapsed) {}

  /**
   * The same caution at some of its steps.
   *
   * @param always whether it stands on top and holds all the time
   */
  public CautionLine at(List<Integer> some, boolean always) {
    Shown there = new Shown(onTop() || always, wholeJob() || always, collapsed() && !always);
    return new CautionLine(letter, name, signal, text, protect, source, some, there, waivedBy);
  }

  public String command() {
    return text.command();
  }

  public String hazard() {
    return text.hazard();
  }

  public String consequence() {
    return text.consequence();
  }

  public boolean onTop() {
    return shown.onTop();
  }

  public boolean wholeJob() {
    return shown.wholeJob();
  }

  public boolean collapsed() {
    return shown.collapsed();
  }
}
