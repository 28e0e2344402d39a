package baysheet.template;

import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Form;
import baysheet.report.Problems;
import baysheet.report.Source;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever a layout writes is read as a form or has a problem. DEVELOPERS.md says how to hunt; the
 * layouts themselves give the words of the markup to begin with.
 */
class FuzzedMarkupTest {
  @MethodSource("markup")
  @FuzzTest(maxDuration = "10m")
  void anyMarkupIsReadOrHasAProblem(byte[] bytes) throws IOException {
    Problems problems = new Problems();
    BoundedText filled = new BoundedText(1_000_000);
    filled.write(new String(bytes, StandardCharsets.UTF_8));
    LayoutSource source = new LayoutSource(new Source("any.ftlx", "\n".repeat(20)));
    Optional<Form> form = FormReader.read(filled, source.collect(problems));
    assertTrue(form.isPresent() || problems.hasErrors(), "nothing is read and nothing is said");
  }

  static Stream<byte[]> markup() throws IOException {
    Stream<String> small =
        Stream.of(
            "<form paper='A4' largest='11' smallest='9' language='en' title='x'><text at='1:1'>a</text></form>",
            "<form paper='Letter' margin='8mm' largest='11' smallest='9' hand='8.5' least-hand='7.5'"
                + " language='en' title='x'><column><text bold='yes'>a<b>c</b></text></column></form>");
    try (Stream<Path> files = Files.walk(Path.of("templates"))) {
      Stream<byte[]> layouts =
          files
              .filter(it -> it.toString().endsWith(".ftlx"))
              .sorted()
              .map(FuzzedMarkupTest::bytes)
              .toList()
              .stream();
      return Stream.concat(small.map(it -> it.getBytes(StandardCharsets.UTF_8)), layouts);
    }
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
