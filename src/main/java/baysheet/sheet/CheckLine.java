package baysheet.sheet;

import baysheet.books.Moment;
import baysheet.books.Place;
import java.util.List;
import java.util.Optional;

/**
 * A check.
 *
 * @param because numbers of the steps that brought it; empty where the procedure always asks
 * @param steps numbers of the steps that it is itself; empty where it stands among the checks
 * @param reason why, for an apprentice
 * @param needs a figure that only the vehicle's data gives, to be written in
 * @param keepsOpen what somebody else must do before the sheet is closed
 * @param releasedBy who releases the vehicle where any second person will not do
 */
public record CheckLine(
    String name,
    Moment moment,
    Statement text,
    List<Place> places,
    List<Integer> because,
    List<Integer> steps,
    Optional<Statement> reason,
    boolean hold,
    Optional<String> needs,
    Optional<String> keepsOpen,
    Optional<String> releasedBy,
    Statement source) {
  public CheckLine {
    places = List.copyOf(places);
    because = List.copyOf(because);
    steps = List.copyOf(steps);
  }

  /** The same check as some of the steps that it is. */
  public CheckLine as(List<Integer> some) {
    return new CheckLine(
        name,
        moment,
        text,
        places,
        because,
        some,
        reason,
        hold,
        needs,
        keepsOpen,
        releasedBy,
        source);
  }
}
