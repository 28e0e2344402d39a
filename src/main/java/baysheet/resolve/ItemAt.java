package baysheet.resolve;

import baysheet.books.Place;

/** An item at a place: {@code wheel-nut@front-left}. */
public record ItemAt(String item, Place place) {
  @Override
  public String toString() {
    return item + "@" + place;
  }
}
