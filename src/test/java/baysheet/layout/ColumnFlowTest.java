package baysheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Box;
import baysheet.box.Column;
import baysheet.layout.ColumnFlow.Chunk;
import baysheet.layout.ColumnFlow.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class ColumnFlowTest {
  private static final long GAP = 3;

  @Test
  void headingIsNeverLastInItsColumn() {
    // Two and two would part the heading from what follows it.
    Page page = page(Sketch.columns(2, texts("a", "*Close", "c", "d")));
    assertEquals(left(page, "Close"), left(page, "c"));
  }

  @Test
  void columnThatMayBreakFlowsAndOneThatMayNotStaysWhole() {
    var texts = List.of(Sketch.text("a"), Sketch.text("b"), Sketch.text("c"), Sketch.text("d"));
    var loose = new Column(List.copyOf(texts), Sketch.pt(1), false, Sketch.HERE);
    var whole = new Column(List.copyOf(texts), Sketch.pt(1), true, Sketch.HERE);
    assertTrue(left(page(Sketch.columns(2, loose)), "d") > 0);
    assertEquals(0, left(page(Sketch.columns(2, whole)), "d"));
  }

  @Test
  void listThatGoesOnInTheNextColumnIsOneList() {
    Page page = page(Sketch.columns(2, Sketch.numbered("a", "b", "c", "d")));
    assertTrue(left(page, "d") > left(page, "a"));
    assertEquals(1, page.structure().children().size());
    assertEquals(Tag.Type.L, page.structure().children().get(0).tag().type());
    assertEquals(4, page.structure().children().get(0).children().size());
  }

  @Property
  void tallestColumnIsAsShortAsCanBe(
      @ForAll @Size(min = 1, max = 9) List<@IntRange(min = 1, max = 50) Integer> heights,
      @ForAll @IntRange(min = 1, max = 4) int count) {
    List<Chunk> chunks = heights.stream().map(ColumnFlowTest::chunk).toList();
    long height = ColumnFlow.leastHeight(chunks, count);
    assertEquals(shortest(heights, count), height);
    List<List<Chunk>> columns = ColumnFlow.fill(chunks, height);
    assertTrue(columns.size() <= count);
    assertEquals(chunks, columns.stream().flatMap(List::stream).collect(Collectors.toList()));
  }

  /** Tries every way of ending the first column, and so on. */
  private static long shortest(List<Integer> heights, int count) {
    if (heights.isEmpty()) {
      return 0;
    }
    long best = Long.MAX_VALUE;
    long first = -GAP;
    for (int i = 0; i < heights.size(); i++) {
      first += GAP + heights.get(i);
      boolean rest = i + 1 < heights.size();
      if (!rest || count > 1) {
        long others = rest ? shortest(heights.subList(i + 1, heights.size()), count - 1) : 0;
        best = Math.min(best, Math.max(first, others));
      }
    }
    return best;
  }

  private static Chunk chunk(int height) {
    return Chunk.of(List.of(new Unit(new Measured.Blank(0, height, false), GAP, false)));
  }

  private static Box[] texts(String... texts) {
    return Arrays.stream(texts)
        .map(t -> t.startsWith("*") ? Sketch.held(Sketch.text(t.substring(1))) : Sketch.text(t))
        .toArray(Box[]::new);
  }

  private static Page page(Box box) {
    return ((PageFit.Fitted) PageFit.fit(Sketch.form(box), Fonts.builtIn())).page();
  }

  private static long left(Page page, String text) {
    return page.items().stream()
            .filter(item -> item instanceof Item.Glyphs g && g.text().equals(text))
            .findFirst()
            .orElseThrow()
            .area()
            .x()
        - 25_512;
  }
}
