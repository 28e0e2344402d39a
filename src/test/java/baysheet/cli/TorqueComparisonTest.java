package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.cli.PublishedFormulas.Screw;
import baysheet.cli.PublishedFormulas.Span;
import baysheet.output.Console;
import baysheet.output.Exit;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Two thousand inputs of {@code torque --json}, drawn with a fixed seed, against formulas typed in
 * from their publications ({@link PublishedFormulas}).
 */
class TorqueComparisonTest {
  private static final int INPUTS = 2000;
  private static final long SEED = 20260302;
  private static final List<String> UNITS = List.of("N·m", "lbf·ft", "lbf·in", "kgf·m");
  private static final List<String> TREATMENTS =
      List.of(
          "dry", "oiled", "locking-compound", "anti-seize", "grease", "sealant", "as-delivered");

  private final SplittableRandom random = new SplittableRandom(SEED);
  private int set;
  private int doubted;
  private int high;

  @Test
  void everyFigureIsThatOfThePublishedFormula() {
    for (int i = 0; i < INPUTS; i++) {
      new Input().check();
    }
    // That each kind of answer was met often shows that the inputs try them.
    assertTrue(set > INPUTS / 5, set + " settings");
    assertTrue(doubted > INPUTS / 20, doubted + " in doubt");
    assertTrue(high > INPUTS / 100, high + " high");
  }

  private <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private boolean oneIn(int many) {
    return random.nextInt(many) == 0;
  }

  private BigDecimal figure(double from, double to, int decimals) {
    double drawn = from * Math.pow(to / from, random.nextDouble());
    return new BigDecimal(drawn).setScale(decimals, RoundingMode.HALF_UP);
  }

  /** One command line and what it must answer. */
  private final class Input {
    private final List<String> words = new ArrayList<>(List.of("torque"));
    private final String unit = one(UNITS);
    private BigDecimal target;
    private BigDecimal low;
    private BigDecimal high;
    private String whose = "default";
    private JsonTree told;

    void check() {
      value();
      Optional<Fastener> fastener = oneIn(5) ? Optional.empty() : Optional.of(new Fastener());
      Optional<Scale> scale = oneIn(4) ? Optional.empty() : Optional.of(new Scale());
      if (oneIn(2)) {
        // Options before the value as well.
        words.add(1, "--json");
      } else {
        words.add("--json");
      }
      run();
      boolean doubtful = fastener.map(Fastener::isDoubtful).orElse(false);
      if (doubtful) {
        assertFalse(told.has("band") || told.has("converted"), words::toString);
      } else {
        band();
        conversions();
      }
      fastener.ifPresent(Fastener::check);
      scale.ifPresent(it -> it.check(doubtful));
    }

    private BigDecimal per(String other) {
      return PublishedFormulas.newtonMetres(other);
    }

    private void value() {
      int decimals = random.nextInt(unit.equals("kgf·m") ? 3 : 2);
      double size = per(unit).doubleValue();
      target = figure(1 / size, 400 / size, decimals).max(new BigDecimal("0.5"));
      String text = target.toPlainString() + " " + unit;
      BigDecimal width = target.multiply(new BigDecimal("0.05"));
      switch (random.nextInt(5)) {
        case 0 -> {
          BigDecimal percent = figure(1, 20, 0);
          width = target.multiply(percent).movePointLeft(2);
          words.add(text + " ± " + percent + " %");
          whose = "book";
        }
        case 1 -> {
          width = target.multiply(new BigDecimal("0.08")).setScale(2, RoundingMode.UP);
          words.add(target.toPlainString() + " ± " + width.toPlainString() + " " + unit);
          whose = "book";
        }
        case 2 -> {
          BigDecimal percent = figure(1, 15, 1);
          width = target.multiply(percent).movePointLeft(2);
          words.addAll(List.of("--band", percent.toPlainString() + "%"));
          words.addAll(List.of(text.split(" ")));
          whose = "option";
        }
        default -> words.addAll(List.of(text.split(" ")));
      }
      low = target.subtract(width);
      high = target.add(width);
    }

    private void run() {
      StringWriter out = new StringWriter();
      StringWriter err = new StringWriter();
      Console console = new Console(new PrintWriter(out), new PrintWriter(err), false);
      int exit = Main.run(words.toArray(String[]::new), console, Garage.TODAY);
      assertEquals(Exit.DONE, exit, words + "\n" + err);
      told = JsonTree.of(out.toString().getBytes(StandardCharsets.UTF_8));
    }

    private void near(double own, String key, double tolerance) {
      double found = told.figure(key).doubleValue();
      assertTrue(Math.abs(found - own) <= tolerance, key + ": " + own + " of " + words + told);
    }

    private void band() {
      assertEquals(whose, told.text("band.of"), words::toString);
      assertEquals(unit, told.text("band.unit"), words::toString);
      // Rounded towards the middle, by less than a thousandth.
      BigDecimal from = told.figure("band.from");
      BigDecimal to = told.figure("band.to");
      assertTrue(from.compareTo(low) >= 0 && to.compareTo(high) <= 0, words::toString);
      near(low.doubleValue(), "band.from", 0.001);
      near(high.doubleValue(), "band.to", 0.001);
    }

    private void conversions() {
      for (JsonTree other : told.list("converted")) {
        BigDecimal own =
            target.multiply(per(unit)).divide(per(other.text("unit")), PublishedFormulas.FINE);
        assertEquals(
            0,
            PublishedFormulas.rounded(own, 3)
                .compareTo(PublishedFormulas.rounded(other.figure("value"), 3)),
            () -> words + ": " + own + " " + other);
      }
    }

    private final class Fastener {
      private final Screw screw = one(PublishedFormulas.SCREWS);
      private final String strength = one(PublishedFormulas.CLASSES);
      private final boolean stainless = strength.startsWith("A");
      private final String treatment = oneIn(2) ? "" : one(TREATMENTS);
      private final boolean known = treatment.isEmpty() && oneIn(4);
      private final double friction;
      private final Span span;

      Fastener() {
        words.addAll(List.of("--thread", screw.name(), "--class", strength));
        if (!treatment.isEmpty()) {
          words.addAll(List.of("--treatment", treatment));
        }
        double usual = stainless ? 0.20 : 0.12;
        if (known) {
          BigDecimal given = figure(0.06, 0.4, 2);
          words.addAll(List.of("--friction", given.toPlainString()));
          friction = given.doubleValue();
          span = new Span(friction, friction);
        } else {
          friction = usual;
          span = PublishedFormulas.friction(treatment, stainless);
        }
      }

      private double load(double at) {
        return target.multiply(per(unit)).doubleValue() * 1000 / screw.lever(at);
      }

      private double proof() {
        return PublishedFormulas.proof(strength, screw.d()).orElseThrow() * screw.stressArea();
      }

      private double percent(double at) {
        return 100 * load(at) / proof();
      }

      boolean isDoubtful() {
        return percent(span.high()) > 110 || percent(span.low()) < 15;
      }

      private boolean isHigh() {
        return !isDoubtful() && percent(friction) > 110;
      }

      void check() {
        near(friction, "friction", 1e-9);
        near(load(friction) / 1000, "clampLoadKn", 0.0006);
        near(0.7 * load(friction) / 1000, "clampLoadScatter.from", 0.0006);
        near(1.3 * load(friction) / 1000, "clampLoadScatter.to", 0.0006);
        near(proof() / 1000, "proofLoadKn", 0.0006);
        near(percent(friction), "percentOfProof", 0.0006);
        near(screw.p(), "thread.pitch.value", 1e-9);
        assertEquals(String.valueOf(!screw.name().contains("x")), told.text("thread.pitchAssumed"));
        List<String> codes = told.list("warnings").stream().map(it -> it.text("code")).toList();
        List<String> own =
            isDoubtful() ? List.of("does-not-fit") : isHigh() ? List.of("high-torque") : List.of();
        assertEquals(own, codes, () -> words + " " + percent(span.high()) + told);
        doubted += isDoubtful() ? 1 : 0;
        TorqueComparisonTest.this.high += isHigh() ? 1 : 0;
      }
    }

    /** A wrench with a scale in its own unit, perhaps with an extension. */
    private final class Scale {
      private final String own = one(UNITS.subList(0, 3));
      private final BigDecimal from;
      private final BigDecimal to;
      private final BigDecimal step;
      private final double accuracy;
      private double factor = 1;

      Scale() {
        // Mostly about the torque, so that settings are met.
        double about =
            target.multiply(per(unit)).divide(per(own), PublishedFormulas.FINE).doubleValue();
        from = figure(about * 0.1, about * 0.9, 1).max(new BigDecimal("0.5"));
        to = from.multiply(new BigDecimal(2 + random.nextInt(8)));
        step =
            from.multiply(new BigDecimal(one(List.of("0.01", "0.02", "0.1"))))
                .max(new BigDecimal("0.1"));
        words.addAll(List.of("--from", from.toPlainString() + " " + own));
        words.addAll(List.of("--to", to.toPlainString(), own));
        words.addAll(List.of("--step", step.toPlainString() + own));
        // ISO 6789-1: 6 % up to a maximum of 10 N·m, else 4 %, as a wrench maker's manual gives it.
        boolean small = to.multiply(per(own)).compareTo(BigDecimal.TEN) <= 0;
        if (oneIn(2)) {
          BigDecimal given = figure(1, 8, 1);
          words.addAll(List.of("--accuracy", given.toPlainString() + " %"));
          accuracy = given.doubleValue();
        } else {
          accuracy = small ? 6 : 4;
        }
        if (oneIn(3)) {
          int hand = 200 + random.nextInt(500);
          int beyond = 20 + random.nextInt(150);
          int degrees = random.nextInt(181);
          words.addAll(List.of("--length", hand + " mm", "--reach", beyond + "mm"));
          words.addAll(List.of("--angle", degrees + "°"));
          factor = PublishedFormulas.extension(hand, beyond, degrees);
        }
      }

      void check(boolean doubtful) {
        near(accuracy, "accuracy.percent", 1e-9);
        double scale = per(own).doubleValue();
        double wanted = target.multiply(per(unit)).doubleValue() / scale * factor;
        // What falls together with an end of scale or band is left to the last digit's chance.
        if (close(wanted, from.doubleValue()) || close(wanted, to.doubleValue())) {
          return;
        }
        double marks = (wanted - from.doubleValue()) / step.doubleValue();
        if (Math.abs(marks - Math.floor(marks) - 0.5) < 1e-6) {
          return;
        }
        double mark = from.doubleValue() + step.doubleValue() * Math.floor(marks + 0.5);
        double arrives = mark / factor * scale / per(unit).doubleValue();
        boolean onScale =
            wanted >= from.doubleValue()
                && wanted <= to.doubleValue()
                && mark <= to.doubleValue() * (1 + 1e-12);
        if (close(arrives, low.doubleValue()) || close(arrives, high.doubleValue())) {
          return;
        }
        boolean accepted = arrives >= low.doubleValue() && arrives <= high.doubleValue();
        boolean expected = onScale && accepted && !doubtful;
        assertEquals(expected, told.has("setting"), () -> words + " " + wanted + " " + told);
        if (expected) {
          set++;
          assertEquals(own, told.text("setting.unit"));
          near(mark, "setting.value", 1e-9 * mark);
          near(arrives, "arrives.value", 0.0006);
          width(arrives);
        }
      }

      /** The wrench's own line says whether the deviation stays inside the band. */
      private void width(double arrives) {
        double least = arrives * (1 - accuracy / 100);
        double most = arrives * (1 + accuracy / 100);
        if (close(least, low.doubleValue()) || close(most, high.doubleValue())) {
          return;
        }
        boolean inside = least >= low.doubleValue() && most <= high.doubleValue();
        String why = told.list("wrenches").get(0).text("why");
        assertEquals(inside, why.endsWith("stays inside the band"), () -> words + why);
      }

      private static boolean close(double one, double other) {
        return Math.abs(one - other) <= 1e-9 * Math.abs(other);
      }
    }
  }
}
