package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problems;
import baysheet.torque.Treatment;
import baysheet.yaml.Entry;
import baysheet.yaml.MapReader;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.ParseOutcome;
import baysheet.yaml.Scalar;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads a catalogue file, built in or the shop's own. */
public final class CatalogueReader {
  /** ISO 7010 numbers its mandatory-action signs M001 and on. */
  private static final Pattern MANDATORY_SIGN = Pattern.compile("M0[0-9]{2}");

  private static final ValueReader<Catalogue> CATALOGUE =
      ValueReaders.record("a catalogue", CatalogueReader::catalogue);
  private static final ValueReader<Words.Unnamed<Catalogue.Item>> ITEM =
      ValueReaders.record("an item", CatalogueReader::item);
  private static final ValueReader<Words.Unnamed<Catalogue.Caution>> CAUTION =
      ValueReaders.record("a caution", CatalogueReader::caution);
  private static final ValueReader<Words.Unnamed<Catalogue.State>> STATE =
      ValueReaders.record("a state", CatalogueReader::state);
  private static final ValueReader<Words.Unnamed<Vocabulary.Supply>> TOOL =
      ValueReaders.record("a tool", map -> supply(map, Optional.empty()));
  private static final ValueReader<Treatment> ON_THREAD =
      Words.oneOf(
          Stream.of(Treatment.values())
              .filter(it -> it != Treatment.NOT_STATED && it != Treatment.AS_DELIVERED)
              .toList(),
          Treatment::word);
  private static final ValueReader<Words.Unnamed<Vocabulary.Supply>> PRODUCT =
      ValueReaders.record("a product", map -> supply(map, map.optional("thread", ON_THREAD)));
  private static final ValueReader<Words.Unnamed<Catalogue.Qualification>> QUALIFICATION =
      ValueReaders.record("a qualification", CatalogueReader::qualification);
  private static final ValueReader<Words.Unnamed<Catalogue.Verb>> VERB =
      ValueReaders.record("a verb", CatalogueReader::verb);
  private static final ValueReader<Catalogue.Signal> SIGNAL =
      Words.oneOf(List.of(Catalogue.Signal.values()), Catalogue.Signal::name);
  private static final ValueReader<String> TERM = ValueReaders.value(CatalogueReader::term);
  private static final ValueReader<String> PROTECTION =
      ValueReaders.value(CatalogueReader::protection);

  /** Sections of which both entries hold, so that nothing is passed over. */
  private static final Set<String> STANDS_BESIDE = Set.of("cautions", "consequences", "terms");

  private CatalogueReader() {}

  /** The catalogue; empty when a problem was added that leaves none. */
  public static Optional<Catalogue> read(Node node, Problems problems) {
    return CATALOGUE.read(node, problems).map(Located::value);
  }

  /**
   * All of them as one; of two entries with one name the later catalogue's stands. What rules know
   * an entry by is never lost that way: an item keeps its kinds, and a caution or a qualification
   * that says nothing of when it applies keeps that.
   */
  public static Catalogue merge(List<Catalogue> catalogues) {
    Map<String, Catalogue.Item> items = new LinkedHashMap<>();
    Map<String, Catalogue.Caution> cautions = new LinkedHashMap<>();
    Map<String, Catalogue.Rule> rules = new LinkedHashMap<>();
    Map<String, Catalogue.State> states = new LinkedHashMap<>();
    Vocabulary vocabulary = Vocabulary.nothing();
    Map<String, Catalogue.Qualification> qualifications = new LinkedHashMap<>();
    Map<String, Catalogue.Verb> verbs = new LinkedHashMap<>();
    Map<String, String> terms = new LinkedHashMap<>();
    for (Catalogue catalogue : catalogues) {
      catalogue.items().forEach((name, item) -> items.merge(name, item, Catalogue.Item::under));
      catalogue
          .cautions()
          .forEach((name, one) -> cautions.merge(name, one, Catalogue.Caution::under));
      rules.putAll(catalogue.rules());
      states.putAll(catalogue.states());
      vocabulary = vocabulary.with(catalogue.vocabulary());
      catalogue
          .qualifications()
          .forEach((name, one) -> qualifications.merge(name, one, Catalogue.Qualification::under));
      verbs.putAll(catalogue.verbs());
      terms.putAll(catalogue.glossary().american());
    }
    return new Catalogue(
        items, cautions, rules, states, qualifications, vocabulary, verbs, Glossary.of(terms));
  }

  /**
   * Reports names that stand in two of a shop's own files: which of the two holds would depend on
   * what the files are called.
   */
  public static void sameNames(List<Node> files, Problems problems) {
    Map<List<String>, Scalar> seen = new HashMap<>();
    for (Node file : files) {
      for (Entry section : entries(file)) {
        for (Entry entry : entries(section.value())) {
          List<String> name = List.of(section.key().text(), entry.key().text().strip());
          Scalar first = seen.putIfAbsent(name, entry.key());
          if (first != null && !first.at().source().equals(entry.key().at().source())) {
            problems.add(CatalogueSentences.inTwoFiles(section.key().text(), entry.key(), first));
          }
        }
      }
    }
  }

  /**
   * Reports names of a shop's file that are a slip of the pen away from a built-in one: meant to
   * take its place, the entry would be passed over.
   *
   * @param builtIn the files that come with the program
   */
  public static void nearNames(Node file, List<Node> builtIn, Problems problems) {
    for (Entry section : entries(file)) {
      if (STANDS_BESIDE.contains(section.key().text())) {
        continue;
      }
      Set<String> known = names(section.key().text(), builtIn);
      for (Entry entry : entries(section.value())) {
        String own = entry.key().text().strip();
        Optional<String> near = known.contains(own) ? Optional.empty() : Nearest.slip(own, known);
        near.ifPresent(
            it ->
                problems.add(
                    CatalogueSentences.nearBuiltIn(section.key().text(), entry.key(), it)));
      }
    }
  }

  private static Set<String> names(String section, List<Node> files) {
    return files.stream()
        .flatMap(file -> entries(file).stream())
        .filter(entry -> entry.key().text().equals(section))
        .flatMap(entry -> entries(entry.value()).stream())
        .map(entry -> entry.key().text())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<Entry> entries(Node node) {
    return node instanceof Mapping mapping ? mapping.entries() : List.of();
  }

  private static Optional<Catalogue> catalogue(MapReader map) {
    Map<String, Catalogue.Item> items = named(map, "items", ITEM);
    Map<String, Catalogue.Caution> cautions = named(map, "cautions", CAUTION);
    Map<String, Catalogue.Rule> rules = named(map, "consequences", RuleReader.RULE);
    Map<String, Catalogue.State> states = named(map, "states", STATE);
    Map<String, Catalogue.Qualification> qualifications =
        named(map, "qualifications", QUALIFICATION);
    Vocabulary vocabulary = vocabulary(map);
    Map<String, Catalogue.Verb> verbs =
        Words.named(map.entries("verbs", CatalogueReader::term, VERB));
    Map<String, String> terms = terms(map);
    verbs.forEach(
        (name, verb) -> verb.american().ifPresent(there -> terms.put(name, there.value())));
    return map.build(
        () ->
            new Catalogue(
                items,
                cautions,
                rules,
                states,
                qualifications,
                vocabulary,
                verbs,
                Glossary.of(terms)));
  }

  private static Vocabulary vocabulary(MapReader map) {
    return new Vocabulary(
        sentences(map, "traits"),
        sentences(map, "kinds"),
        sentences(map, "fluids"),
        Words.located(map.entries("measures", ParseOutcome::ok, ValueReaders.text())),
        Words.named(map.entries("tools", ParseOutcome::ok, TOOL)),
        Words.named(map.entries("products", ParseOutcome::ok, PRODUCT)));
  }

  private static Map<String, Located<String>> sentences(MapReader map, String key) {
    return Words.located(map.entries(key, ValueReaders::nameOf, ValueReaders.text()));
  }

  private static Optional<Words.Unnamed<Vocabulary.Supply>> supply(
      MapReader map, Optional<Located<Treatment>> thread) {
    Optional<Located<String>> means = map.required("means", ValueReaders.text());
    List<Located<String>> like =
        Words.once(map.listOrOne("like", ValueReaders.text()), map.problems());
    return map.build(
        () -> name -> new Vocabulary.Supply(name, means.get(), like, thread.map(Located::value)));
  }

  /** American words by British ones. */
  private static Map<String, String> terms(MapReader map) {
    Map<String, String> terms = new LinkedHashMap<>();
    Words.located(map.entries("terms", CatalogueReader::term, TERM))
        .forEach((british, american) -> terms.put(british, american.value()));
    return terms;
  }

  private static Optional<Words.Unnamed<Catalogue.Verb>> verb(MapReader map) {
    // For those who look for a verb in the file; the program has no use for it.
    map.required("means", ValueReaders.text());
    Optional<Located<String>> american = map.optional("american", TERM);
    return map.build(() -> name -> new Catalogue.Verb(name, american));
  }

  private static ParseOutcome<String> term(String text) {
    return Glossary.TERM.matcher(text).matches()
        ? ParseOutcome.ok(text)
        : BookSentences.notATerm(text);
  }

  private static <T> Map<String, T> named(
      MapReader map, String key, ValueReader<Words.Unnamed<T>> value) {
    return Words.named(map.entries(key, ValueReaders::nameOf, value));
  }

  private static Optional<Words.Unnamed<Catalogue.Item>> item(MapReader map) {
    Optional<Located<String>> british = map.required("name", ValueReaders.text());
    Optional<Located<String>> american = map.optional("american", ValueReaders.text());
    List<Located<String>> kinds =
        Words.once(map.listOrOne("kinds", ValueReaders.name()), map.problems());
    Optional<Located<String>> back = map.optional("back", ValueReaders.text());
    Optional<Located<String>> fluid = map.optional("fluid", ValueReaders.name());
    Optional<Located<String>> left = map.optional("left", ValueReaders.text());
    Optional<Located<FastenerText>> usual = map.optional("usual", FastenerReader.USUAL);
    return map.build(
        () ->
            name ->
                new Catalogue.Item(name, british.get(), american, kinds, back, fluid, left, usual));
  }

  private static Optional<Words.Unnamed<Catalogue.Caution>> caution(MapReader map) {
    Optional<Located<Catalogue.Signal>> signal = map.required("signal", SIGNAL);
    List<Trigger> when = TriggerReader.optional(map);
    Optional<Located<String>> command = map.required("do", ValueReaders.text());
    Optional<Located<String>> hazard = map.required("hazard", ValueReaders.text());
    Optional<Located<String>> consequence = map.required("consequence", ValueReaders.text());
    List<Located<String>> protect =
        Words.once(map.listOrOne("protect", PROTECTION), map.problems());
    Optional<Located<String>> source = map.required("source", ValueReaders.text());
    boolean wholeJob = map.yesNo("whole-job", false);
    boolean raising = map.yesNo("raising", false);
    return map.build(
        () ->
            name ->
                new Catalogue.Caution(
                    name,
                    signal.get().value(),
                    when,
                    command.get(),
                    hazard.get(),
                    consequence.get(),
                    protect,
                    source.get(),
                    wholeJob,
                    raising));
  }

  private static ParseOutcome<String> protection(String text) {
    return MANDATORY_SIGN.matcher(text).matches()
        ? ParseOutcome.ok(text)
        : BookSentences.notProtection(text);
  }

  private static Optional<Words.Unnamed<Catalogue.Qualification>> qualification(MapReader map) {
    Optional<Located<String>> words = map.required("name", ValueReaders.text());
    List<Trigger> when = TriggerReader.optional(map);
    Optional<Located<String>> source = map.required("source", ValueReaders.text());
    return map.build(
        () -> name -> new Catalogue.Qualification(name, words.get(), when, source.get()));
  }

  private static Optional<Words.Unnamed<Catalogue.State>> state(MapReader map) {
    Optional<Located<BigDecimal>> likely = map.required("likely", FigureReaders.factor());
    Optional<Located<BigDecimal>> possible = map.required("possible", FigureReaders.factor());
    Optional<Located<String>> source = map.required("source", ValueReaders.text());
    return map.build(
        () ->
            name ->
                new Catalogue.State(
                    name, likely.get().value(), possible.get().value(), source.get()));
  }
}
