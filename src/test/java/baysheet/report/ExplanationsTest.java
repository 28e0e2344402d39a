package baysheet.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ExplanationsTest {
  private static final Path SOURCES = Path.of("src/main/java");
  private static final Path PAGES = Path.of("src/main/resources/baysheet/explain");

  /** A code stands first where a problem or a bad outcome is made. */
  private static final Pattern USE =
      Pattern.compile(
          "(?:Problem\\s*\\.\\s*(?:error|warning)|Outcome\\s*\\.(?:<\\w+>)?\\s*bad"
              + "|new (?:Outcome\\.)?Bad<[^>]*>)\\(\\s*\"([a-z0-9]+(?:-[a-z0-9]+)+)\"");

  /** Names are looked for in one place, which says of what kind the unknown one is. */
  private static final Pattern LOOKED_UP = Pattern.compile("(?:find|known)\\(\"([a-z]+)\",");

  /** Where one of two codes is chosen. */
  private static final Pattern CHOSEN =
      Pattern.compile("\\? \"([a-z]+(?:-[a-z]+)+)\" : \"([a-z]+(?:-[a-z]+)+)\",");

  @Test
  void everyCodeHasAPage() throws IOException {
    TreeSet<String> without = codesInSources();
    assertTrue(without.size() > 25, "codes found: " + without);
    without.removeIf(code -> Explanations.of(code).isPresent());
    assertEquals(new TreeSet<>(), without);
  }

  @Test
  void everyPageIsAboutACodeThatTheSourcesName() throws IOException {
    String sources = String.join("\n", sources());
    for (Path page : files(PAGES, ".md")) {
      String code = page.getFileName().toString().replace(".md", "");
      boolean lookedUp = codesInSources().contains(code);
      assertTrue(lookedUp || sources.contains("\"" + code + "\""), code);
    }
  }

  @Test
  void everyPageBeginsWithItsCodeAndIsShort() throws IOException {
    for (Path page : files(PAGES, ".md")) {
      String code = page.getFileName().toString().replace(".md", "");
      List<String> lines = Explanations.of(code).orElseThrow().lines().toList();
      assertEquals("# " + code, lines.get(0));
      assertTrue(lines.size() > 4 && lines.size() < 40, code + " has " + lines.size() + " lines");
    }
  }

  @Test
  void noPageIsReadFromOutsideItsFolder() {
    assertEquals(Optional.empty(), Explanations.of("no-such-code"));
    assertEquals(Optional.empty(), Explanations.of("../explain/unknown-key"));
    assertEquals(Optional.empty(), Explanations.of(""));
  }

  private static TreeSet<String> codesInSources() throws IOException {
    TreeSet<String> codes = new TreeSet<>();
    for (String source : sources()) {
      Matcher use = USE.matcher(source);
      while (use.find()) {
        codes.add(use.group(1));
      }
      Matcher lookup = LOOKED_UP.matcher(source);
      while (lookup.find()) {
        codes.add("unknown-" + lookup.group(1));
      }
      Matcher chosen = CHOSEN.matcher(source);
      while (chosen.find()) {
        codes.addAll(List.of(chosen.group(1), chosen.group(2)));
      }
    }
    return codes;
  }

  private static List<String> sources() throws IOException {
    List<String> texts = new java.util.ArrayList<>();
    for (Path file : files(SOURCES, ".java")) {
      texts.add(Files.readString(file, StandardCharsets.UTF_8));
    }
    return texts;
  }

  private static List<Path> files(Path folder, String end) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(end)).sorted().toList();
    }
  }
}
