package baysheet.cli;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The text with which a new spec book begins. */
final class NewBook {
  private NewBook() {}

  /**
   * The text.
   *
   * @param name the vehicle's
   * @param traits what it has
   * @param deciding the other traits that change the work, with their meanings
   */
  static String text(String name, List<String> traits, Map<String, String> deciding) {
    return """
    # Type over each unknown. A count and a head must be there; whatever else stays unknown, the sheet says so. If the
    # vehicle has none of a fastener, delete its lines and write its name under absent there: absent: [disc-screw].
    vehicle: NAME
    name: NAME    # what the sheet prints
    source: not stated yet    # where the figures come from; printed on every sheet
    # Take the # away from what you know, and type over the example.
    # kerb-mass: 1300 kg    # must be there if the vehicle is raised
    # front-share: 60 %    # on the front axle; must be there if a jack raises it
    # supports: {front: where stands and lift pads go, rear: where they go}
    # jacking: {front: where a jack lifts, rear: where a jack lifts}
    # fluids: {engine-oil: {capacity: 4.2 L, grade: 5W-30}}
    # checked: {by: initials, on: 2026-01-31}    # who compared the book with its source, and when
    TRAITS
    """
        .replace("NAME", name)
        .replace("TRAITS", traits(String.join(", ", traits), deciding));
  }

  private static String traits(String has, Map<String, String> deciding) {
    String line = "traits: [" + has + "]";
    if (deciding.isEmpty()) {
      return line + "    # what the vehicle has; baysheet names traits lists them";
    }
    int width = deciding.keySet().stream().mapToInt(String::length).max().orElseThrow();
    return deciding.entrySet().stream()
        .map(it -> ("#   %-" + width + "s  %s\n").formatted(it.getKey(), it.getValue()))
        .collect(
            Collectors.joining(
                "",
                "# These traits change the work. Write those that the vehicle has into the brackets below.\n",
                line));
  }
}
