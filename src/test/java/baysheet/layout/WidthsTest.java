package baysheet.layout;

import static baysheet.layout.Sketch.NATURAL;
import static baysheet.layout.Sketch.SHARE;
import static baysheet.layout.Sketch.fixed;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Width;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class WidthsTest {
  private static final Extent SMALL = new Extent(10_000, 30_000);

  @Test
  void fixedTakesItsLengthNaturalItsContentAndShareTheRest() {
    assertArrayEquals(
        new long[] {20_000, 30_000, 50_000},
        divide(100_000, List.of(fixed(20), NATURAL, SHARE), SMALL, SMALL, SMALL));
  }

  @Test
  void sharesDivideByTheirParts() {
    assertArrayEquals(
        new long[] {25_000, 75_000},
        divide(100_000, List.of(new Width.Share(1), new Width.Share(3)), SMALL, SMALL));
  }

  @Test
  void shareIsNotNarrowerThanItsWidestWordWhileAnotherHasRoom() {
    Extent wide = new Extent(60_000, 60_000);
    assertArrayEquals(
        new long[] {40_000, 60_000}, divide(100_000, List.of(SHARE, SHARE), SMALL, wide));
  }

  @Test
  void naturalGivesWayDownToItsWidestWord() {
    Extent share = new Extent(80_000, 80_000);
    assertArrayEquals(
        new long[] {20_000, 80_000}, divide(100_000, List.of(NATURAL, SHARE), SMALL, share));
  }

  @Property
  void sumNeverExceedsTheRoomAndNoneIsUnderItsLeastWhereThatIsPossible(
      @ForAll("columns") List<Column> columns, @ForAll @LongRange(max = 500_000) long room) {
    List<Extent> extents = columns.stream().map(Column::extent).toList();
    long[] widths =
        Widths.divide(columns.stream().map(Column::width).toList(), extents, room, 10_000);
    assertTrue(Widths.sum(widths) <= room, Widths.sum(widths) + " in " + room);
    long least = extents.stream().mapToLong(Extent::least).sum();
    for (int i = 0; i < widths.length && least <= room; i++) {
      assertTrue(widths[i] >= extents.get(i).least(), i + " of " + columns);
    }
  }

  @Provide
  Arbitrary<List<Column>> columns() {
    Arbitrary<Width> widths =
        Arbitraries.integers()
            .between(0, 4)
            .map(parts -> parts == 0 ? NATURAL : new Width.Share(parts));
    Arbitrary<Long> lengths = Arbitraries.longs().between(0, 120_000);
    Arbitrary<Extent> extents = Combinators.combine(lengths, lengths).as(Extent::new);
    return Combinators.combine(widths, extents).as(Column::new).list().ofMinSize(1).ofMaxSize(8);
  }

  record Column(Width width, Extent extent) {}

  private static long[] divide(long room, List<Width> widths, Extent... extents) {
    return Widths.divide(widths, List.of(extents), room, 10_000);
  }
}
