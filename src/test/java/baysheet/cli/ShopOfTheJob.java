package baysheet.cli;

import baysheet.files.ShopFolders;
import baysheet.sheet.QualifiedWork;
import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import baysheet.yaml.Node;
import baysheet.yaml.Scalar;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Which of the shop's people, bays and settings count for a job. */
final class ShopOfTheJob {
  private static final Map<String, String> USUAL =
      Map.ofEntries(
          Map.entry("band", "5 %"),
          Map.entry("paper", "A4"),
          Map.entry("terms", "british"),
          Map.entry("units.distance", "km"),
          Map.entry("units.mass", "kg"));

  private final MutatedShop shop;
  private final MutatedShop.Unmutated before;

  ShopOfTheJob(MutatedShop shop, MutatedShop.Unmutated before) {
    this.shop = shop;
    this.before = before;
  }

  static boolean isUsual(WrittenFact fact) {
    return UnprintedFacts.texts(fact.node())
        .toList()
        .equals(List.of(USUAL.getOrDefault(fact.path(), "")));
  }

  /** Whether what the bay carries now is no less than what the sheet assumes. */
  boolean isStrongEnough(WrittenFact fact, ChangedFile now) {
    Optional<Quantity> rated =
        now.value(fact)
            .filter(it -> it.matches("[0-9]+ kg"))
            .map(it -> Quantity.of(it.replace(" kg", ""), Unit.KILOGRAM));
    return before
        .result()
        .sheets()
        .flatMap(it -> it.safety().support().stream())
        .allMatch(it -> rated.filter(kg -> kg.compareTo(it.load()) >= 0).isPresent());
  }

  /** Neither the qualification itself nor one of the list. */
  boolean isNotQualificationAskedFor(WrittenFact fact) {
    Set<String> asked =
        before
            .result()
            .sheets()
            .flatMap(it -> it.safety().qualified().stream())
            .map(QualifiedWork::qualification)
            .collect(Collectors.toSet());
    return shop.facts(shop.file(fact)).stream()
        .map(WrittenFact::path)
        .filter(it -> (it + ".").startsWith(fact.path() + ".") || fact.path().startsWith(it + "."))
        .map(it -> it.split("\\."))
        .filter(it -> it.length == 5)
        .noneMatch(it -> asked.contains(it[4]));
  }

  boolean isOnALift() {
    String bay = shop.value(before.job(), "bay");
    return shop.facts(shop.root.resolve(ShopFolders.SHOP_FILE)).stream()
        .anyMatch(fact -> fact.path().equals("bays." + bay + ".lift"));
  }

  /** The id of a person or a bay stands in the job file. */
  boolean isOfNobodyHere(WrittenFact fact) {
    String id = fact.path().split("\\.")[1];
    return shop.facts(before.job()).stream()
        .filter(it -> it.path().matches("bay|by|with|waive\\..*"))
        .noneMatch(it -> it.node() instanceof Scalar scalar && scalar.text().equals(id));
  }

  boolean isSaidByTheBookItIsLike(WrittenFact fact) {
    String like = shop.value(shop.file(fact), "like");
    return !like.isEmpty()
        && shop.facts(shop.root.resolve("vehicles/" + like + ".yaml")).stream()
            .filter(it -> it.path().equals(fact.path()))
            .anyMatch(it -> text(it.node()).equals(text(fact.node())));
  }

  private static String text(Node node) {
    return UnprintedFacts.texts(node).collect(Collectors.joining(" "));
  }
}
