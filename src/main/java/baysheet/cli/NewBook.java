package baysheet.cli;

import baysheet.books.Bay;
import baysheet.books.Procedure;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The text with which a new spec book begins. */
final class NewBook {
  private NewBook() {}

  /**
   * The text.
   *
   * @param book its name, of which the vehicle's is made
   * @param traits what it has
   * @param deciding the other traits that change the work, with their meanings
   * @param bays in which the work may be done
   * @param procedures of the work
   */
  static String text(
      String book,
      List<String> traits,
      Map<String, String> deciding,
      Collection<Bay> bays,
      Collection<Procedure> procedures) {
    List<String> lines = new ArrayList<>();
    lines.add("# kerb-mass: 1300 kg    # must be there if the vehicle is raised");
    lines.add("# supports: {front: where stands and lift pads go, rear: where they go}");
    if (bays.stream().anyMatch(it -> it.equipment() == Bay.Equipment.JACK)) {
      lines.add("# front-share: 60 %    # on the front axle; must be there if a jack raises it");
      lines.add("# jacking: {front: where a jack lifts, rear: where a jack lifts}");
    }
    if (procedures.stream().anyMatch(NewBook::opensCircuit)) {
      lines.add("# fluids: {engine-oil: {capacity: 4.2 L, grade: 5W-30}}");
    }
    lines.add("# checked: {by: initials, on: 2026-01-31}    # who compared it with the source");
    return """
    # Type over each unknown. Count and head must be known; the sheet asks for the rest. If the vehicle has none of a
    # fastener, delete its line and write there, for example, absent: [disc-screw].
    vehicle: BOOK
    name: NAME    # what the sheet prints
    source: not stated yet    # where the figures come from; printed on every sheet
    # Remove the # from what you know, and change the example.
    LINES
    TRAITS
    """
        .replace("BOOK", book)
        .replace("NAME", name(book))
        .replace("LINES", String.join("\n", lines))
        .replace("TRAITS", traits(String.join(", ", traits), deciding));
  }

  private static boolean opensCircuit(Procedure procedure) {
    return procedure.blocks().steps().anyMatch(step -> !step.touched().circuits().isEmpty());
  }

  /** {@code our-van-2016} is called Our Van 2016 until somebody says otherwise. */
  private static String name(String book) {
    return Stream.of(book.split("-"))
        .map(
            word ->
                word.isEmpty()
                    ? word
                    : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1))
        .collect(Collectors.joining(" "));
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
                "# Which of these does the vehicle have? List them in the brackets below.\n",
                line));
  }
}
