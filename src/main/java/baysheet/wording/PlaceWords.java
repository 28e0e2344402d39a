package baysheet.wording;

import baysheet.books.Place;
import baysheet.wording.SheetText.BoxText;
import java.util.List;
import java.util.stream.Collectors;

/** Places in words, and the labels of boxes that stand one a place. */
final class PlaceWords {
  private PlaceWords() {}

  /** {@code front left}. */
  static String words(Place place) {
    return place.word().replace('-', ' ');
  }

  /** {@code front left and right} for two sides, otherwise each place; nothing for the vehicle. */
  static String words(List<Place> places) {
    if (places.equals(List.of(Place.VEHICLE))) {
      return "";
    }
    if (arePair(places)) {
      return words(places.get(0)) + " and " + sideOf(places.get(1));
    }
    return places.stream().map(PlaceWords::words).collect(Collectors.joining(", "));
  }

  /** The same with "and" between any places, and with the vehicle named. */
  static String joined(List<Place> places) {
    return arePair(places)
        ? words(places)
        : places.stream().map(PlaceWords::words).collect(Collectors.joining(" and "));
  }

  /**
   * A box for each place.
   *
   * @param name what the record calls it, before the place
   * @param purpose what is done in it, before the place
   */
  static List<BoxText> boxes(String name, String purpose, List<Place> places) {
    return places.stream()
        .map(
            place ->
                new BoxText(
                    name + "." + place.word(),
                    label(place, places),
                    place == Place.VEHICLE ? purpose : purpose + ", " + words(place)))
        .toList();
  }

  /** One place needs no label; two sides are L and R; more are named in full. */
  private static String label(Place place, List<Place> places) {
    if (places.size() == 1) {
      return "";
    }
    return arePair(places) ? initial(place) : words(place);
  }

  private static String initial(Place place) {
    return place.isLeft() ? "L" : "R";
  }

  private static String sideOf(Place place) {
    return place.isLeft() ? "left" : "right";
  }

  private static boolean arePair(List<Place> places) {
    return places.size() == 2 && places.get(0).mirror().filter(places.get(1)::equals).isPresent();
  }
}
