package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.files.ShopFolders;
import baysheet.files.Writers;
import baysheet.layout.Fonts;
import baysheet.ledger.Disk;
import baysheet.output.Batch;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.Printing;
import baysheet.output.RunReport;
import baysheet.output.SheetIssuer;
import baysheet.output.SheetMaker;
import baysheet.output.Sheets;
import baysheet.print.Printer;
import baysheet.template.LayoutTemplates;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One command in the morning. */
class MorningTest {
  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  private Garage.Run sheets(String... more) {
    List<String> words = new ArrayList<>(List.of("sheets", "--shop", garage.root.toString()));
    words.addAll(List.of(more));
    return garage.run(words.toArray(String[]::new));
  }

  @Test
  void withoutWordsItIsToday() {
    Garage.Run run = sheets();
    assertEquals(Exit.DONE, run.exit(), run.err());
    // Beside the shop folder, wherever the command runs.
    assertTrue(Files.exists(garage.made("all.pdf")));
    sheets().says("unchanged");
  }

  @Test
  void aDateAndANumberAreWordsOfTheShop() {
    assertEquals(Exit.DONE, sheets("502").exit());
    assertTrue(Files.exists(garage.made("502.pdf")));
    assertFalse(Files.exists(garage.made("501.pdf")));
    assertEquals(Exit.DONE, sheets(Garage.DAY).exit());
    assertTrue(Files.exists(garage.made("501.pdf")));
    sheets("tomorrow").says("no jobs are planned for 2026-04-08");
  }

  @Test
  void theShopSaysWhereItsSheetsGo() {
    garage.change("shop.yaml", "crib:", "out: ../pages\ncrib:");
    assertEquals(Exit.DONE, sheets("501").exit());
    assertTrue(Files.exists(folder.resolve("pages/2026-04-07/501.pdf")));
    Garage.Run due = garage.run("history", "501", "-o", folder.resolve("pages").toString());
    assertEquals(Exit.DONE, due.exit(), due.err());
  }

  @Test
  void aFolderThatIsNoShopIsRefused() {
    Garage.Run run = garage.run("sheets", "--shop", folder.toString());
    assertEquals(Exit.USAGE, run.exit());
    run.says("has no shop.yaml");
  }

  @Test
  void quietSaysNothingButProblems() {
    assertEquals("", sheets("-q").out());
    garage.change("2026-04-07/501.yaml", "bay: 2", "bay: 22");
    Garage.Run run = sheets("-q");
    assertEquals("", run.out());
    run.says("unknown-bay");
  }

  @Test
  void asJsonEachSheetHasItsState() throws IOException {
    assertEquals("new", states(sheets("501", "--json")));
    assertEquals("unchanged", states(sheets("501", "--json")));
    garage.change("2026-04-07/501.yaml", "odometer: 90110 km", "odometer: 90111 km");
    assertEquals("changed", states(sheets("501", "--json")));
  }

  private static String states(Garage.Run run) throws IOException {
    JsonNode sheets = new ObjectMapper().readTree(run.out()).path("sheets");
    assertEquals(1, sheets.size(), run.out());
    assertEquals("501", sheets.get(0).path("job").asText());
    return sheets.get(0).path("state").asText();
  }

  @Test
  void aPrinterThatIsNotThereIsSaidAndTheFilesAre() throws IOException {
    int port;
    try (ServerSocket free = new ServerSocket(0)) {
      port = free.getLocalPort();
    }
    Garage.Run run = sheets("--print", "ipp://localhost:" + port + "/ipp/print");
    assertEquals(Exit.FILES, run.exit());
    run.says("nothing answers there");
    assertTrue(Files.exists(garage.made("501.pdf")));
    assertFalse(Files.exists(garage.made("printed.txt")));
  }

  @Test
  void anAddressWithoutAHostIsRefused() {
    assertEquals(Exit.USAGE, sheets("--print", "ipp:///ipp/print").exit());
  }

  @Test
  void whatWasPrintedIsNotPrintedTwice() throws IOException {
    List<String> printed = new ArrayList<>();
    Printer printer =
        document -> {
          printed.add(document.title().substring(0, 3) + " " + document.media());
          return List.of();
        };
    print(printer, false);
    // Bay 1 comes before bay 2.
    assertEquals(
        List.of("502 iso_a4_210x297mm", "503 iso_a4_210x297mm", "501 iso_a4_210x297mm"), printed);
    print(printer, false);
    assertEquals(3, printed.size());
    garage.change("2026-04-07/501.yaml", "odometer: 90110 km", "odometer: 90111 km");
    print(printer, false);
    assertEquals(4, printed.size());
    print(printer, true);
    assertEquals(7, printed.size());
  }

  /** The sheets of the day through the same code as the command, with a printer of our own. */
  private void print(Printer printer, boolean again) {
    assertEquals(Exit.DONE, sheets().exit());
    Printing printing = new Printing("ours", printer, again);
    ShopFolders folders = new ShopFolders(Fonts.builtIn());
    SheetMaker maker =
        new SheetMaker(folders, LayoutTemplates.builtIn(), Fonts.builtIn(), Optional.empty());
    SheetIssuer issues = new SheetIssuer(garage.out, Disk.REAL, Garage.TODAY);
    Batch batch = new Batch(maker::make, 1, new Writers(), issues);
    Console console =
        new Console(
            new PrintWriter(new StringWriter()), new PrintWriter(new StringWriter()), false);
    Sheets.Output output =
        new Sheets.Output(
            garage.out,
            false,
            false,
            false,
            Disk.REAL,
            RunReport.Voice.LINES,
            Optional.of(printing));
    assertEquals(
        Exit.DONE,
        new Sheets(console, folders, batch, issues, output)
            .run(List.of(garage.root.resolve(Garage.DAY))));
  }
}
