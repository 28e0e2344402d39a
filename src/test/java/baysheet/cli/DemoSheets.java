package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Shop;
import baysheet.books.ShopFolder;
import baysheet.box.Form;
import baysheet.layout.Fonts;
import baysheet.plan.Planner;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.sheet.Sheet;
import baysheet.template.Layouts;
import baysheet.wording.Samples;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** All sheets of the demo days. */
final class DemoSheets {
  static final Fonts FONTS = Fonts.builtIn();
  private static final Path JOBS = Path.of("jobs");

  /** The longest jobs, which other layouts than the built-in one refuse. */
  private static final Set<String> TOO_LONG = Set.of("2403", "2409", "2412", "2413");

  private static final Layouts BUILT_IN = Layouts.builtIn();

  private DemoSheets() {}

  private static boolean isTooLong(Problem problem) {
    return problem.code() == ProblemCode.PAGE_OVERRUN
        && TOO_LONG.stream().anyMatch(problem.at().toString()::contains);
  }

  static List<MadeSheet> made(Shop.Paper paper) {
    return made(paper, BUILT_IN);
  }

  static List<MadeSheet> made(Shop.Paper paper, Layouts layouts) {
    ShopFolders folders = new ShopFolders(FONTS);
    SheetMaker maker = new SheetMaker(folders, layouts, FONTS, Optional.of(paper));
    Problems problems = new Problems();
    ShopFolder folder = folders.read(JOBS, problems).orElseThrow();
    List<MadeSheet> made = new ArrayList<>();
    for (Path job : DayFolders.all(JOBS)) {
      Problems own = new Problems();
      made.addAll(maker.make(job, folder, own));
      problems.addAll(own);
    }
    boolean ours = layouts == BUILT_IN;
    List<Problem> others = problems.all().stream().filter(it -> ours || !isTooLong(it)).toList();
    assertEquals(List.of(), others);
    int refused = ours ? 0 : TOO_LONG.size();
    assertTrue(made.size() >= 14 - refused, "only " + made.size() + " sheets");
    return made;
  }

  /** The sheets' forms before they are fitted. */
  static List<Form> forms(Layouts layouts) {
    ShopFolders folders = new ShopFolders(FONTS);
    SheetMaker maker = new SheetMaker(folders, layouts, FONTS, Optional.empty());
    Problems problems = new Problems();
    ShopFolder folder = folders.read(JOBS, problems).orElseThrow();
    List<Form> forms = new ArrayList<>();
    for (Path job : DayFolders.all(JOBS)) {
      Sheet sheet =
          maker
              .resolve(job, folder, problems)
              .flatMap(resolved -> Planner.plan(resolved, problems))
              .orElseThrow();
      forms.add(layouts.fill("bay-sheet", Samples.text(sheet), problems).orElseThrow());
    }
    return forms;
  }
}
