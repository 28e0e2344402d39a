package baysheet.cli;

import static baysheet.cli.OwnBooks.list;
import static baysheet.cli.OwnBooks.map;
import static baysheet.cli.OwnBooks.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One line and what it must say. */
record OwnLine(String item, Map<String, Object> entry, LocalDate day) {
  private static final BigDecimal FIFTY = new BigDecimal(50);

  void check(JsonTree line) {
    List<?> written = list(entry.get("torque"));
    if (List.of("snug", "unknown").contains(text(written.get(0)))) {
      assertEquals(text(written.get(0)), line.text("kind"), item);
      assertEquals(List.of(), line.list("stages"), item);
      return;
    }
    assertEquals("published", line.text("kind"), item);
    List<JsonTree> stages = line.list("stages");
    assertEquals(written.size(), stages.size(), item);
    for (int i = 0; i < stages.size(); i++) {
      stage(text(written.get(i)), stages.get(i));
    }
    rounds(line, written);
  }

  private void stage(String written, JsonTree stage) {
    if (written.startsWith("+")) {
      assertEquals(OwnFigures.figure(written.substring(1), "°"), stage.figure("angle"), item);
      assertFalse(stage.has("setting"), item);
      return;
    }
    OwnFigures own = new OwnFigures(written, DemoFiguresTest.SHOP_BAND);
    assertEquals(own.target.toPlainString() + " " + own.unit, stage.quantity("torque"), item);
    assertEquals(written, stage.text("written").replace('\u00a0', ' '), item);
    if (DemoFiguresTest.DOUBTED.contains(item)) {
      // A figure that is probably wrong is a basis for no other.
      List.of("band", "second", "reading", "wrench", "setting", "arrives", "trouble")
          .forEach(key -> assertFalse(stage.has(key), item + " has " + key));
      return;
    }
    band(own, written, stage);
    second(own, stage);
    setting(own, stage);
  }

  /** Printed towards the middle, as fine as it takes to keep most of it. */
  private void band(OwnFigures own, String written, JsonTree stage) {
    boolean book = written.contains("±");
    same(book ? own.low : inward(own, own.low, RoundingMode.CEILING), stage.figure("band.from"));
    same(book ? own.high : inward(own, own.high, RoundingMode.FLOOR), stage.figure("band.to"));
    assertEquals(own.unit, stage.text("band.unit"), item);
    assertEquals(book ? "book" : "shop", stage.text("band.of"), item);
  }

  /** To a tenth, or to a hundredth where tenths would take more than a quarter of the band. */
  private static BigDecimal inward(OwnFigures own, BigDecimal end, RoundingMode mode) {
    BigDecimal width = own.high.subtract(own.low);
    BigDecimal tenths =
        own.high
            .setScale(1, RoundingMode.FLOOR)
            .subtract(own.low.setScale(1, RoundingMode.CEILING));
    boolean kept = tenths.compareTo(width.multiply(new BigDecimal("0.75"))) >= 0;
    return end.setScale(kept ? 1 : 2, mode);
  }

  /** To half a unit of the step to which its size is rounded, and inside the band. */
  private void second(OwnFigures own, JsonTree stage) {
    BigDecimal printed = stage.figure("second.value");
    String unit = stage.text("second.unit");
    assertEquals(secondUnit(own), unit, item);
    BigDecimal off = OwnFigures.off(printed, own.in(unit));
    assertTrue(off.compareTo(OwnFigures.half(step(own.in(unit), unit))) <= 0, item + printed);
    assertTrue(own.accepted(printed.multiply(OwnFigures.factor(unit))), item + printed);
  }

  private static String secondUnit(OwnFigures own) {
    if (!own.unit.equals("N·m")) {
      return "N·m";
    }
    return own.in("lbf·ft").compareTo(new BigDecimal(15)) < 0 ? "lbf·in" : "lbf·ft";
  }

  private static BigDecimal step(BigDecimal figure, String unit) {
    if (!unit.equals("N·m") || figure.compareTo(new BigDecimal(20)) >= 0) {
      return BigDecimal.ONE;
    }
    return new BigDecimal(figure.compareTo(new BigDecimal(5)) >= 0 ? "0.5" : "0.1");
  }

  private void setting(OwnFigures own, JsonTree stage) {
    Optional<OwnFigures.Mark> mark = mark(own);
    assertEquals(mark.isPresent(), stage.has("setting"), item);
    mark.ifPresent(
        it -> {
          assertEquals(it.wrench(), stage.text("wrench"), item);
          same(it.mark(), stage.figure("setting.value"));
          assertEquals("N·m", stage.text("setting.unit"), item);
          BigDecimal arrives = stage.figure("arrives.value");
          BigDecimal exact = it.arrives().divide(OwnFigures.factor(own.unit), RoundingMode.HALF_UP);
          BigDecimal half = OwnFigures.half(step(exact, own.unit));
          assertTrue(OwnFigures.off(arrives, exact).compareTo(half) <= 0, item + arrives);
          assertEquals(own.unit, stage.text("arrives.unit"), item);
          assertEquals(it.inside(), !stage.has("trouble"), item);
          reading(own, it, stage);
        });
  }

  /** The band as the wrench shows it, where an extension or another unit makes it differ. */
  private void reading(OwnFigures own, OwnFigures.Mark mark, JsonTree stage) {
    boolean bare = lever().set(BigDecimal.ONE, mark.scale()).compareTo(BigDecimal.ONE) == 0;
    assertEquals(!bare || !own.unit.equals("N·m"), stage.has("reading"), item);
    if (stage.has("reading")) {
      same(read(own.low, own, mark, RoundingMode.CEILING), stage.figure("reading.from"));
      same(read(own.high, own, mark, RoundingMode.FLOOR), stage.figure("reading.to"));
      assertEquals("N·m", stage.text("reading.unit"), item);
    }
  }

  private BigDecimal read(
      BigDecimal end, OwnFigures own, OwnFigures.Mark mark, RoundingMode inward) {
    BigDecimal atNut = end.multiply(OwnFigures.factor(own.unit));
    return lever().set(atNut, mark.scale()).setScale(1, inward);
  }

  private Optional<OwnFigures.Mark> mark(OwnFigures own) {
    return own.wrench(scales(own.newtonMetres(own.target)), day, DemoFiguresTest.MONTHS, lever());
  }

  private List<OwnFigures.Scale> scales(BigDecimal newtonMetres) {
    return DemoFiguresTest.BOOKS.wrenches().stream()
        .map(
            it -> OwnFigures.Scale.of(it, DemoFiguresTest.SQUARES.trouble(it, entry, newtonMetres)))
        .toList();
  }

  private OwnFigures.Lever lever() {
    if (!entry.containsKey("reach")) {
      return OwnFigures.Lever.NONE;
    }
    Map<String, Object> reach = map(entry.get("reach"));
    return new OwnFigures.Lever(
        OwnFigures.figure(reach.get("length"), "mm"),
        OwnFigures.figure(reach.get("angle"), "°").doubleValue());
  }

  /** Four or more on a circle, with one plain torque. */
  private boolean inRounds() {
    return entry.containsKey("order")
        && list(entry.get("torque")).size() == 1
        && (Integer) entry.get("count") >= 4;
  }

  private void rounds(JsonTree line, List<?> written) {
    List<JsonTree> rounds = line.list("rounds");
    assertEquals(inRounds() ? "[50, 100]" : "[100]", percents(line.list("passes")), item);
    assertEquals(inRounds(), line.get("checkRound").value(), item);
    assertEquals(inRounds() ? 2 : 0, rounds.size(), item);
    if (inRounds()) {
      OwnFigures own = new OwnFigures(text(written.get(0)), DemoFiguresTest.SHOP_BAND);
      Optional<OwnFigures.Mark> last = mark(own);
      BigDecimal half = OwnFigures.half(own.target);
      same(half, rounds.get(0).figure("torque.value"));
      same(own.target, rounds.get(1).figure("torque.value"));
      List<OwnFigures.Scale> crib = scales(own.newtonMetres(half));
      round(own.round(FIFTY, last, crib, day, DemoFiguresTest.MONTHS, lever()), rounds.get(0));
      round(last, rounds.get(1));
      rounds.forEach(round -> assertEquals(own.unit, round.text("torque.unit"), item));
      order(line.list("order"));
    }
  }

  private void round(Optional<OwnFigures.Mark> own, JsonTree round) {
    assertEquals(own.isPresent(), round.has("setting"), item);
    own.ifPresent(
        mark -> {
          assertEquals(mark.wrench(), round.text("wrench"), item);
          same(mark.mark(), round.figure("setting.value"));
        });
  }

  private static String percents(List<JsonTree> passes) {
    return passes.stream().map(JsonTree::value).toList().toString();
  }

  /** Every position once, and no two neighbours one after the other. */
  private void order(List<JsonTree> order) {
    List<Integer> turns = new ArrayList<>();
    order.forEach(turn -> turns.add(Integer.valueOf(text(turn.value()))));
    int count = (Integer) entry.get("count");
    assertEquals(count, new HashSet<>(turns).size(), item + turns);
    for (int i = 0; i < count; i++) {
      assertTrue(turns.get(i) >= 1 && turns.get(i) <= count, item + turns);
      int apart = i == 0 ? 2 : Math.abs(turns.get(i) - turns.get(i - 1));
      assertTrue(apart > 1 && apart < count - 1, item + turns);
    }
  }

  private void same(BigDecimal own, BigDecimal recorded) {
    assertEquals(0, own.compareTo(recorded), item + ": " + own + " and " + recorded);
  }
}
