package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Console;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** What is in the package, and that its completion and manual page know the commands. */
@DisabledOnOs(OS.WINDOWS)
class PackageIT {
  @TempDir private static Path folder;
  private static InstalledPackage installed;

  @BeforeAll
  static void unpack() {
    installed = InstalledPackage.in(folder, "tools");
  }

  @Test
  void bothArchivesHoldTheSame() throws IOException {
    TreeSet<String> zipped = new TreeSet<>();
    try (ZipFile zip = new ZipFile("target/baysheet-0.1.0.zip")) {
      zip.stream().filter(it -> !it.isDirectory()).forEach(it -> zipped.add(it.getName()));
    }
    TreeSet<String> unpacked = new TreeSet<>();
    Path root = installed.home().toRealPath();
    try (Stream<Path> files = Files.walk(root)) {
      files
          .filter(Files::isRegularFile)
          .forEach(it -> unpacked.add("baysheet-0.1.0/" + root.relativize(it)));
    }
    assertEquals(zipped, unpacked);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "LICENSE",
        "licences/README.txt",
        "licences/pdfbox/LICENSE",
        "licences/jackson-core/FastDoubleParser-LICENSE",
        "licences/fonts/LICENSE-DejaVu",
        "licences/fonts/LICENSE-Roboto",
        "templates/bay-sheet.ftlx",
        "schema/job.json",
        "schema/record.json",
        "README.md",
        "docs/files.md",
        "docs/record.md",
        "docs/invoice_lines.py",
        "jobs/shop.yaml",
        "jobs/2026-03-02/2402.yaml",
        "lib/baysheet.jar",
      })
  void itHolds(String file) {
    assertTrue(Files.isRegularFile(installed.home().resolve(file)), file);
  }

  /** A library by the folder of its classes, and what the list of licences calls it. */
  @ParameterizedTest
  @CsvSource({
    "org/apache/pdfbox/pdmodel/, Apache PDFBox",
    "org/apache/fontbox/, FontBox",
    "org/apache/pdfbox/jbig2/, JBIG2",
    "org/apache/commons/logging/, Apache Commons Logging",
    "freemarker/, Apache FreeMarker",
    "com/google/zxing/, ZXing",
    "picocli/, picocli",
    "org/yaml/snakeyaml/, SnakeYAML",
    "com/fasterxml/jackson/, Jackson core",
  })
  void theListOfLicencesNamesEachLibrary(String classes, String name) throws IOException {
    try (JarFile jar = new JarFile("target/baysheet.jar")) {
      assertTrue(jar.stream().anyMatch(it -> it.getName().startsWith(classes)), classes);
    }
    String list = Files.readString(installed.home().resolve("licences/README.txt"));
    assertTrue(list.contains(name), list);
  }

  /** README and the pages beside it lead to one another, in the package as in a clone. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "README.md",
        "docs/sheet.md",
        "docs/files.md",
        "docs/procedures.md",
        "docs/day.md",
        "docs/ledger.md",
        "docs/record.md",
        "docs/many-sheets.md",
        "docs/speed.md",
      })
  void linksLeadToFiles(String page) throws IOException {
    assertLinksLead(installed.home().resolve(page));
    Path inClone = Path.of(page.startsWith("docs") ? "src" : "").resolve(page);
    assertLinksLead(inClone);
  }

  private static void assertLinksLead(Path page) throws IOException {
    Matcher link = Pattern.compile("]\\(([^)]+)\\)").matcher(Files.readString(page));
    while (link.find()) {
      Path target = page.toAbsolutePath().resolveSibling(link.group(1));
      assertTrue(Files.isRegularFile(target), page + ": " + link.group(1));
    }
  }

  /** A library that is new in the jar must be added to the list of licences and the test above. */
  @Test
  void theJarHoldsNoOtherLibrary() throws IOException {
    TreeSet<String> top = new TreeSet<>();
    try (JarFile jar = new JarFile("target/baysheet.jar")) {
      jar.stream()
          .map(it -> it.getName())
          .filter(it -> it.endsWith(".class") && !it.startsWith("META-INF/"))
          .forEach(it -> top.add(it.replaceFirst("^((?:org/|com/)?(?:apache/)?[^/]+)/.*", "$1")));
    }
    assertEquals(
        new TreeSet<>(
            List.of(
                "baysheet",
                "com/fasterxml",
                "com/google",
                "freemarker",
                "org/apache/commons",
                "org/apache/fontbox",
                "org/apache/pdfbox",
                "org/yaml",
                "picocli")),
        top);
  }

  @Test
  void theWindowsLauncherHasTheLineEndsOfWindows() throws IOException {
    String text = Files.readString(installed.home().resolve("bin/baysheet.cmd"));
    assertTrue(text.startsWith("@echo off\r\n"));
    assertEquals(0, text.replace("\r\n", "").chars().filter(it -> it == '\n').count());
  }

  @ParameterizedTest
  @CsvSource({
    "sh, sheets",
    "he, help",
    "sheets --re, --record",
    "close --b, --by",
    "sheets --paper L, Letter",
    "attach 2402 --how e, embed",
    "draft book --for discs-and-p, discs-and-pads",
    "draft book --traits hydraulic-b, hydraulic-brakes",
    "names tra, traits",
    "help not-a-na, not-a-name",
    "help she, sheets",
  })
  void bashCompletesCommandsAndOptions(String typed, String completed) {
    assertEquals(completed, complete(typed).strip());
  }

  @Test
  void bashCompletesFiles() {
    assertTrue(
        complete("check here/jobs/sh").contains("here/jobs/shop.yaml"),
        complete("check here/jobs/sh"));
  }

  /**
   * As an interactive bash does: the words and the place of the cursor in variables, then the
   * function.
   */
  private String complete(String typed) {
    List<String> words = new ArrayList<>(List.of("baysheet"));
    words.addAll(List.of(typed.split(" ")));
    InstalledPackage.Ran ran =
        installed.shell(
            "bash",
            Map.of(),
            "source here/completion/baysheet.bash; COMP_WORDS=("
                + String.join(" ", words)
                + "); COMP_CWORD="
                + (words.size() - 1)
                + "; COMP_LINE='"
                + String.join(" ", words)
                + "'; COMP_POINT=${#COMP_LINE}; f=$(complete -p baysheet | sed 's/.*-F \\([^"
                + " ]*\\).*/\\1/'); $f baysheet \"${COMP_WORDS[COMP_CWORD]}\""
                + " \"${COMP_WORDS[COMP_CWORD-1]}\" 2>/dev/null; printf '%s\\n"
                + "' \"${COMPREPLY[@]}\"");
    assertEquals(0, ran.exit(), ran.err());
    return ran.out();
  }

  /** Where fish is installed. */
  @ParameterizedTest
  @CsvSource({
    "sh, sheets",
    "sheets --re, --record",
    "close --b, --by",
    "sheets --paper L, Letter",
    "names tra, traits",
    "help not-a-na, not-a-name",
  })
  void fishCompletesCommandsAndOptions(String typed, String completed) {
    InstalledPackage.Ran ran =
        installed.shell(
            "sh",
            Map.of(),
            "command -v fish >/dev/null || exit 77; fish --no-config -c"
                + " 'source here/completion/baysheet.fish; complete -C \"baysheet "
                + typed
                + "\"'");
    Assumptions.assumeTrue(ran.exit() != 77, "fish is not installed");
    assertEquals(completed, ran.out().strip().replaceFirst("\t.*", ""), ran.err());
  }

  @Test
  void theManualPageAndFishKnowEveryCommandAndOption() throws IOException {
    String page =
        Files.readString(installed.home().resolve("man/man1/baysheet.1")).replace("\\-", "-");
    String fish = Files.readString(installed.home().resolve("completion/baysheet.fish"));
    Console silent = new Console(new PrintWriter(System.out), new PrintWriter(System.err), false);
    Map<String, CommandLine> commands =
        Main.commandLine("", silent, LocalDate::now).getSubcommands();
    assertTrue(commands.size() > 10);
    assertTrue(page.contains("BAYSHEET_SHOP"), page);
    commands.forEach(
        (name, command) -> {
          assertTrue(page.contains(".SS \"baysheet " + name + "\"\n"), name);
          assertTrue(fish.contains("-a " + name + " -d '"), name);
          command
              .getCommandSpec()
              .options()
              .forEach(
                  option -> {
                    assertTrue(fish.contains(" " + name + "' -"), name);
                    assertTrue(
                        page.contains(option.longestName())
                            || option.usageHelp()
                            || option.versionHelp());
                  });
        });
  }

  @Test
  void theManualPageIsSetWithoutAWarning() {
    InstalledPackage.Ran ran =
        installed.shell(
            Map.of("LC_ALL", "C.UTF-8"),
            "if command -v groff >/dev/null; then groff -man -Tutf8 -Kutf8 -ww -z"
                + " here/man/man1/baysheet.1; fi");
    assertEquals(new InstalledPackage.Ran(0, "", ""), ran);
  }
}
