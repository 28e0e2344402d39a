package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import baysheet.ledger.Disk;
import baysheet.ledger.FolderEntries;
import baysheet.ledger.Index;
import baysheet.ledger.Ledger;
import baysheet.ledger.SheetStory;
import baysheet.output.Exit;
import baysheet.report.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the printed sheet to the answer years later, on the command line. */
class LedgerCommandsTest {
  @TempDir private Path folder;
  private Garage garage;
  private Path chain;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
    chain = garage.out.resolve("ledger/2026.jsonl");
  }

  private Garage.Run make(String... options) {
    Garage.Run run = garage.sheets(options);
    assertEquals(Exit.DONE, run.exit(), run.err());
    return run;
  }

  private Garage.Run ask(String... arguments) {
    String[] all = Arrays.copyOf(arguments, arguments.length + 2);
    all[arguments.length] = "-o";
    all[arguments.length + 1] = garage.out.toString();
    return garage.run(all);
  }

  private Garage.Run close(String job, String by) {
    return ask("close", job, "--by", by, "--shop", garage.root.toString());
  }

  private Index index() {
    return Index.read(garage.out.resolve("ledger"), new Problems()).orElseThrow();
  }

  private SheetStory last(String job) {
    return index().latest(job).orElseThrow();
  }

  private Path form(String job) {
    return garage.made("signed/" + job + ".yaml");
  }

  private void change(Path file, String was, String is) throws IOException {
    String text = Files.readString(file);
    assertTrue(text.contains(was), text);
    int at = text.indexOf(was);
    Files.writeString(file, text.substring(0, at) + is + text.substring(at + was.length()));
  }

  @Test
  void eachSheetIsIssuedOnceAndKeptWhole() throws IOException {
    make();
    String events = Files.readString(chain);
    assertEquals(3, events.lines().count());
    Garage.Run again = make();
    assertEquals(3, again.out().lines().filter(line -> line.endsWith("  unchanged")).count());
    assertEquals(events, Files.readString(chain));
    for (String job : List.of("501", "502", "503")) {
      assertArrayEquals(
          Garage.bytes(garage.made(job + ".pdf")),
          Files.readAllBytes(index().page(last(job).id())));
    }
  }

  @Test
  void againWritesTheSameBytesAnew() throws IOException {
    make();
    Map<String, byte[]> before = garage.written();
    Path sheet = garage.made("501.pdf");
    Files.setLastModifiedTime(sheet, FileTime.fromMillis(0));
    make();
    assertEquals(0, Files.getLastModifiedTime(sheet).toMillis(), "left alone");
    make("--again").says("unchanged, written again");
    assertTrue(Files.getLastModifiedTime(sheet).toMillis() > 0, "written");
    garage.written().forEach((name, bytes) -> assertArrayEquals(before.get(name), bytes, name));
  }

  @Test
  void aSheetThatWasLostIsMadeAgainAsItWas() throws IOException {
    make();
    byte[] sheet = Garage.bytes(garage.made("502.pdf"));
    Files.delete(garage.made("502.pdf"));
    make().says("unchanged, written again");
    assertArrayEquals(sheet, Garage.bytes(garage.made("502.pdf")));
  }

  @Test
  void aChangedJobGetsTheNextLetterAndSaysWhatItReplaces() {
    make();
    String first = last("501").id();
    garage.change("2026-04-07/501.yaml", "90110 km", "90210 km");
    Garage.Run again = make();
    again.says("Replaces " + first + ": the vehicle's data");
    SheetStory second = last("501");
    assertEquals("B", second.issued().revision());
    assertTrue(second.id().startsWith("501-B-"), second.id());
    assertEquals(first, second.issued().replaces().orElseThrow().sheet());
    assertEquals(SheetStory.State.SUPERSEDED, index().sheet(first).orElseThrow().state());
    String page = Paper.of(Garage.bytes(garage.made("501.pdf"))).text();
    assertTrue(page.contains(second.id()), page);
    String sentence = second.issued().replaces().orElseThrow().sentence();
    assertTrue(
        page.replaceAll("\\s+", " ").contains(sentence.replace('\u00a0', ' ') + "."),
        sentence + " in " + page);
    make().says("unchanged");
    assertEquals(2, index().ofJob("501").size());
  }

  @Test
  void aJobThatIsBackIsIssuedAgain() throws IOException {
    make();
    String id = last("502").id();
    String job = Files.readString(garage.job("502"));
    Files.delete(garage.job("502"));
    make();
    assertEquals(SheetStory.State.WITHDRAWN, last("502").state());
    Files.writeString(garage.job("502"), job);
    make();
    assertEquals(SheetStory.State.ISSUED, last("502").state());
    assertEquals(id, last("502").id());
  }

  @Test
  void aSheetIsClosedOnceAPersonHasSettledEverything() throws IOException {
    make();
    Garage.Run form = close("501", "T1");
    assertEquals(Exit.PROBLEMS, form.exit());
    form.says("wrote OUT/2026-04-07/signed/501.yaml");
    Garage.Run empty = close("501", "T1");
    assertEquals(Exit.PROBLEMS, empty.exit());
    empty.says("the sheet stays open");
    assertTrue(last("501").closed().isEmpty(), "the program closes nothing");
    FilledForm.fill(form("501"));
    Garage.Run done = close("501", "T1");
    assertEquals(Exit.DONE, done.exit(), done.err());
    done.says(last("501").id() + " closed by T1");
    assertEquals(SheetStory.State.CLOSED, last("501").state());
    close("501", "T1").says("is closed already");
    String history = ask("history", "501").out();
    assertTrue(history.contains("closed"), history);
    assertTrue(history.contains(last("501").issued().joints().get(0).fastener()), history);
  }

  @Test
  void aFigureOutsideItsBandKeepsTheSheetOpenUntilItHasAReason() throws IOException {
    make();
    close("501", "T1");
    FilledForm.fill(form("501"));
    String setting = "value: " + settingOf("501");
    change(form("501"), setting + "}", "value: 900 N·m}");
    Garage.Run open = close("501", "T1");
    assertEquals(Exit.PROBLEMS, open.exit());
    open.says("900 N·m is outside");
    open.says("help outside-band");
    assertTrue(last("501").closed().isEmpty());
    change(form("501"), "value: 900 N·m}", "value: 900 N·m, except: by the maker's note 7}");
    assertEquals(Exit.DONE, close("501", "T1").exit());
    assertTrue(ask("history", "501").out().contains("by the maker's note 7"));
    assertFalse(Files.readString(chain).contains("note 7"), "the chain holds no typed text");
  }

  private String settingOf(String job) throws IOException {
    return Files.readAllLines(form(job)).stream()
        .filter(line -> line.contains("setting: "))
        .findFirst()
        .orElseThrow()
        .replaceAll(".*setting: ([^,}]*).*", "$1");
  }

  @Test
  void anEmptyBoxKeepsTheSheetOpen() throws IOException {
    make();
    close("501", "T1");
    FilledForm.fill(form("501"));
    change(form("501"), "kind: signature, is: marked", "kind: signature, is: empty");
    Garage.Run open = close("501", "T1");
    open.says("it is empty on the paper");
    open.says("help box-open");
    assertTrue(last("501").closed().isEmpty());
  }

  @Test
  void aLapsedWrenchKeepsTheSheetOpen() throws IOException {
    make();
    close("501", "T1");
    FilledForm.fill(form("501"));
    String wrench = Files.readString(form("501")).replaceAll("(?s).*?wrench: (\\w+).*", "$1");
    String shop = Files.readString(garage.root.resolve("shop.yaml"));
    String changed =
        shop.replaceAll("(name: " + wrench + "\\b[^}]*calibrated: )[0-9-]+", "$12019-01-01");
    assertFalse(shop.equals(changed), shop);
    Files.writeString(garage.root.resolve("shop.yaml"), changed);
    Garage.Run open = close("501", "T1");
    assertEquals(Exit.PROBLEMS, open.exit());
    open.says("the calibration of " + wrench + ", of 2019-01-01, had lapsed");
    assertTrue(last("501").closed().isEmpty());
  }

  @Test
  void whatThePersonAtTheKeyboardGotWrongIsSaid() throws IOException {
    make();
    assertEquals(Exit.USAGE, close("51", "T1").exit());
    close("5011", "T1").says("the ledger has no job \"5011\"; did you mean 501?");
    assertEquals(Exit.USAGE, close("501", "T99").exit());
    assertEquals(Exit.USAGE, ask("recall", "W3").exit());
    assertEquals(
        Exit.USAGE,
        ask("recall", "W3", "--from", "2026-01-01", "--to", "2026-12-31", "--error", "8%").exit());
    assertEquals(Exit.USAGE, ask("forget").exit());
    assertEquals(Exit.USAGE, ask("due", "--odometer", "RD 1").exit());
    close("501", "T1");
    change(form("501"), "box: torque.", "box: torqe.");
    close("501", "T1").says("help unknown-box");
    change(form("501"), "box: torqe.", "box: torque.");
    change(form("501"), "value: open", "value: 110");
    close("501", "T1").says("help bad-quantity");
    change(form("501"), "sheet: 501-A", "sheet: 501-B");
    close("501", "T1").says("help other-sheet");
  }

  @Test
  void recallAndDueAnswerFromTheSheets() throws IOException {
    make();
    close("501", "T1");
    FilledForm.fill(form("501"));
    close("501", "T1");
    String wrench = last("501").issued().joints().get(0).wrench().orElseThrow();
    Garage.Run recall =
        ask("recall", wrench, "--from", "2026-04-01", "--to", "2026-04-30", "--error", "+8%");
    assertEquals(Exit.DONE, recall.exit(), recall.err());
    recall.says("outside");
    recall.says("the wrench gave 8 % more than its scale showed");
    ask("recall", "W77", "--from", "2026-04-01", "--to", "2026-04-30")
        .says("no joint was tightened");
    Garage.Run due = ask("due");
    due.says("issued, not back yet");
    assertEquals(2, due.out().lines().filter(it -> it.startsWith("sheet ")).count(), due.out());
    ask("due", "--by", "2026-04-01").says("nothing is due");
    ask("due", "--json").says("\"by\" : \"2026-04-07\"");
  }

  @Test
  void forgettingTakesNamesAndPagesAndLeavesFigures() throws IOException {
    make();
    close("501", "T1");
    FilledForm.fill(form("501"));
    change(form("501"), "found: []", "found: [Mr Oakham wants a call]");
    close("501", "T1");
    String id = last("501").id();
    assertTrue(everything().contains("Mr Oakham"));
    Garage.Run none = ask("forget", "--before", "2026-04-07");
    none.says("forgot 0 sheets");
    Garage.Run run = ask("forget", "--before", "2026-04-08");
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("forgot 3 sheets of before 2026-04-08, 2 of them never closed");
    assertFalse(everything().contains("Mr Oakham"));
    assertTrue(index().plate(id).isEmpty());
    assertFalse(Files.exists(index().page(id)));
    assertFalse(Files.exists(garage.made("501.pdf")));
    assertFalse(Files.exists(form("501")));
    ask("history", "501").says("names, page and notes were forgotten");
    ask("history", "501").says(last("501").issued().joints().get(0).fastener());
    ask("forget", "--before", "2026-04-08").says("forgot 0 sheets");
  }

  /** The form of a sheet and the page of the day show names and plates as well. */
  @Test
  void forgettingTakesFormsAndThePageOfTheDay() {
    garage.sheets("--fillable");
    garage.run("day", Garage.DAY, "--shop", garage.root.toString(), "--out", garage.out.toString());
    Path forms = garage.made("forms");
    assertEquals(3, FolderEntries.of(forms).size());
    assertTrue(Files.exists(garage.made("day.pdf")));
    garage.change("2026-04-07/501.yaml", "bay: 2", "bay: 1");
    garage.sheets("--fillable");
    ask("forget", "--before", "2026-04-08");
    assertEquals(List.of(), FolderEntries.of(forms));
    assertEquals(List.of(), FolderEntries.of(garage.made("withdrawn")));
    assertFalse(Files.exists(garage.made("day.pdf")));
  }

  /** All texts below the folder of the sheets. */
  private String everything() throws IOException {
    StringBuilder all = new StringBuilder();
    try (var files = Files.walk(garage.out)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        all.append(new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
      }
    }
    return all.toString();
  }

  @Test
  void aBrokenLedgerStopsTheRunAndNamesTheLine() throws IOException {
    make();
    change(chain, "\"job\":\"502\"", "\"job\":\"509\"");
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit());
    run.reports("OUT/ledger/2026.jsonl:3:1", "ledger-line");
    run.says("0 of 3 sheets were written; all were left as they were");
    assertEquals(Exit.PROBLEMS, ask("due").exit());
  }

  @Test
  void aTornLastLineIsSetAsideAndTheRunGoesOn() throws IOException {
    make();
    String whole = Files.readString(chain);
    Files.writeString(chain, whole.substring(0, whole.length() - 20));
    Garage.Run run = make();
    run.says("OUT/ledger/2026.jsonl:3:1: warning: the last line was not written to its end");
    assertEquals(whole, Files.readString(chain), "the sheet is issued once more, as before");
    assertTrue(Files.exists(garage.out.resolve("ledger/2026.jsonl.torn")));
  }

  @Test
  void aSecondRunOnTheLedgerIsKeptAway() {
    make();
    Path ledger = garage.out.resolve("ledger");
    try (Ledger held = Ledger.open(ledger, Disk.REAL, new Problems()).orElseThrow()) {
      assertEquals(3, held.index().sheets().size());
      Garage.Run run = garage.sheets();
      assertEquals(Exit.FILES, run.exit());
      run.says("cannot write to the ledger OUT/ledger: another run of baysheet is writing there");
    }
  }

  @Test
  void aLedgerThatNothingCanBeWrittenToIsSaid() throws IOException {
    make();
    Path ledger = garage.out.resolve("ledger");
    assumeTrue(ledger.toFile().setWritable(false) && !Files.isWritable(ledger), "runs as root");
    garage.change("2026-04-07/501.yaml", "90110 km", "90210 km");
    Garage.Run run = garage.sheets();
    assertTrue(ledger.toFile().setWritable(true));
    assertEquals(Exit.FILES, run.exit());
    run.says("cannot write to the ledger");
  }

  /** Whoever runs the tests may write anywhere; a file in the folder's place stops everybody. */
  @Test
  void aFileInTheLedgersPlaceIsSaid() throws IOException {
    Files.createDirectories(garage.out);
    Files.writeString(garage.out.resolve("ledger"), "mine");
    Garage.Run run = garage.sheets();
    assertEquals(Exit.FILES, run.exit());
    run.says("cannot write to the ledger OUT/ledger");
    assertEquals("mine", Files.readString(garage.out.resolve("ledger")));
    assertFalse(Files.exists(garage.made("501.pdf")));
  }

  @Test
  void withoutALedgerThereIsNothingToAsk() {
    Garage.Run run = ask("history", "501");
    assertEquals(Exit.USAGE, run.exit());
    run.says("there is no ledger in OUT");
  }

  @Test
  void afterTheLastLetterThereIsNoRevision() {
    garage.change("2026-04-07/501.yaml", "job: 501", "job: 501\nrevision: Z");
    make();
    garage.change("2026-04-07/501.yaml", "90110 km", "90210 km");
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("help no-revision-left");
  }

  /** Of each choice the other box is marked. */
}
