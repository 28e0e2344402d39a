package baysheet.torque;

import java.util.Objects;

/**
 * A torque that does not fit its thread and class.
 *
 * @param percentOfProof clamp load it would give, in percent of the proof load
 * @param sentence what is odd, with both figures and what the number would give in the other common
 *     unit
 */
public record Doubt(double percentOfProof, String sentence) {
  public Doubt {
    Objects.requireNonNull(sentence);
  }
}
