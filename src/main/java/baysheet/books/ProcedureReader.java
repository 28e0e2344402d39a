package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.yaml.MapReader;
import baysheet.yaml.Node;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads a procedure. */
public final class ProcedureReader {
  private static final int MOST_PARTS = 99;

  /** A sentence may have a condition before its verb. */
  private static final Pattern SLACKENS = verb("slacken|loosen");

  private static final Pattern REMOVES = verb("remove|take (off|out)|lift|pull|drill|cut");

  private static final ValueReader<Procedure> PROCEDURE =
      ValueReaders.record("a procedure", ProcedureReader::procedure);
  private static final ValueReader<Procedure.Part> PART =
      ValueReaders.record("a part", ProcedureReader::part);
  private static final ValueReader<Procedure.Check> CHECK =
      ValueReaders.record("a check", ProcedureReader::check);
  private static final ValueReader<Place.Kind> KIND =
      Words.oneOf(List.of(Place.Kind.values()), Place.Kind::word);
  private static final ValueReader<Bay.Equipment> EQUIPMENT =
      Words.oneOf(List.of(Bay.Equipment.values()), Bay.Equipment::word);
  private static final ValueReader<Procedure.Access> ACCESS = ValueReaders.value(PlaceText::access);

  private ProcedureReader() {}

  private static Pattern verb(String verbs) {
    return Pattern.compile("^([^,]*, )?(" + verbs + ")\\b", Pattern.CASE_INSENSITIVE);
  }

  /** The procedure; empty when a problem was added that leaves none. */
  public static Optional<Procedure> read(Node node, Problems problems) {
    Optional<Procedure> procedure = PROCEDURE.read(node, problems).map(Located::value);
    procedure.ifPresent(it -> check(it, problems));
    return procedure;
  }

  /**
   * The same, and reports when the procedure is not named as its file is, without {@code .yaml}.
   */
  public static Optional<Procedure> read(Node node, String fileName, Problems problems) {
    Optional<Procedure> procedure = read(node, problems);
    procedure.ifPresent(it -> Words.sameAsFile(it.name(), fileName, problems));
    return procedure;
  }

  private static Optional<Procedure> procedure(MapReader map) {
    Procedure procedure =
        new Procedure(
            Words.needed(map, "procedure", ValueReaders.name(), ""),
            Words.needed(map, "title", ValueReaders.text(), ""),
            Words.needed(map, "at", KIND, Place.Kind.VEHICLE),
            map.optional("serves", ValueReaders.name()),
            ApplicabilityReader.read(map),
            new Procedure.Needs(
                map.optional("needs", EQUIPMENT),
                once(map, "qualification", ValueReaders.name()),
                once(map, "uses", StepReader.USE),
                values(map, "parts", PART)),
            once(map, "behind", ACCESS),
            once(map, "after", ValueReaders.name()),
            once(map, "before", ValueReaders.name()),
            new Procedure.Blocks(
                values(map, "open", StepReader.STEP),
                values(map, "work", StepReader.STEP),
                values(map, "close", StepReader.STEP)),
            values(map, "checks", CHECK));
    return map.build(() -> procedure);
  }

  private static <T> List<Located<T>> once(MapReader map, String key, ValueReader<T> item) {
    return Words.once(map.listOrOne(key, item), map.problems());
  }

  private static <T> List<T> values(MapReader map, String key, ValueReader<T> item) {
    return map.list(key, item).stream().map(Located::value).toList();
  }

  private static Optional<Procedure.Part> part(MapReader map) {
    Optional<Located<String>> name = map.required("part", ValueReaders.text());
    Optional<Located<Integer>> count =
        map.required("count", ValueReaders.wholeNumber(1, MOST_PARTS));
    Optional<Located<String>> renews = map.optional("renews", StepReader.ITEM);
    return map.build(() -> new Procedure.Part(name.get(), count.get(), renews));
  }

  private static Optional<Procedure.Check> check(MapReader map) {
    Optional<Located<String>> text = map.required("do", ValueReaders.text());
    Optional<Located<Moment>> moment = map.required("moment", Words.moment());
    boolean hold = map.yesNo("hold", false);
    Optional<Located<String>> because = map.optional("because", ValueReaders.text());
    return map.build(() -> new Procedure.Check(text.get(), moment.get(), hold, because));
  }

  private static void check(Procedure procedure, Problems problems) {
    backIsUsed(procedure, problems);
    procedure.blocks().steps().forEach(step -> slackenedOrRemoved(step, problems));
    if (procedure.blocks().steps().findAny().isEmpty()) {
      problems.add(BookSentences.noSteps(procedure.name().at()));
    }
    Stream<Located<String>> behind =
        procedure.behind().stream().map(access -> access.map(Procedure.Access::procedure));
    notItself(procedure, "behind", behind, problems);
    notItself(procedure, "after", procedure.after().stream(), problems);
    notItself(procedure, "before", procedure.before().stream(), problems);
    Stream<Located<String>> instead =
        procedure.applicability().notWith().stream().flatMap(it -> it.procedure().stream());
    notItself(procedure, "not-with", instead, problems);
  }

  private static boolean saysTheSame(Step step, Step closing) {
    return step.back().map(Located::value).equals(Optional.of(closing.text().value()));
  }

  /**
   * Whether a fastener stays in its thread is said by the key alone, so that a sentence which says
   * otherwise is an error: a state between two sheets would be wrong.
   */
  private static void slackenedOrRemoved(Step step, Problems problems) {
    Step.Touched touched = step.touched();
    String text = step.text().value();
    if (touched.slacken().isEmpty() && SLACKENS.matcher(text).find()) {
      touched.undo().forEach(it -> problems.add(BookSentences.slackenedOrRemoved(it, false)));
    } else if (touched.undo().isEmpty() && REMOVES.matcher(text).find()) {
      touched.slacken().forEach(it -> problems.add(BookSentences.slackenedOrRemoved(it, true)));
    }
    Set<String> off = touched.undo().stream().map(Located::value).collect(Collectors.toSet());
    touched.slacken().stream()
        .filter(it -> off.contains(it.value()))
        .forEach(it -> problems.add(BookSentences.undoneAndSlackened(it)));
  }

  /**
   * Warns of a wording for putting back that is never used: steps under close put all of it back.
   */
  private static void backIsUsed(Procedure procedure, Problems problems) {
    Map<String, Step> putBack = new HashMap<>();
    procedure
        .blocks()
        .close()
        .forEach(step -> step.touched().doUp().forEach(it -> putBack.put(it.value(), step)));
    Stream.concat(procedure.blocks().open().stream(), procedure.blocks().work().stream())
        .filter(step -> step.back().isPresent() && step.touched().disturb().isEmpty())
        .filter(step -> opened(step).findAny().isPresent())
        .filter(step -> opened(step).allMatch(it -> putBack.containsKey(it.value())))
        .filter(
            step ->
                procedure.blocks().close().stream()
                    .noneMatch(closing -> saysTheSame(step, closing)))
        .forEach(
            step ->
                problems.add(
                    BookSentences.unusedBack(
                        step.back().get(),
                        putBack.get(opened(step).findFirst().get().value()).text())));
  }

  private static Stream<Located<String>> opened(Step step) {
    return Stream.concat(step.touched().undo().stream(), step.touched().slacken().stream());
  }

  private static void notItself(
      Procedure procedure, String key, Stream<Located<String>> others, Problems problems) {
    String name = procedure.name().value();
    others
        .filter(other -> other.value().equals(name))
        .forEach(other -> problems.add(BookSentences.namesItself(other.at(), name, key)));
  }
}
