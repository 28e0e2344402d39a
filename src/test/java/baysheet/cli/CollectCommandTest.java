package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.ledger.Index;
import baysheet.ledger.SheetStory;
import baysheet.output.Exit;
import baysheet.pdf.Conformance;
import baysheet.record.PlacedBoxes;
import baysheet.report.Problems;
import baysheet.scan.Grey;
import baysheet.scan.IssuedSheets.Issued;
import baysheet.simulate.SignedStack;
import com.google.zxing.BarcodeFormat;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Signed sheets come back from the scanner. */
class CollectCommandTest {
  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void print() {
    garage = Garage.in(folder);
    assertEquals(Exit.DONE, garage.sheets().exit());
  }

  private Index index() {
    return Index.read(garage.out.resolve("ledger"), new Problems()).orElseThrow();
  }

  private SheetStory last(String job) {
    return index().latest(job).orElseThrow();
  }

  private Issued issued(String job) {
    String id = last(job).id();
    try {
      PlacedBoxes boxes = PlacedBoxes.of(Files.readAllBytes(index().recordFile(id)));
      return new Issued(id, false, Files.readAllBytes(index().page(id)), boxes);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private Path scan(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  private Garage.Run collect(Object... arguments) {
    String[] all = new String[arguments.length + 3];
    all[0] = "collect";
    for (int i = 0; i < arguments.length; i++) {
      all[i + 1] = arguments[i].toString();
    }
    all[arguments.length + 1] = "-o";
    all[arguments.length + 2] = garage.out.toString();
    return garage.run(all);
  }

  private Garage.Run close(String job) {
    return garage.run(
        "close", job, "--by", "T1", "--shop", garage.root.toString(), "-o", garage.out.toString());
  }

  private SignedStack wholeDay(long seed) {
    SignedStack stack = new SignedStack(seed);
    List.of("502", "501", "503").forEach(job -> stack.sign(issued(job), Set.of()));
    return stack;
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file);
  }

  private static void change(Path file, String was, String is) throws IOException {
    String text = text(file);
    assertTrue(text.contains(was), text);
    int at = text.indexOf(was);
    Files.writeString(file, text.substring(0, at) + is + text.substring(at + was.length()));
  }

  @Test
  void wholeDayThatIsFilledInIsCompleteAndStaysNotClosed() throws Exception {
    Path stack = scan("stack.pdf", wholeDay(1).pdf());
    Garage.Run run = collect(stack);
    assertEquals(Exit.DONE, run.exit(), run.out() + run.err());
    for (String job : List.of("501", "502", "503")) {
      run.says("2026-04-07  " + job + "  complete, not closed yet");
      assertEquals(SheetStory.State.RETURNED, last(job).state());
      byte[] signed = Garage.bytes(garage.made("signed/" + job + ".pdf"));
      assertEquals(List.of(), Conformance.archiveFailures(signed));
      assertTrue(text(garage.made("signed/" + job + ".yaml")).contains(last(job).id()));
    }
    byte[] review = Garage.bytes(garage.made("signed/review.pdf"));
    assertEquals(List.of(), Conformance.archiveFailures(review));
    String words = Paper.of(review).text();
    assertTrue(words.indexOf("501") < words.indexOf("503"), "in the order of jobs");
    assertTrue(words.contains("No box is empty."), words);
    String band = last("501").issued().joints().get(0).band().orElseThrow().low().figure();
    assertTrue(words.contains("(" + band + ".."), words);
  }

  @Test
  void theSameScanAgainChangesNothing() throws IOException {
    Path stack = scan("stack.pdf", wholeDay(2).pdf());
    collect(stack);
    Map<String, byte[]> before = garage.written();
    String chain = text(garage.out.resolve("ledger/2026.jsonl"));
    Garage.Run again = collect(stack);
    assertEquals(Exit.DONE, again.exit(), again.out());
    assertEquals(chain, text(garage.out.resolve("ledger/2026.jsonl")));
    Map<String, byte[]> after = garage.written();
    assertEquals(before.keySet(), after.keySet());
    before.forEach((name, bytes) -> assertArrayEquals(bytes, after.get(name), name));
  }

  @Test
  void emptyBoxesKeepTheirJobOpenAndWhatIsNotThereIsMissing() throws IOException {
    Set<String> empty = Set.of("sign.technician", "tick.2.front-left");
    Set<String> names =
        Set.copyOf(issued("501").boxes().boxes().stream().map(b -> b.name()).toList());
    assertTrue(names.contains("sign.technician"), names.toString());
    Path stack = scan("stack.pdf", new SignedStack(3).sign(issued("501"), empty).pdf());
    Garage.Run run = collect(stack);
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("501  open: ");
    run.says("signature of the technician");
    run.says("502  missing: its sheet has not come back");
    assertTrue(last("501").returned().orElseThrow().empty().contains("sign.technician"));
    assertEquals(SheetStory.Box.EMPTY, last("501").box("sign.technician"));
    assertTrue(
        text(garage.made("signed/501.yaml"))
            .contains("sign.technician, kind: signature, is: empty"));
  }

  @Test
  void jsonHasTheKeysThatProgramsReadItBy() throws IOException {
    Path stack =
        scan("stack.pdf", new SignedStack(4).sign(issued("502"), Set.of("sign.technician")).pdf());
    JsonTree json = JsonTree.of(collect(stack, "--json").out().getBytes(StandardCharsets.UTF_8));
    JsonTree page = json.list("pages").get(0);
    assertEquals("stack.pdf", page.text("file"));
    assertEquals("1", page.text("page"));
    assertEquals("read", page.text("result"));
    assertEquals("", page.text("reason"));
    assertEquals(last("502").id(), page.text("sheet"));
    assertEquals("502", page.text("job"));
    assertEquals("1", page.text("stage"));
    List<JsonTree> boxes = page.list("boxes");
    assertEquals(issued("502").boxes().boxes().size(), boxes.size());
    JsonTree sign =
        boxes.stream()
            .filter(it -> it.text("name").equals("sign.technician"))
            .findFirst()
            .orElseThrow();
    assertEquals("signature", sign.text("kind"));
    assertEquals("empty", sign.text("state"));
    assertTrue(Double.parseDouble(sign.text("ink")) < 0.05);
    List<JsonTree> jobs = json.list("jobs");
    assertEquals(
        List.of("501 missing", "502 open", "503 missing"),
        jobs.stream().map(it -> it.text("job") + " " + it.text("state")).toList());
    assertTrue(jobs.get(1).get("open").value().toString().contains("sign.technician"));
  }

  @Test
  void typedFiguresCloseTheJobAndNothingElseDoes() throws IOException {
    collect(scan("stack.pdf", wholeDay(5).pdf()));
    Garage.Run open = close("501");
    assertEquals(Exit.PROBLEMS, open.exit());
    open.says("its figure is not typed in");
    Path form = garage.made("signed/501.yaml");
    FilledForm.fill(form);
    Garage.Run done = close("501");
    assertEquals(Exit.DONE, done.exit(), done.err());
    assertEquals(SheetStory.State.CLOSED, last("501").state());
    Garage.Run again =
        collect(scan("again.pdf", new SignedStack(6).sign(issued("501"), Set.of()).pdf()));
    again.says("scanned twice " + last("501").id() + ": the sheet was closed on " + Garage.DAY);
    again.says("501  complete, closed");
    assertEquals(SheetStory.State.CLOSED, last("501").state());
  }

  /** Of "released" and "not released" one is marked, whichever it is. */
  @Test
  void exactlyOneBoxOfAChoiceIsMarked() throws IOException {
    Garage.Run run =
        collect(
            scan(
                "stack.pdf", new SignedStack(11).sign(issued("502"), Set.of("release.yes")).pdf()));
    run.says("502  open: released or not released");
    Path form = garage.made("signed/502.yaml");
    String typed =
        text(form)
            .replaceAll("((?:target|setting): ([^,}]*)(?:(?!setting:).)*value: )open", "$1$2");
    String none = typed.replace("is: open", "is: marked");
    assertTrue(none.contains("{box: release.yes, kind: tick, is: empty}"), none);
    Files.writeString(form, none);
    close("502").says("exactly one of release.yes and release.no is to be marked, and none is");
    Files.writeString(form, none.replace("is: empty", "is: marked"));
    close("502").says("exactly one of release.yes and release.no is to be marked, and 2 are");
    Files.writeString(form, none);
    change(form, "release.no, kind: tick, is: empty", "release.no, kind: tick, is: marked");
    Garage.Run done = close("502");
    assertEquals(Exit.DONE, done.exit(), done.err());
  }

  @Test
  void whatSomebodyTypedIsNeverWrittenOver() throws IOException {
    collect(
        scan("first.pdf", new SignedStack(7).sign(issued("501"), Set.of("sign.technician")).pdf()));
    Path form = garage.made("signed/501.yaml");
    change(form, "value: open", "value: 12 N·m");
    String typed = text(form);
    Garage.Run second =
        collect(scan("second.pdf", new SignedStack(8).sign(issued("501"), Set.of()).pdf()));
    second.says("left as it was typed in: OUT/2026-04-07/signed/501.yaml");
    assertEquals(typed, text(form));
    assertEquals(
        SheetStory.Box.MARKED, last("501").box("sign.technician"), "the later scan counts");
  }

  @Test
  void sheetThatLiesInTheStackTwiceCountsOnceAndDifferencesAreDoubtful() throws IOException {
    SignedStack stack =
        new SignedStack(9)
            .sign(issued("501"), Set.of("sign.technician"))
            .sign(issued("501"), Set.of());
    Garage.Run run = collect(scan("stack.pdf", stack.pdf()));
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("stack.pdf, page 2: scanned twice " + last("501").id());
    run.says("boxes differ: they are doubtful");
    assertEquals(SheetStory.Box.DOUBTFUL, last("501").box("sign.technician"));
  }

  @Test
  void olderRevisionIsSupersededAndKept() throws IOException {
    SignedStack stack = new SignedStack(10).sign(issued("501"), Set.of());
    String first = last("501").id();
    garage.change("2026-04-07/501.yaml", "90110 km", "90210 km");
    garage.sheets();
    Garage.Run run = collect(scan("stack.pdf", stack.pdf()));
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("superseded " + first + ": " + last("501").id() + " has taken its place");
    run.says("501  missing; only " + first + " came back, which is superseded");
    assertTrue(Files.exists(garage.made("signed/" + first + ".pdf")));
    assertFalse(Files.exists(garage.made("signed/501.yaml")));
    assertTrue(index().sheet(first).orElseThrow().mayHaveBeenUsed());
    assertEquals(SheetStory.State.ISSUED, last("501").state());
  }

  @Test
  void formOfAnOlderRevisionGivesWay() throws IOException {
    collect(scan("first.pdf", new SignedStack(11).sign(issued("501"), Set.of()).pdf()));
    String first = last("501").id();
    garage.change("2026-04-07/501.yaml", "90110 km", "90210 km");
    garage.sheets();
    collect(scan("second.pdf", new SignedStack(12).sign(issued("501"), Set.of()).pdf()));
    assertTrue(text(garage.made("signed/" + first + ".yaml")).contains("sheet: " + first));
    assertTrue(text(garage.made("signed/501.yaml")).contains("sheet: " + last("501").id()));
  }

  /** A page that holds a code which is no sheet's. */
  private static Grey foreign(String text) throws Exception {
    BitMatrix code = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 300, 300);
    byte[] pixels = new byte[1654 * 2339];
    Arrays.fill(pixels, (byte) 250);
    for (int y = 0; y < 300; y++) {
      for (int x = 0; x < 300; x++) {
        pixels[(y + 100) * 1654 + x + 1200] = (byte) (code.get(x, y) ? 10 : 250);
      }
    }
    return new Grey(1654, 2339, pixels);
  }

  @Test
  void pagesThatAreNoSheetAreKeptWithTheReason() throws Exception {
    byte[] white = new byte[1654 * 2339];
    Arrays.fill(white, (byte) 245);
    SignedStack stack =
        new SignedStack(13)
            .other(new Grey(1654, 2339, white))
            .other(foreign("https://example.org/part/7\u001b[31m"))
            .other(foreign("ABCDEFGHIJKLMNOP"))
            .sign(issued("503"), Set.of());
    Garage.Run run = collect(scan("stack.pdf", stack.pdf()));
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("stack.pdf, page 1: unread: no code of a sheet was found; kept as OUT/unread/stack-");
    run.says("stack.pdf, page 2: unknown: no sheet was issued with the code https://example.org");
    run.says("stack.pdf, page 3: unknown: no sheet was issued with the code ABCDEFGHIJKLMNOP");
    run.says("503  complete");
    assertFalse(run.out().contains("\u001b"), "nothing that a terminal would obey");
    try (var kept = Files.list(garage.out.resolve("unread"))) {
      List<Path> pages = kept.sorted().toList();
      assertEquals(3, pages.size());
      String words = Paper.of(Garage.bytes(pages.get(0))).text();
      assertTrue(words.contains("Page 1 of stack.pdf: no code of a sheet was found"), words);
    }
  }

  @Test
  void filesThatCannotBeReadStopNoOther() throws IOException {
    byte[] whole = new SignedStack(14).sign(issued("503"), Set.of()).pdf();
    Path good = scan("good.pdf", whole);
    Path torn = scan("torn.pdf", Arrays.copyOf(whole, whole.length / 3));
    Path locked = folder.resolve("locked.pdf");
    try (PDDocument document = Loader.loadPDF(whole)) {
      document.protect(new StandardProtectionPolicy("owner", "reader", new AccessPermission()));
      document.save(locked.toFile());
    }
    Path words = scan("words.txt", "no picture".getBytes(StandardCharsets.US_ASCII));
    Path absent = folder.resolve("absent.tif");
    Garage.Run run = collect(torn, locked, words, absent, folder, good);
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("torn.pdf");
    run.says("locked.pdf: unread: the file cannot be read: it is encrypted, and needs a password");
    run.says("words.txt: unread: the file cannot be read: ");
    run.says("absent.tif: unread: the file cannot be read: there is no such file");
    run.says("unread: the file cannot be read: it is a folder");
    run.says("503  complete");
  }

  @Test
  void keptPageThatWasChangedIsNeverComparedWith() throws IOException {
    byte[] stack = new SignedStack(15).sign(issued("501"), Set.of()).pdf();
    Path page = index().page(last("501").id());
    Files.write(page, index().page(last("502").id()).toString().getBytes(StandardCharsets.UTF_8));
    Garage.Run run = collect(scan("stack.pdf", stack));
    run.says("the ledger's page of " + last("501").id() + " is not as it was issued");
    assertEquals(SheetStory.State.ISSUED, last("501").state());
  }

  @Test
  void forgettingTakesAwayWhatWasCollected() throws IOException {
    Path stack = scan("stack.pdf", wholeDay(16).pdf());
    collect(stack);
    garage.run("forget", "--before", "2026-04-08", "-o", garage.out.toString());
    try (var left = Files.list(garage.made("signed"))) {
      assertEquals(List.of(), left.toList());
    }
    collect(stack).says("was forgotten");
  }

  @Test
  void withoutALedgerThereIsNothingToCompareWith() {
    Garage.Run run = garage.run("collect", "x.pdf", "-o", folder.resolve("none").toString());
    assertEquals(Exit.USAGE, run.exit());
    run.says("there is no ledger in");
  }

  /** Of each choice the other box is marked. */
}
