package baysheet.cli;

import baysheet.yaml.Entry;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.Scalar;
import baysheet.yaml.Sequence;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Facts that may change without a word on the sheet of a job, each with the reason. What is not
 * declared here must show.
 */
final class UnprintedFacts {
  private final MutatedShop shop;
  private final MutatedShop.Unmutated before;

  UnprintedFacts(MutatedShop shop, MutatedShop.Unmutated before) {
    this.shop = shop;
    this.before = before;
  }

  /**
   * Facts that need not show although the job uses their file.
   *
   * @param file how the file's path begins, as seen from the shop
   * @param path of the fact
   * @param names whether misspelt names need not show either; else only that the sheet differs
   * @param where what must hold of the job and the fact
   */
  private record Rule(
      String file,
      Pattern path,
      boolean names,
      BiPredicate<UnprintedFacts, WrittenFact> where,
      String because) {}

  private static Rule rule(String file, String path, String because) {
    return new Rule(file, Pattern.compile(path), false, (job, fact) -> true, because);
  }

  /** Only where something is left out. */
  private static Rule whereLeftOut(
      String file, String path, BiPredicate<UnprintedFacts, WrittenFact> where, String because) {
    return new Rule(file, Pattern.compile(path), false, where, because);
  }

  private static Rule where(
      String file, String path, BiPredicate<UnprintedFacts, WrittenFact> where, String because) {
    return new Rule(file, Pattern.compile(path), true, where, because);
  }

  private static final List<Rule> RULES =
      List.of(
          where(
              "",
              ".*",
              (job, fact) -> fact.node() instanceof Sequence list && list.items().isEmpty(),
              "an empty list says what no list says"),

          // --- the shop ---
          rule("shop.yaml", "crib\\b.*", "a tool that the job does not need, or that still serves"),
          rule(
              "shop.yaml",
              "(drives|units|calibration-interval|band)\\b.*",
              "a limit that no figure of the job meets"),
          where(
              "shop.yaml",
              "crib\\.special\\.[0-9]+(\\..*)?",
              UnprintedFacts::isUnsaid,
              "a special tool that the job does not need"),
          where(
              "shop.yaml",
              "(people|bays)\\..*",
              UnprintedFacts::isOfNobodyHere,
              "somebody else, or another bay"),

          // --- the spec book and those it is like ---
          where(
              "vehicles/",
              "fasteners\\..*",
              UnprintedFacts::isOfNoFastenerHere,
              "a fastener that the job does not touch"),
          where(
              "vehicles/",
              "fluids\\b.*",
              UnprintedFacts::isUnsaid,
              "a fluid that the job does not fill"),
          where(
              "vehicles/",
              "(supports|jacking)\\b.*",
              UnprintedFacts::isUnsaid,
              "an axle that the job does not raise"),
          where(
              "vehicles/",
              "front-share|mass-behind-front|wheelbase",
              (job, fact) -> job.isOnALift(),
              "a vehicle on a lift is raised as a whole"),
          where(
              "vehicles/",
              ".*",
              UnprintedFacts::isOverlaid,
              "the vehicle's own book says it for itself"),
          rule("vehicles/", "traits\\b.*", "a trait that changes nothing for the job"),

          // --- procedures ---
          where(
              "procedures/",
              "title",
              (job, fact) -> !job.isAsked(fact),
              "the title of a procedure that only gives access"),
          where(
              "procedures/",
              "(.*\\.)?(because|good)",
              (job, fact) -> !job.before.apprentice(),
              "reasons are for apprentices"),
          rule("procedures/", ".*\\.seizes", "without a state nothing seizes"),
          rule(
              "procedures/",
              "(.*\\.)?uses\\b.*",
              "a tool that another step of the job uses as well"),
          rule("procedures/", "(before|after)\\b.*", "a work that the job does not ask for"),
          rule("procedures/", "(.*\\.)?moment", "the moment at which it is done anyway"),
          rule("procedures/", "needs|serves", "the only one that the bay can take"),
          rule("procedures/", "not-with\\..*", "what to use on a vehicle that is not this one"),
          whereLeftOut(
              "procedures/",
              "behind\\.[0-9]+",
              (job, fact) -> true,
              "access that another work of the job needs as well"),
          whereLeftOut(
              "procedures/",
              "(open|work|close)\\.[0-9]+(\\.back)?",
              UnprintedFacts::isSaidAnyway,
              "the sheet says the same without it"),

          // --- the catalogue ---
          where(
              "catalogue/",
              "[a-z]+(\\..*)?",
              UnprintedFacts::isOfNoEntryHere,
              "an entry that the job does not bring"));

  /** Why a fact need not show. */
  Optional<String> reason(Path file, WrittenFact fact, ShopMutation.Must must) {
    if (!before.used().contains(file)) {
      return Optional.of("a file that the job does not use");
    }
    String shown = shop.shown(file);
    boolean names = must == ShopMutation.Must.BE_REFUSED || must == ShopMutation.Must.SHOW_MARKER;
    return RULES.stream()
        .filter(rule -> rule.names() || !names)
        .filter(rule -> shown.startsWith(rule.file()))
        .filter(rule -> rule.path().matcher(fact.path()).matches())
        .filter(rule -> rule.where().test(this, fact))
        .map(Rule::because)
        .findFirst();
  }

  private boolean isAsked(WrittenFact fact) {
    return before.asked().stream().anyMatch(it -> fact.file().endsWith("/" + it + ".yaml"));
  }

  /** Neither the fastener itself nor one of the group. */
  private boolean isOfNoFastenerHere(WrittenFact fact) {
    Stream<String> within =
        fact.node() instanceof Mapping map
            ? map.entries().stream().map(entry -> entry.key().at().toString())
            : Stream.empty();
    return Stream.concat(fact.keys().stream(), within).noneMatch(before.keys()::contains);
  }

  /** Of a book that the vehicle's own is like, and that says the same keys. */
  private boolean isOverlaid(WrittenFact fact) {
    Path own = shop.root.resolve("vehicles/" + shop.value(before.job(), "vehicle.book") + ".yaml");
    return !YamlFiles.shown(own).equals(fact.file())
        && shop.facts(own).stream()
            .anyMatch(it -> !(it.node() instanceof Mapping) && it.path().equals(fact.path()));
  }

  private boolean isOnALift() {
    String bay = shop.value(before.job(), "bay");
    return shop.facts(shop.root.resolve(ShopFolders.SHOP_FILE)).stream()
        .anyMatch(fact -> fact.path().equals("bays." + bay + ".lift"));
  }

  /** Whether the unchanged sheet has none of the texts in it. */
  private boolean isUnsaid(WrittenFact fact) {
    return texts(fact.node()).noneMatch(before.result().says()::contains);
  }

  private static Stream<String> texts(Node node) {
    if (node instanceof Mapping map) {
      return map.entries().stream().flatMap(entry -> texts(entry.value()));
    }
    return node instanceof Sequence list
        ? list.items().stream().flatMap(UnprintedFacts::texts)
        : Stream.of(((Scalar) node).text());
  }

  /** The id of a person or a bay stands in the job file. */
  private boolean isOfNobodyHere(WrittenFact fact) {
    String id = fact.path().split("\\.")[1];
    return shop.facts(before.job()).stream()
        .filter(it -> it.path().matches("bay|by|with|waive\\..*"))
        .noneMatch(it -> it.node() instanceof Scalar scalar && scalar.text().equals(id));
  }

  /** An entry is brought when its name, or what it is called, stands on the sheet. */
  private boolean isOfNoEntryHere(WrittenFact fact) {
    if (fact.node() instanceof Mapping section && fact.keys().size() == 1) {
      return section.entries().stream()
          .allMatch(entry -> isNotBrought(fact, fact.path(), entry.key().text()));
    }
    String[] path = fact.path().split("\\.");
    return isNotBrought(fact, path[0], path[1]);
  }

  private boolean isNotBrought(WrittenFact fact, String section, String name) {
    String entry = section + "." + name;
    boolean said =
        shop.facts(root(fact)).stream()
            .filter(it -> it.path().equals(entry + ".name") || it.path().equals(entry + ".do"))
            .anyMatch(it -> !isUnsaid(it));
    return !said && !before.result().says().contains(name);
  }

  /** The step's sentence stands on the sheet, from here or from elsewhere. */
  private boolean isSaidAnyway(WrittenFact fact) {
    Optional<Node> sentence =
        fact.node() instanceof Mapping step
            ? step.entries().stream()
                .filter(it -> it.key().text().equals("do"))
                .map(Entry::value)
                .findFirst()
            : Optional.of(fact.node());
    return sentence.filter(Scalar.class::isInstance).isPresent()
        && before.result().says().contains(((Scalar) sentence.get()).text());
  }

  private Path root(WrittenFact fact) {
    return shop.files.stream()
        .filter(it -> YamlFiles.shown(it).equals(fact.file()))
        .findFirst()
        .orElseThrow();
  }
}
