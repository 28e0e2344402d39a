package baysheet.cli;

import baysheet.books.Place;
import baysheet.garage.EveningList;
import baysheet.sheet.Heading;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The parts of a day as a table for a supplier: RFC 4180, in UTF-8. */
final class PartsCsv {
  private static final String END = "\r\n";

  private PartsCsv() {}

  static byte[] of(EveningList list) {
    StringBuilder csv = new StringBuilder();
    csv.append(
        row(
            List.of(
                "date",
                "job",
                "count",
                "part",
                "number",
                "places",
                "single-use",
                "vehicle",
                "years",
                "plate")));
    list.parts().forEach(part -> csv.append(row(cells(part))));
    return csv.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> cells(EveningList.Part part) {
    Heading heading = part.job().sheet().heading();
    return List.of(
        heading.date().toString(),
        heading.job(),
        String.valueOf(part.line().count()),
        part.line().part(),
        orEmpty(part.line().number()),
        part.line().places().stream().map(Place::word).collect(Collectors.joining(" ")),
        part.line().fastener() ? "yes" : "no",
        heading.vehicle().name(),
        orEmpty(heading.vehicle().years()),
        orEmpty(heading.vehicle().plate()));
  }

  private static String orEmpty(Optional<String> text) {
    return text.orElse("");
  }

  private static String row(List<String> cells) {
    return cells.stream().map(PartsCsv::cell).collect(Collectors.joining(",")) + END;
  }

  private static String cell(String text) {
    boolean quoted = Stream.of(",", "\"", "\n", "\r").anyMatch(text::contains);
    return quoted ? '"' + text.replace("\"", "\"\"") + '"' : text;
  }
}
