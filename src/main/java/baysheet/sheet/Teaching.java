package baysheet.sheet;

import java.util.List;
import java.util.Optional;

/**
 * What whoever learns or is stuck wants to know.
 *
 * @param ifStuck ways out, in order
 */
public record Teaching(Optional<String> because, Optional<Statement> good, List<String> ifStuck) {
  public Teaching {
    ifStuck = List.copyOf(ifStuck);
  }
}
