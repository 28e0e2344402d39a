package baysheet.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.ledger.Event.Closed;
import baysheet.ledger.Event.Issued;
import baysheet.ledger.Event.Replaced;
import baysheet.report.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every operation on the disk fails in turn, once or for good, with none, some or all of the bytes
 * written. A run that does what is still to do then comes to the same events as one that nothing
 * disturbed: none lost, none doubled, every issued sheet whole.
 */
class LedgerFaultsTest {
  private static final LocalDate NEW_YEAR = LocalDate.parse("2027-01-04");

  @TempDir private Path folder;

  /** Issues two jobs, replaces and closes one, over a turn of the year; each only once. */
  private static void work(Path ledger, Disk disk) {
    Problems problems = new Problems();
    try (Ledger open = Ledger.open(ledger, disk, problems).orElseThrow()) {
      issue(open, "501", "A", Events.MONDAY, Optional.empty());
      issue(open, "502", "A", Events.MONDAY, Optional.empty());
      Replaced first = new Replaced(Events.id("501", "A"), List.of("row 1 was 100 N·m"));
      issue(open, "501", "B", NEW_YEAR, Optional.of(first));
      close(open, Events.id("501", "B"));
    }
    assertTrue(problems.all().stream().noneMatch(it -> it.isError()), problems.all().toString());
  }

  private static void issue(
      Ledger open, String job, String revision, LocalDate on, Optional<Replaced> replaces) {
    byte[] record = Events.record(job, revision, Events.MONDAY, "P. Wrenfold");
    Issued issued = Events.issued(record, replaces, on);
    if (open.index().sheet(issued.sheet()).isEmpty()) {
      open.issue(issued, Events.pdf(issued.sheet()), record);
    }
  }

  private static void close(Ledger open, String sheet) {
    if (open.index().sheet(sheet).orElseThrow().closed().isEmpty()) {
      open.add(
          List.of(
              Events.returned(sheet, NEW_YEAR),
              Events.values(sheet, NEW_YEAR, "112"),
              new Closed(NEW_YEAR, sheet, "T1")),
          List.of(new PersonalFiles.Note(sheet, "open.1", "done next week")));
    }
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file);
  }

  @ParameterizedTest
  @CsvSource({"false, 0", "false, 1", "false, 2", "false, 3", "false, 4", "true, 1", "true, 4"})
  void whateverFailsNothingIsLostOrDoubled(boolean forGood, int parts) throws IOException {
    Path undisturbed = folder.resolve("undisturbed");
    work(undisturbed, Disk.REAL);
    int failures = 0;
    for (int failing = 1; ; failing++) {
      Path ledger = folder.resolve("ledger" + failing);
      FailingDisk disk = new FailingDisk(failing, forGood, parts);
      boolean failed = fails(ledger, disk);
      if (!disk.wasReached()) {
        break;
      }
      failures++;
      assertTrue(failed, "operation " + failing + " failed and nobody said so");
      assertNoHalfSheet(ledger, "after operation " + failing);
      // Mending may be disturbed as well.
      fails(ledger, new FailingDisk(3, false, parts));
      work(ledger, Disk.REAL);
      for (String file : List.of("2026.jsonl", "2027.jsonl", "customers.jsonl", "notes.jsonl")) {
        assertEquals(text(undisturbed.resolve(file)), text(ledger.resolve(file)), file + failing);
      }
      assertNoHalfSheet(ledger, "at last");
    }
    // Three sheets of two files, each written, forced and moved; customers and events.
    assertTrue(failures > 30, failures + " operations");
  }

  private static boolean fails(Path ledger, Disk disk) {
    try {
      work(ledger, disk);
      return false;
    } catch (UncheckedIOException e) {
      assertEquals("No space left on device", e.getCause().getMessage());
      return true;
    }
  }

  /** What an event says was issued is there, whole. */
  private static void assertNoHalfSheet(Path ledger, String when) throws IOException {
    Problems problems = new Problems();
    Index index = Index.read(ledger, problems).orElseThrow();
    for (SheetStory story : index.sheets()) {
      assertArrayEquals(
          Events.pdf(story.id()), Files.readAllBytes(index.page(story.id())), story.id() + when);
      assertEquals(
          story.issued().prints().record(),
          Hash.of(Files.readAllBytes(index.recordFile(story.id()))));
      assertTrue(index.plate(story.id()).isPresent(), story.id() + when);
    }
  }

  /** Otherwise the events of one run would stand in another order than what happened. */
  @Test
  void afterAFaultNothingMoreIsWritten() {
    // Operations 1 and 2 make the folder and lock it.
    FailingDisk once = new FailingDisk(3, false, 1);
    try (Ledger open = Ledger.open(folder, once, new Problems()).orElseThrow()) {
      for (String job : List.of("501", "502")) {
        UncheckedIOException fault =
            assertThrows(
                UncheckedIOException.class,
                () -> issue(open, job, "A", Events.MONDAY, Optional.empty()));
        assertEquals("No space left on device", fault.getCause().getMessage());
      }
    }
    assertEquals(0, Index.read(folder, new Problems()).orElseThrow().sheets().size());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 2, 4})
  void whateverFailsForgettingTakesNothingThatStays(int parts) {
    int failures = 0;
    for (int failing = 3; ; failing++) {
      Path ledger = folder.resolve("ledger" + failing);
      try (Ledger open = Ledger.open(ledger, Disk.REAL, new Problems()).orElseThrow()) {
        for (String job : List.of("501", "502")) {
          byte[] record =
              Events.record(job, "A", job.equals("501") ? Events.MONDAY : NEW_YEAR, "P. Wrenfold");
          Issued issued = Events.issued(record, Optional.empty(), Events.MONDAY);
          open.issue(issued, Events.pdf(issued.sheet()), record);
        }
      }
      FailingDisk disk = new FailingDisk(failing, false, parts);
      try (Ledger open = Ledger.open(ledger, disk, new Problems()).orElseThrow()) {
        new Forgetting(NEW_YEAR).run(open, List.of(), NEW_YEAR);
      } catch (UncheckedIOException e) {
        failures++;
      }
      Index index = Index.read(ledger, new Problems()).orElseThrow();
      assertTrue(index.plate(Events.id("502", "A")).isPresent(), "after operation " + failing);
      try (Ledger open = Ledger.open(ledger, Disk.REAL, new Problems()).orElseThrow()) {
        new Forgetting(NEW_YEAR).run(open, List.of(), NEW_YEAR);
        assertTrue(open.index().plate(Events.id("501", "A")).isEmpty());
        assertTrue(open.index().sheet(Events.id("501", "A")).orElseThrow().isForgotten());
        assertFalse(Files.exists(open.index().page(Events.id("501", "A"))));
        assertTrue(Files.exists(open.index().page(Events.id("502", "A"))));
      }
      if (!disk.wasReached()) {
        break;
      }
    }
    // Two files written anew, two deleted, an event.
    assertTrue(failures >= 10, failures + " operations");
  }
}
