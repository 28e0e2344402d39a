package baysheet.torque;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A socket, or a set of alike ones, of the crib.
 *
 * @param drive its square
 * @param form the form of head it takes; a 12-point socket for hexagons is {@code HEX} with twelve
 *     points
 * @param sizes every size in the set; ranges such as {@code 10..24 mm} are spelled out
 * @param points 6 or 12 for hexagons; of no meaning for other forms
 * @param impact whether it may be used on an impact wrench
 * @param deep whether it is of the deep pattern
 */
public record Socket(
    Drive drive, Head.Form form, List<String> sizes, int points, boolean impact, boolean deep) {
  /**
   * @throws IllegalArgumentException when a size is none of the form's: {@link #sizes(Head.Form,
   *     String)} reads what people write
   */
  public Socket {
    sizes = spelledOut(form, sizes);
  }

  /** The sizes that {@code text} names for a form: one, or all of a range. */
  public static ParseResult<List<String>> sizes(Head.Form form, String text) {
    return form.sizes().all(text);
  }

  /** Whether it turns this head; a 12-point head never takes six points, a hexagon takes both. */
  public boolean fits(Head head) {
    return takes(head.form()) && sizes.contains(head.size());
  }

  private boolean takes(Head.Form head) {
    if (head == Head.Form.TWELVE_POINT) {
      return hexagonal() && points == 12;
    }
    return head == form || (head == Head.Form.HEX && hexagonal());
  }

  private boolean hexagonal() {
    return form == Head.Form.HEX || form == Head.Form.TWELVE_POINT;
  }

  private static List<String> spelledOut(Head.Form form, List<String> texts) {
    Set<String> all = new LinkedHashSet<>();
    for (String text : texts) {
      ParseResult<List<String>> sizes = sizes(form, text);
      if (sizes instanceof ParseFailure<List<String>> misread) {
        throw new IllegalArgumentException(form.word() + ": " + misread.what());
      }
      sizes.found().ifPresent(all::addAll);
    }
    return List.copyOf(new ArrayList<>(all));
  }
}
