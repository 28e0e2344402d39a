package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.torque.ThreePoint;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProcedureReaderTest {
  private static final Procedure WHOLE =
      ProcedureReader.read(Shelf.whole("test-arm.yaml"), "test-arm", new Problems()).orElseThrow();

  @Test
  void theProcedureIsReadAsWritten() {
    assertEquals("test-arm", WHOLE.name().value());
    assertEquals("Arm of the tests", WHOLE.title().value());
    assertEquals(Place.Kind.WHEEL, WHOLE.at().value());
    assertEquals(Optional.of("arm-access"), WHOLE.serves().map(Located::value));
    assertEquals(Optional.of(Bay.Equipment.LIFT), WHOLE.needs().equipment().map(Located::value));
    assertEquals(
        List.of(
            new Procedure.Access("wheel-off", Optional.empty()),
            new Procedure.Access("raise", Optional.of(Place.FRONT))),
        values(WHOLE.behind()));
    assertEquals(List.of("undertray"), values(WHOLE.after()));
    assertEquals(List.of("brake-fluid"), values(WHOLE.before()));
    assertEquals(
        List.of(
            new Procedure.Use("wire brush", false),
            new Procedure.Use("ball joint splitter", true),
            new Procedure.Use("drill", false, true)),
        values(WHOLE.needs().uses()));
    assertEquals("arm", WHOLE.needs().parts().get(0).name().value());
    assertEquals(1, WHOLE.needs().parts().get(0).count().value());
  }

  @Test
  void aStepIsReadAsWritten() {
    Step step = WHOLE.blocks().open().get(0);
    assertEquals("Take out the pinch bolt", step.text().value());
    assertEquals(List.of("pinch-bolt", "anti-roll-bar at axle"), values(step.touched().undo()));
    assertEquals(List.of("ball-joint"), values(step.touched().disturb()));
    assertEquals(List.of("brake-hydraulics"), values(step.touched().circuits()));
    assertEquals(
        List.of(new Procedure.Use("long lever bar", false)), values(step.demands().uses()));
    assertEquals(List.of("spring-load"), values(step.demands().hazards()));
    assertEquals(Optional.of(new ThreePoint(3, 6, 20)), step.demands().takes().map(Located::value));
    assertTrue(step.demands().impact());
    assertEquals(Step.Seizes.LIKELY, step.demands().seizes());
    assertEquals(List.of("Soak it", "Turn it to and fro"), values(step.teaching().ifStuck()));
    assertEquals(Optional.of("the clamp rusts"), step.teaching().because().map(Located::value));
    assertEquals(Optional.of("the bolt turns by hand"), step.teaching().good().map(Located::value));
    assertTrue(step.hold());
    assertEquals(Optional.of("Fit a new pinch bolt"), step.back().map(Located::value));
    assertEquals(Optional.of(Moment.RAISED), step.moment().map(Located::value));
    assertEquals("test-arm.yaml:17:5", step.at().toString());
  }

  @Test
  void aProductMayNameWhatItGoesOn() {
    assertEquals(
        List.of(new Step.Apply("brake grease", Optional.of("caliper-guide-pin"))),
        values(WHOLE.blocks().work().get(0).touched().apply()));
    assertEquals(
        List.of(new Step.Apply("brake cleaner", Optional.empty())),
        values(WHOLE.blocks().work().get(1).touched().apply()));
  }

  @Test
  void aStepOfFewWordsHasNothingElse() {
    Step step = WHOLE.blocks().close().get(0);
    assertEquals(List.of("arm at front-left"), values(step.touched().doUp()));
    assertEquals(Step.Seizes.POSSIBLE, step.demands().seizes());
    assertEquals(Optional.of(ThreePoint.certain(5)), step.demands().takes().map(Located::value));
    assertFalse(step.demands().impact());
    assertFalse(step.hold());
    assertEquals(Step.Seizes.NEVER, WHOLE.blocks().work().get(0).demands().seizes());
    assertEquals(Optional.empty(), WHOLE.blocks().work().get(0).demands().takes());
  }

  @Test
  void aCheckIsReadAsWritten() {
    Procedure.Check check = WHOLE.checks().get(0);
    assertEquals("Turn from lock to lock", check.text().value());
    assertEquals(Moment.BEFORE_LOWERING, check.moment().value());
    assertTrue(check.hold());
    assertEquals(Optional.of("the hose may rub"), check.because().map(Located::value));
  }

  /** "on" inside a word is no "on". */
  @Test
  void aProductMayHaveOnInsideAWord() {
    Problems problems = new Problems();
    Step step =
        Shelf.parse("{do: Coat it, apply: silicone on cone-seat}", problems)
            .flatMap(node -> StepReader.STEP.read(node, problems))
            .orElseThrow()
            .value();
    assertEquals(
        List.of(new Step.Apply("silicone", Optional.of("cone-seat"))),
        values(step.touched().apply()));
  }

  private static <T> List<T> values(List<Located<T>> list) {
    return list.stream().map(Located::value).toList();
  }
}
