package baysheet.books;

import baysheet.report.Located;
import baysheet.yaml.MapReader;
import baysheet.yaml.Outcome;
import baysheet.yaml.Read;
import baysheet.yaml.ValueReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the steps of a procedure, and what procedure and step have in common. */
final class StepReader {
  static final ValueReader<Step> STEP = Read.record("a step", StepReader::step);

  /** {@code wire brush}, {@code {special: ball joint splitter}} or {@code {if-stuck: drill}}. */
  static final ValueReader<Procedure.Use> USE =
      Read.scalarOr(
          Read.text().map(name -> new Procedure.Use(name, false)),
          Read.record("a tool", StepReader::marked));

  static final ValueReader<String> ITEM = Read.value(PlaceText::item);
  private static final ValueReader<Step.Apply> APPLY = Read.value(StepReader::apply);
  private static final ValueReader<Step.Seizes> SEIZES = Read.oneOf(seizes());
  private static final Pattern ON = Pattern.compile("(?<product>.*?)\\s*+\\bon\\b\\s*+(?<item>.*)");

  private StepReader() {}

  private static Optional<Step> step(MapReader map) {
    Step step =
        new Step(
            Words.needed(map, "do", Read.text(), ""),
            items(map, "undo"),
            items(map, "do-up"),
            items(map, "disturb"),
            map.listOrOne("open-circuit", Read.name()),
            map.listOrOne("apply", APPLY),
            map.listOrOne("uses", USE),
            map.listOrOne("hazards", Read.name()),
            map.optional("takes", Figures.minutes()),
            map.yesNo("impact", false),
            map.optional("seizes", SEIZES).map(Located::value).orElse(Step.Seizes.NEVER),
            map.listOrOne("if-stuck", Read.text()),
            map.optional("because", Read.text()),
            map.optional("good", Read.text()),
            map.yesNo("hold", false),
            map.optional("back", Read.text()),
            map.optional("moment", Words.moment()),
            Words.once(map.listOrOne("height", Words.height()), map.problems()),
            map.listOrOne("measure", Read.text()),
            map.at());
    return map.build(() -> step);
  }

  private static List<Located<String>> items(MapReader map, String key) {
    return Words.once(map.listOrOne(key, ITEM), map.problems());
  }

  private static Outcome<Step.Apply> apply(String text) {
    Matcher on = ON.matcher(text);
    if (!on.matches()) {
      return Outcome.ok(new Step.Apply(text, Optional.empty()));
    }
    return on.group("product").isEmpty() || on.group("item").isEmpty()
        ? Sentences.appliedToNothing(text)
        : Read.nameOf(on.group("item"))
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
    Optional<Located<String>> name = map.required(stuck ? "if-stuck" : "special", Read.text());
    return map.build(() -> new Procedure.Use(name.get().value(), !stuck, stuck));
  }
}
