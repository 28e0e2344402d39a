package baysheet.resolve;

import baysheet.books.Place;

/** A procedure at a place. */
public record TaskId(String procedure, Place place) {
  @Override
  public String toString() {
    return procedure + " at " + place;
  }
}
