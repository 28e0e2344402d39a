package baysheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Our layouts decide on fields that are made for it, never on what a printed text happens to say.
 */
class TypedLayoutsTest {
  /** Fields that hold one of a few fixed words, which are not printed as they are. */
  private static final String WORD_FIELDS = "kind|signal|paper";

  private static final Pattern TAKES_TEXT_APART =
      Pattern.compile(
          "\\?(?:starts_with|ends_with|contains|matches|index_of|last_index_of|replace|split|keep_\\w+"
              + "|remove_\\w+|ensure_\\w+|length|word_list|substring)\\b");
  private static final Pattern COMPARES =
      Pattern.compile("([\\w.\\[\\]]+)\\s*[=!]=\\s*[\"'][^\"']*[\"']");

  static List<Path> layouts() {
    try (Stream<Path> files = Files.walk(Path.of("templates"))) {
      return files.filter(file -> file.toString().endsWith(".ftlx")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException("templates", e);
    }
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void noLayoutReadsPrintedText(Path layout) throws IOException {
    assertEquals(List.of(), findings(Files.readString(layout)));
  }

  @Test
  void allLayoutsAreRead() {
    assertTrue(layouts().size() >= 4, layouts().toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<#if detail?starts_with(\"with \")>",
        "<#if section.heading == \"Raise\">",
        "${stage.band?replace(\" (shop)\", \"*\")}",
        "<#if it.command?length lt 125>",
        "<#if it.count != '1'>",
        "${section.heading?keep_before(\":\")}"
      })
  void whatReadsPrintedTextIsFound(String markup) {
    assertEquals(1, findings(markup).size(), markup);
  }

  private static List<String> findings(String markup) {
    return Stream.concat(
            TAKES_TEXT_APART.matcher(markup).results(),
            COMPARES.matcher(markup).results().filter(found -> !isWord(found.group(1))))
        .map(MatchResult::group)
        .toList();
  }

  private static boolean isWord(String field) {
    return field.matches("(?:.*\\.)?(?:" + WORD_FIELDS + ")");
  }
}
