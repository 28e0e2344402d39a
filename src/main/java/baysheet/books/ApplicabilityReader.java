package baysheet.books;

import baysheet.report.Located;
import baysheet.yaml.Keyed;
import baysheet.yaml.MapReader;
import baysheet.yaml.ParseOutcome;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads which vehicles and places a procedure is for. */
final class ApplicabilityReader {
  private static final ValueReader<Applicability.Need> NEED =
      ValueReaders.value(ApplicabilityReader::need);
  private static final ValueReader<Place> PLACE = ValueReaders.value(PlaceText::place);
  private static final String AT = " at ";

  private ApplicabilityReader() {}

  static Applicability read(MapReader map) {
    List<Located<Applicability.Need>> needs =
        Words.once(map.listOrOne("only-with", NEED), map.problems());
    List<Applicability.Exclusion> exclusions =
        map.entries("not-with", PlaceText::access, ValueReaders.text()).stream()
            .map(ApplicabilityReader::exclusion)
            .toList();
    Optional<Located<Place>> place = map.optional("only-at", PLACE);
    return new Applicability(needs, exclusions, place);
  }

  private static Applicability.Exclusion exclusion(Keyed<Procedure.Access, String> entry) {
    return new Applicability.Exclusion(
        entry.key().map(Procedure.Access::procedure), entry.key().value().place(), entry.value());
  }

  /** {@code electric}, {@code electric or hybrid}, {@code drum-brakes at rear}. */
  private static ParseOutcome<Applicability.Need> need(String text) {
    int at = text.indexOf(AT);
    ParseOutcome<List<String>> traits = traits(at < 0 ? text : text.substring(0, at));
    return at < 0
        ? traits.map(names -> new Applicability.Need(names, Optional.empty()))
        : FigureReaders.then(
            traits,
            names ->
                PlaceText.place(text.substring(at + AT.length()).strip())
                    .map(place -> new Applicability.Need(names, Optional.of(place))));
  }

  private static ParseOutcome<List<String>> traits(String text) {
    ParseOutcome<List<String>> traits = ParseOutcome.ok(List.of());
    for (String name : text.split("\\s+or\\s+", -1)) {
      traits =
          FigureReaders.then(
              traits,
              before ->
                  ValueReaders.nameOf(name)
                      .map(trait -> Stream.concat(before.stream(), Stream.of(trait)).toList()));
    }
    return traits;
  }
}
