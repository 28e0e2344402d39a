package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever files may name can be looked up with one command. */
class NamesCommandTest {
  private static final Path BUILT_IN = Path.of("src/main/resources/baysheet/catalogue");
  private static final Set<String> SECTIONS =
      Set.of(
          "items",
          "kinds",
          "traits",
          "states",
          "fluids",
          "measures",
          "tools",
          "products",
          "cautions");

  @TempDir private Path folder;

  private Garage.Run names(String... sorts) {
    Garage garage = Garage.in(folder);
    List<String> arguments = new ArrayList<>(List.of("names"));
    arguments.addAll(List.of(sorts));
    arguments.addAll(List.of("--shop", garage.root.toString()));
    return garage.run(arguments.toArray(String[]::new));
  }

  private static boolean lists(Garage.Run run, String sort, String name) {
    return run.out().lines().anyMatch(line -> line.matches(sort + " +\\Q" + name + "\\E( .*)?"));
  }

  /** Read from the files with the tests' own walk. */
  @Test
  void everyBuiltInNameIsListed() throws IOException {
    Garage.Run run = names();
    assertEquals(Exit.DONE, run.exit());
    int found = 0;
    for (String file : List.of("items", "cautions", "states", "vocabulary")) {
      String text = Files.readString(BUILT_IN.resolve(file + ".yaml"));
      for (NamedPlaces place : NamedPlaces.of("catalogue", text)) {
        String section = place.path().replaceAll("^catalogue/(.*)/\\*:$", "$1");
        if (SECTIONS.contains(section)) {
          found++;
          assertTrue(lists(run, section, place.scalar().text()), place.toString());
        }
      }
    }
    assertTrue(found > 400, "names: " + found);
  }

  @Test
  void theShopsOwnNamesStandWithTheirFile() {
    Garage garage = Garage.in(folder);
    garage.write("catalogue/own.yaml", "traits:\n  twin-wheels: two by two\n");
    Garage.Run run = garage.run("names", "traits", "--shop", garage.root.toString());
    String line =
        run.out().lines().filter(it -> it.contains("twin-wheels")).findFirst().orElseThrow();
    assertTrue(line.contains("two by two"), line);
    assertTrue(line.endsWith("catalogue/own.yaml"), line);
    assertTrue(
        run.out()
            .lines()
            .filter(it -> it.contains(" abs "))
            .allMatch(it -> it.endsWith("built-in")));
  }

  /** Whoever puts a shop file right looks for names, so those that are known are listed. */
  @Test
  void aFaultyShopStillGivesTheBuiltInNames() {
    Garage garage = Garage.in(folder);
    garage.change("shop.yaml", "band:", "bond:");
    Garage.Run run = garage.run("names", "traits", "--shop", garage.root.toString());
    assertEquals(Exit.PROBLEMS, run.exit());
    assertTrue(lists(run, "traits", "abs"), run.out());
    run.says("shop.yaml:");
    run.says("only built-in names are listed");
  }

  @ParameterizedTest
  @ValueSource(strings = {"kinds", "traits", "roles", "people", "procedures", "bays", "tools"})
  void oneSortIsListedAlone(String sort) {
    Garage.Run run = names(sort);
    List<String> lines = run.out().lines().skip(1).toList();
    assertTrue(lines.size() > 1, run.out());
    assertTrue(lines.stream().allMatch(line -> line.startsWith(sort + " ")), run.out());
  }

  @Test
  void specialToolsOfTheCribAreListed() {
    assertTrue(lists(names("tools"), "tools", "ball joint splitter"));
  }

  @Test
  void otherProgramsGetTheSameNames() {
    Garage.Run table = names();
    Garage.Run json = names("--json");
    assertEquals(
        table.out().lines().count() - 1,
        json.out().lines().filter(it -> it.contains("\"sort\":")).count());
    assertTrue(json.out().contains("\"sort\":\"traits\",\"name\":\"abs\""), json.out());
  }

  @Test
  void aSortThatThereIsNotIsAnsweredWithTheNearest() {
    Garage.Run run = names("trait");
    assertEquals(Exit.USAGE, run.exit());
    run.says("Did you mean traits?");
  }
}
