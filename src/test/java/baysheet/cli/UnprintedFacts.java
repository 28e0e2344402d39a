package baysheet.cli;

import baysheet.files.YamlFiles;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.Scalar;
import baysheet.yaml.Sequence;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Facts that may change without a word on the sheet of a job, each with the reason. What is not
 * declared here must show.
 */
final class UnprintedFacts {
  private final MutatedShop shop;
  private final MutatedShop.Unmutated before;
  private final MutatedShop.Result after;
  private final ChangedFile now;
  private final UnneededTools tools;
  private final ShopOfTheJob own;
  private final SaidAnyway procedures;

  UnprintedFacts(
      MutatedShop shop, MutatedShop.Unmutated before, MutatedShop.Result after, ChangedFile now) {
    this.shop = shop;
    this.before = before;
    this.after = after;
    this.now = now;
    this.tools = new UnneededTools(shop, before);
    this.own = new ShopOfTheJob(shop, before);
    this.procedures = new SaidAnyway(shop, before);
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

  /** Only where something is left out or a figure is another; never a misspelt name. */
  private static Rule rule(String file, String path, String because) {
    return new Rule(file, Pattern.compile(path), false, (job, fact) -> true, because);
  }

  /** The same, where something holds of the job and the fact. */
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
          whereLeftOut(
              "",
              ".*",
              (job, fact) -> job.now.spellsTheSame(fact),
              "the same value in another spelling"),
          where(
              "catalogue/",
              "states\\.[^.]+\\.source",
              (job, fact) -> true,
              "where the times of a state come from; the times themselves show"),
          rule("20", "arrives", "for the timetable of the day"),
          whereLeftOut(
              "20",
              "stages",
              (job, fact) -> job.now.lacks(fact),
              "as many sheets as the job takes without it"),

          // --- the shop ---
          rule("shop.yaml", "(hours|breaks)(\\..*)?", "for the timetable of the day"),
          where(
              "shop.yaml",
              "crib\\.wrenches\\.[0-9]+(\\..*)?",
              (job, fact) -> job.tools.isWrenchNotTaken(fact),
              "a wrench that no row of the job takes"),
          rule(
              "shop.yaml",
              "crib\\.wrenches\\.[0-9]+\\.(from|to|step|accuracy|length|calibrated)",
              "a figure of the wrench that is taken, with which its setting stays the same"),
          where(
              "shop.yaml",
              "crib\\.sockets\\.[0-9]+(\\..*)?",
              (job, fact) -> job.tools.isSocketNotTaken(fact),
              "a socket for heads that the job does not turn, or of another square or kind than it takes"),
          where(
              "shop.yaml",
              "crib\\.special\\.[0-9]+(\\..*)?",
              (job, fact) -> job.tools.isSpecialNotTaken(fact),
              "a special tool that the job does not need"),
          whereLeftOut(
              "shop.yaml",
              "crib\\.special",
              (job, fact) -> job.tools.isNoSpecialTaken(job.values(fact)),
              "special tools none of which the job needs"),
          where(
              "shop.yaml",
              "crib\\.special\\.[0-9]+\\.name",
              (job, fact) -> job.tools.isMissed(fact, job.after),
              "a tool that the crib does not have any more, which the sheet says or does without"),
          whereLeftOut(
              "shop.yaml",
              "(crib\\.[a-z]+|people\\.[^.]+\\.qualifications)\\.[0-9]+(\\..*)?",
              (job, fact) -> job.now.movesItem(fact, job.values(fact)),
              "the same item at another place of its list"),
          rule(
              "shop.yaml",
              "crib\\.(special\\.[0-9]+|stands)\\.count",
              "a number of pieces that is enough for the job"),
          rule("shop.yaml", "crib\\.stands\\.rated", "a rating that is enough for the vehicle"),
          where(
              "shop.yaml",
              "crib\\.stands(\\..*)?",
              (job, fact) -> job.own.isOnALift(),
              "stands, for a vehicle on a lift"),
          rule("shop.yaml", "drives\\..*", "a limit that no torque of the job reaches"),
          rule("shop.yaml", "calibration-interval", "an interval in which the calibrations are"),
          where(
              "shop.yaml",
              "(units\\.torque|band)(\\..*)?",
              (job, fact) -> job.before.result().torque().isEmpty(),
              "the job has no torque"),
          whereLeftOut(
              "shop.yaml",
              "[a-z]+(\\.[a-z]+)?",
              (job, fact) -> job.now.lacks(fact) && ShopOfTheJob.isUsual(fact),
              "the usual value, which counts where the shop gives none"),
          whereLeftOut(
              "shop.yaml",
              "bays\\.[^.]+\\.rated",
              (job, fact) -> job.own.isStrongEnough(fact, job.now),
              "a rating that is enough for the vehicle"),
          whereLeftOut(
              "shop.yaml",
              "people\\.[^.]+\\.qualifications(\\..*)?",
              (job, fact) -> job.own.isNotQualificationAskedFor(fact),
              "a certificate for work that the job does not bring"),
          where(
              "shop.yaml",
              "people\\..*\\.certificate",
              (job, fact) -> job.own.isNotQualificationAskedFor(fact),
              "a certificate for work that the job does not bring"),
          where(
              "shop.yaml",
              "(people|bays)\\..*",
              (job, fact) -> job.own.isOfNobodyHere(fact),
              "somebody else, or another bay"),

          // --- the spec book and those it is like ---
          where(
              "vehicles/",
              "fasteners\\..*",
              UnprintedFacts::isOfNoFastenerHere,
              "a fastener that the job does not touch"),
          whereLeftOut(
              "vehicles/",
              "fasteners\\..*",
              (job, fact) -> job.now.isForAllWheels(fact),
              "the same for all wheels"),
          whereLeftOut(
              "vehicles/",
              "fasteners\\..*",
              (job, fact) -> job.own.isSaidByTheBookItIsLike(fact),
              "the book that it is like says the same"),
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
              (job, fact) -> job.own.isOnALift(),
              "a vehicle on a lift is raised as a whole"),
          where(
              "vehicles/",
              "(?!checked).*",
              UnprintedFacts::isOverlaid,
              "the vehicle's own book says it for itself"),
          whereLeftOut(
              "vehicles/",
              "traits(\\.[0-9]+)?",
              (job, fact) -> texts(fact.node()).noneMatch(job.traits()::isAskedFor),
              "a trait that nothing on the sheet depends on"),

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
          where(
              "procedures/",
              ".*\\.seizes",
              (job, fact) -> job.procedures.hasNoState(),
              "without a state nothing seizes"),
          whereLeftOut(
              "procedures/",
              "(.*\\.)?uses(\\..*)?",
              (job, fact) -> texts(fact.node()).allMatch(it -> job.procedures.isLaidOut(it, fact)),
              "a tool that is laid out anyway, or that only a stuck part asks for"),
          whereLeftOut(
              "procedures/",
              "(before|after)(\\..*)?",
              (job, fact) -> texts(fact.node()).noneMatch(job::isTask),
              "a work that the job does not ask for"),
          rule("procedures/", "needs|serves", "the only one that the bay can take"),
          rule("procedures/", "only-with(\\..*)?", "a condition that the job meets"),
          where(
              "procedures/",
              "not-with\\..*",
              (job, fact) -> fact.node() instanceof Scalar text && text.text().contains(" "),
              "a sentence about vehicles that this one is not"),
          whereLeftOut(
              "procedures/",
              "not-with(\\..*)?",
              (job, fact) -> true,
              "vehicles of another kind, for which the procedure is not"),
          whereLeftOut(
              "procedures/",
              "behind(\\.[0-9]+)?",
              (job, fact) -> job.procedures.isBehindElsewhere(fact),
              "access that another work of the job needs as well"),
          whereLeftOut(
              "procedures/",
              "(open|work|close)\\.[0-9]+(\\.back)?",
              (job, fact) -> job.procedures.isOnTheSheet(fact),
              "the sheet says the same without it"),
          whereLeftOut(
              "procedures/",
              "(open|work|close)\\.[0-9]+\\.moment",
              (job, fact) -> job.now.lacks(fact) && job.procedures.isAtItsMoment(fact),
              "a step that comes at its moment without being told to"),
          whereLeftOut(
              "procedures/",
              "(open|work|close)\\.[0-9]+\\.height(\\.[0-9]+)?",
              (job, fact) -> job.now.lacks(fact) || fact.path().matches(".*\\.[0-9]+"),
              "a step that is done at this height without a word about it, or at another"),
          whereLeftOut(
              "procedures/",
              "(open|work|close)\\.[0-9]+\\.takes",
              (job, fact) -> job.now.isWithinHalfAMinute(fact),
              "minutes are printed in halves, and not at all where the page is full"),
          whereLeftOut(
              "procedures/",
              "(open|work|close)\\.[0-9]+\\.(?!only-in).*",
              (job, fact) -> job.procedures.isOfAnotherBay(fact),
              "a step that is only done in another kind of bay"),
          where(
              "procedures/",
              "(open|work|close)\\.[0-9]+\\.(do|because|good|if-stuck(\\.[0-9]+)?)",
              (job, fact) -> job.procedures.isOfAnotherBay(fact),
              "a step that is only done in another kind of bay"),
          whereLeftOut(
              "procedures/",
              "(open|work|close)\\.[0-9]+\\.only-in",
              (job, fact) -> job.now.lacks(fact),
              "the job's bay is one of those in which the step is done"),
          whereLeftOut(
              "procedures/",
              "only-at",
              (job, fact) -> job.now.lacks(fact),
              "the job's place is one of those allowed"),

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

  private boolean isTask(String procedure) {
    return before.used().stream().anyMatch(it -> it.endsWith(procedure + ".yaml"));
  }

  private AskedTraits traits() {
    return new AskedTraits(
        shop, this::isUnsaid, procedures.ofUsedProcedures("only-with.*").toList());
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

  private Map<String, String> values(WrittenFact fact) {
    return shop.facts(shop.file(fact)).stream()
        .filter(it -> it.node() instanceof Scalar)
        .collect(Collectors.toMap(WrittenFact::path, it -> ((Scalar) it.node()).text()));
  }

  /** Whether the unchanged sheet has none of the texts in it. */
  private boolean isUnsaid(WrittenFact fact) {
    return texts(fact.node()).noneMatch(before.result().says()::contains);
  }

  static Stream<String> texts(Node node) {
    if (node instanceof Mapping map) {
      return map.entries().stream().flatMap(entry -> texts(entry.value()));
    }
    return node instanceof Sequence list
        ? list.items().stream().flatMap(UnprintedFacts::texts)
        : Stream.of(((Scalar) node).text());
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
        shop.facts(shop.file(fact)).stream()
            .filter(it -> it.path().equals(entry + ".name") || it.path().equals(entry + ".do"))
            .anyMatch(it -> !isUnsaid(it));
    return !said && !before.result().says().contains(name);
  }
}
