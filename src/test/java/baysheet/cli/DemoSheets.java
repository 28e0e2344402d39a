package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Shop;
import baysheet.books.ShopFolder;
import baysheet.box.Form;
import baysheet.layout.Fonts;
import baysheet.plan.Planner;
import baysheet.plan.Sheet;
import baysheet.report.Problems;
import baysheet.template.Layouts;
import baysheet.template.SheetText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All sheets of the demo days. */
final class DemoSheets {
  static final Fonts FONTS = Fonts.builtIn();
  private static final Path JOBS = Path.of("jobs");

  private DemoSheets() {}

  static List<MadeSheet> made(Shop.Paper paper) {
    return made(paper, Layouts.builtIn());
  }

  static List<MadeSheet> made(Shop.Paper paper, Layouts layouts) {
    ShopFolders folders = new ShopFolders(FONTS);
    SheetMaker maker = new SheetMaker(folders, layouts, FONTS, Optional.of(paper));
    Problems problems = new Problems();
    ShopFolder folder = folders.read(JOBS, problems).orElseThrow();
    List<MadeSheet> made = new ArrayList<>();
    for (Path job : DayFolders.all(JOBS)) {
      maker.make(job, folder, problems).ifPresent(made::add);
    }
    assertEquals(List.of(), problems.all());
    assertTrue(made.size() >= 14, "only " + made.size() + " sheets");
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
      forms.add(layouts.fill("bay-sheet", SheetText.of(sheet), problems).orElseThrow());
    }
    return forms;
  }
}
