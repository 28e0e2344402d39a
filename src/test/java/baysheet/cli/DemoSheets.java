package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Shop;
import baysheet.books.ShopFolder;
import baysheet.box.Form;
import baysheet.files.DayFolders;
import baysheet.files.ShopFolders;
import baysheet.layout.Fonts;
import baysheet.output.MadeSheet;
import baysheet.output.SheetMaker;
import baysheet.plan.Planner;
import baysheet.report.Problems;
import baysheet.sheet.Sheet;
import baysheet.template.LayoutTemplates;
import baysheet.wording.Samples;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All sheets of the demo days. */
final class DemoSheets {
  static final Fonts FONTS = Fonts.builtIn();
  private static final Path JOBS = Path.of("jobs");

  private static final LayoutTemplates BUILT_IN = LayoutTemplates.builtIn();

  private DemoSheets() {}

  static List<MadeSheet> made(Shop.Paper paper) {
    return made(paper, BUILT_IN);
  }

  static List<MadeSheet> made(Shop.Paper paper, LayoutTemplates layouts) {
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
    assertEquals(List.of(), problems.all());
    long jobs = made.stream().map(it -> it.sheet().heading().job()).distinct().count();
    assertTrue(jobs >= 14, "only " + jobs + " jobs have sheets");
    return made;
  }

  /** The sheets of the whole jobs, whether one page holds them or not. */
  static List<Sheet> wholes() {
    ShopFolders folders = new ShopFolders(FONTS);
    SheetMaker maker = new SheetMaker(folders, BUILT_IN, FONTS, Optional.empty());
    Problems problems = new Problems();
    ShopFolder folder = folders.read(JOBS, problems).orElseThrow();
    List<Sheet> sheets = new ArrayList<>();
    for (Path job : DayFolders.all(JOBS)) {
      maker
          .resolve(job, folder, problems)
          .flatMap(resolved -> Planner.plan(resolved, problems))
          .ifPresent(sheets::add);
    }
    return sheets;
  }

  /** The sheets' forms before they are fitted. */
  static List<Form> forms(LayoutTemplates layouts) {
    Problems problems = new Problems();
    List<Form> forms = new ArrayList<>();
    for (Sheet sheet : wholes()) {
      forms.add(layouts.fill("bay-sheet", Samples.text(sheet), problems).orElseThrow());
    }
    return forms;
  }
}
