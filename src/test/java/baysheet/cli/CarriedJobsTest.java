package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.ledger.Index;
import baysheet.ledger.SheetStory;
import baysheet.output.Exit;
import baysheet.report.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Jobs that leave their day: carried over to another, or cancelled. */
class CarriedJobsTest {
  private static final String NEXT = "2026-04-08";

  @TempDir private Path folder;
  private Garage garage;
  private String sheet;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
    assertEquals(Exit.DONE, garage.sheets("--record").exit());
    sheet = story("501").id();
  }

  private SheetStory story(String job) {
    return index().latest(job).orElseThrow();
  }

  private Index index() {
    return Index.read(garage.out.resolve("ledger"), new Problems()).orElseThrow();
  }

  private Garage.Run carry(String... more) {
    String[] words = new String[more.length + 5];
    System.arraycopy(
        new String[] {"carry", "501", "tomorrow", "--shop", garage.root.toString()},
        0,
        words,
        0,
        5);
    System.arraycopy(more, 0, words, 5, more.length);
    return garage.run(words);
  }

  private Garage.Run sheetsOf(String day) {
    return garage.run("sheets", day, "--record", "--shop", garage.root.toString());
  }

  @Test
  void aCarriedJobGoesOnWithWhereItStopped() throws IOException {
    Garage.Run run = carry("--step", "3", "--found", "boot: \"cracked\"");
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertFalse(Files.exists(garage.job("501")));
    assertEquals(SheetStory.State.CARRIED, story("501").state());
    assertTrue(Files.exists(garage.made("withdrawn/501.pdf")));
    assertFalse(Files.exists(garage.made("501.pdf")));
    assertEquals(Exit.DONE, sheetsOf(NEXT).exit());
    String record = Files.readString(garage.out.resolve(NEXT).resolve("501.json"));
    String sentence =
        "Continues sheet "
            + sheet
            + " of 2026-04-07. Check each ticked step of that sheet up to step 3 before you go on."
            + " Found: boot: \\\"cracked\\\".";
    assertTrue(record.contains(sentence), record);
    assertEquals("B", story("501").issued().revision());
    // What was done on the first sheet was done, whatever follows it.
    SheetStory first = index().sheet(sheet).orElseThrow();
    assertEquals(SheetStory.State.CARRIED, first.state());
    assertTrue(first.mayHaveBeenUsed());
  }

  @Test
  void theDayThatItLeftSaysSo() {
    carry();
    garage
        .run("day", Garage.DAY, "--shop", garage.root.toString())
        .says("501 is no longer on this day: carried over");
  }

  @Test
  void aJobIsCarriedTwice() throws IOException {
    carry("--step", "2");
    sheetsOf(NEXT);
    Garage.Run run =
        garage.run("carry", "501", "2026-04-09", "--step", "5", "--shop", garage.root.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    String file = Files.readString(garage.root.resolve("2026-04-09/501.yaml"));
    assertEquals(1, file.lines().filter(line -> line.startsWith("carried:")).count(), file);
    assertTrue(file.contains("carried: {from: 2026-04-08, sheet: 501-B-"), file);
    assertEquals(Exit.DONE, sheetsOf("2026-04-09").exit());
  }

  @Test
  void aStepThatTheSheetDoesNotHaveIsRefused() {
    Garage.Run run = carry("--step", "300");
    assertEquals(Exit.USAGE, run.exit());
    run.says("has no step 300");
    assertTrue(Files.exists(garage.job("501")));
    assertEquals(SheetStory.State.ISSUED, story("501").state());
  }

  /** The next sheet sends the technician to that one, so a slip of the pen must not be printed. */
  @ParameterizedTest
  @CsvSource({
    "sheet: 501-A-,        sheet: 501-A-0,         no sheet 501-A-0",
    "from: 2026-04-07,     from: 2026-04-06,       is of 2026-04-07",
    "step: 3,              step: 300,              has no step 300",
    "job: 501,             job: 509,               is of job 501",
  })
  void aSheetThatTheWorkDidNotStopOnIsRefused(String right, String slip, String said)
      throws IOException {
    carry("--step", "3");
    Path job = garage.root.resolve(NEXT + "/501.yaml");
    String text = Files.readString(job);
    assertTrue(text.contains(right), text);
    Files.delete(job);
    String name = slip.startsWith("job: ") ? slip.substring(5) : "501";
    garage.write(NEXT + "/" + name + ".yaml", text.replace(right, slip));
    Garage.Run run = sheetsOf(NEXT);
    assertEquals(Exit.PROBLEMS, run.exit(), run.err());
    run.says("not-issued");
    run.says(said);
    assertFalse(Files.exists(garage.out.resolve(NEXT).resolve(name + ".pdf")));
    assertEquals(SheetStory.State.CARRIED, story("501").state());
  }

  @Test
  void aJobThatWasNeverIssuedIsMovedAsItIs() throws IOException {
    garage.write("2026-04-08/504.yaml", Files.readString(garage.job("501")).replace("501", "504"));
    Garage.Run run = garage.run("carry", "504", "2026-04-09", "--shop", garage.root.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertFalse(Files.readString(garage.root.resolve("2026-04-09/504.yaml")).contains("carried"));
  }

  @Test
  void aCancelledJobLeavesThePileAndKeepsItsFile() {
    Garage.Run run = garage.run("withdraw", "502", "--shop", garage.root.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertFalse(Files.exists(garage.job("502")));
    assertTrue(Files.exists(garage.made("withdrawn/502.yaml")));
    assertTrue(Files.exists(garage.made("withdrawn/502.pdf")));
    assertEquals(SheetStory.State.WITHDRAWN, story("502").state());
    run.says("all  2 of 2 sheets");
    assertEquals(1, events("withdrawn"));
  }

  private long events(String kind) {
    try {
      return Files.readString(garage.out.resolve("ledger/2026.jsonl"))
          .lines()
          .filter(line -> line.contains("\"event\":\"" + kind + "\""))
          .count();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the ledger", e);
    }
  }

  @Test
  void anUnknownJobIsAnsweredWithTheNearest() {
    Garage.Run run = garage.run("withdraw", "50l", "--shop", garage.root.toString());
    assertEquals(Exit.USAGE, run.exit());
    run.says("Did you mean 501?");
  }
}
