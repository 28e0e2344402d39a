package baysheet.books;

import java.util.List;
import java.util.stream.Stream;

/**
 * A heading under which a spec book lists fasteners: a place, or a set of places that have the same
 * fasteners. The group with fewer places is the more specific one.
 */
public record PlaceGroup(String word, List<Place> places) {
  private static final List<PlaceGroup> SETS =
      List.of(
          new PlaceGroup("wheels", Place.VEHICLE.wheels()),
          new PlaceGroup("front-wheels", Place.FRONT.wheels()),
          new PlaceGroup("rear-wheels", Place.REAR.wheels()),
          new PlaceGroup("left-wheels", Place.LEFT.wheels()),
          new PlaceGroup("right-wheels", Place.RIGHT.wheels()),
          new PlaceGroup("axles", List.of(Place.FRONT, Place.REAR)),
          new PlaceGroup("sides", List.of(Place.LEFT, Place.RIGHT)));

  public PlaceGroup {
    places = List.copyOf(places);
  }

  /** Every group there is, in the order in which messages list them. */
  public static List<PlaceGroup> all() {
    Stream<PlaceGroup> single =
        Stream.of(Place.values()).map(place -> new PlaceGroup(place.word(), List.of(place)));
    return Stream.concat(SETS.stream(), single).toList();
  }

  public boolean contains(Place place) {
    return places.contains(place);
  }

  @Override
  public String toString() {
    return word;
  }
}
