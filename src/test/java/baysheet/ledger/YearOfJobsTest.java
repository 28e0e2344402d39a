package baysheet.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.ledger.Event.Closed;
import baysheet.ledger.Event.Decision;
import baysheet.ledger.Event.Issued;
import baysheet.ledger.Event.Prints;
import baysheet.ledger.Event.Replaced;
import baysheet.ledger.Event.Returned;
import baysheet.ledger.Event.Superseded;
import baysheet.ledger.Event.Value;
import baysheet.ledger.Event.Values;
import baysheet.ledger.Event.Withdrawn;
import baysheet.report.Problems;
import baysheet.torque.Band;
import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A made-up year of 3,000 jobs. Each answer is held against one that is worked out from the made-up
 * jobs themselves, in whole tenths of a newton metre and by going through all of them.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class YearOfJobsTest {
  private static final int JOBS = 3000;
  private static final int PLATES = 700;
  private static final LocalDate FIRST = LocalDate.parse("2026-01-01");
  private static final List<String> FASTENERS =
      List.of("wheel-nut", "arm-bolt", "pinch-bolt", "carrier-bolt");
  private static final List<String> PLACES = List.of("front-left", "front-right");

  /** A fastener at a place, as somebody tightened it; figures in tenths. */
  private record Done(
      int row,
      String fastener,
      String place,
      int target,
      int low,
      int high,
      String planned,
      String early,
      Optional<Integer> read,
      String used,
      boolean recheck) {}

  /** A sheet and what became of it. */
  private record Made(
      String sheet,
      String job,
      String plate,
      LocalDate date,
      int km,
      String fate,
      List<Done> done) {
    boolean counts() {
      return !fate.equals("superseded") && !fate.equals("withdrawn");
    }

    boolean isBack() {
      return fate.equals("closed") || fate.equals("back");
    }
  }

  @TempDir private static Path folder;
  private final List<Made> year = new ArrayList<>();
  private Index index;

  @BeforeAll
  void makeTheYear() throws IOException {
    Random chance = new Random(20260301);
    List<Event> events = new ArrayList<>();
    StringBuilder customers = new StringBuilder();
    for (int i = 0; i < JOBS; i++) {
      Made made = made(i, "A", fate(chance), chance);
      add(made, Optional.empty(), events, customers);
      if (made.fate().equals("superseded")) {
        Made next = made(i, "B", "closed", chance);
        Replaced replaced = new Replaced(made.sheet(), List.of("row 1 was unknown"));
        add(next, Optional.of(replaced), events, customers);
        events.add(new Superseded(next.date(), made.sheet(), next.sheet()));
      }
    }
    write(events, customers.toString());
    index = Index.read(folder, new Problems()).orElseThrow();
  }

  private static String fate(Random chance) {
    int drawn = chance.nextInt(100);
    if (drawn < 80) {
      return "closed";
    }
    return drawn < 87 ? "back" : drawn < 92 ? "issued" : drawn < 97 ? "superseded" : "withdrawn";
  }

  private static Made made(int number, String revision, String fate, Random chance) {
    List<Done> done = new ArrayList<>();
    int joints = 1 + chance.nextInt(4);
    for (int row = 1; row <= joints; row++) {
      int target = 200 + chance.nextInt(1500);
      int low = target * 95 / 100;
      int high = target * 105 / 100;
      boolean isRead = fate.equals("closed") || fate.equals("back") && chance.nextBoolean();
      String planned = "W" + (1 + chance.nextInt(5));
      String used = isRead && chance.nextInt(10) == 0 ? "W" + (1 + chance.nextInt(5)) : planned;
      Optional<Integer> read =
          isRead ? Optional.of(low + chance.nextInt(high - low + 1)) : Optional.empty();
      String early = chance.nextInt(4) == 0 ? "W" + (1 + chance.nextInt(5)) : "";
      String fastener = FASTENERS.get((row - 1 + number) % FASTENERS.size());
      done.add(
          new Done(
              row,
              fastener,
              PLACES.get(chance.nextInt(2)),
              target,
              low,
              high,
              planned,
              early.equals(planned) ? "" : early,
              read,
              used,
              fastener.equals("wheel-nut")));
    }
    String plate = chance.nextInt(20) == 0 ? "" : "RD %03d-X".formatted(chance.nextInt(PLATES));
    String job = String.valueOf(4000 + number);
    LocalDate date = FIRST.plusDays(number * 365L / JOBS);
    return new Made(
        Events.id(job, revision), job, plate, date, 50_000 + chance.nextInt(90_000), fate, done);
  }

  private static Quantity tenths(int value) {
    return new Quantity(BigDecimal.valueOf(value, 1), Unit.NEWTON_METRE);
  }

  private static Quantity km(int value) {
    return new Quantity(BigDecimal.valueOf(value), Unit.KILOMETRE);
  }

  private void add(
      Made made, Optional<Replaced> replaced, List<Event> events, StringBuilder customers) {
    year.add(made);
    if (!made.plate().isEmpty()) {
      String line = "{\"sheet\":\"%s\",\"name\":\"Customer %s\",\"plate\":\"%s\"}\n";
      customers.append(line.formatted(made.sheet(), made.plate(), made.plate()));
    }
    LocalDate on = made.date();
    events.add(
        new Issued(
            on,
            made.sheet(),
            made.job(),
            Optional.empty(),
            on,
            replaced.isPresent() ? "B" : "A",
            new Prints("a".repeat(64), "b".repeat(64), Optional.empty()),
            replaced,
            List.of("T1"),
            Optional.of(km(made.km())),
            made.done().stream().map(YearOfJobsTest::joint).toList(),
            List.of("alignment")));
    if (made.isBack()) {
      back(made, events);
    }
    if (made.fate().equals("withdrawn")) {
      events.add(new Withdrawn(on, made.sheet()));
    }
  }

  private static void back(Made made, List<Event> events) {
    LocalDate on = made.date();
    boolean closed = made.fate().equals("closed");
    List<String> marked = new ArrayList<>(List.of("sign.technician"));
    // As many ticks as a real sheet has.
    for (int step = 1; step <= 25; step++) {
      marked.add("tick." + step + ".front-left");
    }
    events.add(
        new Returned(on, made.sheet(), "c".repeat(64), marked, List.of("open.1"), List.of()));
    List<Value> values = new ArrayList<>();
    for (Done done : made.done()) {
      String box = "torque." + done.row() + "." + done.place();
      done.read().ifPresent(it -> values.add(new Value(box, tenths(it), Optional.of(done.used()))));
    }
    List<Decision> decided = closed ? List.of(new Decision("open.1", true)) : List.of();
    events.add(new Values(on, made.sheet(), "T1", values, decided, List.of()));
    if (closed) {
      events.add(new Closed(on, made.sheet(), "T1"));
    }
  }

  private static Joint joint(Done done) {
    return new Joint(
        done.row(),
        done.fastener(),
        done.place(),
        1,
        Optional.of(tenths(done.target())),
        Optional.of(new Band(tenths(done.low()), tenths(done.high()), Band.Origin.SHOP)),
        Optional.empty(),
        Optional.of(done.planned()),
        Optional.of(tenths(done.target())),
        done.early().isEmpty() ? List.of() : List.of(done.early()),
        done.recheck() ? Optional.of(km(80)) : Optional.empty());
  }

  private void write(List<Event> events, String customers) throws IOException {
    EventChain chain = EventChain.read(folder, new Problems()).orElseThrow();
    StringBuilder lines = new StringBuilder();
    for (Event event : events) {
      EventChain.Addition line = chain.addition(List.of(event));
      chain.added(List.of(event), line);
      lines.append(new String(line.lines(), StandardCharsets.UTF_8));
    }
    Files.writeString(folder.resolve("2026.jsonl"), lines);
    Files.writeString(folder.resolve("customers.jsonl"), customers);
  }

  @Test
  void theYearHasItsJobs() {
    assertEquals(year.size(), index.sheets().size());
    assertTrue(year.size() > JOBS + 100, "revisions are among them");
  }

  @ParameterizedTest
  @CsvSource({
    "W3, 2026-01-01, 2026-12-31, 8",
    "W3, 2026-04-01, 2026-06-30, -6",
    "W1, 2026-05-05, 2026-05-05, 3",
    "W5, 2026-01-01, 2026-12-31, 0",
    "W2, 2026-10-01, 2026-12-31, none"
  })
  void recallFindsEachJointAndRatesIt(String wrench, LocalDate from, LocalDate to, String error) {
    Optional<BigDecimal> percent =
        error.equals("none") ? Optional.empty() : Optional.of(new BigDecimal(error));
    TreeSet<String> found = new TreeSet<>();
    List<Recall.Affected> joints = new Recall(wrench, from, to, percent).joints(index);
    for (Recall.Affected it : joints) {
      found.add(
          it.story().id() + " " + it.joint().row() + " " + it.joint().place() + " " + it.rating());
    }
    assertEquals(joints.size(), found.size());
    TreeSet<String> expected = new TreeSet<>();
    for (Made made : year) {
      boolean asked = made.date().compareTo(from) >= 0 && made.date().compareTo(to) <= 0;
      for (Done done : asked && made.counts() ? made.done() : List.<Done>of()) {
        boolean last = done.used().equals(wrench);
        if (last || done.early().equals(wrench)) {
          String rated = last ? rated(done, error) : "UNKNOWN";
          expected.add(made.sheet() + " " + done.row() + " " + done.place() + " " + rated);
        }
      }
    }
    assertTrue(!expected.isEmpty());
    assertEquals(expected, found);
  }

  /** In hundredths of a tenth, so that no figure is rounded. */
  private static String rated(Done done, String error) {
    if (error.equals("none") || done.read().isEmpty()) {
      return "UNKNOWN";
    }
    int reached = done.read().get() * (100 + Integer.parseInt(error));
    return reached >= done.low() * 100 && reached <= done.high() * 100 ? "INSIDE" : "OUTSIDE";
  }

  @Test
  void historyShowsEverySheetOfAPlateAndNoOther() {
    for (int number = 0; number < PLATES; number += 35) {
      String plate = "RD %03d-X".formatted(number);
      TreeSet<String> expected = new TreeSet<>();
      for (Made made : year) {
        for (Done done : made.plate().equals(plate) ? made.done() : List.<Done>of()) {
          String read =
              done.read().filter(it -> made.isBack()).map(it -> tenths(it).figure()).orElse("-");
          String wrench = made.isBack() ? done.used() : done.planned();
          expected.add(made.sheet() + " " + done.row() + " " + read + " " + wrench);
        }
      }
      TreeSet<String> found = new TreeSet<>();
      String typed = plate.toLowerCase(Locale.ROOT).replace(" ", "");
      for (List<Object> row : History.of(index.ofPlate(typed), index).rows()) {
        if (row.get(4) instanceof Integer joint) {
          String read = row.get(9) instanceof Quantity value ? value.figure() : "-";
          found.add(row.get(1) + " " + joint + " " + read + " " + row.get(10));
        }
      }
      assertEquals(expected, found, plate);
    }
  }

  @ParameterizedTest
  @CsvSource({"2026-12-31, 0", "2026-06-30, 0", "2026-12-31, 50000"})
  void dueListsWhatIsStillToBeDone(LocalDate by, int reading) {
    String seen = "RD 035-X";
    Map<String, Quantity> odometers = reading == 0 ? Map.of() : Map.of("rd035x", km(reading));
    TreeSet<String> found = new TreeSet<>();
    for (Due.Item it : new Due(by, odometers).items(index)) {
      String joint = it.what().equals("re-check") ? it.detail().replaceAll(",.*", "") : "";
      found.add(it.what() + " " + it.story().id() + " " + joint);
    }
    TreeSet<String> expected = new TreeSet<>();
    for (int i = 0; i < year.size(); i++) {
      Made made = year.get(i);
      if (!made.counts() || made.date().isAfter(by)) {
        continue;
      }
      if (!made.fate().equals("closed")) {
        expected.add("sheet " + made.sheet() + " ");
      }
      if (made.fate().equals("back")) {
        expected.add("open item " + made.sheet() + " ");
      }
      boolean early = made.plate().equals(seen) && reading > 0 && reading < made.km() + 80;
      for (Done done : made.isBack() && !early ? made.done() : List.<Done>of()) {
        if (done.recheck() && !isDoneAgain(i, done)) {
          expected.add("re-check " + made.sheet() + " row " + done.row());
        }
      }
    }
    assertEquals(expected, found);
  }

  private boolean isDoneAgain(int at, Done done) {
    String plate = year.get(at).plate();
    return year.subList(at + 1, year.size()).stream()
        .filter(it -> !plate.isEmpty() && it.plate().equals(plate) && it.fate().equals("closed"))
        .flatMap(it -> it.done().stream())
        .anyMatch(it -> it.fastener().equals(done.fastener()) && it.place().equals(done.place()));
  }
}
