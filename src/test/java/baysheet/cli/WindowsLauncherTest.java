package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The launcher for Windows, as text: no test runs on Windows. The rules are those of the command
 * interpreter: a quotation mark opens and closes in turn, a backslash before it changes nothing,
 * and what stands outside of quotes is taken apart at spaces, ampersands and angle brackets.
 */
class WindowsLauncherTest {
  /** What may hold a path, and so whatever a user or a folder is called. */
  private static final Pattern PATH =
      Pattern.compile("%(?:home|jar|java|release|archive|cache|new|use|name|\\w+:~?[^%]*)%|%~dp0");

  private static List<String> lines;

  @BeforeAll
  static void read() throws IOException {
    lines =
        Files.readAllLines(Path.of("src/package/bin/baysheet.cmd")).stream()
            .filter(it -> !it.startsWith("rem"))
            .toList();
  }

  @Test
  void noQuotationMarkIsEscapedByABackslash() {
    lines.forEach(it -> assertFalse(it.contains("\\\""), it));
  }

  @Test
  void eachPathStandsInQuotes() {
    List<String> bare = new ArrayList<>();
    int found = 0;
    for (String line : lines) {
      // The mark that is taken out of JAVA_HOME is gone before the line is taken apart.
      String read = line.replace("%JAVA_HOME:\"=%", "%java%");
      var path = PATH.matcher(read);
      while (path.find()) {
        found++;
        if (!insideQuotes(read, path.start())) {
          bare.add(line);
        }
      }
    }
    assertEquals(List.of(), bare);
    assertTrue(found > 30, "paths were looked for: " + found);
  }

  @Test
  void redirectionsStandOutsideOfQuotes() {
    for (String line : lines) {
      for (int at = line.indexOf("nul"); at > 0; at = line.indexOf("nul", at + 1)) {
        assertTrue(line.charAt(at - 1) != '>' || !insideQuotes(line, at), line);
      }
    }
  }

  /** Java makes its archives read-only. */
  @Test
  void whatIsDeletedMayBeReadOnlyAndIsOld() {
    List<String> deleting = lines.stream().filter(it -> it.matches(".*\\bdel\\b.*")).toList();
    assertEquals(1, deleting.size());
    assertTrue(deleting.get(0).contains("del /f "), deleting.get(0));
    assertTrue(deleting.get(0).contains("/d -60 "), deleting.get(0));
  }

  @Test
  void onlyANumberIsComparedWithTheOldestVersion() {
    int checked =
        lines.indexOf("for /f \"delims=0123456789\" %%a in (\"%major%\") do set \"major=\"");
    int compared = lines.indexOf("if %major% LSS 17 (");
    assertTrue(checked > 0 && compared > checked);
    assertTrue(lines.subList(checked, compared).contains("if not defined major ("));
  }

  @Test
  void theCodePageComesBackBeforeAnythingElseIsDone() {
    int run = lines.indexOf("\"%java%\" \"%use%\" %options% -jar \"%jar%\" %*");
    assertTrue(lines.get(run - 1).contains("chcp 65001"));
    assertEquals("set \"status=%ERRORLEVEL%\"", lines.get(run + 1));
    assertTrue(lines.get(run + 2).contains("chcp %page%"));
  }

  @Test
  void eachLabelThatIsGoneToIsThere() {
    for (String line : lines) {
      var target = Pattern.compile("\\b(?:goto |call :)(\\w+)").matcher(line);
      while (target.find()) {
        assertTrue(lines.contains(":" + target.group(1)), line);
      }
    }
  }

  /**
   * Called as {@code "baysheet"}, in quotes and found on the path, cmd takes the current folder for
   * the place of the file, but never in a label that is called.
   */
  @Test
  void thePlaceOfTheFileIsAskedForInACalledLabel() {
    int label = lines.indexOf(":place");
    assertTrue(lines.indexOf("call :place") < label && label < lines.size(), "label " + label);
    assertEquals(
        "exit /b %status%",
        lines.subList(0, label).stream().filter(it -> !it.isEmpty()).reduce("", (all, it) -> it));
    for (int i = 0; i < lines.size(); i++) {
      assertTrue(i > label || !lines.get(i).contains("~dp0"), lines.get(i));
    }
  }

  /** An escaped mark does not count. */
  private static boolean insideQuotes(String line, int end) {
    boolean inside = false;
    for (int i = 0; i < end; i++) {
      if (line.charAt(i) == '^' && !inside) {
        i++;
      } else if (line.charAt(i) == '"') {
        inside = !inside;
      }
    }
    return inside;
  }
}
