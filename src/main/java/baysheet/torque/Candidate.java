package baysheet.torque;

/**
 * A wrench of the crib that was looked at for a setting.
 *
 * @param wrench the wrench
 * @param verdict what came of it
 * @param why a sentence without a full stop
 */
public record Candidate(Wrench wrench, Verdict verdict, String why) {
  /** What came of looking at a wrench. */
  public enum Verdict {
    TAKEN,
    /** It could be set, but another wrench comes before it. */
    PASSED_OVER,
    /** It could be set if its calibration held on the day. */
    LAPSED,
    /** It cannot be set. */
    REFUSED
  }

  /** Whether it is the one chosen. */
  public boolean taken() {
    return verdict == Verdict.TAKEN;
  }
}
