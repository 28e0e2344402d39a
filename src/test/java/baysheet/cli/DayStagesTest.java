package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.files.ShopFolders;
import baysheet.layout.Fonts;
import baysheet.ledger.Index;
import baysheet.ledger.SheetStory;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.SheetMaker;
import baysheet.report.Problems;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A day with a job that its file divides: work that takes two hours of one technician. */
class DayStagesTest {
  private static final String DAY = "2026-03-04";
  private static final String LONG = DAY + "/2491.yaml";

  @TempDir private Path folder;
  private CopyOfTheDemo demo;

  @BeforeEach
  void open() throws IOException {
    demo = CopyOfTheDemo.in(folder.resolve("garage"));
    Files.createDirectories(demo.root().resolve(DAY));
    demo.with(
        LONG,
        """
        job: 2491
        vehicle: {book: larkfell-pipit-2015, plate: QX 41-207, odometer: 81240 km}
        bay: 1
        by: T1
        stages: 3
        ready-by: 11:35
        work: discs-and-pads at front
        """);
  }

  private Garage.Run run(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console = new Console(new PrintWriter(out), new PrintWriter(err), false);
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--shop", demo.root().toString()));
    int exit = Main.run(all.toArray(String[]::new), console, Garage.TODAY);
    return new Garage.Run(exit, out.toString(), err.toString());
  }

  private List<JsonNode> jobs() throws IOException {
    Garage.Run run = run("day", DAY, "--json");
    assertEquals(Exit.DONE, run.exit(), run.err());
    JsonNode jobs = new ObjectMapper().readTree(run.out()).path("jobs");
    assertEquals(List.of(), ClockCheck.faults(jobs));
    return StreamSupport.stream(jobs.spliterator(), false).toList();
  }

  /** A visitor at nine, for the same technician in another bay. */
  private void visitor() {
    demo.with(
        DAY + "/2492.yaml",
        """
        job: 2492
        vehicle: {book: larkfell-pipit-2015, plate: AB 12, odometer: 90110 km}
        bay: 2
        by: T1
        arrives: 09:00
        ready-by: 10:20
        work: track-rod-end at front-left
        """);
  }

  private JsonNode record(String sheet) throws IOException {
    Path file = folder.resolve("out").resolve(DAY).resolve(sheet + ".json");
    return new ObjectMapper().readTree(Files.readString(file, StandardCharsets.UTF_8));
  }

  /** PERT's mean of a step is (least + 4 × likely + most) / 6: Malcolm and others, 1959. */
  private static double expected(JsonNode record) {
    double minutes = 0;
    for (JsonNode step : record.path("steps")) {
      JsonNode three = step.path("minutes");
      minutes +=
          (three.path(0).asDouble() + 4 * three.path(1).asDouble() + three.path(2).asDouble()) / 6;
    }
    return minutes;
  }

  /** The record gives whole minutes, so each step may be half a minute out. */
  private static double rounding(JsonNode record) {
    return 1 + 0.5 * record.path("steps").size();
  }

  @Test
  void eachStageTakesAsLongAsTheStepsOfItsSheet() throws IOException {
    assertEquals(Exit.DONE, run("sheets", DAY, "--record").exit());
    JsonNode stages = jobs().get(0).path("stages");
    assertEquals(3, stages.size(), stages.toString());
    for (JsonNode stage : stages) {
      int minutes = ClockCheck.minute(stage, "to") - ClockCheck.minute(stage, "from");
      JsonNode record = record(stage.path("sheet").asText());
      assertEquals(expected(record), minutes, rounding(record), stage.toString());
    }
  }

  @Test
  void aPromisedJobGoesBetweenTwoStages() throws IOException {
    visitor();
    List<JsonNode> jobs = jobs();
    JsonNode stages = jobs.get(0).path("stages");
    JsonNode visitor = jobs.get(1);
    for (JsonNode job : jobs) {
      assertEquals(0, job.path("lateMinutes").asInt(), job.toString());
    }
    assertTrue(
        ClockCheck.minute(stages.get(0), "to") <= ClockCheck.minute(visitor, "from")
            && ClockCheck.minute(visitor, "to") <= ClockCheck.minute(stages.get(2), "from"),
        jobs.toString());
    run("day", DAY).says("2491-3");
  }

  @Test
  void withoutStagesTheSameDayIsLate() throws IOException {
    visitor();
    demo.replacing(LONG, "stages: 3\n", "");
    assertEquals(0, jobs().get(0).path("stages").size());
    run("day", DAY).says("will not be ready by");
  }

  @Test
  void whatIsNotFinishedAtClosingTimeSaysWhereItCanRest() throws IOException {
    demo.replacing("shop.yaml", "hours: 08:00..17:00", "hours: 08:00..09:50")
        .replacing("shop.yaml", "breaks: [12:00..12:30]", "breaks: []");
    assertEquals(Exit.DONE, run("sheets", DAY, "--record").exit());
    JsonNode steps = record("2491-2").path("steps");
    int last = steps.get(steps.size() - 1).path("n").asInt();
    String end = jobs().get(0).path("stages").get(1).path("to").asText();
    run("day", DAY)
        .says(
            "It can rest overnight after sheet 2491-2, at %s: baysheet carry 2491 DAY --step %d."
                .formatted(end, last));
    run("day", DAY).says("issued, not back yet");
    Garage.Run carried = run("carry", "2491", "2026-03-05", "--step", String.valueOf(last));
    assertEquals(Exit.DONE, carried.exit(), carried.err());
    String text = Files.readString(demo.root().resolve("2026-03-05/2491.yaml"));
    assertTrue(
        text.contains("carried: {from: 2026-03-04, sheet: 2491-2-A-")
            && text.contains(", step: " + last + "}"),
        text);
    assertEquals(
        List.of(SheetStory.State.CARRIED, SheetStory.State.CARRIED, SheetStory.State.WITHDRAWN),
        states());
  }

  private List<SheetStory.State> states() {
    return Index.read(folder.resolve("out/ledger"), new Problems()).orElseThrow().sheets().stream()
        .map(SheetStory::state)
        .toList();
  }

  /** What fails here is a layout, which only a job in stages asks for. */
  @Test
  void aFaultOfTheToolStopsOneJobOnly() {
    visitor();
    Problems problems = new Problems();
    ShopFolders folders = new ShopFolders(Fonts.builtIn());
    SheetMaker maker =
        new SheetMaker(
            folders,
            () -> {
              throw new IllegalStateException("no layout in this test");
            },
            Fonts.builtIn(),
            Optional.empty());
    DayReader.Jobs jobs =
        new DayReader(maker, folders.read(demo.root(), problems).orElseThrow())
            .jobs(
                List.of(demo.root().resolve(LONG), demo.root().resolve(DAY).resolve("2492.yaml")),
                problems);
    assertEquals(List.of("2491"), jobs.unplanned());
    assertEquals(1, jobs.planned().size());
    assertEquals(1, jobs.faults().size());
    assertEquals(Exit.FAULT, Exit.of(problems));
  }

  @Test
  void aCancelledJobInStagesTakesAllItsSheetsWithIt() {
    assertEquals(Exit.DONE, run("sheets", DAY).exit());
    assertEquals(Exit.DONE, run("withdraw", "2491").exit());
    assertEquals(Collections.nCopies(3, SheetStory.State.WITHDRAWN), states());
    Path day = folder.resolve("out").resolve(DAY);
    assertTrue(Files.exists(day.resolve("withdrawn/2491-3.pdf")));
    assertTrue(Files.notExists(day.resolve("2491-3.pdf")));
  }
}
