package baysheet.output;

import baysheet.books.Job;
import baysheet.books.JobReader;
import baysheet.books.Shop;
import baysheet.books.ShopFolder;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import baysheet.layout.Fonts;
import baysheet.plan.Planner;
import baysheet.plan.TracedPlan;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.resolve.Resolver;
import baysheet.sheet.Sheet;
import baysheet.template.LayoutTemplates;
import baysheet.wording.SheetWarnings;
import baysheet.yaml.Node;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Makes the sheets of one job file: reads, resolves, plans, and has the pages made. */
public final class SheetMaker {
  private final ShopFolders folders;
  private final Supplier<LayoutTemplates> layouts;
  private final Fonts fonts;
  private final Optional<Shop.Paper> paper;

  public SheetMaker(
      ShopFolders folders, LayoutTemplates layouts, Fonts fonts, Optional<Shop.Paper> paper) {
    this(folders, () -> layouts, fonts, paper);
  }

  /**
   * @param layouts asked for when the first sheet is ready for them
   */
  public SheetMaker(
      ShopFolders folders,
      Supplier<LayoutTemplates> layouts,
      Fonts fonts,
      Optional<Shop.Paper> paper) {
    this.folders = folders;
    this.layouts = layouts;
    this.fonts = fonts;
    this.paper = paper;
  }

  /** The job with everything bound; empty when problems with errors were added. */
  public Optional<Resolved> resolve(Path file, ShopFolder folder, Problems problems) {
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

  /**
   * The finished pages of a job, one for each stage; empty when problems with errors were added.
   */
  public List<MadeSheet> make(Path file, ShopFolder folder, Problems problems) {
    return make(file, folder, Revision.FIRST, problems);
  }

  /** The same in the revision that it is to have. */
  public List<MadeSheet> make(Path file, ShopFolder folder, Revision revision, Problems problems) {
    return resolve(file, folder, revision, problems)
        .map(resolved -> made(resolved, file, revision, problems, false))
        .orElse(List.of());
  }

  /** The same with everything that the sheet itself will warn of among the problems. */
  public List<MadeSheet> check(Path file, ShopFolder folder, Problems problems) {
    return resolve(file, folder, problems)
        .map(resolved -> made(resolved, file, Revision.FIRST, problems, true))
        .orElse(List.of());
  }

  /**
   * The sheets of a job that is planned, one for each stage, as they would be printed; none when
   * problems with errors were added.
   */
  public List<Sheet> stages(Resolved resolved, TracedPlan plan, Path file, Problems problems) {
    return pages(file, Revision.FIRST, problems)
        .sheets(plan.stages(), resolved.job().sheets().stages());
  }

  private List<MadeSheet> made(
      Resolved resolved, Path file, Revision revision, Problems problems, boolean allWarnings) {
    Optional<TracedPlan> plan = Planner.traced(resolved, problems);
    if (allWarnings) {
      plan.ifPresent(it -> SheetWarnings.of(resolved, it.sheet()).forEach(problems::add));
    }
    return plan.map(
            it -> pages(file, revision, problems).of(it.stages(), resolved.job().sheets().stages()))
        .orElse(List.of());
  }

  private SheetPages pages(Path file, Revision revision, Problems problems) {
    return new SheetPages(layouts.get(), fonts, paper, revision, folders, file, problems);
  }
}
