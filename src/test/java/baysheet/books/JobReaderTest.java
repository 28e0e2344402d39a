package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.torque.Quantity;
import baysheet.torque.Tightening;
import baysheet.torque.Unit;
import baysheet.yaml.Node;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobReaderTest {
  private static final Job WHOLE =
      JobReader.read(Shelf.whole("2417.yaml"), "2417", new Problems()).orElseThrow();

  @Test
  void theJobIsReadAsWritten() {
    assertEquals("2417", WHOLE.number().value());
    assertEquals(Optional.of(LocalDate.of(2026, 3, 2)), WHOLE.date().map(Located::value));
    assertEquals("B", WHOLE.sheets().revision().value());
    assertEquals(Optional.of("G. Olmarsh"), WHOLE.request().customer().map(Located::value));
    assertEquals(
        Optional.of("It pulls to the left when I brake."),
        WHOLE.request().complaint().map(Located::value));
    assertEquals("test-book", WHOLE.vehicle().book().value());
    assertEquals(Optional.of("ZZ9AA1B2C3D456789"), WHOLE.vehicle().vin().map(Located::value));
    assertEquals(
        Quantity.of("81240", Unit.KILOMETRE), WHOLE.vehicle().odometer().orElseThrow().value());
    assertEquals("1", WHOLE.bay().value());
    assertEquals("T1", WHOLE.crew().by().value());
    assertEquals(Optional.of("A1"), WHOLE.crew().with().map(Located::value));
    assertEquals("rusty", WHOLE.condition().state().get(0).value());
    assertEquals(
        Quantity.of("120", Unit.KILOGRAM), WHOLE.condition().load().get(Place.REAR).value());
    assertEquals("T1", WHOLE.exceptions().waive().get("brake-dust").value());
    assertEquals(Optional.of(LocalTime.of(8, 15)), WHOLE.request().arrives().map(Located::value));
    assertEquals(Optional.of(LocalTime.of(16, 30)), WHOLE.request().readyBy().map(Located::value));
  }

  @Test
  void whereAJobComesFromIsRead() {
    Job.Carried from = WHOLE.sheets().carried().orElseThrow();
    assertEquals(LocalDate.of(2026, 2, 27), from.from().value());
    assertEquals("2417-A-0d313a", from.sheet().value());
    assertEquals(Optional.of(12), from.step().map(Located::value));
    assertEquals(
        List.of("left boot is cracked", "clip missing"),
        from.found().stream().map(Located::value).toList());
  }

  @Test
  void wordsThatLookLikeSomethingElseStayWords() {
    assertEquals(Optional.of("010"), WHOLE.vehicle().plate().map(Located::value));
    assertEquals(Optional.of("no"), WHOLE.notes().map(Located::value));
  }

  @Test
  void workKeepsItsOrderAndItsPlaces() {
    assertEquals(
        List.of(new Job.Work("test-arm", Place.FRONT_LEFT), new Job.Work("wheel-off", Place.FRONT)),
        WHOLE.work().stream().map(Located::value).toList());
    assertEquals("2417.yaml:15:5", WHOLE.work().get(0).at().toString());
  }

  @Test
  void anOverrideReplacesOnlyWhatItSays() {
    Job.Replacement bolt = WHOLE.exceptions().overrides().get(0);
    assertEquals("arm-bolt", bolt.item().value());
    assertEquals(Place.FRONT_LEFT, bolt.place());
    assertEquals("bulletin 17 of 2024", bolt.source().value());
    Tightening.Stages torque = (Tightening.Stages) bolt.values().tightening().orElseThrow().value();
    assertEquals(Quantity.of("108", Unit.NEWTON_METRE), torque.torques().get(0).nominal());
    assertEquals(Optional.empty(), bolt.values().pieces().count());
    assertEquals("2417.yaml:18:3", bolt.item().at().toString());
  }

  @Test
  void aShortJobIsTheFirstOfItsRevisions() {
    Problems problems = new Problems();
    Job job =
        read("job: 7\nvehicle: {book: b}\nbay: 1\nby: T1\nwork: damper at rear\n", problems)
            .orElseThrow();
    assertEquals(List.of(), problems.all());
    assertEquals("A", job.sheets().revision().value());
    assertEquals(List.of(new Job.Work("damper", Place.REAR)), List.of(job.work().get(0).value()));
    assertEquals(Optional.empty(), job.date());
  }

  @Test
  void aJobWithoutANeededKeyIsNone() {
    for (String key : List.of("job", "vehicle", "bay", "by", "work")) {
      String text =
          "job: 7\nvehicle: {book: b}\nbay: 1\nby: T1\nwork: [damper at rear]\n"
              .replaceFirst("(?m)^" + key + ":.*\n", "");
      Problems problems = new Problems();
      assertEquals(Optional.empty(), read(text, problems));
      assertEquals(
          List.of("a job needs the key \"" + key + "\""),
          problems.all().stream().map(Problem::what).toList());
    }
  }

  @Test
  void onePassReportsEverySlip() {
    Problems problems = new Problems();
    read("job: a b\nvehicle: {}\nby: T1\nwork: [x]\nnots: y\n", problems);
    assertEquals(
        List.of("not-a-name", "missing-key", "missing-place", "missing-key", "unknown-key"),
        problems.all().stream().map(problem -> problem.code().word()).toList());
  }

  /** As it comes out of a document; it looks like any other space. */
  @Test
  void aSpaceThatDoesNotBreakStandsBeforeAPlaceAsWell() {
    Problems problems = new Problems();
    Job job =
        read(
                "job: 7\nvehicle: {book: b}\nbay: 1\nby: T1\nwork: damper\u00A0at\u00A0rear\n",
                problems)
            .orElseThrow();
    assertEquals("damper at rear", job.work().get(0).value().toString());
    assertEquals(List.of(), problems.all());
  }

  private static Optional<Job> read(String text, Problems problems) {
    return Shelf.parse(text, problems).flatMap(node -> JobReader.read(node, problems));
  }

  /** The trade says "oil service"; the file wants the name and where. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "oil service | oil-service at engine | ",
        "Oil Service at engine | oil-service at engine | ",
        "oil-servise | oil-service at engine | ",
        "oil-service at the engine | oil-service at engine | ",
        "axle bush | | axle-bush at front or rear",
        "axle-bush at rear left | | axle-bush at front or rear",
        "wash | | a name and its place, such as lower-arm at front-left",
      })
  void workThatIsNotWrittenRightIsReportedWithWhatItCouldMean(
      String work, String near, String expected) {
    Problems problems = new Problems();
    Node job =
        Shelf.parse(
                "job: 7\nvehicle: {book: b}\nbay: 1\nby: T1\nwork:\n  - " + work + "\n", problems)
            .orElseThrow();
    JobReader.read(
        job, "7", List.of(done("oil-service", "engine"), done("axle-bush", "axle")), problems);
    assertEquals(1, problems.all().size(), problems.all().toString());
    Problem problem = problems.all().get(0);
    assertEquals(6, problem.at().line());
    if (near != null) {
      assertEquals(Optional.of(near), problem.nearest());
    } else {
      assertEquals(Optional.of(expected), problem.expected());
    }
  }

  /** A bush of the rear axle is at one place, a caliper of the front axle at two. */
  @Test
  void workThatIsPossibleAtOnePlaceOnlyNeedsNone() {
    List<Procedure> procedures =
        List.of(
            done("oil-service", "engine"),
            done("rear-beam", "axle\nonly-at: rear"),
            done("front-caliper", "wheel\nonly-at: front"));
    String job = "job: 7\nvehicle: {book: b}\nbay: 1\nby: T1\nwork: ";
    Problems problems = new Problems();
    Job read =
        JobReader.read(
                Shelf.parse(job + "[oil-service, rear-beam]\n", problems).orElseThrow(),
                "7",
                procedures,
                problems)
            .orElseThrow();
    assertEquals(List.of(), problems.all());
    assertEquals(
        List.of(new Job.Work("oil-service", Place.ENGINE), new Job.Work("rear-beam", Place.REAR)),
        read.work().stream().map(Located::value).toList());
    JobReader.read(
        Shelf.parse(job + "front-caliper\n", problems).orElseThrow(), "7", procedures, problems);
    assertEquals("missing-place", problems.all().get(0).code().word());
  }

  private static Procedure done(String name, String at) {
    String text = "procedure: %s\ntitle: t\nat: %s\nwork: [{do: Look}]\n".formatted(name, at);
    Problems problems = new Problems();
    return Shelf.parse(text, problems)
        .flatMap(node -> ProcedureReader.read(node, problems))
        .orElseThrow();
  }
}
