package baysheet.output;

import baysheet.books.Shop;
import baysheet.box.Form;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import baysheet.layout.Fonts;
import baysheet.layout.MissingGlyph;
import baysheet.layout.PageFit;
import baysheet.plan.stage.Division;
import baysheet.plan.stage.Division.Divided;
import baysheet.plan.stage.Division.Room;
import baysheet.plan.stage.StageSheets;
import baysheet.record.SheetId;
import baysheet.record.SheetRecord;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.sheet.Sheet;
import baysheet.template.LayoutTemplates;
import baysheet.wording.SheetText;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Makes the pages of a planned job: fills the layout and fits the page, and divides the job where
 * one page is too small for it or the job asks for more.
 */
public record SheetPages(
    LayoutTemplates layouts,
    Fonts fonts,
    Optional<Shop.Paper> paper,
    Revision revision,
    ShopFolders folders,
    Path file,
    Problems problems) {
  private static final String LAYOUT = "bay-sheet";

  /** The pages of a job; none when problems with errors were added. */
  List<MadeSheet> of(StageSheets stages, Optional<Located<Integer>> wanted) {
    Sheet whole = onPaper(stages.whole());
    SheetId id = SheetId.of(whole);
    Optional<Form> form = printable(whole, id);
    if (form.isEmpty()) {
      return List.of();
    }
    if (least(wanted) == 1) {
      PageFit fit = PageFit.fit(form.get(), fonts);
      if (fit instanceof PageFit.Fitted fitted) {
        return List.of(made(whole, id, fitted));
      } else if (!(fit instanceof PageFit.Overrun overrun) || !overrun.tooWide().isEmpty()) {
        report().unfit(fit, problems);
        return List.of();
      }
    }
    return divided(stages, wanted).stream().flatMap(stage -> made(stage).stream()).toList();
  }

  /** The sheets of a job, whose pages nobody wants; none when problems with errors were added. */
  List<Sheet> sheets(StageSheets stages, Optional<Located<Integer>> wanted) {
    if (least(wanted) == 1) {
      return of(stages, wanted).stream().map(MadeSheet::sheet).toList();
    }
    Sheet whole = onPaper(stages.whole());
    return printable(whole, SheetId.asWide(whole))
        .map(form -> divided(stages, wanted))
        .orElse(List.of());
  }

  private static int least(Optional<Located<Integer>> wanted) {
    return wanted.map(Located::value).orElse(1);
  }

  /** The form of the whole job, all of whose characters can be printed. */
  private Optional<Form> printable(Sheet whole, SheetId id) {
    Optional<Form> form = form(whole, id, problems);
    List<MissingGlyph> missing = form.map(it -> MissingGlyph.in(it, fonts)).orElse(List.of());
    if (!missing.isEmpty()) {
      report().missingGlyphs(missing, problems);
    }
    return form.filter(it -> missing.isEmpty());
  }

  private List<Sheet> divided(StageSheets stages, Optional<Located<Integer>> wanted) {
    Divided divided = Division.of(stages, least(wanted), this::fits);
    if (divided.stages().isEmpty()) {
      report().undivided(divided.tooLong(), problems);
    }
    wanted
        .filter(it -> !divided.stages().isEmpty() && divided.stages().size() < it.value())
        .ifPresent(it -> problems.add(fewer(it, divided.stages().size())));
    List<Sheet> sheets = divided.stages().stream().map(this::onPaper).toList();
    sheets.forEach(sheet -> nameTaken(sheet).ifPresent(problems::add));
    return sheets;
  }

  private Optional<MadeSheet> made(Sheet sheet) {
    SheetId id = SheetId.of(sheet);
    Optional<PageFit> fit = form(sheet, id, problems).map(form -> PageFit.fit(form, fonts));
    if (fit.isPresent() && fit.get() instanceof PageFit.Fitted fitted) {
      return Optional.of(made(sheet, id, fitted));
    }
    fit.ifPresent(it -> report().unfit(it, problems));
    return Optional.empty();
  }

  private Sheet onPaper(Sheet sheet) {
    return revision.of(paper.map(sheet::on).orElse(sheet));
  }

  private Optional<Form> form(Sheet sheet, SheetId id, Problems found) {
    return layouts.fill(LAYOUT, SheetText.of(sheet, id.text(), id.code()), found);
  }

  /** What is wrong with the layout is said of the whole job. */
  public boolean fits(Sheet sheet, Room room) {
    Sheet printed = onPaper(sheet);
    return form(printed, SheetId.asWide(printed), new Problems())
        .filter(
            form ->
                PageFit.fitsAt(
                    form, fonts, room == Room.LEAST ? form.smallest() : form.dropsBelow()))
        .isPresent();
  }

  private MadeSheet made(Sheet sheet, SheetId id, PageFit.Fitted fitted) {
    byte[] record =
        SheetRecord.write(
            sheet, id, sheet.heading().style().paper().word(), fitted.page(), fitted.fit());
    return new MadeSheet(sheet, id, fitted.page(), fitted.fit(), record);
  }

  private LayoutProblems report() {
    return new LayoutProblems(new Source(YamlFiles.shown(file), ""));
  }

  private static Problem fewer(Located<Integer> wanted, int stages) {
    return Problem.of(
            ProblemCode.FEWER_STAGES,
            wanted.at(),
            "the work of this job can rest at so few places that it has %s"
                .formatted(stages == 1 ? "one sheet" : stages + " sheets"))
        .expecting("stages: " + stages);
  }

  /** Two sheets of one name would take each other's place. */
  private Optional<Problem> nameTaken(Sheet sheet) {
    return sheet.name().equals(sheet.heading().job())
        ? Optional.empty()
        : folders
            .withNumber(file, sheet.name())
            .map(
                other ->
                    Problem.of(
                            ProblemCode.NUMBER_TWICE,
                            new Source(YamlFiles.shown(file), "").whole(),
                            "this job has a sheet called %s, as another job of the shop is"
                                .formatted(sheet.name()))
                        .expecting("another number for one of them")
                        .seeAlso("the other job", new Source(YamlFiles.shown(other), "").whole()));
  }
}
