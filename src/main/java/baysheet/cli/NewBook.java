package baysheet.cli;

import baysheet.books.Bay;
import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.books.SpecBook;
import baysheet.files.BookDraft;
import baysheet.files.YamlFiles;
import baysheet.report.Source;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The text with which a new spec book begins. */
final class NewBook {
  private static final String INTRODUCTION =
      """
      # Type over each unknown. Count and head are required; for the rest the sheet has boxes. A fastener that the vehicle
      # does not have: delete its line, and write absent: [disc-screw] in its place.
      # Remove the # from what you know, and change the example.""";

  private static final String AS_EXPLAINED = "# Fill it in as vehicles/%s.yaml explains.";

  private NewBook() {}

  /**
   * The text.
   *
   * @param file the book's file, whose name the vehicle's is made of
   * @param traits what it has
   * @param deciding the other traits that change the work, with their meanings
   * @param bays in which the work may be done
   * @param procedures of the work
   * @param folder where another book may say already how one is filled in
   */
  static Source of(
      Path file,
      List<String> traits,
      Map<String, String> deciding,
      Collection<Bay> bays,
      Collection<Procedure> procedures,
      ShopFolder folder) {
    Optional<SpecBook> explaining = BookDraft.explaining(folder);
    List<String> lines = new ArrayList<>();
    lines.add("# kerb-mass: 1300 kg    # needed to raise the vehicle");
    lines.add("# supports: {front: where stands and lift pads go, rear: where they go}");
    if (bays.stream().anyMatch(it -> it.equipment() == Bay.Equipment.JACK)) {
      lines.add("# front-share: 60 %    # of the mass, on the front axle; needed with a jack");
      lines.add("# jacking: {front: where a jack lifts, rear: where a jack lifts}");
    }
    if (procedures.stream().anyMatch(NewBook::opensCircuit)) {
      lines.add("# fluids: {engine-oil: {capacity: 4.2 L, grade: 5W-30}}");
    }
    lines.add("# checked: {by: initials, on: 2026-01-31}    # who compared it with the source");
    String book = YamlFiles.name(file);
    String text =
        """
    INTRODUCTION
    vehicle: BOOK
    name: NAME    # as printed
    source: not stated yet    # where the figures come from, as printed
    LINES
    TRAITS
    """
            .replace(
                "INTRODUCTION",
                explaining
                    .map(it -> AS_EXPLAINED.formatted(it.vehicle().value()))
                    .orElse(INTRODUCTION))
            .replace("BOOK", book)
            .replace("NAME", name(book))
            .replace("LINES", String.join("\n", lines))
            .replace(
                "TRAITS",
                traits(
                    String.join(", ", traits),
                    deciding,
                    explaining.map(it -> it.vehicle().at().source().text()).orElse("")));
    return new Source(YamlFiles.shown(file), text);
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

  /** Of traits that another book explains, only the names are listed. */
  private static String traits(String has, Map<String, String> deciding, String explained) {
    String line = "traits: [" + has + "]";
    if (deciding.isEmpty()) {
      return line + "    # what the vehicle has; baysheet names traits lists them";
    }
    List<String> lines = new ArrayList<>();
    lines.add("# Write in the brackets below what the vehicle has of these, with commas between.");
    List<String> known =
        deciding.keySet().stream().filter(it -> explained.contains(deciding.get(it))).toList();
    if (!known.isEmpty()) {
      lines.add("#   " + String.join(", ", known));
    }
    int width = deciding.keySet().stream().mapToInt(String::length).max().orElseThrow();
    deciding.forEach(
        (trait, meaning) -> {
          if (!known.contains(trait)) {
            lines.add(("#   %-" + width + "s  %s").formatted(trait, meaning));
          }
        });
    lines.add(line);
    return String.join("\n", lines);
  }
}
