package baysheet.cli;

import baysheet.sheet.StepSource;
import baysheet.yaml.Entry;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.Scalar;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a procedure says and the sheet of a job has without it as well. */
final class SaidAnyway {
  private final MutatedShop shop;
  private final MutatedShop.Unmutated before;

  SaidAnyway(MutatedShop shop, MutatedShop.Unmutated before) {
    this.shop = shop;
    this.before = before;
  }

  /** Facts of the job's procedures whose path matches. */
  Stream<WrittenFact> ofUsedProcedures(String path) {
    return before.used().stream()
        .filter(it -> shop.shown(it).startsWith("procedures/"))
        .flatMap(it -> facts(it, path));
  }

  private Stream<WrittenFact> facts(Path file, String path) {
    return shop.facts(file).stream().filter(it -> it.path().matches(path));
  }

  boolean hasNoState() {
    return facts(before.job(), "state.*").findAny().isEmpty();
  }

  /**
   * The sheet lays it out all the same, for another step or a check; or it is for a stuck part, and
   * the vehicle has no state in which parts stick.
   */
  boolean isLaidOut(String tool, WrittenFact fact) {
    boolean stuck =
        facts(shop.file(fact), Pattern.quote(fact.path()) + "(\\..*)?\\.if-stuck")
            .flatMap(it -> UnprintedFacts.texts(it.node()))
            .anyMatch(tool::equals);
    return before.result().tools().contains(tool)
        || (stuck || fact.path().endsWith(".if-stuck")) && hasNoState();
  }

  /** Other works of the job are behind all that the fact names. */
  boolean isBehindElsewhere(WrittenFact fact) {
    Set<String> elsewhere =
        ofUsedProcedures("behind\\.[0-9]+")
            .filter(it -> !it.file().equals(fact.file()))
            .flatMap(SaidAnyway::accesses)
            .collect(Collectors.toSet());
    return accesses(fact).allMatch(elsewhere::contains);
  }

  private static Stream<String> accesses(WrittenFact fact) {
    return UnprintedFacts.texts(fact.node()).map(it -> it.replaceFirst(" at .*", ""));
  }

  /** The step's sentence stands on the sheet, from here or from elsewhere. */
  boolean isOnTheSheet(WrittenFact fact) {
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

  /** The step names a kind of bay, and the sheet has it nowhere. */
  boolean isOfAnotherBay(WrittenFact fact) {
    String step = fact.path().replaceFirst("^([a-z]+\\.[0-9]+)\\..*", "$1");
    String sentence = shop.value(shop.file(fact), step + ".do");
    return facts(shop.file(fact), Pattern.quote(step) + "\\.only-in(\\..*)?").findAny().isPresent()
        && before
            .result()
            .sheets()
            .flatMap(sheet -> sheet.steps().stream())
            .noneMatch(
                it ->
                    it.source() instanceof StepSource.Written written
                        && written.text().equals(sentence));
  }

  /** The step stands on the sheet at the moment that the fact asks for. */
  boolean isAtItsMoment(WrittenFact fact) {
    String sentence = shop.value(shop.file(fact), fact.path().replaceFirst("moment$", "do"));
    return fact.node() instanceof Scalar moment
        && before
            .result()
            .sheets()
            .flatMap(sheet -> sheet.steps().stream())
            .filter(
                step ->
                    step.source() instanceof StepSource.Written it && it.text().equals(sentence))
            .anyMatch(step -> step.where().moment().word().equals(moment.text()));
  }
}
