package baysheet.resolve;

import baysheet.books.Place;
import java.util.Objects;

/** A procedure at a place. */
public record TaskId(String procedure, Place place) {
  public TaskId {
    Objects.requireNonNull(procedure);
    Objects.requireNonNull(place);
  }

  @Override
  public String toString() {
    return procedure + " at " + place;
  }
}
