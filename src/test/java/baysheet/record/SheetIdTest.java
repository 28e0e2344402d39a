package baysheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Shop;
import baysheet.json.JsonText;
import baysheet.plan.CaseFolders;
import baysheet.plan.Planner;
import baysheet.plan.stage.Division;
import baysheet.report.Problems;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import baysheet.wording.Samples;
import baysheet.wording.SheetText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The id of a sheet is the hash of all that the sheet says, and of nothing else. */
class SheetIdTest {
  /** What changes no id, since nobody prints it. */
  private static final Set<String> UNPRINTED =
      Set.of(
          // Decide on an s only.
          "Stage.Row.fasteners",
          "Statement.Row.count",
          "StepSource.FinalTorque.count",
          "StepSource.PutBack.count",
          // Decide only where nobody wrote how the item goes back.
          "StepSource.PutBack.what",
          "StepSource.PutBack.name: Name.british",
          // Said by the parts of that work that use the jack.
          "StepSource.Blocks.jacking come",
          // Parts of procedures that only give access stand among all parts, without theirs.
          "PartLine.byProcedure",
          // A row says the angle of an insert, the list of sockets its length.
          "Reach.angle",
          "Reach.length",
          // A step says where the vehicle is carried; by what and how much is in the list.
          "Detail.Carried.by: Statement.Lift.description",
          "Detail.Carried.by: Statement.Stands.count",
          "Detail.Carried.by: Support.load",
          "Detail.Carried.by: Support.raised",
          // The blocks under the wheels are in the sentences of their steps.
          "Detail.Tools.names",
          "Detail.Tools.names gone",
          // Only some of these rows are named in the state before or behind a stage.
          "Stage.sheets",
          "Stage.sheets gone",
          // Of the other terms.
          "Heading.Style.glossary",
          "Name.american",
          "StepSource.PutBack.name: Name.american",
          "Remark.Key.american");

  /** Of a row on another sheet, steps and checks name the fasteners only; its figures are there. */
  private static final String ELSEWHERE = "Stage.elsewhere: ";

  /** What changes no id although it is printed. */
  private static final Set<String> NOT_COUNTED =
      Set.of(
          // The same sheet on another paper has the same id.
          "Heading.Style.paper",
          // Fixed in the program for each key, which the record has.
          "Remark.Key.british",
          "Remark.Key.word");

  /** What cannot be otherwise by itself. */
  private static final Set<String> BOUND =
      Set.of(
          // Steps name rows by their numbers, and there is no other.
          "Sheet.torque gone",
          "TorqueLine.n",
          "Stage.elsewhere gone",
          "Stage.elsewhere: TorqueLine.n",
          // The number of a stage says which of the two it has.
          "Stage.n",
          "Stage.arrival come",
          "Stage.arrival gone",
          "Stage.leaving come",
          "Stage.leaving gone",
          // The last pass is always the full torque.
          "TighteningPasses.percents gone",
          "Stage.elsewhere: TighteningPasses.percents gone");

  @Test
  void keysAreSortedAndNothingStandsBetweenThem() throws IOException {
    String written = "{\"b\": [1.50, true], \"a\": {\"d\": \"x y\", \"c\": \"é\"}}\n";
    assertEquals(
        "{\"a\":{\"c\":\"é\",\"d\":\"x y\"},\"b\":[1.50,true]}",
        JsonText.canonical(JsonText.read(written.getBytes(StandardCharsets.UTF_8))));
  }

  /** Base 32 of RFC 4648, section 6: A to Z are 0 to 25, 2 to 7 are 26 to 31. */
  @Test
  void codeHoldsTheFirst75BitsOfTheHash() {
    SheetId id = SheetId.of(sheet());
    StringBuilder hash = new StringBuilder();
    for (char digit : id.hash().toCharArray()) {
      hash.append(bits(Character.digit(digit, 16), 4));
    }
    StringBuilder code = new StringBuilder();
    for (char digit : id.code().substring(1).toCharArray()) {
      code.append(bits(digit >= 'A' ? digit - 'A' : digit - '2' + 26, 5));
    }
    assertEquals(16, id.code().length());
    assertEquals(hash.substring(0, 75), code.toString());
    assertTrue(id.text().endsWith("-" + id.hash().substring(0, 6)), id.text());
  }

  @Test
  void idForMeasuringHasAsManyCharacters() {
    SheetId id = SheetId.of(sheet());
    SheetId wide = SheetId.asWide(sheet());
    assertEquals(id.text().replaceFirst("[0-9a-f]{6}$", "dddddd"), wide.text());
    assertEquals(id.hash().length(), wide.hash().length());
    assertTrue(wide.code().matches("[A-Z2-7]{16}"), wide.code());
  }

  private static String bits(int value, int count) {
    return Integer.toBinaryString(value | 1 << count).substring(1);
  }

  @Test
  void anotherPaperIsTheSameSheet() {
    assertEquals(SheetId.of(sheet()), SheetId.of(sheet().on(Shop.Paper.LETTER)));
  }

  /** Each value of some sheets, changed alone, gives another id. */
  @Test
  void oneWordOtherwiseIsAnotherSheet() {
    Tried tried = new Tried();
    for (CaseFolders.JobOf job : CaseFolders.demo().subList(0, 3)) {
      tried.on(Planner.plan(job.resolved(), new Problems()).orElseThrow());
    }
    stages().forEach(tried::on);
    assertTrue(tried.changed.size() > 440, tried.changed.size() + " components");
    assertEquals(new TreeSet<>(NOT_COUNTED), tried.printed, "printed, and the id is the same");
    tried.silent.removeIf(it -> it.startsWith(ELSEWHERE));
    tried.silent.removeAll(tried.printed);
    assertEquals(new TreeSet<>(UNPRINTED), tried.silent, "the id is the same");
    tried.bound.removeAll(tried.changed);
    assertEquals(new TreeSet<>(BOUND), tried.bound, "never changed");
  }

  @Test
  void inAmericanTermsTheAmericanNamesCount() {
    Tried tried = new Tried();
    tried.on(Altered.with(sheet(), "heading.style.terms", Shop.Terms.AMERICAN));
    assertTrue(tried.silent.contains("Name.british"), tried.silent.toString());
    assertFalse(tried.silent.contains("Name.american"), tried.silent.toString());
    assertFalse(tried.silent.contains("Heading.Style.glossary"), tried.silent.toString());
  }

  /** What became of all changes of some sheets. */
  private static final class Tried {
    private final Set<String> changed = new TreeSet<>();
    private final Set<String> bound = new TreeSet<>();
    private final Set<String> silent = new TreeSet<>();

    /** Of the silent ones those that change the words on the paper. */
    private final Set<String> printed = new TreeSet<>();

    void on(Sheet sheet) {
      Optional<String> id = idOf(sheet);
      SheetText text = Samples.text(sheet);
      SheetChanges.of(
          sheet,
          (what, others) -> {
            Optional<Sheet> other = others.filter(it -> idOf(it).isPresent()).findFirst();
            (other.isPresent() ? changed : bound).add(what);
            other
                .filter(it -> idOf(it).equals(id))
                .ifPresent(
                    it -> {
                      silent.add(what);
                      if (!Samples.text(it).equals(text)) {
                        printed.add(what);
                      }
                    });
          });
    }

    /** None for a sheet with a step, a row or a place that does not exist. */
    private static Optional<String> idOf(Sheet sheet) {
      try {
        return Optional.of(SheetId.of(sheet).hash());
      } catch (RuntimeException unsound) {
        return Optional.empty();
      }
    }
  }

  /** Those of a job with rows of one stage in the state of another. */
  private static List<Sheet> stages() {
    CaseFolders.JobOf job =
        CaseFolders.demo().stream()
            .filter(it -> it.name().contains("2409"))
            .findFirst()
            .orElseThrow();
    List<Sheet> stages =
        Division.of(
                Planner.traced(job.resolved(), new Problems()).orElseThrow().stages(),
                2,
                (sheet, room) -> sheet.steps().size() < 30)
            .stages();
    assertTrue(stages.size() > 1, "one stage");
    return stages;
  }

  private static Sheet sheet() {
    return Planner.plan(CaseFolders.demo().get(0).resolved(), new Problems()).orElseThrow();
  }
}
