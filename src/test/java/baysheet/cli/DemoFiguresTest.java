package baysheet.cli;

import static baysheet.cli.OwnBooks.list;
import static baysheet.cli.OwnBooks.map;
import static baysheet.cli.OwnBooks.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every torque line of every demo sheet, reckoned again from the files people wrote. */
class DemoFiguresTest {
  private static final Path JOBS = Path.of("jobs");
  private static final OwnBooks BOOKS = new OwnBooks(JOBS);
  private static final OwnSquares SQUARES = new OwnSquares(BOOKS.shop());
  // As the demo shop has it; the test below holds these to the file.
  private static final BigDecimal SHOP_BAND = new BigDecimal(5);
  private static final int MONTHS = 12;
  // 48 lbf·ft clamps an M10 of class 8.8 beyond its proof load (ISO 898-1: 33.6 kN); see the job.
  private static final Set<String> DOUBTED = Set.of("axle-bush-bracket-bolt@rear-left");

  @TempDir private static Path out;

  @BeforeAll
  static void make() {
    for (String day : days()) {
      StringWriter told = new StringWriter();
      Console console = new Console(new PrintWriter(told), new PrintWriter(told), false);
      String[] words = {"sheets", JOBS.resolve(day).toString(), "--record", "-o", out.toString()};
      assertEquals(Exit.DONE, Main.run(words, console, Garage.TODAY), told.toString());
    }
  }

  private static List<String> days() {
    return List.of("2026-03-02", "2026-03-03");
  }

  static List<Path> jobs() {
    return DayFolders.all(JOBS);
  }

  private static JsonTree record(Path job) {
    String name = job.getFileName().toString().replace(".yaml", ".json");
    return JsonTree.of(Garage.bytes(out.resolve(DayFolders.day(job)).resolve(name)));
  }

  /** The record's lines, one for each place, by {@code name@place}. */
  private static Map<String, JsonTree> lines(Path job) {
    Map<String, JsonTree> lines = new LinkedHashMap<>();
    for (JsonTree line : record(job).list("torque")) {
      for (JsonTree place : line.list("places")) {
        String item = line.text("fastener") + "@" + text(place.value());
        assertFalse(lines.containsKey(item), item + " has two lines");
        lines.put(item, line);
      }
    }
    return lines;
  }

  @Test
  void theShopIsAsReckonedWith() {
    assertEquals("5 %", text(BOOKS.shop().get("band")));
    assertEquals(MONTHS, BOOKS.shop().get("calibration-interval"));
    assertEquals(List.of("N·m", "lbf·ft"), map(BOOKS.shop().get("units")).get("torque"));
    assertEquals(14, jobs().size());
    jobs().forEach(job -> assertTrue(days().contains(DayFolders.day(job).toString()), text(job)));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void noFastenerIsLeftOutAndNoneIsAdded(Path job) {
    assertEquals(new TreeSet<>(BOOKS.fasteners(job).keySet()), new TreeSet<>(lines(job).keySet()));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyLineSaysWhatTheBookSays(Path job) {
    Map<String, JsonTree> lines = lines(job);
    BOOKS
        .fasteners(job)
        .forEach(
            (item, entry) -> {
              JsonTree line = lines.get(item);
              assertEquals(text(entry.get("count")), line.text("count"), item);
              for (String key : List.of("thread", "class", "head", "source", "replaced")) {
                assertEquals(
                    Optional.ofNullable(entry.get(key)).map(OwnBooks::text), said(line, key), item);
              }
              assertEquals(
                  Optional.of(text(entry.getOrDefault("threads", "not-stated"))),
                  said(line, "threads").map(it -> it.replace(' ', '-')),
                  item);
              assertEquals(yesNo(entry.get("reuse")), line.text("reuse"), item);
              assertEquals(entry.containsKey("overridden"), line.get("overridden").value(), item);
              assertEquals(entry.containsKey("final"), line.get("twoVisits").value(), item);
            });
  }

  private static Optional<String> said(JsonTree line, String key) {
    return line.has(key) ? Optional.of(line.text(key).replace('\u00a0', ' ')) : Optional.empty();
  }

  private static String yesNo(Object truth) {
    return Boolean.TRUE.equals(truth) ? "yes" : "no";
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyFigureComesOutAgain(Path job) {
    LocalDate day = LocalDate.parse(DayFolders.day(job).toString());
    Map<String, JsonTree> lines = lines(job);
    BOOKS
        .fasteners(job)
        .forEach((item, entry) -> new Line(item, entry, day).check(lines.get(item)));
  }

  /** One line and what it must say. */
  private record Line(String item, Map<String, Object> entry, LocalDate day) {
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
      OwnFigures own = new OwnFigures(written, SHOP_BAND);
      assertEquals(own.target.toPlainString() + " " + own.unit, stage.quantity("torque"), item);
      assertEquals(written, stage.text("written").replace('\u00a0', ' '), item);
      band(own, written, stage);
      if (DOUBTED.contains(item)) {
        List.of("second", "reading", "wrench", "setting", "arrives", "trouble")
            .forEach(key -> assertFalse(stage.has(key), item + " has " + key));
        return;
      }
      second(own, stage);
      setting(own, stage);
    }

    /** Printed to a tenth, towards the middle. */
    private void band(OwnFigures own, String written, JsonTree stage) {
      same(own.low.setScale(1, RoundingMode.CEILING), stage.figure("band.from"));
      same(own.high.setScale(1, RoundingMode.FLOOR), stage.figure("band.to"));
      assertEquals(own.unit, stage.text("band.unit"), item);
      assertEquals(written.contains("±") ? "book" : "shop", stage.text("band.of"), item);
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
            BigDecimal exact =
                it.arrives().divide(OwnFigures.factor(own.unit), RoundingMode.HALF_UP);
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
      BigDecimal first = new BigDecimal(inRounds() ? 50 : 100);
      return own.wrench(scales(it -> SQUARES.goOn(it, entry)), day, MONTHS, lever(), first)
          .filter(OwnFigures.Mark::inside)
          .or(() -> own.wrench(scales(it -> true), day, MONTHS, lever(), first));
    }

    private static List<OwnFigures.Scale> scales(Predicate<Map<String, Object>> which) {
      return BOOKS.wrenches().stream().filter(which).map(OwnFigures.Scale::of).toList();
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
        OwnFigures own = new OwnFigures(text(written.get(0)), SHOP_BAND);
        OwnFigures.Scale scale = mark(own).orElseThrow().scale();
        BigDecimal half = OwnFigures.half(own.target);
        same(half, rounds.get(0).figure("torque.value"));
        same(own.target, rounds.get(1).figure("torque.value"));
        for (JsonTree round : rounds) {
          BigDecimal torque = own.newtonMetres(round.figure("torque.value"));
          same(OwnFigures.round(torque, scale, lever()), round.figure("setting.value"));
          assertEquals(own.unit, round.text("torque.unit"), item);
          assertEquals(scale.name(), round.text("wrench"), item);
        }
        order(line.list("order"));
      }
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
}
