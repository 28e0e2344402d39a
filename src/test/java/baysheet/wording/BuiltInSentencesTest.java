package baysheet.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Catalogue;
import baysheet.books.Glossary;
import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.books.Step;
import baysheet.plan.Planner;
import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.resolve.ShopTexts;
import baysheet.sheet.Sheet;
import baysheet.wording.BuiltInSentences.Sentence;
import baysheet.wording.BuiltInSentences.Use;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every sentence that the program brings along, in both its Englishes. */
class BuiltInSentencesTest {
  private static final ShopTexts SHOP = ShopTexts.of(Path.of("jobs")).withBuiltIn();
  private static final ShopFolder FOLDER = SHOP.folder();

  /** Checks that the planner words. */
  private static final Pattern OWN_CHECKS = Pattern.compile("recheck-|torque-of-|fluid-of-");

  private static final Catalogue CATALOGUE = FOLDER.catalogue();
  private static final Glossary GLOSSARY = CATALOGUE.glossary();
  private static final List<Sentence> ALL =
      BuiltInSentences.of(CATALOGUE, FOLDER.procedures().values());

  /** A caution says what to keep to, not only what to do. */
  private static final Set<String> COMMANDS =
      Set.of("keep", "wear", "use", "let", "never", "reach", "stand", "spray");

  /** What equipment ISO 7010 has signs for that a person wears: the rest is an action. */
  private static final Set<String> WORN =
      Set.of(
          "M003", "M004", "M008", "M009", "M010", "M013", "M014", "M015", "M016", "M017", "M019",
          "M026");

  @Test
  void thereAreManyOfThem() {
    assertTrue(ALL.size() > 2500, "sentences: " + ALL.size());
  }

  @Test
  void everySentenceIsPlain() {
    SentenceRules rules = SentenceRules.british(verbs(false));
    SentenceRules commands = SentenceRules.british(with(verbs(false)));
    assertEquals(List.of(), faults(rules, commands, Map.of()));
  }

  @Test
  void everySentenceIsPlainInAmericaToo() {
    SentenceRules rules = SentenceRules.american(verbs(true));
    SentenceRules commands = SentenceRules.american(with(verbs(true)));
    Map<String, String> names =
        CATALOGUE.items().values().stream()
            .filter(item -> item.american().isPresent())
            .collect(
                Collectors.toMap(
                    item -> item.british().value(),
                    item -> item.american().get().value(),
                    (one, other) -> one));
    assertEquals(List.of(), faults(rules, commands, names));
  }

  /** Headings, what stands beside one, and what stands in a cell of a table. */
  private static final Set<Phrase> HEADINGS =
      EnumSet.of(
          Phrase.BORROW,
          Phrase.CHECK_NOW,
          Phrase.CHECK_NOW_NOT_LIFTED,
          Phrase.RAISE,
          Phrase.LOWER,
          Phrase.WHEELS_CLEAR,
          Phrase.ONTO_BLOCKS,
          Phrase.ON_BLOCKS,
          Phrase.OFF_BLOCKS,
          Phrase.EVENING_BEFORE,
          Phrase.BEFORE_LIFTING,
          Phrase.RAISED,
          Phrase.BEFORE_LOWERING,
          Phrase.ON_THE_GROUND,
          Phrase.BEFORE_MOVING,
          Phrase.ROAD_TEST,
          Phrase.HAND_OVER,
          Phrase.RE_CHECK,
          Phrase.ROWS_ON_THE_GROUND,
          Phrase.REMOVED_AND_REFITTED,
          Phrase.RENEW,
          Phrase.SIDE_BY_SIDE);

  /** Sentences that say in what state a vehicle is; they instruct nobody. */
  private static final Set<Phrase> STATES =
      EnumSet.of(
          Phrase.AT_GROUND,
          Phrase.AT_WHEELS_CLEAR,
          Phrase.FOUND_AT_WHEELS_CLEAR,
          Phrase.AT_WORKING,
          Phrase.AT_STANDS,
          Phrase.AT_BLOCKS,
          Phrase.HELD_NOW,
          Phrase.OFF_NOW,
          Phrase.LINES_OFF,
          Phrase.LINES_LOOSE,
          Phrase.SLACKENED_NOW,
          Phrase.OPEN_NOW,
          Phrase.WRITTEN_ON,
          Phrase.NOTHING_OFF,
          Phrase.NOT_FINISHED,
          Phrase.CONTINUES,
          Phrase.REPLACES,
          Phrase.SEEN_ON_THIS,
          Phrase.SEEN_ON_KIND,
          Phrase.FOUND,
          Phrase.SEEN_ON_THIS,
          Phrase.SEEN_ON_KIND,
          Phrase.OK_IF);

  /** What is tried is a step together with what shows that it holds. */
  private static final Set<Phrase> WITH_THEIR_CHECK =
      EnumSet.of(
          Phrase.SET_LIFT_PADS,
          Phrase.FREE_LOCKS,
          Phrase.FREE_LOCKS_ALONE,
          Phrase.PUSH_SIDE,
          Phrase.PUSH_ENDS,
          Phrase.ONTO_LOCKS);

  @ParameterizedTest
  @EnumSource(Phrase.class)
  void everyPhraseIsPlainInBothEnglishes(Phrase phrase) {
    SentenceRules british = SentenceRules.british(verbs(false));
    SentenceRules american = SentenceRules.american(verbs(true));
    Object[] parts = {"front", "front", "front", "front"};
    assertEquals(List.of(), faults(british, phrase, phrase.british().formatted(parts)));
    assertEquals(List.of(), faults(american, phrase, phrase.american().formatted(parts)));
  }

  private static List<String> faults(SentenceRules rules, Phrase phrase, String text) {
    boolean instruction =
        Character.isUpperCase(text.charAt(0))
            && !HEADINGS.contains(phrase)
            && !STATES.contains(phrase);
    List<String> faults = instruction ? rules.instruction(text) : rules.sentence(text);
    return WITH_THEIR_CHECK.contains(phrase)
        ? faults.stream()
            .filter(it -> !it.startsWith("a second action") && !it.startsWith("two actions"))
            .toList()
        : faults;
  }

  /** What the planner says of figures, tools and threads that a job lacks. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void everySentenceOfThePlannerIsPlain(boolean american) {
    SentenceRules rules =
        american ? SentenceRules.american(verbs(true)) : SentenceRules.british(verbs(false));
    Set<String> said = ofThePlanner();
    assertTrue(said.size() > 12, said.toString());
    List<String> faults = new ArrayList<>();
    for (String each : said) {
      String text = american ? GLOSSARY.translate(each) : each;
      rules.instruction(text).forEach(fault -> faults.add("\"" + text + "\": " + fault));
    }
    assertEquals(List.of(), faults);
  }

  /** Of all demo jobs; what stands in a file is not the planner's. */
  private static Set<String> ofThePlanner() {
    Set<String> written = ALL.stream().map(Sentence::text).collect(Collectors.toSet());
    Set<String> said = new TreeSet<>();
    for (String job : SHOP.jobs()) {
      Problems problems = new Problems();
      Sheet sheet =
          SHOP.resolve(job, FOLDER, problems)
              .flatMap(resolved -> Planner.plan(resolved, problems))
              .orElseThrow();
      // The name of a tool is as the shop writes it.
      Printed.evening(sheet).stream()
          .filter(it -> !written.contains(it) && !it.startsWith("Borrow: "))
          .forEach(said::add);
      sheet.checks().stream()
          .filter(it -> OWN_CHECKS.matcher(it.name()).lookingAt())
          .forEach(it -> said.add(Printed.text(sheet, it.text())));
    }
    return said;
  }

  private static List<String> faults(
      SentenceRules rules, SentenceRules commands, Map<String, String> names) {
    boolean american = !names.isEmpty();
    List<String> faults = new ArrayList<>();
    for (Sentence each : ALL) {
      String text = american ? names.getOrDefault(each.text(), each.text()) : each.text();
      text = american ? GLOSSARY.translate(text) : text;
      SentenceRules by = each.use() == Use.COMMAND ? commands : rules;
      List<String> found = each.use() == Use.CLAUSE ? by.sentence(text) : by.instruction(text);
      if (each.use() == Use.COMMAND) {
        found = found.stream().filter(it -> !it.startsWith("two actions")).toList();
      }
      for (String fault : found) {
        faults.add(each.from() + ": \"" + text + "\": " + fault);
      }
    }
    return faults;
  }

  private static Set<String> verbs(boolean american) {
    return CATALOGUE.verbs().values().stream()
        .map(
            verb ->
                american
                    ? verb.american().map(Located::value).orElse(verb.name().value())
                    : verb.name().value())
        .collect(Collectors.toSet());
  }

  private static Set<String> with(Set<String> verbs) {
    Set<String> all = new HashSet<>(verbs);
    all.addAll(COMMANDS);
    return all;
  }

  /**
   * A torque stands behind the sentence that puts a fastener on, so the sentence must not tell of
   * another action first: it starts a fastener in a step of its own, or in half a sentence.
   */
  @Test
  void whatIsTorquedIsTightenedAndNotFitted() {
    List<String> faults = new ArrayList<>();
    CATALOGUE.items().values().stream()
        .filter(item -> isFastener(item.name().value()))
        .flatMap(item -> item.back().stream())
        .forEach(back -> faults.addAll(otherThanTightened("items", back)));
    for (Procedure procedure : FOLDER.procedures().values()) {
      for (Step step : steps(procedure)) {
        if (step.touched().doUp().stream().anyMatch(item -> isFastener(item.value()))) {
          faults.addAll(otherThanTightened(procedure.name().value(), step.text()));
        }
        if (step.touched().undo().stream().anyMatch(item -> isFastener(item.value()))) {
          step.back()
              .ifPresent(back -> faults.addAll(otherThanTightened(procedure.name().value(), back)));
        }
      }
    }
    assertEquals(List.of(), faults);
  }

  private static List<Step> steps(Procedure procedure) {
    return Stream.of(
            procedure.blocks().open(), procedure.blocks().work(), procedure.blocks().close())
        .flatMap(List::stream)
        .toList();
  }

  private static boolean isFastener(String item) {
    return Optional.ofNullable(CATALOGUE.items().get(item.split(" ")[0]))
        .filter(it -> it.kinds().stream().anyMatch(kind -> kind.value().equals("fastener")))
        .isPresent();
  }

  /** A screw that closes something is closed by tightening it. */
  private static List<String> otherThanTightened(String from, Located<String> text) {
    return text.value().matches("(?:Tighten|Close) .*")
        ? List.of()
        : List.of(from + ": " + text.value());
  }

  /** Hands are washed and plugs pulled, not worn. */
  @Test
  void protectiveEquipmentIsWorn() {
    CATALOGUE
        .cautions()
        .forEach(
            (name, caution) ->
                caution.protect().forEach(it -> assertTrue(WORN.contains(it.value()), name)));
  }
}
