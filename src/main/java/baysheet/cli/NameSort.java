package baysheet.cli;

import baysheet.books.Bay;
import baysheet.books.Catalogue;
import baysheet.books.Procedure;
import baysheet.books.Shop;
import baysheet.books.Vocabulary;
import baysheet.record.NameList;
import baysheet.report.Located;
import baysheet.report.Source;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** The sorts of names that files use, in the order in which they are listed. */
enum NameSort {
  ITEMS("items"),
  KINDS("kinds"),
  TRAITS("traits"),
  STATES("states"),
  FLUIDS("fluids"),
  MEASURES("measures"),
  TOOLS("tools"),
  PRODUCTS("products"),
  CAUTIONS("cautions"),
  PROCEDURES("procedures"),
  ROLES("roles"),
  BAYS("bays"),
  PEOPLE("people");

  private final String word;

  NameSort(String word) {
    this.word = word;
  }

  /** As typed. */
  String word() {
    return word;
  }

  static List<String> words() {
    return Stream.of(values()).map(NameSort::word).toList();
  }

  /**
   * What names are taken from.
   *
   * @param shop with procedures, where there is a shop folder
   * @param builtIn the files that come with the program
   */
  record Origin(
      Catalogue catalogue, List<Shop> shop, Collection<Procedure> procedures, Set<Source> builtIn) {
    private String from(Source source) {
      return builtIn.contains(source) ? "built-in" : source.name();
    }
  }

  /** The names of this sort. */
  List<NameList.Name> in(Origin origin) {
    Catalogue catalogue = origin.catalogue();
    Vocabulary words = catalogue.vocabulary();
    return switch (this) {
      case ITEMS -> items(origin);
      case KINDS -> sentences(words.kinds(), origin);
      case TRAITS -> sentences(words.traits(), origin);
      case FLUIDS -> sentences(words.fluids(), origin);
      case MEASURES -> sentences(words.measures(), origin);
      case STATES -> each(catalogue.states().values(), it -> state(it, origin));
      case TOOLS -> tools(origin);
      case PRODUCTS -> each(words.products().values(), it -> supply(it, origin));
      case CAUTIONS -> each(catalogue.cautions().values(), it -> caution(it, origin));
      case PROCEDURES -> each(origin.procedures(), it -> procedure(it, origin));
      case ROLES -> roles(origin);
      case BAYS -> each(origin.shop(), it -> it.bays().values().stream(), it -> bay(it, origin));
      case PEOPLE ->
          each(origin.shop(), it -> it.people().values().stream(), it -> person(it, origin));
    };
  }

  private static <T> List<NameList.Name> each(Collection<T> all, Function<T, NameList.Name> name) {
    return all.stream().map(name).toList();
  }

  private static <S, T> List<NameList.Name> each(
      Collection<S> all, Function<S, Stream<T>> inside, Function<T, NameList.Name> name) {
    return all.stream().flatMap(inside).map(name).toList();
  }

  private NameList.Name name(
      Located<String> name, String meaning, List<String> belongs, Origin origin) {
    String from = origin.from(name.at().source());
    return new NameList.Name(word, name.value(), meaning, belongs, from);
  }

  private static List<String> values(List<Located<String>> names) {
    return names.stream().map(Located::value).toList();
  }

  private List<NameList.Name> items(Origin origin) {
    return each(
        origin.catalogue().items().values(),
        item -> name(item.name(), item.british().value(), values(item.kinds()), origin));
  }

  private List<NameList.Name> sentences(Map<String, Located<String>> words, Origin origin) {
    return each(
        words.entrySet(),
        entry ->
            name(
                new Located<>(entry.getKey(), entry.getValue().at()),
                entry.getValue().value(),
                List.of(),
                origin));
  }

  private NameList.Name state(Catalogue.State state, Origin origin) {
    String meaning =
        "likely to seize: times %s; possibly: times %s"
            .formatted(
                state.likelyFactor().toPlainString(), state.possibleFactor().toPlainString());
    return name(state.name(), meaning, List.of(), origin);
  }

  /** Those of the catalogue, and the special ones of the crib. */
  private List<NameList.Name> tools(Origin origin) {
    Map<String, Vocabulary.Supply> declared = origin.catalogue().vocabulary().tools();
    List<NameList.Name> tools = new ArrayList<>(each(declared.values(), it -> supply(it, origin)));
    tools.addAll(
        each(
            origin.shop(),
            shop ->
                shop.crib().special().stream()
                    .filter(it -> !declared.containsKey(it.name().value())),
            it -> name(it.name(), "a special tool of the crib", List.of(), origin)));
    return tools;
  }

  private NameList.Name supply(Vocabulary.Supply supply, Origin origin) {
    return name(supply.name(), supply.means().value(), values(supply.like()), origin);
  }

  private NameList.Name caution(Catalogue.Caution caution, Origin origin) {
    String meaning = caution.signal() + ": " + caution.command().value();
    return name(caution.name(), meaning, List.of(), origin);
  }

  private NameList.Name procedure(Procedure procedure, Origin origin) {
    return name(
        procedure.name(),
        procedure.title().value(),
        List.of("at " + procedure.at().value().word()),
        origin);
  }

  private List<NameList.Name> roles(Origin origin) {
    return each(
        origin.procedures(),
        it -> it.serves().map(role -> Map.entry(role, it)).stream(),
        it -> name(it.getKey(), "served by " + it.getValue().name().value(), List.of(), origin));
  }

  private NameList.Name bay(Bay bay, Origin origin) {
    return name(bay.name(), bay.description().value(), List.of(bay.equipment().word()), origin);
  }

  private NameList.Name person(Shop.Person person, Origin origin) {
    return name(person.id(), person.name().value(), List.of(), origin);
  }
}
