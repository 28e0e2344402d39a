package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.ledger.Index;
import baysheet.ledger.SheetStory;
import baysheet.output.Exit;
import baysheet.report.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job in stages from its file to its signed sheets. */
class StagesCommandTest {
  private static final String JOB = "2026-04-07/501.yaml";

  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  private Garage.Run make(String... options) {
    Garage.Run run = garage.sheets(options);
    assertEquals(Exit.DONE, run.exit(), run.err());
    return run;
  }

  private void stages(int stages) {
    garage.write(JOB, text() + "stages: " + stages + "\n");
  }

  private String text() {
    try {
      return Files.readString(garage.job("501")).replaceAll("(?m)^stages:.*\n", "");
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The sheets and records of job 501 in the day's folder. */
  private Set<String> files() {
    try (var files = Files.list(garage.made(""))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.startsWith("501"))
          .collect(Collectors.toCollection(TreeSet::new));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private Index index() {
    return Index.read(garage.out.resolve("ledger"), new Problems()).orElseThrow();
  }

  private List<String> current() {
    return index().current("501").stream()
        .map(it -> it.issued().name() + "-" + it.issued().revision())
        .toList();
  }

  private SheetStory.State state(String name) {
    return index().latest(name).orElseThrow().state();
  }

  @Test
  void eachSheetSaysWhichOneItReplacesAndStaysTheSameAfterwards() {
    stages(2);
    make();
    List<String> first = index().current("501").stream().map(SheetStory::id).toList();
    assertEquals(2, first.size());
    garage.change(JOB, "90110 km", "90210 km");
    make();
    for (int n = 1; n <= 2; n++) {
      String page = page("501-" + n + ".pdf").replaceAll("\\s+", " ");
      assertTrue(page.contains("Replaces " + first.get(n - 1) + ": "), page);
    }
    List<String> second = current();
    assertEquals(List.of("501-1-B", "501-2-B"), second);
    make().says("unchanged");
    assertEquals(second, current());
  }

  @Test
  void explainNamesTheSheetOfARow() {
    String one = garage.run("explain", garage.job("501").toString()).out();
    assertFalse(one.contains("stage"), one);
    stages(2);
    String told = garage.run("explain", garage.job("501").toString()).out();
    assertTrue(told.matches("(?s).*\\n  sheet +501-[12], stage [12] of 2\\n.*"), told);
  }

  private String page(String file) {
    return Paper.of(Garage.bytes(garage.made(file))).text();
  }

  @Test
  void eachStageIsASheetWithItsRecord() {
    stages(2);
    make("--record");
    assertEquals(Set.of("501-1.json", "501-1.pdf", "501-2.json", "501-2.pdf"), files());
    for (int n = 1; n <= 2; n++) {
      Paper paper = Paper.of(Garage.bytes(garage.made("501-" + n + ".pdf")));
      assertEquals(1, paper.pages());
      assertTrue(paper.text().contains("stage " + n + " of 2"), paper.text());
      JsonTree record = JsonTree.of(Garage.bytes(garage.made("501-" + n + ".json")));
      assertEquals(String.valueOf(n), record.text("sheet.stage"));
      assertEquals("2", record.text("sheet.stages"));
      assertTrue(paper.text().contains(record.text("sheet.id")));
      assertEquals(Set.of("501-" + n + ".json"), paper.attached().keySet());
    }
    assertTrue(page("501-1.pdf").contains("State on leaving."));
    assertFalse(page("501-1.pdf").contains("State on arrival."));
    assertTrue(page("501-2.pdf").contains("State on arrival."));
    assertFalse(page("501-2.pdf").contains("State on leaving."));
  }

  @Test
  void theDaysFileHasTheStagesBehindOneAnother() {
    make();
    int before = Paper.of(Garage.bytes(garage.made("all.pdf"))).pages();
    stages(2);
    Garage.Run run = make();
    String all = page("all.pdf");
    assertEquals(before + 1, Paper.of(Garage.bytes(garage.made("all.pdf"))).pages());
    assertTrue(all.indexOf("stage 1 of 2") < all.indexOf("stage 2 of 2"), all);
    run.says("501-1  ");
    run.says("501-2  ");
  }

  @Test
  void aDividedJobLeavesNoSheetOfTheWholeOne() {
    make("--record");
    assertEquals(Set.of("501.json", "501.pdf"), files());
    stages(2);
    Garage.Run run = make();
    assertEquals(Set.of("501-1.pdf", "501-2.pdf"), files());
    run.says("501  withdrawn, because the job has 2 sheets now");
    run.says("the job is divided among 2 sheets");
    assertTrue(Files.exists(garage.made("withdrawn/501.pdf")));
    assertTrue(Files.exists(garage.made("withdrawn/501.json")));
    assertEquals(List.of("501-1-B", "501-2-B"), current());
    assertEquals(SheetStory.State.SUPERSEDED, state("501"));

    stages(1);
    Garage.Run again = make();
    assertEquals(Set.of("501.pdf"), files());
    again.says("501-2  withdrawn, because the job has one sheet now");
    assertEquals(List.of("501-C"), current());
    assertEquals(SheetStory.State.SUPERSEDED, state("501-1"));
    assertEquals(SheetStory.State.WITHDRAWN, state("501-2"));
  }

  @Test
  void aSecondRunChangesNothing() {
    stages(2);
    make();
    int events = index().sheets().size();
    Garage.Run again = make();
    again.says("501-1.pdf  unchanged");
    again.says("501-2.pdf  unchanged");
    assertEquals(events, index().sheets().size());
  }

  @Test
  void allStagesHaveTheSameLetter() {
    stages(2);
    make();
    garage.write(JOB, text() + "notes: Look at the boot\nstages: 2\n");
    make();
    assertEquals(List.of("501-1-B", "501-2-B"), current());
    assertEquals(4, index().ofJob("501").size());
  }

  @Test
  void aCancelledJobTakesAllItsStagesAway() throws IOException {
    stages(2);
    make();
    Files.delete(garage.job("501"));
    make();
    assertEquals(Set.of(), files());
    assertEquals(SheetStory.State.WITHDRAWN, state("501-1"));
    assertEquals(SheetStory.State.WITHDRAWN, state("501-2"));
  }

  @Test
  void eachStageIsClosedByItself() {
    stages(2);
    make();
    String shop = garage.root.toString();
    String out = garage.out.toString();
    Garage.Run whole = garage.run("close", "501", "--by", "T1", "--shop", shop, "-o", out);
    whole.says("the job 501 has several sheets: close 501-1, then 501-2");
    garage.run("close", "501-1", "--by", "T1", "--shop", shop, "-o", out).says("signed/501-1.yaml");
    garage.run("history", "501", "-o", out).says("501-2-A-");
    garage.run("history", "501-1", "-o", out).says("501-1-A-");
    garage.run("due", "--by", "2026-12-31", "-o", out).says("501-1-A-");
  }

  @Test
  void aJobThatIsCalledLikeAStageIsReported() throws IOException {
    String other = Files.readString(garage.job("502")).replaceFirst("job: 502", "job: 501-1");
    garage.write("2026-04-07/501-1.yaml", other);
    stages(2);
    garage.sheets().reports("2026-04-07/501.yaml:1:1", "number-twice");
    assertFalse(
        new String(Garage.bytes(garage.made("501-1.pdf")), StandardCharsets.ISO_8859_1).isEmpty());
  }
}
