package baysheet.plan.content;

import baysheet.books.Place;
import baysheet.sheet.Sheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** New parts by name, each with how many there are in all and where they go. Used once. */
final class PartList {
  private final boolean fasteners;
  private final Map<String, Integer> counts = new LinkedHashMap<>();
  private final Map<String, TreeSet<Place>> places = new LinkedHashMap<>();

  PartList(boolean fasteners) {
    this.fasteners = fasteners;
  }

  void add(String part, int count, Place place) {
    counts.merge(part, count, Integer::sum);
    places.computeIfAbsent(part, key -> new TreeSet<>()).add(place);
  }

  boolean has(String part) {
    return counts.containsKey(part);
  }

  List<Sheet.PartLine> lines() {
    return counts.entrySet().stream()
        .map(
            entry ->
                new Sheet.PartLine(
                    entry.getKey(),
                    entry.getValue(),
                    List.copyOf(places.get(entry.getKey())),
                    fasteners))
        .toList();
  }
}
