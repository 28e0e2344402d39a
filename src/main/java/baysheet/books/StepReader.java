package baysheet.books;

import baysheet.report.Located;
import baysheet.yaml.MapReader;
import baysheet.yaml.ParseOutcome;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the steps of a procedure, and what procedure and step have in common. */
final class StepReader {
  static final ValueReader<Step> STEP = ValueReaders.record("a step", StepReader::step);

  /** {@code wire brush}, {@code {special: ball joint splitter}} or {@code {if-stuck: drill}}. */
  static final ValueReader<Procedure.Use> USE =
      ValueReaders.scalarOr(
          ValueReaders.text().map(name -> new Procedure.Use(name, false)),
          ValueReaders.record("a tool", StepReader::marked));

  static final ValueReader<String> ITEM = ValueReaders.value(PlaceText::item);
  private static final ValueReader<Step.Apply> APPLY = ValueReaders.value(StepReader::apply);
  private static final ValueReader<Step.Seizes> SEIZES = ValueReaders.oneOf(seizes());
  private static final Pattern ON = Pattern.compile("(?<product>.*?)\\s*+\\bon\\b\\s*+(?<item>.*)");

  private StepReader() {}

  private static Optional<Step> step(MapReader map) {
    Step step =
        new Step(
            Words.needed(map, "do", ValueReaders.text(), ""),
            new Step.Touched(
                items(map, "undo"),
                items(map, "slacken"),
                items(map, "do-up"),
                items(map, "disturb"),
                items(map, "ends"),
                items(map, "takes-away"),
                map.listOrOne("open-circuit", ValueReaders.name()),
                map.listOrOne("apply", APPLY)),
            new Step.Demands(
                map.listOrOne("uses", USE),
                map.listOrOne("hazards", ValueReaders.name()),
                map.optional("takes", FigureReaders.minutes()),
                map.yesNo("impact", false),
                map.optional("seizes", SEIZES).map(Located::value).orElse(Step.Seizes.NEVER)),
            new Step.Teaching(
                map.optional("because", ValueReaders.text()),
                map.optional("good", ValueReaders.text()),
                map.listOrOne("if-stuck", ValueReaders.text())),
            map.yesNo("hold", false),
            map.optional("back", ValueReaders.text()),
            map.optional("moment", Words.moment()),
            Words.once(map.listOrOne("height", Words.height()), map.problems()),
            Words.once(map.listOrOne("only-in", ValueReaders.text()), map.problems()),
            map.listOrOne("measure", ValueReaders.text()),
            map.at());
    return map.build(() -> step);
  }

  private static List<Located<String>> items(MapReader map, String key) {
    return Words.once(map.listOrOne(key, ITEM), map.problems());
  }

  private static ParseOutcome<Step.Apply> apply(String text) {
    Matcher on = ON.matcher(text);
    if (!on.matches()) {
      return ParseOutcome.ok(new Step.Apply(text, Optional.empty()));
    }
    return on.group("product").isEmpty() || on.group("item").isEmpty()
        ? BookSentences.appliedToNothing(text)
        : ValueReaders.nameOf(on.group("item"))
            .map(item -> new Step.Apply(on.group("product"), Optional.of(item)));
  }

  /** What never seizes has no word: the key is left out. */
  private static Map<String, Step.Seizes> seizes() {
    Map<String, Step.Seizes> words = new LinkedHashMap<>();
    words.put("possible", Step.Seizes.POSSIBLE);
    words.put("likely", Step.Seizes.LIKELY);
    return words;
  }

  private static Optional<Procedure.Use> marked(MapReader map) {
    boolean stuck = map.has("if-stuck");
    map.atMostOneOf(List.of("special", "if-stuck"));
    Optional<Located<String>> name =
        map.required(stuck ? "if-stuck" : "special", ValueReaders.text());
    return map.build(() -> new Procedure.Use(name.get().value(), !stuck, stuck));
  }
}
