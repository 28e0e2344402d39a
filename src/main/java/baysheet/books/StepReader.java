package baysheet.books;

import baysheet.report.Located;
import baysheet.torque.ThreePoint;
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

  /** {@code wire brush}, or {@code {special: ball joint splitter}}. */
  static final ValueReader<Procedure.Use> USE =
      Read.scalarOr(
          Read.text().map(name -> new Procedure.Use(name, false)),
          Read.record("a tool", StepReader::special));

  private static final ValueReader<String> ITEM = Read.value(PlaceText::item);
  private static final ValueReader<Step.Apply> APPLY = Read.value(StepReader::apply);
  private static final ValueReader<Step.Seizes> SEIZES = Read.oneOf(seizes());
  private static final Pattern ON = Pattern.compile("(?<product>.*?)\\s*\\bon\\b\\s*(?<item>.*)");

  private StepReader() {}

  private static Optional<Step> step(MapReader map) {
    Optional<Located<String>> text = map.required("do", Read.text());
    List<Located<String>> undo = items(map, "undo");
    List<Located<String>> doUp = items(map, "do-up");
    List<Located<String>> disturb = items(map, "disturb");
    List<Located<String>> circuits = map.listOrOne("open-circuit", Read.name());
    List<Located<Step.Apply>> apply = map.listOrOne("apply", APPLY);
    List<Located<Procedure.Use>> uses = map.listOrOne("uses", USE);
    List<Located<String>> hazards = map.listOrOne("hazards", Read.name());
    Optional<Located<ThreePoint>> takes = map.optional("takes", Figures.minutes());
    boolean impact = map.yesNo("impact", false);
    Optional<Located<Step.Seizes>> seizes = map.optional("seizes", SEIZES);
    List<Located<String>> ifStuck = map.listOrOne("if-stuck", Read.text());
    Optional<Located<String>> because = map.optional("because", Read.text());
    Optional<Located<String>> good = map.optional("good", Read.text());
    boolean hold = map.yesNo("hold", false);
    Optional<Located<String>> back = map.optional("back", Read.text());
    Optional<Located<Moment>> moment = map.optional("moment", Words.moment());
    return map.build(
        () ->
            new Step(
                text.get(),
                undo,
                doUp,
                disturb,
                circuits,
                apply,
                uses,
                hazards,
                takes,
                impact,
                seizes.map(Located::value).orElse(Step.Seizes.NEVER),
                ifStuck,
                because,
                good,
                hold,
                back,
                moment,
                map.at()));
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

  private static Optional<Procedure.Use> special(MapReader map) {
    Optional<Located<String>> name = map.required("special", Read.text());
    return map.build(() -> new Procedure.Use(name.get().value(), true));
  }
}
