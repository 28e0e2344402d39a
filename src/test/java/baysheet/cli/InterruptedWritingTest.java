package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.ShopFolder;
import baysheet.files.ShopFolders;
import baysheet.files.Writers;
import baysheet.layout.Fonts;
import baysheet.ledger.Disk;
import baysheet.ledger.FailingDisk;
import baysheet.output.Batch;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.MadeSheet;
import baysheet.output.OutFiles;
import baysheet.output.Revision;
import baysheet.output.SheetIssuer;
import baysheet.output.SheetMaker;
import baysheet.output.Sheets;
import baysheet.report.Problems;
import baysheet.template.LayoutTemplates;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every operation on the disk fails in turn, once or from there on for good. Whatever happens, each
 * file is whole, old or new; a record and the day's file say what the sheets beside them say; what
 * the run says is true; and the next run puts everything right.
 */
class InterruptedWritingTest {
  private static final String DAY = Garage.DAY + "/";

  /** Of four quarters of a file, those that are written when writing it fails. */
  private static final int HALF = 2;

  private static final Fonts FONTS = Fonts.builtIn();
  private static final LayoutTemplates LAYOUTS = LayoutTemplates.builtIn();
  private static final Writers WRITERS = new Writers();

  /** What is attached to a file that was looked at before. */
  private static final Map<String, Map<String, byte[]>> ATTACHED = new ConcurrentHashMap<>();

  @TempDir private Path folder;
  private Garage garage;

  /** Sheets by job file and record: making them takes longer than all that is tested here. */
  private final Map<String, List<MadeSheet>> known = new ConcurrentHashMap<>();

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  private Garage.Run run(Path out, Disk disk, boolean record, String... paths) {
    ShopFolders folders = new ShopFolders(FONTS);
    SheetMaker maker = new SheetMaker(folders, LAYOUTS, FONTS, Optional.empty());
    Batch.Maker knowing =
        (job, shop, revision, problems) -> made(maker, job, shop, revision, problems);
    StringWriter said = new StringWriter();
    StringWriter err = new StringWriter();
    Console console = new Console(new PrintWriter(said), new PrintWriter(err), false);
    SheetIssuer issues = new SheetIssuer(out, disk, Garage.TODAY);
    Batch batch = new Batch(knowing, 1, WRITERS, issues);
    Sheets sheets =
        new Sheets(console, folders, batch, issues, new Sheets.Output(out, record, false, disk));
    int exit = sheets.run(Arrays.stream(paths).map(garage.root::resolve).toList());
    return new Garage.Run(exit, garage.shown(said), garage.shown(err));
  }

  private List<MadeSheet> made(
      SheetMaker maker, Path job, ShopFolder shop, Revision revision, Problems problems) {
    try {
      String key = job + revision.toString() + Files.readString(job);
      if (!known.containsKey(key)) {
        known.put(key, maker.make(job, shop, revision, problems));
      }
      return known.get(key);
    } catch (IOException e) {
      throw new IllegalStateException("cannot read " + job, e);
    }
  }

  private static Map<String, byte[]> attached(byte[] pdf) {
    String key = new String(pdf, StandardCharsets.ISO_8859_1);
    return ATTACHED.computeIfAbsent(key, it -> Paper.of(pdf).attached());
  }

  private static Map<String, byte[]> files(Path root) {
    if (!Files.exists(root)) {
      return Map.of();
    }
    try (var files = Files.walk(root)) {
      Map<String, byte[]> all = new TreeMap<>();
      files
          .filter(Files::isRegularFile)
          .forEach(
              file ->
                  all.put(root.relativize(file).toString().replace('\\', '/'), Garage.bytes(file)));
      return all;
    } catch (IOException e) {
      throw new IllegalStateException("cannot list " + root, e);
    }
  }

  private static void copy(Map<String, byte[]> files, Path to) throws IOException {
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Path target = to.resolve(file.getKey());
      Files.createDirectories(target.getParent());
      Files.write(target, file.getValue());
    }
  }

  private static void assertSameFiles(
      Map<String, byte[]> expected, Map<String, byte[]> actual, String context) {
    Set<String> names = new TreeSet<>(actual.keySet());
    names.removeIf(name -> name.contains(".torn"));
    assertEquals(expected.keySet(), names, context);
    expected.forEach(
        (name, bytes) -> {
          if (name.endsWith(".jsonl")) {
            assertEquals(events(bytes), events(actual.get(name)), name + context);
          } else {
            assertArrayEquals(bytes, actual.get(name), name + context);
          }
        });
  }

  /** What does not depend on the order in which the jobs could be done. */
  private static List<String> events(byte[] lines) {
    return new String(lines, StandardCharsets.UTF_8)
        .lines()
        .map(line -> line.replaceAll("\"n\":[0-9]+,|\"previous\":\"[0-9a-f]+\"", ""))
        .sorted()
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "false, true, 2026-04-07",
    "true, true, 2026-04-07",
    "false, false, 2026-04-07",
    "false, true, 2026-04-07/501.yaml",
    "true, true, 2026-04-07/501.yaml",
  })
  void noFailureLeavesAContradiction(boolean forGood, boolean record, String named)
      throws IOException {
    Path before = folder.resolve("before");
    run(before, Disk.REAL, record, Garage.DAY);
    Map<String, byte[]> old = files(before);
    garage.change("2026-04-07/501.yaml", "90110 km", "90210 km");
    if (named.equals(Garage.DAY)) {
      garage.change("2026-04-07/503.yaml", "job: 503", "job: 503\nnotes: Call before noon.");
    }
    Files.delete(garage.job("502"));
    Path after = folder.resolve("after");
    copy(old, after);
    assertEquals(Exit.DONE, run(after, Disk.REAL, record, named).exit());
    assertEveryFailure(old, files(after), forGood, record, named);
  }

  @ParameterizedTest
  @CsvSource({"false, true", "true, false"})
  void noFailureOfAFirstRunLeavesHalfASheet(boolean forGood, boolean record) throws IOException {
    Path after = folder.resolve("after");
    run(after, Disk.REAL, record, Garage.DAY);
    assertEveryFailure(Map.of(), files(after), forGood, record, Garage.DAY);
  }

  private void assertEveryFailure(
      Map<String, byte[]> old,
      Map<String, byte[]> expected,
      boolean forGood,
      boolean record,
      String named)
      throws IOException {
    int failures = 0;
    for (int failing = 1; ; failing++) {
      Path out = folder.resolve("out" + failing);
      copy(old, out);
      // Of those that fail once the test of the ledger alone sees more.
      boolean ofLedger = forGood || old.isEmpty();
      FailingDisk disk =
          new FailingDisk(
              failing,
              forGood,
              HALF,
              file -> ofLedger || !file.toString().contains(SheetIssuer.LEDGER));
      Garage.Run run = run(out, disk, record, named);
      if (!disk.wasReached()) {
        break;
      }
      failures++;
      String context = "operation " + failing + "\n" + run.out() + run.err();
      assertWholeAndInStep(out, old, expected, context);
      assertTrueWords(run, files(out), old, expected, context);
      assertEquals(Exit.DONE, run(out, Disk.REAL, record, named).exit(), context);
      assertSameFiles(expected, files(out), context);
    }
    // Three operations a file is the least: write, force, move.
    assertTrue(failures >= 6, "only " + failures + " operations were seen");
  }

  @Test
  void aJobOfWhichOnlySomeSheetsWereWrittenIsSaid() {
    garage.change("2026-04-07/501.yaml", "job: 501", "job: 501\nstages: 2");
    Path out = folder.resolve("some");
    FailingDisk disk =
        new FailingDisk(1, true, HALF, file -> file.getFileName().toString().contains("501-2.pdf"));
    Garage.Run run = run(out, disk, true, Garage.DAY);
    assertEquals(Exit.FILES, run.exit(), run.err());
    run.says("of 1 job only the first sheets were");
    assertTrue(Files.exists(out.resolve(DAY + "501-1.pdf")));
  }

  /** Without it, a power cut could leave the new name with an empty file. */
  @Test
  void everyFileIsForcedToTheDeviceBeforeItIsMovedToItsPlace() {
    List<String> done = new ArrayList<>();
    Disk noting =
        (Disk)
            Proxy.newProxyInstance(
                Disk.class.getClassLoader(),
                new Class<?>[] {Disk.class},
                (proxy, method, arguments) -> {
                  done.add(method.getName() + " " + ((Path) arguments[0]).getFileName());
                  return method.invoke(Disk.REAL, arguments);
                });
    Path out = folder.resolve("noted");
    assertEquals(Exit.DONE, run(out, noting, true, Garage.DAY).exit());
    List<String> moved = done.stream().filter(line -> line.startsWith("move ")).toList();
    // The file of all; three sheets and their records, here and in the ledger.
    assertEquals(1 + 3 * 4, moved.size(), done.toString());
    for (String line : moved) {
      String part = line.substring("move ".length());
      int written = done.indexOf("write " + part);
      int forced = done.indexOf("force " + part);
      assertTrue(0 <= written && written < forced && forced < done.indexOf(line), line + done);
    }
  }

  private static boolean isLeftover(String name) {
    return OutFiles.isPart(Path.of(name)) || isOfLedger(name) && name.endsWith(".part");
  }

  /** Lines that are only ever added to have a test of their own. */
  private static boolean isOfLedger(String name) {
    return name.startsWith(SheetIssuer.LEDGER + "/");
  }

  private void assertWholeAndInStep(
      Path out, Map<String, byte[]> old, Map<String, byte[]> expected, String context) {
    Map<String, byte[]> found = files(out);
    for (Map.Entry<String, byte[]> file : found.entrySet()) {
      String name = file.getKey();
      if (isLeftover(name) || isOfLedger(name)) {
        continue;
      }
      byte[] bytes = file.getValue();
      boolean whole =
          Arrays.equals(bytes, old.get(name)) || Arrays.equals(bytes, expected.get(name));
      assertTrue(whole || name.endsWith("all.pdf"), name + " is neither old nor new\n" + context);
      if (name.endsWith(".json") && !name.contains("withdrawn")) {
        byte[] sheet = found.get(name.replace(".json", ".pdf"));
        assertTrue(sheet != null, name + " stands alone\n" + context);
        String attached = name.replace(DAY, "");
        assertArrayEquals(attached(sheet).get(attached), bytes, name + "\n" + context);
      }
    }
    if (found.containsKey(DAY + "all.pdf")) {
      assertInStep(found, context);
    }
  }

  /** Each page of the day's file is one that lies beside it. */
  private static void assertInStep(Map<String, byte[]> found, String context) {
    Map<String, byte[]> records = attached(found.get(DAY + "all.pdf"));
    assertFalse(records.isEmpty());
    records.forEach(
        (name, record) -> {
          byte[] sheet = found.get(DAY + name.replace(".json", ".pdf"));
          assertTrue(sheet != null, "the day's file shows a sheet that is gone, " + name + context);
          assertArrayEquals(attached(sheet).get(name), record, name + "\n" + context);
        });
  }

  /** What is called written is new, what is not is as it was, and a fault has its exit code. */
  private static void assertTrueWords(
      Garage.Run run,
      Map<String, byte[]> found,
      Map<String, byte[]> old,
      Map<String, byte[]> expected,
      String context) {
    for (String job : List.of("501", "502", "503")) {
      String sheet = DAY + job + ".pdf";
      boolean said = run.out().lines().anyMatch(line -> line.startsWith(job + "  bay"));
      boolean withdrawn =
          run.out().lines().anyMatch(line -> line.endsWith("withdrawn/" + job + ".pdf"));
      if (said) {
        assertArrayEquals(expected.get(sheet), found.get(sheet), sheet + "\n" + context);
      } else if (!withdrawn) {
        assertArrayEquals(old.get(sheet), found.get(sheet), sheet + "\n" + context);
        String record = DAY + job + ".json";
        boolean moved =
            run.err().contains("its record") || run.out().contains("withdrawn/" + job + ".json");
        assertTrue(
            moved || Arrays.equals(old.get(record), found.get(record)), record + "\n" + context);
      } else {
        assertFalse(found.containsKey(sheet), sheet + "\n" + context);
      }
    }
    Set<String> leftovers = new TreeSet<>(found.keySet());
    leftovers.removeIf(name -> !isLeftover(name));
    boolean done =
        expected.entrySet().stream()
            .allMatch(file -> Arrays.equals(file.getValue(), found.get(file.getKey())));
    assertEquals(done, run.exit() == Exit.DONE, context);
    if (!done) {
      assertEquals(Exit.FILES, run.exit(), context);
      assertTrue(run.err().contains("No space left on device"), context);
    } else {
      assertTrue(leftovers.size() <= 1, leftovers + "\n" + context);
    }
  }
}
