package baysheet.cli;

import baysheet.books.Shop;
import baysheet.box.Form;
import baysheet.garage.DayReport;
import baysheet.layout.Fonts;
import baysheet.layout.MissingGlyph;
import baysheet.layout.PageFit;
import baysheet.pdf.PdfInfo;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.template.Layouts;
import baysheet.wording.DayText;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Sets the page of a day. */
record DayPage(
    Fonts fonts, Supplier<Layouts> layouts, Writers writers, Shop shop, Shop.Paper paper) {
  private static final List<String> KEYWORDS = List.of("timetable");

  /**
   * The page as a PDF; empty when problems were added.
   *
   * @param day the folder of the job files
   */
  Optional<byte[]> pdf(DayReport report, Path day, Problems problems) {
    DayText words = DayText.of(report, shop, paper);
    Optional<Form> form = layouts.get().fill(words, problems);
    if (form.isEmpty()) {
      return Optional.empty();
    }
    LayoutProblems trouble = new LayoutProblems(new Source(YamlFiles.shown(day), ""));
    List<MissingGlyph> missing = MissingGlyph.in(form.get(), fonts);
    if (!missing.isEmpty()) {
      trouble.missingGlyphs(missing, problems);
      return Optional.empty();
    }
    PageFit fit = PageFit.fit(form.get(), fonts);
    if (fit instanceof PageFit.Fitted fitted) {
      PdfInfo info =
          new PdfInfo(
              words.title(),
              "en",
              words.shop(),
              words.title(),
              KEYWORDS,
              report.day().date().atStartOfDay(ZoneOffset.UTC).toInstant(),
              words.title());
      return Optional.of(writers.write(writer -> writer.write(fitted.page(), info, List.of())));
    }
    trouble.unfit(fit, problems);
    return Optional.empty();
  }
}
