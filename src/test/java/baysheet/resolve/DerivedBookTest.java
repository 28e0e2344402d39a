package baysheet.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.SpecBook;
import baysheet.report.Problem;
import baysheet.report.Problems;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * What a book that is like another one takes from it: all traits and fluids but what it changes.
 */
class DerivedBookTest {
  private static final String BOOK = "vehicles/heron.yaml";

  /** The book below has three traits and a fluid. */
  private static ShopTexts derived(String keys) {
    return Bench.shop()
        .replacing(
            BOOK,
            "kerb-mass",
            "traits: [abs, airbags, petrol]\n"
                + "fluids: {engine-oil: {capacity: 4.2 L, grade: W 5}}\nkerb-mass")
        .with("vehicles/heron-van.yaml", "vehicle: heron-van\nlike: heron\n" + keys)
        .replacing(Bench.JOB, "book: heron", "book: heron-van");
  }

  private static Set<String> traits(String keys) {
    return derived(keys).resolved(Bench.JOB).book().traits();
  }

  private static Problem only(String keys) {
    Problems problems = new Problems();
    assertTrue(derived(keys).resolve(Bench.JOB, problems).isEmpty());
    assertEquals(1, problems.all().size());
    return problems.all().get(0);
  }

  @Test
  void theTraitsOfADerivedBookAreAddedToThoseOfTheOther() {
    assertEquals(Set.of("abs", "airbags", "petrol"), traits(""));
    assertEquals(Set.of("abs", "airbags", "petrol", "tpms"), traits("traits: [tpms]\n"));
    assertEquals(Set.of("abs", "airbags", "petrol", "tpms"), traits("traits: [abs, tpms]\n"));
  }

  @Test
  void aTraitThatTheDerivedVehicleLacksIsNamed() {
    assertEquals(
        Set.of("abs", "airbags", "diesel"), traits("traits: [diesel]\nwithout-traits: [petrol]\n"));
  }

  @Test
  void aTraitThatIsNotThereCannotBeTakenAway() {
    Problem problem = only("without-traits: [petrl]\n");
    assertEquals(
        "vehicles/heron-van.yaml:3:18 unknown-trait", problem.at() + " " + problem.code().word());
    assertEquals(List.of("petrol"), problem.nearest().stream().toList());
  }

  @Test
  void aTraitCannotBeAddedAndTakenAway() {
    ShopTexts shop = derived("traits: [tpms, abs]\nwithout-traits: [abs]\n");
    assertEquals(
        "the folder is at fault: [vehicles/heron-van.yaml:4:18 absent-and-given]",
        assertThrows(IllegalStateException.class, shop::folder).getMessage());
  }

  @Test
  void aFluidOfADerivedBookKeepsWhatItDoesNotChange() {
    SpecBook.Fluid oil =
        derived("fluids: {engine-oil: {grade: W 9}}\n")
            .resolved(Bench.JOB)
            .book()
            .fluid("engine-oil")
            .orElseThrow();
    assertEquals("W 9", oil.grade().orElseThrow().value());
    assertEquals("4.2 L", oil.capacity().orElseThrow().value().print().replace('\u00a0', ' '));
  }
}
