package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Shop;
import baysheet.ledger.Joint;
import baysheet.ledger.KeptRecord;
import baysheet.output.Console;
import baysheet.output.MadeSheet;
import baysheet.output.SheetPdfs;
import baysheet.pdf.PdfWriter;
import baysheet.record.PlacedBoxes;
import baysheet.scan.IssuedSheets.Issued;
import baysheet.simulate.SignedStack;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Signs the sheets of a demo day as a garage would, and leaves the scan of the stack in {@code
 * target/signed-demo/stack.pdf}, for whoever tries the commands of {@code src/docs/ledger.md}.
 */
class SignedDemoTest {
  private static final String DAY = "2026-03-02";
  private static final Path STACK = Path.of("target/signed-demo/stack.pdf");

  /** The second person never looked at this hold point of this job. */
  private static final String OPEN_JOB = "2402";

  private static final String HOLD = "hold.37";

  /** The sheet of this job is still in the car. */
  private static final String MISSING_JOB = "2407";

  @TempDir private Path folder;

  private static byte[] stack() throws IOException {
    PdfWriter writer = new PdfWriter();
    SignedStack stack = SignedStack.ofTicks(2026);
    for (MadeSheet made : DemoSheets.made(Shop.Paper.A4)) {
      String job = made.sheet().heading().job();
      boolean isOfTheDay = made.sheet().heading().date().toString().equals(DAY);
      if (isOfTheDay && !job.equals(MISSING_JOB)) {
        PlacedBoxes boxes = PlacedBoxes.of(made.record());
        byte[] pdf = SheetPdfs.pdf(writer, made);
        stack.sign(
            new Issued(made.id().text(), false, pdf, boxes),
            job.equals(OPEN_JOB) ? Set.of(HOLD) : Set.of(),
            figures(made.record()));
      }
    }
    return stack.pdf();
  }

  /** Every wrench reached its setting. */
  private static Map<String, String> figures(byte[] record) {
    Map<String, String> figures = new HashMap<>();
    for (Joint joint : KeptRecord.of(record).joints()) {
      joint
          .setting()
          .or(joint::target)
          .ifPresent(it -> figures.put(joint.box(), it.value().toPlainString()));
    }
    return figures;
  }

  private static String run(String... arguments) {
    StringWriter text = new StringWriter();
    PrintWriter out = new PrintWriter(text);
    Main.run(arguments, new Console(out, out, false), () -> LocalDate.parse("2026-03-03"));
    return text.toString();
  }

  @Test
  void demoDayIsSignedAndCollectedAsTheReadmeSays() throws IOException {
    Files.createDirectories(STACK.getParent());
    Files.write(STACK, stack());
    String out = folder.toString();
    run("sheets", "jobs/" + DAY, "-o", out);
    List<String> lines =
        run("collect", STACK.toString(), "-o", out)
            .lines()
            .map(line -> line.replace(folder.toString(), "out").replace('\\', '/'))
            .toList();
    String open = lines.get(1);
    assertTrue(open.startsWith(DAY + "  2402  open: "), open);
    assertEquals(8, lines.size(), lines.toString());
    assertTrue(lines.contains(DAY + "  2407  missing: its sheet has not come back"), out);
    String review = "look through out/" + DAY + "/signed/review.pdf";
    assertTrue(lines.contains(review), lines.toString());
    String readme = Files.readString(Path.of("src/docs/ledger.md"));
    for (String said : List.of(open, lines.get(2), lines.get(6), review)) {
      assertTrue(readme.contains(said), () -> "not in ledger.md: " + said);
    }
  }
}
