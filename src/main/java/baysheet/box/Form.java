package baysheet.box;

import java.util.List;

/**
 * A one-page form ready to be measured.
 *
 * @param paper the sheet of paper
 * @param margin the distance kept free on all four edges, in thousandths of a point
 * @param largest the body size tried first, in thousandths of a point
 * @param smallest the body size under which the form is refused, in thousandths of a point
 * @param dropsBelow the body size, in thousandths of a point, that is not undercut before pen boxes
 *     are at their smallest
 * @param hand the size of text that is read in the hand
 * @param groups those that give way, first to go first
 * @param language BCP 47 tag of the text
 * @param title the document's title
 */
public record Form(
    Paper paper,
    long margin,
    long largest,
    long smallest,
    long dropsBelow,
    Hand hand,
    List<Group> groups,
    String language,
    String title,
    Box body) {
  /** No text on any sheet is smaller, in thousandths of a point: even sources must be read. */
  public static final long LEAST_TEXT = 7_000;

  /** A size of paper, in thousandths of a point. */
  public enum Paper {
    A4(595_276, 841_890),
    LETTER(612_000, 792_000);

    private final long width;
    private final long height;

    Paper(long width, long height) {
      this.width = width;
      this.height = height;
    }

    public long width() {
      return width;
    }

    public long height() {
      return height;
    }
  }

  /**
   * The size of text that is read in the hand, in thousandths of a point: it is the first to be
   * made smaller, before any group gives way, and has what room the body leaves.
   */
  public record Hand(long largest, long smallest) {
    /** Where a form does not say. */
    public static final Hand USUAL = new Hand(8_500, 7_500);

    public Hand {
      if (smallest < LEAST_TEXT || largest < smallest) {
        throw new IllegalArgumentException("sizes %s, %s".formatted(largest, smallest));
      }
    }
  }

  /**
   * Boxes and runs that give way together.
   *
   * @param until the body size, in thousandths of a point, that is not undercut while this group is
   *     there
   */
  public record Group(String name, long until) {}

  public Form {
    groups = List.copyOf(groups);
    if (smallest < 1 || dropsBelow < smallest || largest < dropsBelow) {
      throw new IllegalArgumentException(
          "sizes %s, %s, %s".formatted(largest, dropsBelow, smallest));
    }
    for (Group group : groups) {
      if (group.until() < smallest || group.until() > dropsBelow) {
        throw new IllegalArgumentException(
            "%s beside %s, %s".formatted(group, dropsBelow, smallest));
      }
    }
  }
}
