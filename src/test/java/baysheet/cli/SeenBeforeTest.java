package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.files.YamlFiles;
import baysheet.ledger.Disk;
import baysheet.ledger.Event;
import baysheet.ledger.Ledger;
import baysheet.ledger.PersonalFiles.Note;
import baysheet.output.Exit;
import baysheet.output.MadeSheet;
import baysheet.report.Problems;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the shop has learnt of a vehicle, or of its kind, stands on the next sheet. */
class SeenBeforeTest {
  private static final String NEXT = "2026-04-08";
  private static final String FOUND = "Seen on this vehicle: left boot is cracked 2026-04-07.";

  @TempDir private Path folder;
  private Garage garage;

  /** Job 501 is closed on its day, with a finding. */
  @BeforeEach
  void close() {
    garage = Garage.in(folder);
    assertEquals(Exit.DONE, garage.sheets().exit());
    try (Ledger ledger =
        Ledger.open(garage.out.resolve("ledger"), Disk.REAL, new Problems()).orElseThrow()) {
      String sheet = ledger.index().latest("501").orElseThrow().id();
      ledger.add(
          List.of(new Event.Closed(LocalDate.parse(Garage.DAY), sheet, "T1")),
          List.of(new Note(sheet, "found.1", "left boot is cracked")));
    }
  }

  private String next(String day, String number, String plate) {
    String text =
        "job: %s\nvehicle: {book: hollin-wren-2014, plate: %s, odometer: 90200 km}\nbay: 2\nby: T1\n"
                .formatted(number, plate)
            + "work: link at front-left\n";
    garage.write(day + "/" + number + ".yaml", text);
    Garage.Run run =
        garage.run(
            "sheets", garage.root.resolve(day).toString(), "-o", garage.out.toString(), "--record");
    assertEquals(Exit.DONE, run.exit(), run.err());
    return text(day, number);
  }

  private String text(String day, String number) {
    return Paper.of(Garage.bytes(garage.out.resolve(day).resolve(number + ".pdf"))).text();
  }

  @Test
  void theNextSheetOfTheVehicleSaysIt() throws IOException {
    // Spaces, hyphens and capitals of a plate do not matter.
    assertTrue(next(NEXT, "504", "hw 14 501").contains(FOUND));
    JsonNode seen =
        new ObjectMapper()
            .readTree(Files.readString(garage.out.resolve(NEXT + "/504.json")))
            .path("seen");
    assertEquals(
        "[{\"on\":\"2026-04-07\",\"what\":\"left boot is cracked\",\"of\":\"vehicle\"}]",
        seen.toString());
  }

  @Test
  void anotherVehicleIsNotConcerned() {
    assertFalse(next(NEXT, "504", "HW 14-502").contains("Seen on"));
  }

  /** So its sheet is the same in the evening as it was in the morning. */
  @Test
  void whatIsFoundOnTheDayItselfDoesNotChangeASheet() {
    assertFalse(next(Garage.DAY, "504", "HW 14-501").contains("Seen on"));
    garage.sheets().says("501.pdf  unchanged");
    assertFalse(text(Garage.DAY, "501").contains("Seen on"));
  }

  @Test
  void aBookSaysWhatWasSeenOnItsKind() {
    garage.change(
        "vehicles/hollin-wren-2014.yaml",
        "fasteners:",
        "seen:\n  - {on: 2026-03-02, job: 77, what: \"upper bolt seized, cut out\"}\n"
            + "  - {on: 2026-03-09, what: clip broken}\n"
            + "  - {on: 2027-01-01, what: not yet known}\nfasteners:");
    String text = next(NEXT, "504", "HW 14-502");
    assertTrue(
        text.contains(
            "Seen on vehicles of this kind: clip broken 2026-03-09; upper bolt seized, cut out"
                + " 2026-03-02."),
        text);
    assertFalse(text.contains("not yet known"));
  }

  @Test
  void ofManyFindingsTheLatestAreSaid() {
    StringBuilder many = new StringBuilder("seen:\n");
    for (int day = 1; day <= 5; day++) {
      many.append("  - {on: 2026-03-0%d, what: finding %d}\n".formatted(day, day));
    }
    garage.change("vehicles/hollin-wren-2014.yaml", "fasteners:", many + "fasteners:");
    assertTrue(
        next(NEXT, "504", "HW 14-502")
            .contains(
                "finding 5 2026-03-05; finding 4 2026-03-04; finding 3 2026-03-03; 2 earlier."));
  }

  /** On the demo's full pages it goes only where everything else that may has gone. */
  @Test
  void itGivesWayLastOfAll() throws IOException {
    CopyOfTheDemo demo = CopyOfTheDemo.in(folder.resolve("demo"));
    for (Path book : YamlFiles.in(demo.root().resolve("vehicles"))) {
      Files.writeString(
          book, Files.readString(book) + "\nseen: [{on: 2026-01-05, what: a clip was broken}]\n");
    }
    List<String> dropped = new ArrayList<>();
    int printed = 0;
    for (MadeSheet sheet : demo.made(new Problems()).values()) {
      List<String> groups = sheet.fit().dropped();
      if (groups.contains("seen") && !groups.get(groups.size() - 1).equals("seen")) {
        dropped.add(sheet.sheet().name() + " " + groups);
      }
      boolean first = sheet.sheet().stage().filter(it -> !it.isFirst()).isEmpty();
      printed += first && !groups.contains("seen") ? 1 : 0;
    }
    assertEquals(List.of(), dropped);
    assertTrue(printed > 10, "printed on " + printed + " of 14 jobs");
  }
}
