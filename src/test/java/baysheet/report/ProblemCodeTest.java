package baysheet.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ProblemCodeTest {
  private static final Path PAGES = Path.of("src/main/resources/baysheet/explain");

  @ParameterizedTest
  @EnumSource
  void aPageHasItsCodeItsMeaningAnExampleAndTheCorrection(ProblemCode code) {
    List<String> parts = List.of(code.page().split("(?m)^```[a-z]*\n", -1));
    assertEquals(5, parts.size(), "two examples on the page about " + code);
    assertTrue(parts.get(0).startsWith("# " + code.word() + "\n\n"), parts.get(0));
    assertTrue(parts.get(0).endsWith("\n\nExample:\n\n"), parts.get(0));
    assertTrue(parts.get(2).endsWith("\n\nCorrected:\n\n"), parts.get(2));
    assertNotEquals(parts.get(1), parts.get(3));
    assertTrue(code.page().lines().count() < 40, code + " is too long");
  }

  @Test
  void aPageHasACode() throws IOException {
    try (Stream<Path> pages = Files.list(PAGES)) {
      List<String> strays =
          pages
              .map(page -> page.getFileName().toString().replace(".md", ""))
              .filter(word -> ProblemCode.of(word).isEmpty())
              .toList();
      assertEquals(List.of(), strays);
    }
  }

  @Test
  void aCodeIsFoundByItsExactWordOnly() {
    assertEquals(Optional.of(ProblemCode.UNKNOWN_KEY), ProblemCode.of("unknown-key"));
    assertEquals(Optional.empty(), ProblemCode.of("UNKNOWN_KEY"));
    assertEquals(Optional.empty(), ProblemCode.of("../explain/unknown-key"));
    assertEquals(Optional.empty(), ProblemCode.of(""));
  }
}
