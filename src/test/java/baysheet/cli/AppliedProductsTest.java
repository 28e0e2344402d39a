package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A product that a step puts on a thread is compared with what the torque is published for, by
 * whatever name the product goes.
 */
class AppliedProductsTest {
  private static final String STEP = "do-up: [wheel, wheel-nut]";

  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  private void apply(String product) {
    garage.change(
        "procedures/wheel-off.yaml", STEP, STEP + ", apply: %s on wheel-nut".formatted(product));
  }

  private List<String> treatments() {
    Garage.Run run = garage.run("check", garage.root.toString(), "--json");
    return JsonTree.of(run.out().getBytes(StandardCharsets.UTF_8)).list("problems").stream()
        .filter(it -> it.text("code").equals("thread-treatment"))
        .map(it -> it.text("what"))
        .distinct()
        .toList();
  }

  /** The book's torque is for a dry thread. */
  @ParameterizedTest
  @CsvSource({
    "grease, greased",
    "brake grease, greased",
    "copper grease, with anti-seize paste",
    "anti-seize paste, with anti-seize paste",
    "molybdenum grease, with anti-seize paste",
    "engine-oil, oiled",
    "gearbox-oil, oiled",
    "penetrating fluid, oiled",
    "cavity wax, greased",
    "threadlocker, with threadlock",
    "thread sealant, with sealant",
  })
  void aDeclaredProductIsComparedByWhatItDoesOnAThread(String product, String now) {
    apply(product);
    List<String> told = treatments();
    assertEquals(1, told.size(), told.toString());
    assertTrue(told.get(0).contains("for a dry thread; here it is " + now + ":"), told.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"goose fat", "coolant", "Number 7 paste"})
  void aProductOfWhichNobodySaysItIsAWarning(String product) {
    apply(product);
    List<String> told = treatments();
    assertEquals(1, told.size(), told.toString());
    assertTrue(
        told.get(0).contains("no catalogue says what " + product + " does on a thread"),
        told.toString());
    assertEquals(Exit.DONE, garage.sheets("--record").exit());
    JsonTree record = JsonTree.of(Garage.bytes(garage.made("501.json")));
    assertTrue(
        record.list("torque").stream()
            .flatMap(line -> line.list("warnings").stream())
            .anyMatch(it -> it.text("text").contains(product)),
        record.toString());
  }

  /** A cleaner leaves the thread as it is meant to be. */
  @ParameterizedTest
  @ValueSource(strings = {"brake cleaner", "solvent"})
  void aCleanerIsNoTreatment(String product) {
    apply(product);
    assertEquals(List.of(), treatments());
  }

  /** What the step itself turns is what it may be meant for. */
  @ParameterizedTest
  @CsvSource({
    "copper grease, here it is with anti-seize paste:",
    "penetrating fluid, here it is oiled:",
    "goose fat, no catalogue says what goose fat does on a thread"
  })
  void aProductWithoutAnItemCountsForTheFastenersOfItsStep(String product, String told) {
    garage.change("procedures/wheel-off.yaml", STEP, STEP + ", apply: " + product);
    List<String> found = treatments();
    assertEquals(1, found.size(), found.toString());
    assertTrue(found.get(0).contains(told), found.toString());
  }

  /** A fluid without an item is filled in. */
  @ParameterizedTest
  @ValueSource(strings = {"copper grease on wheel", "brake cleaner", "brake-fluid"})
  void aProductForSomethingElseOfTheStepIsNoTreatmentOfItsFasteners(String product) {
    garage.change("procedures/wheel-off.yaml", STEP, STEP + ", apply: " + product);
    assertEquals(List.of(), treatments());
  }

  @Test
  void aProductOfTheGarageSaysItItselfOrByWhatItIsLike() {
    apply("red tin");
    garage.write(
        "catalogue/own.yaml", "products: {red tin: {means: a paste, thread: anti-seize}}\n");
    assertTrue(treatments().get(0).contains("here it is with anti-seize paste"));
    garage.write(
        "catalogue/own.yaml", "products: {red tin: {means: a paste, like: copper grease}}\n");
    assertTrue(treatments().get(0).contains("here it is with anti-seize paste"));
    garage.write("catalogue/own.yaml", "products: {red tin: {means: a paste}}\n");
    assertTrue(treatments().get(0).contains("no catalogue says"), treatments().toString());
  }

  @Test
  void whatTheBookAsksForIsNoWarning() {
    garage.change(
        "vehicles/hollin-wren-2014.yaml",
        "order: circle, threads: dry",
        "order: circle, threads: anti-seize");
    apply("copper grease");
    assertEquals(List.of(), treatments());
  }
}
