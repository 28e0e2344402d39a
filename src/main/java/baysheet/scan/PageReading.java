package baysheet.scan;

import java.util.List;
import java.util.Optional;

/**
 * What was found on one page of a scan.
 *
 * @param reason why it was not read, as a clause; empty where it was
 * @param code what its code says, if one was found
 * @param sheet the sheet it belongs to, if that is known
 * @param boxes in the order of the record; none where the page was not read
 * @param picture the page set straight, {@link BlankPage#PIXELS} a millimetre, where it was read
 */
public record PageReading(
    Result result,
    String reason,
    Optional<String> code,
    Optional<IssuedSheets.Issued> sheet,
    List<BoxReading> boxes,
    Optional<Grey> picture) {
  /** What became of a page. */
  public enum Result {
    READ,
    UNREAD,
    SUPERSEDED,
    UNKNOWN
  }

  /** Whether a box holds ink. */
  public enum State {
    EMPTY,
    MARKED,
    DOUBTFUL
  }

  /**
   * A box for a pen.
   *
   * @param ink how much of its inside holds ink, 0 to 1
   */
  public record BoxReading(String name, String kind, boolean required, State state, double ink) {}

  public PageReading {
    boxes = List.copyOf(boxes);
  }

  /** The same reading with another picture of its page. */
  public PageReading of(Grey other) {
    return new PageReading(result, reason, code, sheet, boxes, Optional.of(other));
  }

  static PageReading unread(String reason, Optional<String> code) {
    return new PageReading(
        Result.UNREAD, reason, code, Optional.empty(), List.of(), Optional.empty());
  }
}
