package baysheet.torque;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The sizes that standards give hexagon heads on metric threads.
 *
 * <p>Makers differ, so another size is no fault: it is only mentioned.
 */
public final class AcrossFlats {
  /**
   * Across flats in mm by thread diameter: ISO 4014 and 4032, then other standards in use (flange
   * bolts ISO 4162, flange nuts ISO 4161, EN 1662, and DIN 931 as it was).
   */
  private static final Map<Integer, List<Integer>> HEX =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry(5, List.of(8, 7)),
              Map.entry(6, List.of(10, 8)),
              Map.entry(8, List.of(13, 10)),
              Map.entry(10, List.of(16, 13, 15, 17)),
              Map.entry(12, List.of(18, 15, 16, 19)),
              Map.entry(14, List.of(21, 18, 22)),
              Map.entry(16, List.of(24, 21)),
              Map.entry(18, List.of(27)),
              Map.entry(20, List.of(30)),
              Map.entry(22, List.of(34, 32)),
              Map.entry(24, List.of(36))));

  private AcrossFlats() {}

  /** A sentence when a hexagon is of a size that no standard gives its thread. */
  public static Optional<String> note(ScrewThread thread, Head head) {
    List<Integer> known =
        thread.series() == ScrewThread.Series.METRIC
            ? HEX.getOrDefault((int) thread.diameterMm(), List.of())
            : List.of();
    boolean said = head.form() == Head.Form.HEX && !known.isEmpty();
    return said && known.stream().noneMatch(size -> head.size().equals(size + " mm"))
        ? Optional.of(
            head.print()
                + " is not the size that ISO 4014 gives "
                + thread.designation()
                + " ("
                + known.get(0)
                + "\u00A0mm): makers differ, so try the socket first")
        : Optional.empty();
  }
}
