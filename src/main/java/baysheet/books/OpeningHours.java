package baysheet.books;

import java.time.LocalTime;
import java.util.List;

/**
 * When a garage works.
 *
 * @param breaks in which nobody works, in order, none touching another
 */
public record OpeningHours(LocalTime opens, LocalTime closes, List<Break> breaks) {
  /** What is taken where a shop file has no hours: common practice, no source. */
  public static final OpeningHours USUAL =
      new OpeningHours(LocalTime.of(8, 0), LocalTime.of(17, 0), List.of());

  public OpeningHours {
    breaks = List.copyOf(breaks);
  }

  /** A break, from its first minute to the one after its last. */
  public record Break(LocalTime from, LocalTime to) {}
}
