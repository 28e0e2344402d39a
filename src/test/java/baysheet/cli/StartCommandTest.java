package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.files.NewFolder;
import baysheet.output.Exit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StartCommandTest {
  private static final String EDITOR_LINE = "# yaml-language-server: $schema=";

  @TempDir private Path folder;
  private Garage garage;
  private Path mine;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
    mine = folder.resolve("mine");
  }

  private Garage.Run start(String... options) {
    Stream<String> arguments =
        Stream.concat(Stream.of("start", mine.toString()), Stream.of(options));
    return garage.run(arguments.toArray(String[]::new));
  }

  private Garage.Run started(String... options) {
    Garage.Run run = start(options);
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertEquals("", run.err());
    return run;
  }

  private Garage.Run refused(String... options) {
    Map<String, String> before = texts(folder);
    Garage.Run run = start(options);
    assertEquals(Exit.USAGE, run.exit(), run.err());
    assertEquals("", run.out());
    assertEquals(before, texts(folder));
    return run;
  }

  private static Map<String, String> texts(Path root) {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        texts.put(root.relativize(file).toString().replace('\\', '/'), Files.readString(file));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + root, e);
    }
    return texts;
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026-03-02", "2031-12-31"})
  void aNewShopHasNoProblemOnItsFirstDay(String day) {
    started("--date", day);
    assertOnlyExamplesAreReported();
    assertTrue(Files.isRegularFile(mine.resolve(day).resolve("1001.yaml")));
  }

  private void assertOnlyExamplesAreReported() {
    Garage.Run run = garage.run("check", mine.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    List<String> found =
        run.err().lines().filter(line -> line.matches(".*: (error|warning|note): .*")).toList();
    assertTrue(found.size() >= 4, run.err());
    found.forEach(line -> assertTrue(line.contains("is still an example"), line));
  }

  /** What nobody replaced is invented; what is replaced is not reported any more. */
  @Test
  void examplesAreReportedUntilTheyAreReplaced() throws IOException {
    started();
    Path shop = mine.resolve("shop.yaml");
    Path job = mine.resolve(Garage.DAY).resolve("1001.yaml");
    String own = Files.readString(shop).replaceAll("EXAMPLE –", "Our");
    Files.writeString(shop, own);
    Files.writeString(job, Files.readString(job).replace("EXAMPLE 1", "AB 12"));
    Garage.Run run = garage.run("check", mine.toString());
    assertOnlyWrenches(run.err());
    Files.writeString(shop, own.replace("EXAMPLE-", "K"));
    assertEquals("no problems; 1 job checked", garage.run("check", mine.toString()).out().strip());
  }

  /** Those that the sheet prints: the small one is not used. */
  private static void assertOnlyWrenches(String said) {
    List<String> found = said.lines().filter(line -> line.contains(": warning: ")).toList();
    assertEquals(2, found.size(), said);
    assertTrue(found.get(0).contains("\"EXAMPLE-2\" is still an example"), said);
    assertTrue(found.get(1).contains("\"EXAMPLE-3\" is still an example"), said);
  }

  @Test
  void itsSheetIsOnePageThatSaysItIsAnExample() {
    started();
    Garage.Run run =
        garage.run("sheets", mine.resolve(Garage.DAY).toString(), "-o", garage.out.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertFalse((run.out() + run.err()).contains("warning"), run.err());
    run.says("1 of 1 sheets");
    Paper paper = Paper.of(Garage.bytes(garage.made("1001.pdf")));
    assertEquals(1, paper.pages());
    assertTrue(paper.text().contains("EXAMPLE – not for a real vehicle"), paper.text());
    assertTrue(paper.text().contains("EXAMPLE – invented figures"), paper.text());
  }

  @Test
  void whatToDoNextIsSaid() {
    Garage.Run run = started();
    run.says("  cd " + mine.toString().replace('\\', '/'));
    run.says("  baysheet draft --job 1001");
    run.says(Garage.DAY);
  }

  @Test
  void theSameDayGivesTheSameFiles() {
    started();
    Map<String, String> first = texts(mine);
    mine = folder.resolve("again");
    started("--date", Garage.DAY);
    assertEquals(first, texts(mine));
  }

  @Test
  void nothingButTheShopIsLeftInTheFolder() throws IOException {
    started();
    try (Stream<Path> entries = Files.list(mine)) {
      List<String> names = entries.map(entry -> entry.getFileName().toString()).sorted().toList();
      assertEquals(List.of(Garage.DAY, "procedures", "schemas", "shop.yaml", "vehicles"), names);
    }
  }

  @Test
  void theProceduresAreThoseOfTheDemo() {
    started();
    Map<String, String> expected = new TreeMap<>();
    texts(Path.of("jobs/procedures"))
        .forEach(
            (file, text) -> expected.put(file, EDITOR_LINE + "../schemas/procedure.json\n" + text));
    assertTrue(expected.size() >= 40, expected.keySet().toString());
    assertEquals(expected, texts(mine.resolve("procedures")));
  }

  @Test
  void everyFileNamesItsSchemaWhereAnEditorFindsIt() {
    started();
    texts(mine)
        .forEach(
            (file, text) -> {
              if (file.endsWith(".yaml")) {
                String first = text.lines().findFirst().orElseThrow();
                assertTrue(first.startsWith(EDITOR_LINE), file);
                Path schema = mine.resolve(file).resolveSibling(first.replace(EDITOR_LINE, ""));
                assertTrue(Files.isRegularFile(schema.normalize()), file + " " + schema);
              }
            });
  }

  /**
   * As {@code files.md} says. The keys are those of the schema, which the readers are held against.
   */
  @Test
  void theExampleVehicleExplainsEveryKey() {
    started();
    String book = texts(mine).get("vehicles/example-vehicle.yaml");
    JsonTree schema = JsonTree.of(Garage.bytes(mine.resolve("schemas/spec-book.json")));
    JsonTree values = JsonTree.of(Garage.bytes(mine.resolve("schemas/values.json")));
    List<String> keys = new ArrayList<>(keys(schema, "properties"));
    keys.addAll(keys(values, "definitions.fastener-keys.properties"));
    keys.add("absent");
    assertTrue(keys.size() > 30, keys.toString());
    assertEquals(
        List.of(),
        keys.stream()
            .filter(key -> !Pattern.compile("(?m)\\b" + key + "(:| {2,})").matcher(book).find())
            .toList());
  }

  private static List<String> keys(JsonTree schema, String path) {
    return ((Map<?, ?>) schema.get(path).value())
        .keySet().stream().map(String.class::cast).toList();
  }

  /** Keys behind a # are taken as they stand; those for a book that is like another are not. */
  @Test
  void whatTheExampleVehicleKeepsBehindASignCanBeUsed() throws IOException {
    started();
    Path book = mine.resolve("vehicles/example-vehicle.yaml");
    String text = Files.readString(book);
    String used =
        text.replaceAll("(?m)^# ((?:jacking|fluids|part-numbers|seen):|  engine-oil:)", "$1");
    assertNotEquals(text, used);
    Files.writeString(book, used);
    assertOnlyExamplesAreReported();
  }

  @Test
  void ownNamesNeedOnlyTheJobChanged() throws IOException {
    started();
    Path shop = mine.resolve("shop.yaml");
    Files.writeString(
        shop,
        Files.readString(shop)
            .replaceAll("(?m)^  floor:", "  pit:")
            .replaceAll("(?m)^  T1:", "  ann:")
            .replaceAll("(?m)^  T2:", "  ben:"));
    Garage.Run run = garage.run("check", mine.toString());
    assertEquals(Exit.PROBLEMS, run.exit());
    Path job = mine.resolve(Garage.DAY).resolve("1001.yaml");
    run.err()
        .lines()
        .filter(line -> line.contains(": error: "))
        .forEach(line -> assertTrue(line.contains("1001.yaml:"), line));
    Files.writeString(job, Files.readString(job).replace("T1", "ann").replace("floor", "pit"));
    assertOnlyExamplesAreReported();
  }

  @Test
  void anEmptyFolderIsTaken() throws IOException {
    Files.createDirectories(mine);
    started();
    assertTrue(Files.isRegularFile(mine.resolve("shop.yaml")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"mine/shop.yaml", "mine/.hidden", "mine"})
  void whatIsThereIsNeverTouched(String there) throws IOException {
    Path file = folder.resolve(there);
    Files.createDirectories(file.getParent());
    Files.writeString(file, "mine\n");
    refused().says("not empty");
  }

  @Test
  void whatAnInterruptedStartLeftIsCalledThat() throws IOException {
    Files.createDirectories(mine.resolve(".start123456/procedures"));
    refused().says("is what an interrupted start left; delete the folder");
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026-02-30", "tomorrow", "02.03.2026", ""})
  void aDayThatIsNoneIsAMistake(String day) {
    refused("--date", day).says("--date takes a day");
  }

  @Test
  void aFolderThatCannotBeMadeIsNamed() throws IOException {
    Files.writeString(folder.resolve("file"), "");
    mine = folder.resolve("file").resolve("mine");
    Garage.Run run = start();
    assertEquals(Exit.FILES, run.exit());
    assertEquals(1, run.err().lines().count(), run.err());
    run.says("cannot write");
  }

  /** A file stands where a folder would have to be, so the second one cannot be written. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void afterAFailureTheFolderIsAsItWasBefore(boolean wasThere) throws IOException {
    if (wasThere) {
      Files.createDirectories(mine);
    }
    Map<String, String> files = new LinkedHashMap<>();
    files.put("a", "one\n");
    files.put("a/b", "two\n");
    assertThrows(UncheckedIOException.class, () -> NewFolder.write(mine, files));
    assertEquals(wasThere, Files.exists(mine));
    assertEquals(Map.of(), wasThere ? texts(mine) : Map.of());
    assertTrue(NewFolder.isFree(mine));
  }

  @Test
  void schemasAreWrittenAnewAndNothingElse() throws IOException {
    started();
    Map<String, String> before = texts(mine);
    Files.writeString(mine.resolve("schemas/job.json"), "{}");
    Files.delete(mine.resolve("schemas/values.json"));
    Files.writeString(mine.resolve("schemas/.job.json.4711.part"), "{ half of");
    started("--schemas").says("6 files");
    assertEquals(before, texts(mine));
  }

  @Test
  void aShopWithoutSchemasGetsThem() {
    Garage.Run run = garage.run("start", "--schemas", garage.root.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertTrue(Files.isRegularFile(garage.root.resolve("schemas/shop.json")));
    assertEquals(Exit.DONE, garage.run("check", garage.root.toString()).exit());
  }

  @Test
  void schemasAreForShopFoldersOnly() {
    refused("--schemas").says("no shop folder");
  }
}
