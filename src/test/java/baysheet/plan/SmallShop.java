package baysheet.plan;

import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.resolve.ShopTexts;
import baysheet.sheet.Sheet;
import baysheet.verify.PlanVerifier;
import baysheet.wording.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A shop of a few procedures, put together in a test. Its names are its own: nothing built in knows
 * them.
 */
public record SmallShop(ShopTexts texts) {
  private static final String JOB = "2026-03-02/1.yaml";

  private static final String SHOP =
      """
      shop: Any
      crib:
        wrenches: []
        sockets: []
        stands: {rated: 2000 kg, each: yes, count: 4}
      bays:
        hoist: {lift: two-post, rated: 3000 kg}
        floor: {jack: trolley, rated: 2500 kg}
      people:
        T1: {name: R. Fenwake, grade: technician}
        A1: {name: B. Olmsted, grade: apprentice}
      """;

  private static final String ITEMS =
      """
      items:
        feet: {name: vehicle on its wheels, kinds: [support]}
        roller: {name: roller, kinds: [wheel]}
        stay: {name: stay, kinds: [temporary], back: Take the stay away}
        one: {name: one, kinds: []}
        two: {name: two, kinds: []}
        three: {name: three, kinds: []}
        four: {name: four, kinds: []}
        lid: {name: lid, kinds: []}
        roller-nut: {name: roller nut, kinds: [fastener]}
        deep-bolt: {name: deep bolt, kinds: [fastener]}
      """;

  /** With a hoist that lifts the whole vehicle and a jack that lifts an axle, under own names. */
  public static SmallShop empty() {
    return new SmallShop(ShopTexts.empty())
        .with("shop.yaml", SHOP)
        .with("catalogue/own.yaml", ITEMS)
        .with(
            "vehicles/any.yaml",
            "vehicle: any\n"
                + "name: Any\n"
                + "source: Any sheet\n"
                + "kerb-mass: 1500 kg\n"
                + "front-share: 55 %\n"
                + "fasteners: {}\n")
        .procedure("hoisted", "at: vehicle\nserves: raise\nneeds: lift", "Hoist it", "feet")
        .procedure("jacked", "at: axle\nserves: raise\nneeds: jack", "Jack it up", "feet")
        .procedure("roller-off", "at: wheel\nbehind: [raise]", "Roller off", "roller");
  }

  /**
   * The same with wheels that are bolted on.
   *
   * @param more further fasteners of wheels, a line each
   */
  public static SmallShop bolted(String... more) {
    String nuts =
        "roller-nut: {count: 5, thread: M12x1.5, class: \"10\", head: hex 19 mm,"
            + " torque: 100 N·m, final: on-the-ground}";
    StringBuilder wheels = new StringBuilder("fasteners:\n  wheels:\n    " + nuts + "\n");
    for (String line : more) {
      wheels.append("    ").append(line).append('\n');
    }
    return new SmallShop(
            empty().texts().replacing("vehicles/any.yaml", "fasteners: {}\n", wheels.toString()))
        .procedure(
            "roller-off", "at: wheel\nbehind: [raise]", "Roller off", "roller-nut", "roller");
  }

  public SmallShop with(String path, String text) {
    return new SmallShop(texts.with(path, text));
  }

  /** With a procedure that raises an axle with a jack and lets it down. */
  public SmallShop jacked() {
    return procedure(
        "jacked",
        """
        at: axle
        serves: raise
        needs: jack
        open:
          - {do: Jack it up, undo: feet}
        close:
          - {do: Let it down, do-up: feet}
        """);
  }

  /** One more procedure, whose opening is one step that takes some items off. */
  public SmallShop procedure(String name, String head, String opening, String... undo) {
    return procedure(name, head + "\nopen: [{do: %s, undo: %s}]".formatted(opening, List.of(undo)));
  }

  /** One more procedure; its name and title are added. */
  public SmallShop procedure(String name, String text) {
    return with(
        "procedures/" + name + ".yaml",
        "procedure: %s\ntitle: Work %s\n%s\n".formatted(name, name, text));
  }

  /** The job's works in some bay. */
  public SmallShop job(String bay, String... works) {
    return with(
        JOB,
        "job: 1\nvehicle: {book: any}\nbay: %s\nby: T1\nwork: %s\n".formatted(bay, list(works)));
  }

  private static String list(String... texts) {
    return "[" + String.join(", ", texts) + "]";
  }

  /** The sheet, which has to be there, already played back. */
  public Sheet sheet() {
    Problems problems = new Problems();
    Optional<Sheet> sheet = plan(problems);
    assertTrue(sheet.isPresent(), problems.all().toString());
    return sheet.get();
  }

  public Optional<Sheet> plan(Problems problems) {
    return texts.resolve(JOB, problems).flatMap(resolved -> Planner.plan(resolved, problems));
  }

  public Resolved resolved() {
    return texts.resolved(JOB);
  }

  /** What the playback finds in a sheet of the job. */
  public List<String> faults(Sheet sheet) {
    return PlanVerifier.faults(sheet, resolved());
  }

  public List<Problem> problems() {
    Problems problems = new Problems();
    plan(problems);
    return problems.all();
  }

  /** Text and place of each numbered step. */
  public List<String> steps() {
    List<String> steps = new ArrayList<>();
    for (Sheet.SheetStep step : sheet().steps()) {
      steps.add(Printed.text(step) + " " + step.places());
    }
    return steps;
  }

  /** Where the first step stands that begins so; -1 when none does. */
  public int at(String beginning) {
    List<String> steps = steps();
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).startsWith(beginning)) {
        return i;
      }
    }
    return -1;
  }

  /** Whether steps with these beginnings follow one another, each once at least. */
  public void assertInOrder(String... beginnings) {
    int last = -1;
    for (String beginning : beginnings) {
      int at = at(beginning);
      assertTrue(at > last, beginning + " in " + String.join("\n", steps()));
      last = at;
    }
  }
}
