package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.files.ShopFolders;
import baysheet.yaml.Scalar;
import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Shop folders with one change each. The test knows what it changed: whatever comes of it, no fact
 * of the file is dropped without a word, the tool does not fail, and nothing takes for ever.
 *
 * <p>A build makes a few hundred changes. {@code mvn test -Pendurance} makes 20,000 in one process
 * with 256 MiB; {@code -Dmutations=N -Dfirst=I} chooses others; {@code -Dnumbers=I,J} repeats those
 * that were found; {@code -Dpaths=REGEX} changes only facts whose path matches.
 */
class MutatedShopsTest {
  private static final int USUAL = 200;
  private static final long SEED = 20_260_302;
  private static final long LONGEST_SECONDS = 5;

  /** Of all threads: a sheet is made on others than the one that waits for it. */
  private static final OperatingSystemMXBean PROCESS =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  /** A pattern; only facts with such paths are changed, as in {@code crib\\..*}. */
  private static final Optional<String> PATHS = Optional.ofNullable(System.getProperty("paths"));

  private static final Path REPORT = Path.of("target", "mutated-shops.txt");

  @TempDir private Path folder;

  private final List<String> violations = new ArrayList<>();
  private final Map<String, Integer> verdicts = new TreeMap<>();
  private final Map<String, Integer> declared = new TreeMap<>();
  private long slowest;

  @Test
  void noFactIsDroppedAndNothingFails() throws Exception {
    List<MutatedShop> shops =
        List.of(
            MutatedShop.copy(Path.of("jobs"), folder.resolve("demo")),
            MutatedShop.copy(Path.of("src/test/resources/shop"), folder.resolve("small")));
    int[] numbers = numbers();
    int count = numbers.length;
    ExecutorService runner = Executors.newSingleThreadExecutor();
    for (int i = 0; i < count; i++) {
      int number = numbers[i];
      // Ends a hang. How long each takes is measured in the processor's time: machines are shared.
      runner.submit(() -> one(number, shops)).get(5, TimeUnit.MINUTES);
      if (i % 500 == 499 || i == count - 1) {
        report(i + 1);
      }
    }
    runner.shutdown();
    assertEquals(List.of(), violations);
    assertTrue(slowest <= TimeUnit.SECONDS.toNanos(LONGEST_SECONDS), "slowest: " + slowest);
    assertTrue(count < USUAL || verdicts.size() >= 4, verdicts.toString());
  }

  private static int[] numbers() {
    int first = Integer.getInteger("first", 0);
    int count = Integer.getInteger("mutations", USUAL);
    return Optional.ofNullable(System.getProperty("numbers"))
        .map(it -> Stream.of(it.split(",")).mapToInt(Integer::parseInt).toArray())
        .orElseGet(() -> IntStream.range(first, first + count).toArray());
  }

  private void one(int number, List<MutatedShop> shops) {
    Random random = new Random(SEED + 7_919L * number);
    MutatedShop shop = shops.get(random.nextInt(10) < 8 ? 0 : 1);
    Path job = shop.jobs.get(random.nextInt(shop.jobs.size()));
    MutatedShop.Unmutated before = shop.before(job);
    List<Path> used =
        before.used().stream().filter(it -> PATHS.isEmpty() || hasFacts(shop, it)).toList();
    if (used.isEmpty()) {
      return;
    }
    Path file =
        random.nextInt(10) < 8
            ? used.get(random.nextInt(used.size()))
            : shop.files.get(random.nextInt(shop.files.size()));
    Case its = new Case(number, shop, before, file);
    if (random.nextInt(20) == 0 && used.contains(file) && PATHS.isEmpty()) {
      MisplacedFile[] ways = MisplacedFile.values();
      its.misplaced(ways[random.nextInt(ways.length)]);
    } else {
      mutation(shop, file, random).ifPresent(its::mutated);
    }
  }

  private static boolean hasFacts(MutatedShop shop, Path file) {
    return shop.facts(file).stream().anyMatch(it -> it.path().matches(PATHS.orElseThrow()));
  }

  private static Optional<ShopMutation> mutation(MutatedShop shop, Path file, Random random) {
    String text = shop.text(file);
    if (random.nextInt(10) < 3 && PATHS.isEmpty()) {
      return Optional.of(ShopMutation.careless(text, random));
    }
    List<WrittenFact> facts =
        shop.facts(file).stream().filter(it -> it.path().matches(PATHS.orElse(".*"))).toList();
    return facts.isEmpty()
        ? Optional.empty()
        : ShopMutation.of(text, facts.get(random.nextInt(facts.size())), random);
  }

  /** One change of one file, and what comes of it for one job. */
  private final class Case {
    private final int number;
    private final MutatedShop shop;
    private final MutatedShop.Unmutated before;
    private final Path file;

    Case(int number, MutatedShop shop, MutatedShop.Unmutated before, Path file) {
      this.number = number;
      this.shop = shop;
      this.before = before;
      this.file = file;
    }

    void mutated(ShopMutation mutation) {
      shop.write(file, mutation.text());
      try {
        tell(mutation.what(), verdict(mutation, timed()));
      } finally {
        shop.restore(file);
      }
    }

    /** A copy of the shop file or of a job is another file beside it, and nothing is lost. */
    void misplaced(MisplacedFile way) {
      boolean besides =
          way == MisplacedFile.COPIED
              && (file.equals(before.job()) || file.endsWith(ShopFolders.SHOP_FILE));
      try {
        way.apply(file);
        MutatedShop.Result after = timed();
        String verdict = sound(after).orElse(besides ? "unprinted" : "dropped: the whole file");
        tell(way.toString(), verdict);
      } catch (IOException e) {
        throw new UncheckedIOException("cannot change " + file, e);
      } finally {
        way.undo(file, shop.text(file));
      }
    }

    private MutatedShop.Result timed() {
      long start = PROCESS.getProcessCpuTime();
      MutatedShop.Result after = shop.run(before.job());
      slowest = Math.max(slowest, PROCESS.getProcessCpuTime() - start);
      return after;
    }

    private void tell(String what, String verdict) {
      verdicts.merge(verdict.replaceFirst(":.*", ""), 1, Integer::sum);
      if (verdict.contains(":")) {
        violations.add(
            "#%d job %s, %s, %s: %s"
                .formatted(number, shop.shown(before.job()), shop.shown(file), what, verdict));
      }
    }

    /** A fault, or a problem with its place; empty where the sheet is made as if nothing were. */
    private Optional<String> sound(MutatedShop.Result after) {
      if (after.fault().isPresent()) {
        return Optional.of("fault: " + after.fault().get());
      }
      Set<String> told = new HashSet<>(after.told());
      told.removeAll(before.result().told());
      boolean placed = after.problems().stream().noneMatch(it -> it.at().source().name().isBlank());
      if (!told.isEmpty()) {
        return Optional.of(placed ? "problem" : "placeless: " + told);
      }
      return after.isDone() ? Optional.empty() : Optional.of("placeless: no sheet, no problem");
    }

    private String verdict(ShopMutation mutation, MutatedShop.Result after) {
      Optional<String> sound = sound(after);
      if (sound.isPresent()) {
        return sound.get();
      }
      if (mutation.marker().filter(after.says()::contains).isPresent()) {
        return "shown";
      }
      boolean differs = !after.ids().equals(before.result().ids());
      boolean enough =
          mutation.must() == ShopMutation.Must.DIFFER
              || mutation.must() == ShopMutation.Must.STAY_SOUND;
      return differs && enough ? "differs" : unsaid(mutation, after, differs);
    }

    /** Nothing shows what was changed: each of the facts has to be declared. */
    private String unsaid(ShopMutation mutation, MutatedShop.Result after, boolean differs) {
      ChangedFile now = shop.changed(file);
      UnprintedFacts unprinted = new UnprintedFacts(shop, before, after, now);
      boolean careless = mutation.must() == ShopMutation.Must.STAY_SOUND;
      Set<String> dropped = new TreeSet<>();
      for (WrittenFact fact : careless ? changed(now) : mutation.facts()) {
        Optional<String> reason = unprinted.reason(file, fact, mutation.must());
        reason.ifPresent(it -> declared.merge(it, 1, Integer::sum));
        if (reason.isEmpty()) {
          dropped.add(fact.path());
        }
      }
      String what = differs ? "dropped though the sheet differs: " : "dropped: ";
      return dropped.isEmpty() ? "unprinted" : what + dropped;
    }

    /** The facts that a careless change altered. */
    private List<WrittenFact> changed(ChangedFile now) {
      return shop.facts(file).stream()
          .filter(fact -> fact.node() instanceof Scalar)
          .filter(fact -> !now.value(fact).equals(Optional.of(((Scalar) fact.node()).text())))
          .toList();
    }
  }

  private void report(int count) throws IOException {
    String summary =
        "%d mutations: %s, slowest %d ms of the processor's time%n"
            .formatted(count, verdicts, TimeUnit.NANOSECONDS.toMillis(slowest));
    Files.writeString(
        REPORT, summary + "declared: " + declared + "\n" + String.join("\n", violations) + "\n");
  }
}
