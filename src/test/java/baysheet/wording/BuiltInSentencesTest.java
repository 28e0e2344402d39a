package baysheet.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Catalogue;
import baysheet.books.Glossary;
import baysheet.books.ShopFolder;
import baysheet.report.Located;
import baysheet.resolve.ShopTexts;
import baysheet.wording.BuiltInSentences.Sentence;
import baysheet.wording.BuiltInSentences.Use;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every sentence that the program brings along, in both its Englishes. */
class BuiltInSentencesTest {
  private static final ShopFolder FOLDER = ShopTexts.of(Path.of("jobs")).withBuiltIn().folder();
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
