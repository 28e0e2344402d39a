package baysheet.plan.content;

import baysheet.books.Place;
import baysheet.sheet.PartLine;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** New parts by name, each with how many there are in all and where they go. Used once. */
final class PartList {
  private final boolean fasteners;
  private final Map<String, Integer> counts = new LinkedHashMap<>();
  private final Map<String, TreeSet<Place>> places = new LinkedHashMap<>();
  private final Map<String, String> numbers = new HashMap<>();
  private final Map<String, Map<String, Integer>> procedures = new HashMap<>();

  PartList(boolean fasteners) {
    this.fasteners = fasteners;
  }

  /**
   * @param number what to order it by
   * @param procedure that asks for it
   */
  void add(String part, int count, Place place, Optional<String> number, String procedure) {
    counts.merge(part, count, Integer::sum);
    number.ifPresent(it -> numbers.put(part, it));
    procedures
        .computeIfAbsent(part, key -> new LinkedHashMap<>())
        .merge(procedure, count, Integer::sum);
    places.computeIfAbsent(part, key -> new TreeSet<>()).add(place);
  }

  boolean has(String part) {
    return counts.containsKey(part);
  }

  List<PartLine> lines() {
    return counts.entrySet().stream()
        .map(
            entry ->
                new PartLine(
                    entry.getKey(),
                    entry.getValue(),
                    List.copyOf(places.get(entry.getKey())),
                    fasteners,
                    Optional.ofNullable(numbers.get(entry.getKey())),
                    procedures.get(entry.getKey())))
        .toList();
  }
}
