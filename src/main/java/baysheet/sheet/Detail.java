package baysheet.sheet;

import baysheet.torque.Quantity;
import java.util.List;
import java.util.Optional;

/** What belongs to a step beside its text. Torque lines and steps are named by their numbers. */
public sealed interface Detail {
  /** Fasteners come off: how many, their head, and whether they are discarded. */
  record Removed(int line) implements Detail {}

  /** Fasteners are slackened and stay in: how many, and their head. */
  record Slackened(int line) implements Detail {}

  /** Fasteners go on: how many new ones, what goes on the thread, and to what. */
  record Installed(int line) implements Detail {}

  /** Fasteners that are on get their final torque. */
  record Tightened(int line) implements Detail {}

  /** It is done at the height that an earlier step measured. */
  record AtHeightOf(int step) implements Detail {}

  /** What is filled in. */
  record Fluid(String name, Optional<String> grade, Optional<Quantity> capacity)
      implements Detail {}

  /** Special tools. */
  record Tools(List<String> names) implements Detail {
    public Tools {
      names = List.copyOf(names);
    }
  }

  /** What carries the vehicle and where. */
  record Carried(Support by) implements Detail {}

  /** No wheel of the vehicle stays on the floor. */
  record BothEndsUp() implements Detail {}

  /** The text may name something that this vehicle does not have. */
  record Absent(String item) implements Detail {}

  /** Another step takes off or puts on what the text may name. */
  record HandledElsewhere(Name name, boolean temporary, boolean off) implements Detail {}
}
