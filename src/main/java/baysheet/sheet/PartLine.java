package baysheet.sheet;

import baysheet.books.Place;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A new part.
 *
 * @param places where they go, for left and right may differ; empty for those of the vehicle
 * @param fastener whether it is a single-use fastener
 * @param number what to order it by, where the book says so
 * @param byProcedure how many of them each procedure asks for, by its name
 */
public record PartLine(
    String part,
    int count,
    List<Place> places,
    boolean fastener,
    Optional<String> number,
    Map<String, Integer> byProcedure) {
  public PartLine {
    places = List.copyOf(places);
    byProcedure = Collections.unmodifiableMap(new LinkedHashMap<>(byProcedure));
  }
}
