package baysheet.template;

import baysheet.layout.Fonts;
import baysheet.layout.PageFit;
import baysheet.pdf.PdfInfo;
import baysheet.pdf.PdfWriter;
import baysheet.plan.Sheet;
import baysheet.report.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Draws the sample sheets into a folder, to be looked at. Run by hand. */
final class SheetPictures {
  private SheetPictures() {}

  public static void main(String[] arguments) throws IOException {
    Layouts layouts = Layouts.in(Path.of(arguments[0]));
    Path out = Files.createDirectories(Path.of(arguments[1]));
    Map<String, Sheet> sheets =
        new TreeMap<>(
            Map.of(
                "small", Samples.oilService(), "middle", Samples.brakes(), "big", Samples.big()));
    for (Map.Entry<String, Sheet> entry : sheets.entrySet()) {
      Problems problems = new Problems();
      Optional<Form> form = layouts.fill("bay-sheet", SheetText.of(entry.getValue()), problems);
      problems.all().forEach(problem -> System.out.println(problem.at() + " " + problem.what()));
      if (form.isPresent()) {
        draw(entry.getKey(), form.get(), out);
      }
    }
  }

  private static void draw(String name, Form form, Path out) throws IOException {
    PageFit fit = PageFit.fit(form, Fonts.builtIn());
    if (fit instanceof PageFit.Fitted fitted) {
      System.out.println(name + ": " + fitted.fit());
      PdfInfo info =
          new PdfInfo(
              form.title(), form.language(), "garage", "sheet", List.of(), Instant.EPOCH, name);
      Files.write(
          out.resolve(name + ".pdf"), new PdfWriter().write(fitted.page(), info, List.of()));
    } else if (fit instanceof PageFit.Overrun overrun) {
      System.out.println(name + ": too tall by " + overrun.byMillimetres() + " mm");
      overrun.tallest().forEach(tall -> System.out.println("  " + tall));
      overrun.tooWide().forEach(wide -> System.out.println("  " + wide));
    }
  }
}
