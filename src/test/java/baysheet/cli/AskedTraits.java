package baysheet.cli;

import baysheet.yaml.Mapping;
import baysheet.yaml.Scalar;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * Traits of the vehicle on which something on the sheet of a job depends.
 *
 * @param unsaid whether the sheet has none of the texts of a fact
 * @param onlyWith what the job's procedures ask of the vehicle
 */
record AskedTraits(MutatedShop shop, Predicate<WrittenFact> unsaid, List<WrittenFact> onlyWith) {
  /**
   * Whether a procedure of the job is only for vehicles with the trait, or an entry of a catalogue
   * that stands on the sheet does not come without it.
   */
  boolean isAskedFor(String trait) {
    return onlyWith.stream()
            .flatMap(it -> UnprintedFacts.texts(it.node()))
            .anyMatch(it -> List.of(it.split(" ")).contains(trait))
        || shop.catalogues().stream().anyMatch(it -> comesOnlyWith(trait, it));
  }

  private boolean comesOnlyWith(String trait, List<WrittenFact> catalogue) {
    return catalogue.stream()
        .filter(it -> it.path().matches("[a-z]+\\.[^.]+\\.(do|check)") && !unsaid.test(it))
        .map(it -> it.path().replaceFirst("\\.[^.]+$", ".when"))
        .anyMatch(
            when ->
                catalogue.stream()
                    .filter(it -> it.path().matches(Pattern.quote(when) + "(\\.[0-9]+)?"))
                    .filter(it -> it.node() instanceof Mapping)
                    .allMatch(it -> names(trait, (Mapping) it.node())));
  }

  private static boolean names(String trait, Mapping trigger) {
    return trigger.entries().stream()
        .filter(it -> it.key().text().equals("trait"))
        .anyMatch(it -> it.value() instanceof Scalar word && word.text().equals(trait));
  }
}
