package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What lies in a day's folder of sheets is what the day's jobs say, and nothing older. */
class OldSheetsTest {
  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  private Garage.Run single(String number, String... options) {
    List<String> arguments =
        new java.util.ArrayList<>(
            List.of("sheets", garage.job(number).toString(), "-o", garage.out.toString()));
    arguments.addAll(List.of(options));
    return garage.run(arguments.toArray(String[]::new));
  }

  private Set<String> names() {
    Set<String> names = new TreeSet<>();
    garage.written().keySet().forEach(name -> names.add(name.replace("2026-04-07/", "")));
    return names;
  }

  private void cancel(String number) throws IOException {
    Files.delete(garage.job(number));
  }

  private String all() {
    return Paper.of(Garage.bytes(garage.made("all.pdf"))).text();
  }

  /** Each record beside a sheet must be the one that is attached to it. */
  private void assertRecordsBelongToTheirSheets() {
    for (String name : names()) {
      if (name.endsWith(".json")) {
        String sheet = name.replace(".json", ".pdf");
        String attached = Path.of(name).getFileName().toString();
        assertArrayEquals(
            Paper.of(Garage.bytes(garage.made(sheet))).attached().get(attached),
            Garage.bytes(garage.made(name)),
            name);
      }
    }
  }

  @Test
  void theSheetOfACancelledJobIsWithdrawnAndNamed() throws IOException {
    garage.sheets("--record");
    byte[] old = Garage.bytes(garage.made("502.pdf"));
    cancel("502");
    Garage.Run run = garage.sheets("--record");
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("OUT/2026-04-07/withdrawn/502.pdf");
    run.says("OUT/2026-04-07/withdrawn/502.json");
    assertArrayEquals(old, Garage.bytes(garage.made("withdrawn/502.pdf")));
    assertEquals(
        Set.of(
            "501.pdf",
            "501.json",
            "503.pdf",
            "503.json",
            "all.pdf",
            "withdrawn/502.pdf",
            "withdrawn/502.json"),
        names());
    assertFalse(all().contains("HW 16-502"), all());
  }

  @Test
  void aRenamedJobLeavesNoSheetUnderItsOldNumber() throws IOException {
    garage.sheets();
    garage.change("2026-04-07/502.yaml", "job: 502", "job: 512");
    Files.move(garage.job("502"), garage.job("512"));
    Garage.Run run = single("512");
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("OUT/2026-04-07/withdrawn/502.pdf");
    assertEquals(Set.of("501.pdf", "503.pdf", "512.pdf", "all.pdf", "withdrawn/502.pdf"), names());
    assertEquals(3, Paper.of(Garage.bytes(garage.made("all.pdf"))).pages());
    assertTrue(all().contains("512") && !all().contains("502-A"), all());
  }

  @Test
  void aJobThatIsRefusedLeavesNoSheetOfAnEarlierRun() throws IOException {
    garage.sheets("--record");
    byte[] old = Garage.bytes(garage.made("502.pdf"));
    garage.write("2026-04-07/502.yaml", "job: [");
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("502  withdrawn, because no sheet can be made from its job file");
    run.says("OUT/2026-04-07/withdrawn/502.pdf");
    run.says("OUT/2026-04-07/withdrawn/502.json");
    run.says("2 of 3 sheets were written; 1 job has no sheet");
    assertArrayEquals(old, Garage.bytes(garage.made("withdrawn/502.pdf")));
    assertEquals(
        Set.of(
            "501.pdf",
            "501.json",
            "503.pdf",
            "503.json",
            "all.pdf",
            "withdrawn/502.pdf",
            "withdrawn/502.json"),
        names());
    assertEquals(2, Paper.of(Garage.bytes(garage.made("all.pdf"))).pages());
    assertFalse(all().contains("HW 16-502"), all());
  }

  /** Its number looks like the second stage of a job 501, which is another job. */
  @Test
  void aRefusedJobWithTheNumberOfAStageLeavesNoSheet() throws IOException {
    garage.change("2026-04-07/502.yaml", "job: 502", "job: 501-2");
    Files.move(garage.job("502"), garage.job("501-2"));
    garage.sheets();
    assertTrue(names().contains("501-2.pdf"), names().toString());
    garage.write("2026-04-07/501-2.yaml", "job: [");
    garage.sheets();
    assertEquals(Set.of("501.pdf", "503.pdf", "all.pdf", "withdrawn/501-2.pdf"), names());
  }

  @Test
  void aSingleJobThatIsRefusedLeavesNeitherItsSheetNorAnOldDaysFile() {
    garage.sheets();
    garage.change("2026-04-07/502.yaml", "by: T", "by: X");
    Garage.Run run = single("502");
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("OUT/2026-04-07/withdrawn/502.pdf");
    run.says("all  2 of 3 sheets in bay order, without 502");
    assertEquals(Set.of("501.pdf", "503.pdf", "all.pdf", "withdrawn/502.pdf"), names());
    assertFalse(all().contains("HW 16-502"), all());
  }

  /** The job is not cancelled: its paper may be in use, and can still be closed. */
  @Test
  void aRefusedJobThatIsCorrectedGetsTheSameSheetAgain() {
    garage.sheets();
    byte[] before = Garage.bytes(garage.made("502.pdf"));
    garage.change("2026-04-07/502.yaml", "by: T", "by: X");
    garage.sheets();
    garage.change("2026-04-07/502.yaml", "by: X", "by: T");
    assertEquals(Exit.DONE, garage.sheets().exit());
    assertArrayEquals(before, Garage.bytes(garage.made("502.pdf")));
    assertEquals(3, Paper.of(Garage.bytes(garage.made("all.pdf"))).pages());
  }

  @ParameterizedTest
  @ValueSource(strings = {"502.yml", "502.YAML", "502.yaml.txt"})
  void aJobWhoseFileIsMisnamedLeavesNoSheet(String name) throws IOException {
    garage.sheets();
    Files.move(garage.job("502"), garage.root.resolve(Garage.DAY).resolve(name));
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("OUT/2026-04-07/withdrawn/502.pdf");
    run.says("2 of 3 sheets were written; 1 job has no sheet");
    assertEquals(Set.of("501.pdf", "503.pdf", "all.pdf", "withdrawn/502.pdf"), names());
  }

  @Test
  void aMisnamedCopyOfAJobLeavesItsSheet() throws IOException {
    garage.sheets();
    Files.copy(garage.job("502"), garage.root.resolve(Garage.DAY).resolve("502.yml"));
    garage.sheets().says("3 of 4 sheets were written; 1 job has no sheet");
    assertEquals(Set.of("501.pdf", "502.pdf", "503.pdf", "all.pdf"), names());
  }

  @ParameterizedTest
  @ValueSource(strings = {"502.yaml.bak", "502.yaml~", "502-cancelled.md"})
  void aJobThatWasPutAwayUnderAnotherNameIsCancelled(String name) throws IOException {
    garage.sheets();
    Files.move(garage.job("502"), garage.root.resolve(Garage.DAY).resolve(name));
    garage.sheets().says("OUT/2026-04-07/withdrawn/502.pdf");
    assertEquals(Set.of("501.pdf", "503.pdf", "all.pdf", "withdrawn/502.pdf"), names());
  }

  @Test
  void aFileThatIsNoSheetOfTheShopStays() throws IOException {
    garage.sheets();
    Files.writeString(garage.made("note.pdf"), "%PDF-1.4 a note of the garage");
    Files.writeString(garage.made("502-signed.pdf"), "a scan");
    Files.writeString(garage.made("invoice.json"), "{\"job\": \"502\"}");
    // A sheet, but under a name that its job never gives it.
    Files.copy(garage.made("502.pdf"), garage.made("502 copy for the customer.pdf"));
    garage.sheets();
    assertEquals(
        Set.of(
            "501.pdf",
            "502.pdf",
            "503.pdf",
            "all.pdf",
            "note.pdf",
            "502-signed.pdf",
            "invoice.json",
            "502 copy for the customer.pdf"),
        names());
  }

  @Test
  void theSheetsOfAnotherShopInTheSameFolderStay() throws IOException {
    garage.sheets();
    Garage other = Garage.in(folder.resolve("other"));
    other.change("shop.yaml", "shop: ", "shop: Other ");
    for (String number : List.of("501", "502", "503")) {
      other.change(
          "2026-04-07/" + number + ".yaml", "job: " + number, "job: 9" + number.substring(1));
      Files.move(other.job(number), other.job("9" + number.substring(1)));
    }
    String day = other.root.resolve(Garage.DAY).toString();
    assertEquals(Exit.DONE, other.run("sheets", day, "-o", garage.out.toString()).exit());
    assertEquals(
        Set.of("501.pdf", "502.pdf", "503.pdf", "901.pdf", "902.pdf", "903.pdf", "all.pdf"),
        names());
  }

  @Test
  void whatWasWithdrawnBeforeIsKept() throws IOException {
    garage.sheets();
    byte[] first = Garage.bytes(garage.made("502.pdf"));
    String job = Files.readString(garage.job("502"));
    cancel("502");
    garage.sheets();
    garage.write("2026-04-07/502.yaml", job.replace("bay: 1", "bay: 2"));
    garage.sheets();
    byte[] second = Garage.bytes(garage.made("502.pdf"));
    cancel("502");
    garage.sheets();
    assertArrayEquals(first, Garage.bytes(garage.made("withdrawn/502.pdf")));
    assertArrayEquals(second, Garage.bytes(garage.made("withdrawn/502-2.pdf")));
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aDayWhoseJobsAreAllCancelledLeavesNoSheet(boolean folderToo) throws IOException {
    garage.sheets();
    for (String number : List.of("501", "502", "503")) {
      cancel(number);
    }
    if (folderToo) {
      Files.delete(garage.root.resolve(Garage.DAY));
    }
    Garage.Run run = garage.sheets();
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertEquals(Set.of("withdrawn/501.pdf", "withdrawn/502.pdf", "withdrawn/503.pdf"), names());
  }

  @Test
  void aRunWithoutRecordLeavesNoRecordOfAnotherSheet() {
    garage.sheets("--record");
    garage.change("2026-04-07/501.yaml", "90110 km", "90210 km");
    Garage.Run run = garage.sheets();
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertTrue(names().containsAll(Set.of("501.json", "502.json", "503.json")), names() + "");
    assertRecordsBelongToTheirSheets();
  }

  @Test
  void aRecordOfAnotherSheetIsMadeAnewEvenWhereTheSheetIsUnchanged() throws IOException {
    garage.sheets("--record");
    Files.writeString(garage.made("501.json"), "{}");
    garage.sheets();
    assertRecordsBelongToTheirSheets();
  }

  @Test
  void withoutRecordNoneAppears() {
    garage.sheets();
    assertEquals(Set.of("501.pdf", "502.pdf", "503.pdf", "all.pdf"), names());
  }

  @Test
  void theDaysFileIsMadeAnewWhenOneOfItsSheetsChanges() {
    garage.sheets();
    garage.change("2026-04-07/501.yaml", "90110 km", "90210 km");
    Garage.Run run = single("501");
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("all  3 of 3 sheets in bay order  OUT/2026-04-07/all.pdf");
    assertTrue(all().contains("90210 km") && !all().contains("90110 km"), all());
    byte[] after = Garage.bytes(garage.made("all.pdf"));
    garage.sheets();
    assertArrayEquals(Garage.bytes(garage.made("all.pdf")), after);
  }

  @Test
  void theDaysFileIsLeftAloneWhereASingleSheetIsUnchanged() {
    garage.sheets();
    byte[] before = Garage.bytes(garage.made("all.pdf"));
    assertEquals(1, single("501").out().lines().count());
    assertArrayEquals(before, Garage.bytes(garage.made("all.pdf")));
  }

  @Test
  void theDaysFileGoesWhereAnotherSheetHasChangedSince() {
    garage.sheets();
    garage.change("2026-04-07/501.yaml", "90110 km", "90210 km");
    garage.change("2026-04-07/502.yaml", "by: ", "notes: Come back at noon.\nby: ");
    byte[] other = Garage.bytes(garage.made("502.pdf"));
    Garage.Run run = single("501");
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertEquals(Set.of("501.pdf", "502.pdf", "503.pdf"), names());
    // Nobody asked for the other sheet.
    assertArrayEquals(other, Garage.bytes(garage.made("502.pdf")));
    run.says("all  removed");
    run.says("502");
    run.says("baysheet sheets 2026-04-07");
  }

  @Test
  void aSheetThatWasNeverMadeIsMissingInTheDaysFileAndNamed() {
    String job = "2026-04-07/502.yaml";
    garage.change(job, "by: T", "by: X");
    garage.sheets();
    assertEquals(Set.of("501.pdf", "503.pdf", "all.pdf"), names());
    garage.change("2026-04-07/501.yaml", "90110 km", "90210 km");
    Garage.Run run = single("501");
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("all  2 of 3 sheets in bay order, without 502");
    assertTrue(all().contains("90210 km"), all());
  }

  @Test
  void aSingleSheetOnOtherPaperDoesNotStandBesideAnOldDaysFile() {
    garage.sheets();
    Garage.Run run = single("501", "--paper", "Letter");
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertFalse(names().contains("all.pdf"), names() + "");
    run.says("all  removed");
  }

  @Test
  void leftoversOfAnInterruptedRunAreRemoved() throws IOException {
    garage.sheets();
    Files.writeString(garage.made(".501.pdf.4711.part"), "%PDF half of");
    Files.writeString(garage.made(".all.pdf.4711.part"), "%PDF half of");
    Files.writeString(garage.made(".keep.part"), "somebody else's");
    single("502");
    assertEquals(Set.of(".keep.part", "501.pdf", "502.pdf", "503.pdf", "all.pdf"), names());
  }
}
