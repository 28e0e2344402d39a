package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Console;
import baysheet.output.Exit;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every name that files can hold is misspelt in turn in a shop in which nothing is wrong. A
 * reference that nothing has is an error at its line: never a sheet from which something fell out.
 */
class MisspeltNamesTest {
  private static final Path SHOP = Path.of("src/test/resources/cases/names");
  private static final Path SCHEMAS = Path.of("src/main/resources/baysheet/schema");

  /** Keys whose values or keys refer to something elsewhere: reported where they stand. */
  private static final Set<String> REFERENCES =
      Set.of(
          "book/checked/by",
          "book/fasteners/*/*:",
          "book/fasteners/*/absent",
          "book/fluids/*:",
          "book/like",
          "book/part-numbers/*:",
          "book/traits",
          "book/without-traits",
          "book/vehicle",
          "catalogue/cautions/*/when/apply",
          "catalogue/cautions/*/when/bay",
          "catalogue/cautions/*/when/circuit",
          "catalogue/cautions/*/when/disturb",
          "catalogue/cautions/*/when/do-up",
          "catalogue/cautions/*/when/do-up-kind",
          "catalogue/cautions/*/when/kind",
          "catalogue/cautions/*/when/measure",
          "catalogue/cautions/*/when/procedure",
          "catalogue/cautions/*/when/renew-kind",
          "catalogue/cautions/*/when/serves",
          "catalogue/cautions/*/when/state",
          "catalogue/cautions/*/when/trait",
          "catalogue/cautions/*/when/undo",
          "catalogue/cautions/*/when/uses",
          "catalogue/cautions/*/when/without",
          "catalogue/consequences/*/step/ends",
          "catalogue/consequences/*/step/fills",
          "catalogue/consequences/*/step/uses",
          "catalogue/consequences/*/step/uses/if-stuck",
          "catalogue/consequences/*/step/uses/special",
          "catalogue/consequences/*/step/while-off",
          "catalogue/consequences/*/uses",
          "catalogue/consequences/*/uses/if-stuck",
          "catalogue/consequences/*/uses/special",
          "catalogue/consequences/*/when/apply",
          "catalogue/consequences/*/when/bay",
          "catalogue/consequences/*/when/circuit",
          "catalogue/consequences/*/when/disturb",
          "catalogue/consequences/*/when/do-up",
          "catalogue/consequences/*/when/do-up-kind",
          "catalogue/consequences/*/when/kind",
          "catalogue/consequences/*/when/measure",
          "catalogue/consequences/*/when/procedure",
          "catalogue/consequences/*/when/renew-kind",
          "catalogue/consequences/*/when/serves",
          "catalogue/consequences/*/when/state",
          "catalogue/consequences/*/when/trait",
          "catalogue/consequences/*/when/undo",
          "catalogue/consequences/*/when/uses",
          "catalogue/consequences/*/when/without",
          "catalogue/items/*/kinds",
          "catalogue/items/*/fluid",
          "catalogue/products/*/like",
          "catalogue/qualifications/*/when/apply",
          "catalogue/qualifications/*/when/bay",
          "catalogue/qualifications/*/when/circuit",
          "catalogue/qualifications/*/when/disturb",
          "catalogue/qualifications/*/when/do-up",
          "catalogue/qualifications/*/when/do-up-kind",
          "catalogue/qualifications/*/when/kind",
          "catalogue/qualifications/*/when/measure",
          "catalogue/qualifications/*/when/procedure",
          "catalogue/qualifications/*/when/renew-kind",
          "catalogue/qualifications/*/when/serves",
          "catalogue/qualifications/*/when/state",
          "catalogue/qualifications/*/when/trait",
          "catalogue/qualifications/*/when/undo",
          "catalogue/qualifications/*/when/uses",
          "catalogue/qualifications/*/when/without",
          "catalogue/tools/*/like",
          "job/bay",
          "job/by",
          "job/job",
          "job/override/*:",
          "job/qualified/*",
          "job/qualified/*:",
          "job/second",
          "job/state",
          "job/vehicle/book",
          "job/waive/*",
          "job/waive/*:",
          "job/with",
          "job/work",
          "procedure/after",
          "procedure/at",
          "procedure/before",
          "procedure/behind",
          "procedure/close/apply",
          "procedure/close/disturb",
          "procedure/close/ends",
          "procedure/close/slacken",
          "procedure/close/takes-away",
          "procedure/close/do-up",
          "procedure/close/hazards",
          "procedure/close/uses",
          "procedure/close/uses/if-stuck",
          "procedure/close/uses/special",
          "procedure/needs",
          "procedure/not-with/*:",
          "procedure/open/apply",
          "procedure/open/disturb",
          "procedure/open/ends",
          "procedure/open/slacken",
          "procedure/open/takes-away",
          "procedure/open/hazards",
          "procedure/open/measure",
          "procedure/open/open-circuit",
          "procedure/open/undo",
          "procedure/open/uses",
          "procedure/open/uses/if-stuck",
          "procedure/open/uses/special",
          "procedure/parts/renews",
          "procedure/procedure",
          "procedure/qualification",
          "procedure/serves",
          "procedure/uses",
          "procedure/uses/if-stuck",
          "procedure/uses/special",
          "procedure/work/apply",
          "procedure/work/disturb",
          "procedure/work/ends",
          "procedure/work/slacken",
          "procedure/work/takes-away",
          "procedure/work/hazards",
          "procedure/work/measure",
          "procedure/work/open-circuit",
          "procedure/work/uses",
          "procedure/work/uses/if-stuck",
          "procedure/work/uses/special",
          "shop/people/*/qualifications/*:");

  /** Names that are given here: reported wherever something refers to them. */
  private static final Set<String> DECLARATIONS =
      Set.of(
          "catalogue/fluids/*:",
          "catalogue/items/*:",
          "catalogue/kinds/*:",
          "catalogue/measures/*:",
          "catalogue/products/*:",
          "catalogue/qualifications/*:",
          "catalogue/states/*:",
          "catalogue/tools/*:",
          "catalogue/traits/*:",
          "shop/bays/*:",
          "shop/crib/special/name",
          "shop/people/*:");

  /** Names to which nothing refers, or that are the same as another key in the same place. */
  private static final Map<String, String> FREE =
      Map.ofEntries(
          Map.entry("catalogue/cautions/*:", "beside a built-in one both hold"),
          Map.entry("catalogue/consequences/*:", "beside a built-in one both hold"),
          Map.entry("catalogue/terms/*:", "words of sentences, not names"),
          Map.entry("catalogue/verbs/*:", "words of sentences, not names"),
          Map.entry("job/carried/sheet", "a sheet of the ledger, which a shop need not have"),
          Map.entry("shop/crib/wrenches/name", "nothing names a wrench"),
          Map.entry("procedure/close/measure", "as under open and work"),
          Map.entry("procedure/close/open-circuit", "as under open and work"),
          Map.entry("procedure/close/undo", "as under open"),
          Map.entry("procedure/open/do-up", "as under close"),
          Map.entry("procedure/work/do-up", "as under close"),
          Map.entry("procedure/work/undo", "as under open"),
          Map.entry("shop/drives/*:", "a quantity"));

  @TempDir private Path folder;

  /** A name in a file of the shop. */
  record Named(String file, NamedPlaces place) {
    @Override
    public String toString() {
      return place.path() + " " + place.scalar().text() + " at " + file + ":" + line();
    }

    int line() {
      return place.scalar().at().line();
    }
  }

  static Stream<Named> references() throws IOException {
    return named().filter(it -> REFERENCES.contains(it.place().path()));
  }

  static Stream<Named> declarations() throws IOException {
    return named().filter(it -> DECLARATIONS.contains(it.place().path()));
  }

  private static Stream<Named> named() throws IOException {
    List<Named> named = new ArrayList<>();
    for (String file : files()) {
      for (NamedPlaces place : NamedPlaces.of(NamedPlaces.kind(file), text(file))) {
        named.add(new Named(file, place));
      }
    }
    return named.stream();
  }

  private static List<String> files() throws IOException {
    try (Stream<Path> files = Files.walk(SHOP)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> SHOP.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  private static String text(String file) throws IOException {
    return Files.readString(SHOP.resolve(file));
  }

  @Test
  void nothingIsWrongWithTheShop() throws IOException {
    Run run = check("", "");
    assertEquals(Exit.DONE, run.exit(), run.said());
  }

  @ParameterizedTest
  @MethodSource("references")
  void aMisspeltReferenceIsReportedAtItsLine(Named named) throws IOException {
    Run run = check(named.file(), misspelt(named));
    assertEquals(Exit.PROBLEMS, run.exit(), named + ": " + run.said());
    assertTrue(
        run.said().contains(named.file() + ":" + named.line() + ":"), named + ": " + run.said());
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void aMisspeltDeclarationIsReportedWhereSomethingRefersToIt(Named named) throws IOException {
    Run run = check(named.file(), misspelt(named));
    assertEquals(Exit.PROBLEMS, run.exit(), named + ": " + run.said());
  }

  /**
   * The last letter of the first word is doubled: short words are near enough to be reported as
   * well.
   */
  private static String misspelt(Named named) throws IOException {
    return NamedPlaces.replaced(
        NamedPlaces.kind(named.file()),
        text(named.file()),
        place ->
            place.scalar().at().equals(named.place().scalar().at())
                ? slip(place.scalar().text())
                : place.scalar().text());
  }

  private static String slip(String name) {
    int end = name.indexOf(' ') < 0 ? name.length() : name.indexOf(' ');
    return name.substring(0, end) + name.charAt(end - 1) + name.substring(end);
  }

  private record Run(int exit, String said) {}

  /** Without the procedures that the job does not use. */
  static Stream<Named> usedReferences() throws IOException {
    return references().filter(it -> !it.file().matches("procedures/(fill|raise-jack)\\.yaml"));
  }

  /** A sheet never rests on a file of the folder that {@code check} refuses. */
  @ParameterizedTest
  @MethodSource("usedReferences")
  void noSheetIsMadeOfAMisspeltReference(Named named) throws IOException {
    Run run = run("sheets", named.file(), misspelt(named), "--out", folder + "/made");
    assertEquals(Exit.PROBLEMS, run.exit(), named + ": " + run.said());
    assertFalse(Files.exists(folder.resolve("made/2026-03-02/7.pdf")), named.toString());
  }

  private Run check(String changed, String text) throws IOException {
    return run("check", changed, text);
  }

  private Run run(String command, String changed, String text, String... options)
      throws IOException {
    for (String file : files()) {
      Path to = folder.resolve(file);
      Files.createDirectories(to.getParent());
      Files.writeString(to, file.equals(changed) ? text : text(file));
    }
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console = new Console(new PrintWriter(out), new PrintWriter(err), false);
    int exit =
        Main.run(
            Stream.of(
                    Stream.of(
                        command,
                        command.equals("check") ? folder.toString() : folder + "/2026-03-02"),
                    Stream.of(options))
                .flatMap(it -> it)
                .toArray(String[]::new),
            console,
            () -> LocalDate.parse("2026-03-02"));
    return new Run(exit, out + "\n" + err);
  }

  /** A key that a later schema adds has to be entered above, or this fails. */
  @Test
  void everyNameOfTheSchemasIsMisspeltSomewhere() throws IOException {
    Set<String> known = new TreeSet<>(REFERENCES);
    known.addAll(DECLARATIONS);
    known.addAll(FREE.keySet());
    Set<String> inSchemas = SchemaNames.of(SCHEMAS);
    assertTrue(inSchemas.size() > 80, inSchemas.toString());
    Set<String> unknown = new TreeSet<>(inSchemas);
    unknown.removeAll(known);
    assertEquals(Set.of(), unknown, "not entered here");
    Set<String> tried = new TreeSet<>();
    named().forEach(it -> tried.add(it.place().path()));
    Set<String> untried = new TreeSet<>(REFERENCES);
    untried.addAll(DECLARATIONS);
    untried.removeAll(tried);
    assertEquals(Set.of(), untried, "not in the shop");
  }
}
