package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Span;
import baysheet.torque.Quantity;
import baysheet.yaml.Outcome;
import baysheet.yaml.Scalar;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** What the readers of books, procedures, jobs and catalogues say. */
final class Sentences {
  private Sentences() {}

  static Problem of(Outcome.Bad<?> bad, Span at) {
    return Problem.of(bad.code(), at, bad.what()).expecting(bad.expected()).near(bad.nearest());
  }

  // --- names and places ---

  static Problem nameDiffers(Located<String> name, String fileName) {
    return Problem.of(
            ProblemCode.NAME_DIFFERS,
            name.at(),
            quoted(name.value()) + " is not the name of its file, " + quoted(fileName))
        .expecting(fileName + ", or another file name");
  }

  static Problem namesItself(Span at, String name, String key) {
    return Problem.of(
            ProblemCode.NAMES_ITSELF, at, quoted(name) + " names itself under " + quoted(key))
        .expecting("another name, or the line left out");
  }

  static Problem listedTwice(Located<?> again, Located<?> first) {
    return Problem.of(
            ProblemCode.LISTED_TWICE, again.at(), quoted(again.value()) + " stands here twice")
        .seeAlso("first written here", first.at());
  }

  static <T> Outcome<T> unknownPlace(String text, Collection<String> known) {
    return new Outcome.Bad<>(
        ProblemCode.UNKNOWN_PLACE,
        quoted(text) + " is no place on a vehicle",
        "one of " + join(known),
        Nearest.of(text, known));
  }

  static <T> Outcome<T> missingPlace(String text) {
    return Outcome.bad(
        ProblemCode.MISSING_PLACE,
        quoted(text) + " does not say where",
        "a name and its place, as in lower-arm at front-left");
  }

  static <T> Outcome<T> notAnId(String text) {
    return Outcome.bad(
        ProblemCode.NOT_A_NAME,
        quoted(text) + " cannot serve as a name here",
        "letters a to z, digits and single hyphens, as in T1, floor or 2417");
  }

  static <T> Outcome<T> notATerm(String text) {
    return Outcome.bad(
        quoted(text) + " is no term of the trade", "one or a few words without a figure");
  }

  static <T> Outcome<T> notARevision(String text) {
    return Outcome.bad(
        ProblemCode.BAD_VALUE, quoted(text) + " is no revision", "one capital letter, as in A");
  }

  static <T> Outcome<T> notYears(String text) {
    return Outcome.bad(
        ProblemCode.BAD_VALUE,
        quoted(text) + " are no years",
        "a year or a range: 2017, or 2015..2019");
  }

  static <T> Outcome<T> notProtection(String text) {
    return Outcome.bad(
        ProblemCode.BAD_VALUE,
        quoted(text) + " is no number of ISO 7010 for protection",
        "such as M004");
  }

  static <T> Outcome<T> notAFactor(String text) {
    return Outcome.bad(
        ProblemCode.BAD_VALUE, quoted(text) + " is no factor", "a figure from 1 to 10: 1.5");
  }

  // --- figures ---

  static Outcome.Bad<Quantity> beyondBounds(
      Quantity written, String how, String phrase, Quantity least, Quantity most) {
    return new Outcome.Bad<>(
        ProblemCode.OUT_OF_RANGE,
        written.print() + " is " + how + " than " + phrase + " can be",
        "from " + least.print() + " to " + most.print(),
        Optional.empty());
  }

  /** A zero more behind the decimals, or one less, says that they are decimals. */
  static Outcome<Quantity> pointOrThousands(Quantity written, Quantity thousands) {
    String figure = written.figure();
    String decimals =
        figure.endsWith("0") ? figure.substring(0, figure.length() - 1) : figure + "0";
    return Outcome.bad(
        ProblemCode.POINT_OR_THOUSANDS,
        written.print() + " may also mean " + thousands.print(),
        thousands.print()
            + ", or "
            + new Quantity(new BigDecimal(decimals), written.unit()).print()
            + " where the point stands before decimals");
  }

  static <T> Outcome<T> notAUnit(String text, String phrase, Collection<String> known) {
    return Outcome.bad(
        ProblemCode.BAD_UNIT, quoted(text) + " is no unit for " + phrase, "one of " + join(known));
  }

  static Problem tooManyUnits(Span at) {
    return Problem.of(ProblemCode.BAD_UNIT, at, "this is not one unit or two")
        .expecting("the unit to print big, and at most one to print small");
  }

  static Problem massOutsideWheelbase(Span at, Span wheelbase) {
    return Problem.of(ProblemCode.OUT_OF_RANGE, at, "the centre of mass lies outside the wheelbase")
        .expecting("less than the wheelbase")
        .seeAlso("the wheelbase", wheelbase);
  }

  // --- fasteners ---

  static Problem orderForOne(Span at, int count) {
    return Problem.of(ProblemCode.BAD_ORDER, at, count + " of them have no order to speak of")
        .expecting("no order, or the right count");
  }

  static Problem rowsDoNotSum(Span at, int sum, Located<Integer> count) {
    return Problem.of(
            ProblemCode.BAD_ORDER,
            at,
            "the rows hold " + sum + " fasteners and the count is " + count.value())
        .seeAlso("the count", count.at());
  }

  static Problem orderOfOrders(Span at) {
    return Problem.of(
            ProblemCode.BAD_ORDER, at, "lists inside a list do not say what their figures mean")
        .expecting("circle, the positions one after another as in [3, 1, 2, 4], or {rows: [5, 5]}");
  }

  static Problem passesOfStages(Span at, Span torque) {
    return Problem.of(
            ProblemCode.BAD_PASSES, at, "passes divide one plain torque, and this is none")
        .expecting("either passes or a list of stages")
        .seeAlso("the torque", torque);
  }

  static Problem absentAndGiven(Located<String> absent, Located<String> given) {
    return Problem.of(
            ProblemCode.ABSENT_AND_GIVEN,
            absent.at(),
            quoted(absent.value()) + " is said to be absent and is listed as well")
        .expecting("one of the two")
        .seeAlso("listed here", given.at());
  }

  // --- shop ---

  static Problem neitherOf(String whatItIs, List<String> keys, Span at) {
    return Problem.of(
        ProblemCode.MISSING_KEY, at, whatItIs + " needs one of the keys " + join(keys));
  }

  static Problem pointsOutOfPlace(Span at) {
    return Problem.of(ProblemCode.BAD_POINTS, at, "points say nothing about this form of socket")
        .expecting("6 or 12 at hex, 12 or nothing at 12-point, nothing elsewhere");
  }

  static <T> Outcome<T> notPoints(String text) {
    return Outcome.bad(ProblemCode.BAD_POINTS, quoted(text) + " is no number of points", "6 or 12");
  }

  static Problem empty(Span at, String what) {
    return Problem.of(ProblemCode.EMPTY_VALUE, at, "there is nothing in it").expecting(what);
  }

  // --- procedures and jobs ---

  static Problem noSteps(Span at) {
    return Problem.of(ProblemCode.NO_STEPS, at, "the procedure has no step")
        .expecting("at least one step under open, work or close");
  }

  static Problem noWork(Span at) {
    return Problem.of(ProblemCode.NO_WORK, at, "the job asks for no work")
        .expecting("at least one procedure at its place, as in lower-arm at front-left");
  }

  static Problem alone(Located<String> with, Located<String> by) {
    return Problem.of(
            ProblemCode.SAME_PERSON,
            with.at(),
            quoted(with.value()) + " cannot work with themselves")
        .expecting("somebody else, or the line left out")
        .seeAlso("who does the job", by.at());
  }

  static <T> Outcome<T> appliedToNothing(String text) {
    return Outcome.bad(
        ProblemCode.BAD_VALUE,
        quoted(text) + " does not say what it goes on",
        "a product, or a product and its item: brake grease on caliper-guide-pin");
  }

  // --- catalogue ---

  static Problem emptyTrigger(Span at) {
    return Problem.of(ProblemCode.EMPTY_TRIGGER, at, "this would always hold")
        .expecting("at least one key, such as undo or kind");
  }

  static Problem stepAtAnotherMoment(Span at, Located<Moment> moment) {
    return Problem.of(
            ProblemCode.STEP_AT_OTHER_MOMENT,
            at,
            "a check due "
                + moment.value().word()
                + " has its place and is no step of the sequence")
        .expecting("moment: raised, or no step")
        .seeAlso("moment", moment.at());
  }

  static Problem inTwoFiles(String section, Scalar again, Scalar first) {
    return Problem.of(
            ProblemCode.IN_TWO_FILES,
            again.at(),
            quoted(again.text()) + " stands under " + section + " in two of the shop's files")
        .expecting("each name in one file only")
        .seeAlso("first written here", first.at());
  }

  private static String quoted(Object text) {
    return '"' + text.toString().replace('\n', ' ') + '"';
  }

  private static String join(Collection<String> words) {
    return String.join(", ", words);
  }
}
