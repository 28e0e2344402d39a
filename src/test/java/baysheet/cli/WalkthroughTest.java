package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Console;
import baysheet.output.Exit;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Follows the walkthrough of README and of {@code files.md} word by word, as somebody does who has
 * nothing else: every command is run, every file is written as it stands there, and whatever is
 * said to come out must come out.
 */
class WalkthroughTest {
  /** A command with what it is said to print behind it, in a block or within a sentence. */
  private static final Pattern COMMAND =
      Pattern.compile("(?m)^baysheet ([^#\n]+?)(?: +# (.*))?$|`baysheet ([^`]+)`");

  /** Before a block: the file that it is to be written to, or whose lines it changes. */
  private static final Pattern FILE =
      Pattern.compile("(Write this to|Lines to change in) `((?:DAY|vehicles)/[^`]+)`");

  private static final Pattern BLOCK =
      Pattern.compile("(?ms)^( *)```(\\w*)\n(.*?)^ *```$|`baysheet [^`]+`|`out/DAY/[^`]+`");

  @TempDir private Path folder;
  private LocalDate today;
  private String lastOut = "";
  private String lastErr = "";
  private final List<String> done = new ArrayList<>();

  /** The fasteners of the rows of all sheets. */
  private final List<String> rows = new ArrayList<>();

  @ParameterizedTest
  @ValueSource(strings = {"2026-04-07", "2031-12-31"})
  void everyWordOfItHolds(String day) throws IOException {
    today = LocalDate.parse(day);
    String text = section();
    Matcher piece = BLOCK.matcher(text);
    int end = 0;
    while (piece.find()) {
      String before = text.substring(end, piece.start());
      end = piece.end();
      if (piece.group(3) == null) {
        inSentence(piece.group(), text.substring(piece.end()));
      } else {
        block(piece.group(2), unindented(piece.group(3), piece.group(1).length()), before);
      }
    }
    assertEquals(
        List.of(
            "start my-garage",
            "fill in DAY/1001.yaml",
            "procedures brake",
            "draft --job 1001",
            "fill in vehicles/our-van-2016.yaml",
            "check",
            "sheets",
            "out/DAY/1001-1.pdf",
            "out/DAY/1001-2.pdf",
            "out/DAY/1001-3.pdf",
            "draft --job 1002",
            "draft our-van-2016 --for damper@rear",
            "procedures --vehicle our-van-2016",
            "explain 1001"),
        done);
    // Carrier bolts, disc screws, guide bolts and wheel nuts: each has its row on one of the
    // sheets.
    assertEquals(
        List.of("caliper-guide-bolt", "carrier-bolt", "disc-screw", "wheel-nut"),
        rows.stream().sorted().toList());
  }

  private static String section() throws IOException {
    return section("README.md", "## Your first own vehicle")
        + section("src/docs/files.md", "## What helps with spec books");
  }

  private static String section(String page, String heading) throws IOException {
    String from = Files.readString(Path.of(page)).split(heading, 2)[1];
    return from.substring(0, from.indexOf("\n## "));
  }

  private static String unindented(String block, int spaces) {
    return block
        .lines()
        .map(line -> line.substring(Math.min(spaces, line.length())))
        .reduce("", (all, line) -> all + line + "\n");
  }

  private void block(String language, String block, String before) throws IOException {
    switch (language) {
      case "sh" -> block.lines().filter(line -> line.startsWith("baysheet")).forEach(this::line);
      case "yaml" -> write(block, before);
      default -> throw new AssertionError("nothing is known of a block of " + language);
    }
  }

  /** A line of a block: the comment is what comes out. */
  private void line(String line) {
    Matcher command = COMMAND.matcher(line);
    assertTrue(command.matches(), line);
    assertEquals(Exit.DONE, run(command.group(1).strip()), lastErr);
    String said = command.group(2) == null ? "" : command.group(2);
    assertTrue(lastOut.startsWith(said), lastOut + "\nREADME: " + line);
  }

  private void write(String block, String before) throws IOException {
    Matcher file = FILE.matcher(before);
    assertTrue(file.find(), "no file is named for\n" + block);
    Path path = shop().resolve(dated(file.group(2)));
    assertTrue(Files.isDirectory(path.getParent()), path + " has no folder");
    if (file.group(1).startsWith("Lines")) {
      Files.writeString(path, others(filledIn(Files.readString(path), block)));
      done.add("fill in " + file.group(2));
    } else {
      Files.writeString(path, block, StandardOpenOption.CREATE_NEW);
      done.add("write " + file.group(2));
    }
  }

  /** README shows two fasteners; the reader fills in the others. */
  private static String others(String text) {
    return text.replaceAll("(?m): unknown$", ": 2 x M8 class 8.8, hex 13 mm, 25 N·m");
  }

  /** Each line stands for the next one with its key, which may be in a comment. */
  private static String filledIn(String text, String block) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    int at = 0;
    for (String line : block.lines().toList()) {
      String key = line.substring(0, line.indexOf(':') + 1);
      while (at < lines.size()
          && !lines.get(at).startsWith(key)
          && !lines.get(at).startsWith("# " + key)) {
        at++;
      }
      assertTrue(at < lines.size(), line + " was not drafted in\n" + text);
      lines.set(at, line);
    }
    return String.join("\n", lines) + "\n";
  }

  private void inSentence(String code, String after) throws IOException {
    if (code.startsWith("`out/")) {
      String file = code.replace("`", "");
      sheet(folder.resolve(dated(file)));
      done.add(file);
      return;
    }
    String command = code.replaceAll("^`baysheet |`$", "");
    if (command.equals("draft --job 1002")) {
      nextJob("DAY/1002.yaml");
    }
    int exit = run(command);
    Matcher said = Pattern.compile("^ now says `([^`]+)`").matcher(after);
    Optional<String> expected = said.find() ? Optional.of(said.group(1)) : Optional.empty();
    expected.ifPresent(words -> assertTrue((lastOut + lastErr).contains(words), lastErr));
    assertEquals(Exit.DONE, exit, lastErr);
  }

  /** The reader's own: README does not say what is in it. */
  private void nextJob(String file) throws IOException {
    Files.writeString(
        shop().resolve(dated(file)),
        "job: 1002\nvehicle: {book: our-car}\nbay: 1\nby: T1\nwork: damper at rear\n");
  }

  /** The empty box is the unknown figure's; all others can be set with what the garage has. */
  private void sheet(Path file) {
    Paper paper = Paper.of(Garage.bytes(file));
    assertEquals(1, paper.pages());
    String name = file.getFileName().toString().replace(".pdf", ".json");
    JsonTree record = JsonTree.of(paper.attached().get(name));
    for (JsonTree row : record.list("torque")) {
      rows.add(row.text("fastener"));
      boolean unknown = row.text("fastener").equals("disc-screw");
      for (JsonTree stage : row.list("stages")) {
        assertEquals(!unknown, stage.has("wrench") && stage.has("setting"), row.toString());
      }
    }
    assertFalse(paper.text().contains("lapsed"), paper.text());
  }

  private String dated(String text) {
    return text.replace("DAY", today.toString());
  }

  private Path shop() {
    return folder.resolve("my-garage");
  }

  /** Runs a command as if the current folder were that of the test, then the shop folder. */
  private int run(String command) {
    done.add(command);
    List<String> arguments = new ArrayList<>(List.of(command.split(" ")));
    switch (arguments.get(0)) {
      case "start" -> arguments.set(1, shop().toString());
      case "check" -> arguments.add(shop().toString());
      case "sheets" ->
          arguments.addAll(
              List.of("--shop", shop().toString(), "-o", folder.resolve("out").toString()));
      default -> arguments.addAll(List.of("--shop", shop().toString()));
    }
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console = new Console(new PrintWriter(out), new PrintWriter(err), false);
    int exit = Main.run(arguments.toArray(String[]::new), console, () -> today);
    lastOut = shown(out);
    lastErr = shown(err);
    return exit;
  }

  private String shown(StringWriter text) {
    return text.toString()
        .replace("\r\n", "\n")
        .replace('\\', '/')
        .replace(shop().toString().replace('\\', '/') + "/", "")
        .replace(folder.toString().replace('\\', '/') + "/", "");
  }
}
