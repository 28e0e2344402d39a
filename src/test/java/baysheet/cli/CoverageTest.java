package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Catalogue;
import baysheet.books.Shop;
import baysheet.books.ShopFolder;
import baysheet.files.DayFolders;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import baysheet.layout.Fonts;
import baysheet.output.MadeSheet;
import baysheet.output.SheetMaker;
import baysheet.plan.Planner;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.template.LayoutTemplates;
import baysheet.wording.Printed;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Nothing in the demo's procedures and in the catalogue is there that no job ever brought up: the
 * demo days and a day of rarer jobs, with vehicles and procedures for what the demo garage does not
 * do.
 */
class CoverageTest {
  private static final Path RARER = Path.of("src/test/resources/cases/workshop");
  private static final Fonts FONTS = Fonts.builtIn();

  /** Brakes of an axle, bearings, bushes and arms, two works at a corner, high voltage. */
  private static final Set<String> TWO_SHEETS =
      Set.of(
          "103", "104", "105", "108", "111", "115", "116", "117", "201", "212", "213", "222", "225",
          "226", "229", "2404", "2405", "2406", "2410", "2414");

  /** Among them demo jobs that say three, so that reasons and ways out stay on their sheets. */
  private static final Set<String> THREE_SHEETS =
      Set.of(
          "227", "119", "120", "122", "202", "221", "223", "224", "2402", "2403", "2408", "2409",
          "2411", "2412", "2413");

  /** Timing belt; a demo job that says four. */
  private static final Set<String> FOUR_SHEETS = Set.of("118", "2401");

  /** Cylinder head. */
  private static final Set<String> SIX_SHEETS = Set.of("107");

  /** Clutch, with both drive shafts, starter and intake. */
  private static final Set<String> SEVEN_SHEETS = Set.of("106");

  /** Cylinder head with discs at the other axle, the checks at the end on a sheet of their own. */
  private static final Set<String> TEN_SHEETS = Set.of("230");

  @TempDir private static Path root;
  private static ShopFolder folder;
  private static Map<Path, Sheet> sheets;

  @BeforeAll
  static void plan() {
    CopyOfTheDemo.in(root).with(RARER);
    Problems problems = new Problems();
    folder = folders().read(root, problems).orElseThrow(() -> new AssertionError(problems.all()));
    sheets = new TreeMap<>();
    for (Path job : DayFolders.all(root)) {
      SheetMaker maker = maker();
      maker
          .resolve(job, folder, problems)
          .flatMap(resolved -> Planner.plan(resolved, problems))
          .ifPresent(sheet -> sheets.put(job, sheet));
    }
    assertEquals(List.of(), problems.all().stream().filter(Problem::isError).toList());
  }

  private static ShopFolders folders() {
    return new ShopFolders(FONTS);
  }

  private static SheetMaker maker() {
    return new SheetMaker(folders(), LayoutTemplates.builtIn(), FONTS, Optional.of(Shop.Paper.A4));
  }

  @Test
  void everyProcedureIsUsed() {
    assertEquals(Set.of(), missing(folder.procedures().keySet(), CoverageTest::procedures));
  }

  private static Stream<String> procedures(Sheet sheet) {
    return steps(sheet).map(Sheet.SheetStep::procedure);
  }

  private static Stream<Sheet.SheetStep> steps(Sheet sheet) {
    return sheet.sections().stream().flatMap(section -> section.steps().stream());
  }

  @Test
  void everyCautionIsBroughtUp() {
    Set<String> names = folder.catalogue().cautions().keySet();
    assertTrue(names.size() > 70, names.toString());
    assertEquals(
        Set.of(),
        missing(names, sheet -> sheet.safety().cautions().stream().map(CautionLine::name)));
  }

  @Test
  void everyConsequenceIsBroughtUp() {
    Set<String> names = folder.catalogue().rules().keySet();
    assertTrue(names.size() > 70, names.toString());
    // What is due the evening before is no check line but a line of the evening's block.
    assertEquals(
        Set.of(),
        missing(
            names,
            sheet ->
                Stream.concat(sheet.checks().stream().map(CheckLine::name), theEvening(sheet))));
  }

  private static Stream<String> theEvening(Sheet sheet) {
    return folder.catalogue().rules().values().stream()
        .filter(rule -> Printed.evening(sheet).stream().anyMatch(it -> it.contains(text(rule))))
        .map(rule -> rule.name().value());
  }

  private static String text(Catalogue.Rule rule) {
    return rule.check().value();
  }

  @Test
  void everyStateChangesTheTimeOfSomeJob() {
    Set<String> used = new TreeSet<>();
    for (Path job : DayFolders.all(root)) {
      maker()
          .resolve(job, folder, new Problems())
          .ifPresent(it -> it.job().condition().state().forEach(state -> used.add(state.value())));
    }
    assertEquals(new TreeSet<>(folder.catalogue().states().keySet()), used);
  }

  private static Set<String> missing(
      Collection<String> names, Function<Sheet, Stream<String>> found) {
    Set<String> missing = new LinkedHashSet<>(names);
    sheets.values().stream().flatMap(found).forEach(missing::remove);
    return missing;
  }

  /** On Letter, 18 mm shorter, more of them need several; the demo days hold that paper too. */
  @Test
  void eachFitsOnePageOrIsDivided() {
    Map<Integer, Set<String>> bySheets = new TreeMap<>();
    for (Path job : DayFolders.all(root)) {
      Problems problems = new Problems();
      List<MadeSheet> made = maker().make(job, folder, problems);
      assertFalse(made.isEmpty(), () -> job + ": " + problems.all());
      bySheets.computeIfAbsent(made.size(), size -> new TreeSet<>()).add(YamlFiles.name(job));
    }
    bySheets.remove(1);
    assertEquals(
        Map.of(
            2,
            TWO_SHEETS,
            3,
            THREE_SHEETS,
            4,
            FOUR_SHEETS,
            6,
            SIX_SHEETS,
            7,
            SEVEN_SHEETS,
            10,
            TEN_SHEETS),
        bySheets);
  }
}
