package baysheet.torque;

/**
 * How a socket for a fastener goes on the square of a wrench.
 *
 * @param kind what has to be at hand for it
 * @param tool the adapter or the socket that has to be at hand; empty for nothing
 */
public record SocketFit(Kind kind, String tool) {
  /** What has to be at hand, what is least trouble first. */
  public enum Kind {
    /** The shop has a socket in the wrench's own square, or none is needed. */
    DIRECT,
    /** The shop has an adapter to a socket in another square. */
    ADAPTER,
    /** A socket in the wrench's square has to be borrowed. */
    BORROW
  }

  /** Nothing has to be at hand. */
  public static final SocketFit NONE_NEEDED = new SocketFit(Kind.DIRECT, "");

  /** Words behind "with", such as {@code adapter 3/8 in to 1/2 in}; empty for nothing. */
  public String how() {
    return kind == Kind.BORROW ? "a borrowed " + tool : tool;
  }
}
