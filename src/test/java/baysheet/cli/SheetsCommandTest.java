package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetsCommandTest {
  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  @Test
  void aDayBecomesOneFileAJobAndOneOfAll() {
    Garage.Run run = garage.sheets();
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertEquals("", run.err());
    assertEquals(
        Set.of(
            "2026-04-07/501.pdf", "2026-04-07/502.pdf", "2026-04-07/503.pdf", "2026-04-07/all.pdf"),
        garage.written().keySet());
  }

  @Test
  void aLineAJobSaysWhatWasMade() {
    List<String> lines = garage.sheets().out().lines().toList();
    assertEquals(4, lines.size());
    assertTrue(
        lines.get(0).startsWith("501  bay 2  Anti-roll bar link, front left  "), lines.get(0));
    assertTrue(lines.get(0).endsWith("OUT/2026-04-07/501.pdf"), lines.get(0));
    assertTrue(lines.get(0).matches(".* [1-9][0-9] steps  [0-9]+\\.[0-9] pt  .*"), lines.get(0));
    assertEquals("all  3 of 3 sheets in bay order  OUT/2026-04-07/all.pdf", lines.get(3));
  }

  @Test
  void aSheetIsOnePageOfTheShopsPaper() {
    garage.sheets();
    for (String job : List.of("501", "502", "503")) {
      Paper paper = Paper.of(Garage.bytes(garage.made(job + ".pdf")));
      assertEquals(1, paper.pages());
      // ISO 216: 210 mm by 297 mm.
      assertEquals(210 / 25.4 * 72, paper.width(), 0.01);
      assertEquals(297 / 25.4 * 72, paper.height(), 0.01);
    }
  }

  @Test
  void paperOnTheCommandLineGoesBeforeTheShops() {
    garage.sheets("--paper", "Letter");
    Paper paper = Paper.of(Garage.bytes(garage.made("501.pdf")));
    // ANSI Y14.1: 8.5 in by 11 in.
    assertEquals(612, paper.width(), 0.01);
    assertEquals(792, paper.height(), 0.01);
  }

  @Test
  void allSheetsLieInBayOrder() {
    garage.sheets();
    Paper all = Paper.of(Garage.bytes(garage.made("all.pdf")));
    assertEquals(3, all.pages());
    // Jobs 502 and 503 are in bay 1, job 501 in bay 2.
    int first = all.text().indexOf("HW 16-502");
    int second = all.text().indexOf("HW 14-503");
    int third = all.text().indexOf("HW 14-501");
    assertTrue(0 < first && first < second && second < third, all.text());
  }

  @Test
  void bayTenComesAfterBayTwo() {
    garage.change("shop.yaml", "bays:\n", "bays:\n  10: {jack: trolley, rated: 2500 kg}\n");
    garage.change("2026-04-07/503.yaml", "bay: 1", "bay: 10");
    garage.sheets();
    String all = Paper.of(Garage.bytes(garage.made("all.pdf"))).text();
    // Job 502 is in bay 1, job 501 in bay 2, job 503 in bay 10.
    int first = all.indexOf("HW 16-502");
    int second = all.indexOf("HW 14-501");
    int third = all.indexOf("HW 14-503");
    assertTrue(0 < first && first < second && second < third, all);
  }

  @Test
  void theRecordBesideTheSheetIsTheOneInIt() {
    garage.sheets("--record");
    for (String job : List.of("501", "502", "503")) {
      Paper paper = Paper.of(Garage.bytes(garage.made(job + ".pdf")));
      assertEquals(Set.of(job + ".json"), paper.attached().keySet());
      assertArrayEquals(
          Garage.bytes(garage.made(job + ".json")), paper.attached().get(job + ".json"));
    }
    Paper all = Paper.of(Garage.bytes(garage.made("all.pdf")));
    assertEquals(
        new TreeSet<>(Set.of("501.json", "502.json", "503.json")),
        new TreeSet<>(all.attached().keySet()));
  }

  @Test
  void aSingleJobIsMadeAloneAndWithoutTheRest() {
    Garage.Run run =
        garage.run("sheets", garage.job("502").toString(), "-o", garage.out.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertEquals(Set.of("2026-04-07/502.pdf"), garage.written().keySet());
  }

  @Test
  void aJobOnItsOwnIsTheSameSheetAsInItsDay() {
    garage.sheets();
    byte[] inTheDay = Garage.bytes(garage.made("503.pdf"));
    garage.run("sheets", garage.job("503").toString(), "-o", garage.out.toString());
    assertArrayEquals(inTheDay, Garage.bytes(garage.made("503.pdf")));
  }

  @Test
  void aLayoutOfTheGarageTakesThePlaceOfOurs() throws Exception {
    Path own = Files.createDirectories(folder.resolve("own"));
    Files.copy(Path.of("templates/bay-sheet.ftlx"), own.resolve("bay-sheet.ftlx"));
    String blocks = Files.readString(Path.of("templates/blocks.ftlx"));
    Files.writeString(own.resolve("blocks.ftlx"), blocks.replace("Found while working", "Seen"));
    Garage.Run run = garage.sheets("--templates", own.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    String text = Paper.of(Garage.bytes(garage.made("501.pdf"))).text();
    assertTrue(text.contains("Seen") && !text.contains("Found while working"), text);
  }

  @Test
  void aFolderWithoutTheLayoutIsAProblem() {
    Garage.Run run = garage.sheets("--templates", folder.toString());
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("More: baysheet help unknown-layout");
    assertEquals(Set.of(), garage.written().keySet());
  }
}
