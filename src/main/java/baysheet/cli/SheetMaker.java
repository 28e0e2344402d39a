package baysheet.cli;

import baysheet.books.Job;
import baysheet.books.JobReader;
import baysheet.books.Shop;
import baysheet.books.ShopFolder;
import baysheet.box.Form;
import baysheet.layout.Fonts;
import baysheet.layout.MissingGlyph;
import baysheet.layout.PageFit;
import baysheet.plan.Planner;
import baysheet.plan.content.SheetWarnings;
import baysheet.record.SheetId;
import baysheet.record.SheetRecord;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.resolve.Resolved;
import baysheet.resolve.Resolver;
import baysheet.sheet.Sheet;
import baysheet.template.Layouts;
import baysheet.wording.SheetText;
import baysheet.yaml.Node;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Makes the sheet of one job file: reads, resolves, plans, fills the layout and fits the page. */
final class SheetMaker {
  private static final String LAYOUT = "bay-sheet";

  private final ShopFolders folders;
  private final Supplier<Layouts> layouts;
  private final Fonts fonts;
  private final Optional<Shop.Paper> paper;

  SheetMaker(ShopFolders folders, Layouts layouts, Fonts fonts, Optional<Shop.Paper> paper) {
    this(folders, () -> layouts, fonts, paper);
  }

  /**
   * @param layouts asked for when the first sheet is ready for them
   */
  SheetMaker(
      ShopFolders folders, Supplier<Layouts> layouts, Fonts fonts, Optional<Shop.Paper> paper) {
    this.folders = folders;
    this.layouts = layouts;
    this.fonts = fonts;
    this.paper = paper;
  }

  /** The job with everything bound; empty when problems with errors were added. */
  Optional<Resolved> resolve(Path file, ShopFolder folder, Problems problems) {
    return resolve(file, folder, Revision.FIRST, problems);
  }

  private Optional<Resolved> resolve(
      Path file, ShopFolder folder, Revision revision, Problems problems) {
    Optional<Node> node = folders.node(file, problems);
    Optional<Job> job =
        node.flatMap(
                tree ->
                    JobReader.read(
                        tree, YamlFiles.name(file), folder.procedures().values(), problems))
            .map(revision::of);
    if (job.isEmpty()) {
      return Optional.empty();
    }
    Problems later = new Problems();
    JobIdentity identity = new JobIdentity(job.get(), file, folders, later);
    identity.checkNumber();
    Optional<Resolved> resolved =
        identity.date().flatMap(date -> Resolver.resolve(job.get(), folder, date, later));
    problems.addElsewhere(later);
    return resolved.filter(all -> !problems.hasErrors());
  }

  /** The finished page of a job; empty when problems with errors were added. */
  Optional<MadeSheet> make(Path file, ShopFolder folder, Problems problems) {
    return make(file, folder, Revision.FIRST, problems);
  }

  /** The same in the revision that it is to have. */
  Optional<MadeSheet> make(Path file, ShopFolder folder, Revision revision, Problems problems) {
    return resolve(file, folder, revision, problems)
        .flatMap(resolved -> Planner.plan(resolved, problems))
        .map(sheet -> paper.map(sheet::on).orElse(sheet))
        .flatMap(sheet -> fit(sheet, file, problems));
  }

  /** The same with everything that the sheet itself will warn of among the problems. */
  Optional<MadeSheet> check(Path file, ShopFolder folder, Problems problems) {
    Optional<Resolved> resolved = resolve(file, folder, problems);
    Optional<Sheet> sheet = resolved.flatMap(it -> Planner.plan(it, problems));
    sheet.ifPresent(it -> SheetWarnings.of(resolved.get(), it).forEach(problems::add));
    return sheet.flatMap(it -> fit(it, file, problems));
  }

  private Optional<MadeSheet> fit(Sheet sheet, Path file, Problems problems) {
    SheetId id = SheetId.of(sheet);
    SheetText words = SheetText.of(sheet, id.text(), id.code());
    Optional<Form> form = layouts.get().fill(LAYOUT, words, problems);
    if (form.isEmpty()) {
      return Optional.empty();
    }
    LayoutProblems report = new LayoutProblems(new Source(YamlFiles.shown(file), ""));
    List<MissingGlyph> missing = MissingGlyph.in(form.get(), fonts);
    if (!missing.isEmpty()) {
      report.missingGlyphs(missing, problems);
      return Optional.empty();
    }
    PageFit fit = PageFit.fit(form.get(), fonts);
    if (fit instanceof PageFit.Fitted fitted) {
      byte[] record =
          SheetRecord.write(sheet, id, sheet.heading().paper().word(), fitted.page(), fitted.fit());
      return Optional.of(new MadeSheet(sheet, id, fitted.page(), fitted.fit(), record));
    }
    report.unfit(fit, problems);
    return Optional.empty();
  }
}
