package baysheet.torque;

import java.util.Objects;

/**
 * A wrench of the crib that was looked at for a setting.
 *
 * @param wrench the wrench
 * @param taken whether it is the one chosen
 * @param why a sentence without a full stop
 */
public record Candidate(Wrench wrench, boolean taken, String why) {
  public Candidate {
    Objects.requireNonNull(wrench);
    Objects.requireNonNull(why);
  }
}
