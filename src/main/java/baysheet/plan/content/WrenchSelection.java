package baysheet.plan.content;

import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.Setting;
import baysheet.torque.SocketChoice;
import baysheet.torque.WrenchChoice;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What one set of fasteners is tightened with: chosen once, for its row, for what is laid out and
 * for whoever asks why.
 *
 * @param stages for each stage that is a torque, the wrenches that were looked at; none for a
 *     figure in doubt, and where there is no figure
 * @param rounds the rounds over the set; none where there is only one
 * @param socket what goes on the fastener's head; none for one turned by hand
 * @param undoing a socket for the impact wrench that undoes it, where the other is none for that
 * @param others sockets for the same head in the squares of other stages' and rounds' wrenches
 * @param adapters from the square of a wrench to that of the socket
 * @param reach what stands in a socket's place, where the book says so
 */
public record WrenchSelection(
    List<WrenchChoice> stages,
    List<RoundChoice> rounds,
    Optional<SocketChoice> socket,
    Optional<SocketChoice> undoing,
    List<SocketChoice> others,
    List<String> adapters,
    Optional<Reach> reach) {
  public WrenchSelection {
    stages = List.copyOf(stages);
    rounds = List.copyOf(rounds);
    others = List.copyOf(others);
    adapters = List.copyOf(adapters);
  }

  /**
   * One round over the set.
   *
   * @param percent share of the full torque
   * @param torque what that comes to at the fastener, unrounded
   * @param choice the wrenches that were looked at; none for a figure in doubt
   * @param with what goes on the wrench besides the set's own socket
   */
  public record RoundChoice(
      BigDecimal percent, Quantity torque, Optional<WrenchChoice> choice, Optional<String> with) {
    /** What to set; none for a figure in doubt, and where no wrench will do. */
    public Optional<Setting> setting() {
      return choice.flatMap(WrenchChoice::setting);
    }
  }
}
