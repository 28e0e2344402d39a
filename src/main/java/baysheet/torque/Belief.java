package baysheet.torque;

import java.util.Objects;
import java.util.Optional;

/** What came of holding a torque against its thread and class; never that it is right. */
public sealed interface Belief permits Belief.Compared, Belief.LeftOut {
  /** A sentence without a full stop for whoever asks how a value was looked at. */
  String sentence();

  /** The doubt raised, if any. */
  Optional<Doubt> doubt();

  /**
   * The torque was compared.
   *
   * @param percentOfProof clamp load it would give, in percent of the proof load
   */
  record Compared(double percentOfProof, String sentence, Optional<Doubt> doubt) implements Belief {
    public Compared {
      Objects.requireNonNull(sentence);
      Objects.requireNonNull(doubt);
    }
  }

  /** The torque cannot be compared; the sentence says why. */
  record LeftOut(String sentence) implements Belief {
    public LeftOut {
      Objects.requireNonNull(sentence);
    }

    @Override
    public Optional<Doubt> doubt() {
      return Optional.empty();
    }
  }
}
