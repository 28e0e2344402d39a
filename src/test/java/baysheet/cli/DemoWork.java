package baysheet.cli;

import baysheet.books.Moment;
import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.books.Step;
import baysheet.files.ShopFolders;
import baysheet.layout.Fonts;
import baysheet.plan.Planner;
import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.resolve.ShopTexts;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Works at the vehicles of the demo shop, planned by themselves. */
final class DemoWork {
  static final ShopTexts SHOP = ShopTexts.of(Path.of("jobs")).withBuiltIn();
  static final ShopFolder FOLDER =
      new ShopFolders(Fonts.builtIn()).read(Path.of("jobs"), new Problems()).orElseThrow();

  private DemoWork() {}

  static Problems problems(ShopTexts shop, String job) {
    Problems problems = new Problems();
    shop.resolve(job, problems).flatMap(it -> Planner.plan(it, problems));
    return problems;
  }

  static Sheet sheet(ShopTexts shop, String job) {
    Problems problems = new Problems();
    Optional<Resolved> resolved = shop.resolve(job, problems);
    return resolved
        .flatMap(it -> Planner.plan(it, problems))
        .orElseThrow(() -> new AssertionError(problems.all().toString()));
  }

  /** A job of the demo's first day with another vehicle, bay and work. */
  static ShopTexts job(String book, String bay, String work) {
    return SHOP.with(
        "2026-03-02/7.yaml",
        "job: 7\nvehicle: {book: %s}\nbay: %s\nby: T1\nwork: %s\n".formatted(book, bay, work));
  }

  static Sheet sheet(String book, String bay, String work) {
    return sheet(job(book, bay, work), "2026-03-02/7.yaml");
  }

  static List<Step> steps(Procedure procedure) {
    return Stream.of(
            procedure.blocks().open(), procedure.blocks().work(), procedure.blocks().close())
        .flatMap(List::stream)
        .toList();
  }

  static Optional<Moment> moment(Step step) {
    return step.moment().map(Located::value);
  }

  /** The first step of a procedure, or of a check. */
  static Sheet.SheetStep step(Sheet sheet, String procedure) {
    return sheet.steps().stream()
        .filter(it -> it.procedure().equals(procedure))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no step of " + procedure));
  }

  static boolean has(Sheet sheet, String check, Moment moment) {
    return sheet.checks().stream()
        .anyMatch((CheckLine it) -> it.name().equals(check) && it.moment() == moment);
  }
}
