package baysheet.resolve;

import baysheet.books.Place;
import java.util.Objects;

/** An item at a place: {@code wheel-nut@front-left}. */
public record ItemAt(String item, Place place) {
  public ItemAt {
    Objects.requireNonNull(item);
    Objects.requireNonNull(place);
  }

  @Override
  public String toString() {
    return item + "@" + place;
  }
}
