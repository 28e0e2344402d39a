package baysheet.plan.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.books.Fastener;
import baysheet.books.SpecBook;
import baysheet.books.SpecBookReader;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.yaml.YamlFile;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SequenceLettersTest {
  /** Bolts around a circle, whose order differs with their number. */
  private static Fastener circleOf(int count) {
    Problems problems = new Problems();
    String text =
        """
        vehicle: test-book
        name: Test
        source: a test
        kerb-mass: 1000 kg
        fasteners:
          engine:
            bolt: {count: %d, thread: M8, head: hex 13 mm, torque: 20 N·m, reuse: yes, order: circle}
        """
            .formatted(count);
    SpecBook book =
        YamlFile.parse(new Source("test-book.yaml", text), problems)
            .flatMap(node -> SpecBookReader.read(node, problems))
            .orElseThrow(() -> new IllegalStateException(problems.all().toString()));
    SpecBook.Entry bolt = book.fasteners().get(0).fasteners().get("bolt");
    return bolt.text().complete(bolt.name()).orElseThrow();
  }

  @Test
  void afterTwentySixDrawingsTheLettersAreDoubled() {
    SequenceLetters letters = new SequenceLetters();
    List<String> given = new ArrayList<>();
    for (int count = 4; count < 4 + 26 * 2; count++) {
      given.add(letters.drawing(circleOf(count)).orElseThrow().letter());
    }
    assertEquals(List.of("A", "B", "C"), given.subList(0, 3));
    assertEquals(List.of("Y", "Z", "AA", "AB"), given.subList(24, 28));
    assertEquals(List.of("AY", "AZ"), given.subList(50, 52));
    assertEquals("BA", letters.drawing(circleOf(60)).orElseThrow().letter());
    assertEquals("Z", letters.drawing(circleOf(4 + 25)).orElseThrow().letter(), "the same order");
  }
}
