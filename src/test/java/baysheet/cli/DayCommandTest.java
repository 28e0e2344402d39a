package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Console;
import baysheet.output.Exit;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The two demo days, laid out. */
class DayCommandTest {
  private static final String EASY = "2026-03-02";
  private static final String HARD = "2026-03-03";

  @TempDir private Path folder;
  private CopyOfTheDemo demo;

  @BeforeEach
  void copy() {
    demo = CopyOfTheDemo.in(folder.resolve("garage"));
  }

  private Garage.Run run(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console = new Console(new PrintWriter(out), new PrintWriter(err), false);
    int exit = Main.run(words, console, Garage.TODAY);
    return new Garage.Run(exit, out.toString(), err.toString());
  }

  private Garage.Run day(String day, String... options) {
    List<String> words = new ArrayList<>(List.of("day", day, "--shop", demo.root().toString()));
    words.addAll(List.of(options));
    return run(words.toArray(String[]::new));
  }

  private JsonNode laidOut(String day) throws IOException {
    Garage.Run run = day(day, "--json");
    assertEquals(Exit.DONE, run.exit(), run.err());
    return new ObjectMapper().readTree(run.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {EASY, HARD})
  void nobodyAndNothingIsInTwoPlacesAtOnce(String day) throws IOException {
    JsonNode jobs = laidOut(day).path("jobs");
    assertEquals(7, jobs.size());
    assertEquals(List.of(), ClockCheck.faults(jobs));
  }

  private static Stream<JsonNode> each(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false);
  }

  private static JsonNode job(JsonNode day, String number) {
    return each(day.path("jobs"))
        .filter(job -> job.path("job").asText().equals(number))
        .findFirst()
        .orElseThrow();
  }

  /** Both want the one ball joint splitter; the car of one comes half an hour after opening. */
  @Test
  void theToolThatTwoJobsWantClashesOnlyWithoutTheTimetable() throws IOException {
    JsonNode day = laidOut(HARD);
    List<JsonNode> clashes =
        each(day.path("clashes"))
            .filter(it -> it.path("name").asText().equals("ball joint splitter"))
            .toList();
    assertEquals(1, clashes.size(), day.path("clashes").toString());
    assertEquals("[\"2410\",\"2414\"]", clashes.get(0).path("jobs").toString());
    assertTrue(ClockCheck.minute(job(day, "2410"), "from") >= 8 * 60 + 30);
    assertTrue(job(day, "2410").path("chance").asDouble() > 0.9);
    assertTrue(job(day, "2414").path("chance").asDouble() > 0.9);
    run("check", demo.root().resolve(HARD).toString()).says("tool-clash");
  }

  @Test
  void nothingRunsOnThroughABreakOfTheGarage() throws IOException {
    for (JsonNode job : laidOut(EASY).path("jobs")) {
      assertFalse(job.path("from").asText().startsWith("12:0"), job.toString());
      assertFalse(job.path("from").asText().startsWith("12:2"), job.toString());
    }
  }

  @Test
  void theEveningListSaysWhatToBorrowAndWhomToBook() throws IOException {
    JsonNode evening = laidOut(HARD).path("evening");
    List<String> borrow =
        each(evening.path("borrow"))
            .map(it -> it.path("job").asText() + " " + it.path("text").asText())
            .toList();
    assertTrue(borrow.contains("2412 bush press set"), borrow.toString());
    assertTrue(borrow.contains("2414 crow-foot hex 24 mm, reach 60 mm"), borrow.toString());
    assertTrue(
        each(evening.path("book")).anyMatch(it -> it.path("text").asText().contains("alignment")));
  }

  @Test
  void aPromiseThatCannotBeKeptIsSaidWithItsReason() {
    demo.replacing(HARD + "/2409.yaml", "ready-by: 11:30", "ready-by: 08:30");
    Garage.Run run = day(HARD);
    run.says("2409 (QZ 33-615, R. Oxlipdale) will not be ready by 08:30: expected ready at ");
    run("check", demo.root().resolve(HARD).toString()).says("late-promise");
  }

  @Test
  void aPromiseThatMayNotHoldIsAtRisk() {
    day(HARD)
        .says("2409 (QZ 33-615, R. Oxlipdale) is at risk: promised for 11:30, expected ready at ");
  }

  /** Nothing else holds it up, so the time at which the vehicle comes and the work are named. */
  @Test
  void aRiskThatComesFromTheArrivalSaysSo() throws IOException {
    demo.replacing(HARD + "/2409.yaml", "ready-by: 11:30", "arrives: 15:00\nready-by: 16:00");
    JsonNode job = job(laidOut(HARD), "2409");
    assertEquals("15:00", job.path("from").asText());
    String risk =
        day(HARD)
            .out()
            .lines()
            .filter(it -> it.startsWith("At risk: 2409 "))
            .findFirst()
            .orElseThrow();
    assertTrue(risk.contains(" It starts at 15:00, when the vehicle arrives, and needs "), risk);
    assertTrue(risk.endsWith("min of work."), risk);
  }

  /** The neighbour who lends a wrench has no sheet: its square counts, not the row. */
  @Test
  void aWrenchToBorrowIsNamedWithItsSquare() {
    // W2 lapsed the day before, W1 ends at 25 N·m and W3 begins at 40 N·m.
    Garage.Run run = day(HARD);
    run.says("Borrow: 2408 torque wrench for 27\u00a0N·m, 3/8\u00a0in\n");
    // The sheet itself keeps the row, in which the figure is written.
    run(
        "sheets",
        demo.root().resolve(HARD + "/2408.yaml").toString(),
        "-o",
        folder.resolve("o").toString());
    String sheet = Paper.of(Garage.bytes(folder.resolve("o/" + HARD + "/2408-1.pdf"))).text();
    assertTrue(
        sheet
            .replace('\u00a0', ' ')
            .replaceAll("\\s+", " ")
            .contains("torque wrench for 27 N·m, 3/8 in (row"),
        sheet);
  }

  @Test
  void partsAreListedByJobWithTheirNumbers() {
    demo.replacing(
        "vehicles/larkfell-pipit-2015.yaml",
        "\nkerb-mass:",
        "\npart-numbers: {brake disc: LK 40-112}\nkerb-mass:");
    Garage.Run run = day(EASY);
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("Order parts: 2401 2\u00a0×\u00a0brake disc, LK 40-112\n");
    Paper page = Paper.of(Garage.bytes(demo.root().resolveSibling("out/" + EASY + "/day.pdf")));
    assertEquals(1, page.pages());
    assertTrue(
        page.text().replace('\u00a0', ' ').contains("☐ 2 × brake disc, LK 40-112"), page.text());
  }

  /** The same work on two cars of one book, both here at opening: both want the tool at once. */
  @Test
  void aJobThatWaitsSaysForWhat() throws IOException {
    demo.with(HARD + "/2410.yaml", trackRodEnd(2410, "bay: 2\nby: T2"));
    demo.with(HARD + "/2414.yaml", trackRodEnd(2414, "bay: 1\nby: T1"));
    JsonNode day = laidOut(HARD);
    boolean isLast =
        ClockCheck.minute(job(day, "2410"), "from") > ClockCheck.minute(job(day, "2414"), "from");
    JsonNode waits = job(day, isLast ? "2410" : "2414");
    JsonNode goesFirst = job(day, isLast ? "2414" : "2410");
    assertEquals("08:00", goesFirst.path("from").asText());
    assertEquals(splitter(goesFirst).path("to"), splitter(waits).path("from"));
    day(HARD)
        .says(
            "It starts at %s because it needs the ball joint splitter at %s, which is in use by %s"
                .formatted(
                    waits.path("from").asText(),
                    splitter(goesFirst).path("to").asText(),
                    goesFirst.path("job").asText()));
  }

  /** It cannot be ready by then, so the day says why it is not. */
  private static String trackRodEnd(int number, String where) {
    return "job: %d\nvehicle: {book: larkfell-pipit-2015, plate: AB %d, odometer: 90110 km}\n"
            .formatted(number, number)
        + where
        + "\nready-by: 08:10\nwork: track-rod-end at front-left\n";
  }

  private static int minute(JsonNode job, String key) {
    return LocalTime.parse(job.path(key).asText()).toSecondOfDay() / 60;
  }

  private static JsonNode splitter(JsonNode job) {
    return each(job.path("tools"))
        .filter(tool -> tool.path("tool").asText().equals("ball joint splitter"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theSameDayGivesTheSameBytes() throws IOException {
    Path csv = folder.resolve("parts.csv");
    Path pdf = folder.resolve("out").resolve(EASY).resolve("day.pdf");
    assertEquals(Exit.DONE, day(EASY, "--parts", csv.toString()).exit());
    byte[] first = Files.readAllBytes(pdf);
    byte[] parts = Files.readAllBytes(csv);
    Files.delete(pdf);
    assertEquals(Exit.DONE, day(EASY, "--parts", csv.toString()).exit());
    assertArrayEquals(first, Files.readAllBytes(pdf));
    assertArrayEquals(parts, Files.readAllBytes(csv));
    List<String> lines = Files.readAllLines(csv);
    assertEquals("date,job,count,part,number,places,single-use,vehicle,years,plate", lines.get(0));
    // RFC 4180: a cell with a comma stands in quotes.
    assertTrue(
        lines.contains(
            "2026-03-02,2401,2,brake disc,,front-left front-right,no,"
                + "\"Larkfell Pipit 1.4 five-door, front-wheel drive\",2015..2019,QX 41-207"),
        lines.toString());
  }

  @Test
  void aJobWithErrorsIsNamedAndTheOthersAreLaidOut() throws IOException {
    demo.replacing(EASY + "/2404.yaml", "bay: 1", "bay: 9");
    Garage.Run run = day(EASY);
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("2404 is not planned");
    assertTrue(Files.exists(folder.resolve("out").resolve(EASY).resolve("day.pdf")));
  }

  @Test
  void aDayWithoutJobsIsNoFault() {
    Garage.Run run = day("2026-03-08");
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("no jobs are planned for 2026-03-08");
  }
}
