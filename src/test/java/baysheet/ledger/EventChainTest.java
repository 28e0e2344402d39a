package baysheet.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.ledger.Event.Closed;
import baysheet.ledger.Event.Withdrawn;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EventChainTest {
  @TempDir private Path folder;
  private Path year;
  private Path next;

  /** Two years with an event of each kind, and one in the second. */
  @BeforeEach
  void write() {
    year = folder.resolve("2026.jsonl");
    next = folder.resolve("2027.jsonl");
    add(Events.all());
    add(List.of(new Withdrawn(LocalDate.parse("2027-02-01"), Events.id("501", "A"))));
  }

  private Problems add(List<Event> events) {
    Problems problems = new Problems();
    try (Ledger ledger = Ledger.open(folder, Disk.REAL, problems).orElseThrow()) {
      ledger.add(events, List.of());
    }
    return problems;
  }

  private Problem onlyProblem() {
    Problems problems = new Problems();
    assertTrue(EventChain.read(folder, problems).isEmpty());
    assertEquals(1, problems.all().size(), problems.all().toString());
    return problems.all().get(0);
  }

  private static String sha256(String line) throws NoSuchAlgorithmException {
    byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
    return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
  }

  /** By the rule as it is written down, over the turn of the year too. */
  @Test
  void eachLineHoldsTheHashOfTheLineBefore() throws IOException, NoSuchAlgorithmException {
    List<String> lines = new ArrayList<>(Files.readAllLines(year));
    assertEquals(9, lines.size());
    lines.addAll(Files.readAllLines(next));
    String before = "0".repeat(64);
    for (String line : lines) {
      assertTrue(line.contains("\"previous\":\"" + before + "\""), line);
      before = sha256(line);
    }
  }

  @Test
  void aClockThatWasSetBackOpensNoEarlierYear() throws IOException {
    add(List.of(new Closed(Events.MONDAY, Events.id("501", "A"), "T1")));
    assertEquals(2, Files.readAllLines(next).size());
    assertEquals(9, Files.readAllLines(year).size());
  }

  @ParameterizedTest
  @CsvSource({
    "2026.jsonl, 4, T1, T2, 2026.jsonl, 5, the hash of the line before",
    "2026.jsonl, 9, 2029-03-02, 2029-03-03, 2027.jsonl, 1, the hash of the line before",
    "2026.jsonl, 3, 112.50, 110.50, 2026.jsonl, 4, the hash of the line before",
    "2026.jsonl, 2, returned, returnee, 2026.jsonl, 2, no event returnee",
    "2026.jsonl, 5, {, [, 2026.jsonl, 5, not JSON",
    "2026.jsonl, 1, 2026-03-02, 2026-13-02, 2026.jsonl, 1, 2026-13-02"
  })
  void aChangedLineIsNamed(
      String file, int line, String was, String is, String named, int at, String why)
      throws IOException {
    Path changed = folder.resolve(file);
    List<String> lines = new ArrayList<>(Files.readAllLines(changed));
    assertTrue(lines.get(line - 1).contains(was), lines.get(line - 1));
    lines.set(line - 1, lines.get(line - 1).replace(was, is));
    Files.writeString(changed, String.join("\n", lines) + "\n");
    Problem problem = onlyProblem();
    assertEquals(ProblemCode.LEDGER_LINE, problem.code());
    assertTrue(problem.at().source().name().endsWith(named), problem.at().toString());
    assertEquals(at, problem.at().line());
    assertTrue(problem.what().contains(why), problem.what());
  }

  @ParameterizedTest
  @CsvSource({"1", "3", "8"})
  void aLineThatWasTakenAwayIsNoticed(int line) throws IOException {
    List<String> lines = new ArrayList<>(Files.readAllLines(year));
    lines.remove(line - 1);
    Files.writeString(year, String.join("\n", lines) + "\n");
    assertEquals(line, onlyProblem().at().line());
  }

  @Test
  void aYearThatWasTakenAwayIsNoticed() throws IOException {
    Files.delete(year);
    assertTrue(onlyProblem().at().source().name().endsWith("2027.jsonl"));
  }

  @Test
  void aTornEndIsSetAsideAndNamed() throws IOException {
    String whole = Files.readString(next);
    Files.writeString(next, "{\"n\":11,\"event\":\"clo", StandardOpenOption.APPEND);
    Problems reading = new Problems();
    assertEquals(10, EventChain.read(folder, reading).orElseThrow().takeEvents().size());
    Problems problems = add(List.of(new Closed(Events.MONDAY, Events.id("501", "A"), "T1")));
    Problem torn = problems.all().get(0);
    assertEquals(ProblemCode.LEDGER_TORN, torn.code());
    assertEquals(2, torn.at().line());
    assertTrue(torn.what().contains("2027.jsonl.torn"), torn.what());
    assertEquals("{\"n\":11,\"event\":\"clo", Files.readString(folder.resolve("2027.jsonl.torn")));
    assertTrue(Files.readString(next).startsWith(whole));
    Problems after = new Problems();
    assertEquals(11, EventChain.read(folder, after).orElseThrow().takeEvents().size());
    assertEquals(List.of(), after.all());
  }

  /** Of three events that were written in one go two are there, with their line ends. */
  @Test
  void whatWasWrittenInOneGoIsThereAsAWholeOrNotAtAll() throws IOException {
    String before = Files.readString(next);
    String sheet = Events.id("501", "A");
    add(
        List.of(
            Events.returned(sheet, Events.MONDAY),
            Events.values(sheet, Events.MONDAY, "110"),
            new Closed(Events.MONDAY, sheet, "T1")));
    List<String> lines = Files.readAllLines(next);
    Files.writeString(next, String.join("\n", lines.subList(0, 3)) + "\n");
    Problems problems = add(List.of(new Withdrawn(Events.MONDAY, sheet)));
    assertEquals(ProblemCode.LEDGER_TORN, problems.all().get(0).code());
    assertTrue(Files.readString(next).startsWith(before + "{\"n\":11,\"event\":\"withdrawn\""));
  }

  @Test
  void anEndThatIsTornInAYearThatIsOverIsAnError() throws IOException {
    String text = Files.readString(year);
    Files.writeString(year, text.substring(0, text.length() - 1));
    assertEquals(9, onlyProblem().at().line());
  }

  @Test
  void aBrokenChainIsNotOpenedForWriting() throws IOException {
    Files.writeString(year, "\n");
    Problems problems = new Problems();
    assertTrue(Ledger.open(folder, Disk.REAL, problems).isEmpty());
    assertTrue(problems.hasErrors());
    // The lock is free again.
    Files.delete(year);
    Files.delete(next);
    assertFalse(add(Events.all()).hasErrors());
  }

  @Test
  void aSecondRunIsKeptAway() {
    try (Ledger first = Ledger.open(folder, Disk.REAL, new Problems()).orElseThrow()) {
      assertTrue(first.index().sheet(Events.id("501", "A")).isPresent());
      UncheckedIOException kept =
          assertThrows(
              UncheckedIOException.class, () -> Ledger.open(folder, Disk.REAL, new Problems()));
      assertTrue(kept.getMessage().contains("cannot write to the ledger"), kept.getMessage());
      assertTrue(kept.getCause().getMessage().contains("another run of baysheet"));
    }
  }

  @Test
  void aCustomersLineThatIsNoneIsNamed() throws IOException {
    Files.writeString(folder.resolve("customers.jsonl"), "{\"sheet\":\"a\"}\n{}\n");
    Problems problems = new Problems();
    assertTrue(Index.read(folder, problems).isEmpty());
    assertEquals(2, problems.all().get(0).at().line());
  }
}
