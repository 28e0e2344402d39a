package baysheet.resolve;

import baysheet.books.Place;
import java.util.List;
import java.util.Optional;

/** At which places a procedure of one kind is done when it is reached from a place of another. */
final class PlaceRule {
  private PlaceRule() {}

  /** The places, left before right; empty when they do not follow and have to be written. */
  static List<Place> places(Place from, Place.Kind kind) {
    if (from.kind() == kind) {
      return List.of(from);
    }
    return switch (kind) {
      case WHEEL -> from.wheels();
      case AXLE -> one(from.axle()).orElseGet(() -> all(from, Place.FRONT, Place.REAR));
      case SIDE -> one(from.side()).orElseGet(() -> all(from, Place.LEFT, Place.RIGHT));
      case ENGINE -> List.of(Place.ENGINE);
      case VEHICLE -> List.of(Place.VEHICLE);
    };
  }

  private static Optional<List<Place>> one(Optional<Place> place) {
    return place.map(List::of);
  }

  /** Both of a pair, but not from the engine: which of them would be a guess. */
  private static List<Place> all(Place from, Place first, Place second) {
    return from == Place.ENGINE ? List.of() : List.of(first, second);
  }
}
