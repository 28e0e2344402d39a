package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Span;
import baysheet.torque.Quantity;
import baysheet.yaml.ParseOutcome;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** What the readers of books, procedures and jobs say. */
final class BookSentences {
  private BookSentences() {}

  static Problem of(ParseOutcome.Bad<?> bad, Span at) {
    return Problem.of(bad.code(), at, bad.what()).expecting(bad.expected()).near(bad.nearest());
  }

  // --- a fastener on one line ---

  private static final String LINE = "2 x M12x1.5 class 10.9, hex 18 mm, 110 ± 5 N·m, dry, renew";

  static Problem notAPart(String text, Optional<String> nearest, Span at) {
    return Problem.of(
            ProblemCode.BAD_VALUE, at, quoted(text) + " is not a figure or word for a fastener")
        .expecting("parts as in " + LINE + "; what is not known as in torque unknown")
        .near(nearest);
  }

  static Problem emptyPart(Span at) {
    return Problem.of(ProblemCode.BAD_VALUE, at, "there is nothing between two commas")
        .expecting("parts as in " + LINE);
  }

  static Problem partTwice(String key, Span again, Span first) {
    return Problem.of(
            ProblemCode.LISTED_TWICE, again, "the " + key + " of the fastener is given twice")
        .seeAlso("first given", first);
  }

  static Problem missingPart(String key, Span at) {
    return Problem.of(ProblemCode.MISSING_KEY, at, "the " + key + " of the fastener is missing")
        .expecting(key.equals("count") ? "as in 2 x" : "as in 110 N·m, snug or torque unknown");
  }

  // --- names and places ---

  static Problem nameDiffers(Located<String> name, String fileName) {
    return Problem.of(
            ProblemCode.NAME_DIFFERS,
            name.at(),
            "the name "
                + quoted(name.value())
                + " differs from the name of the file, "
                + quoted(fileName))
        .expecting(fileName + "; or rename the file");
  }

  static Problem namesItself(Span at, String name, String key) {
    return Problem.of(
            ProblemCode.NAMES_ITSELF, at, quoted(name) + " names itself under " + quoted(key))
        .expecting("another name; or delete the line");
  }

  static Problem listedTwice(Located<?> again, Located<?> first) {
    return Problem.of(
            ProblemCode.LISTED_TWICE, again.at(), quoted(again.value()) + " is listed twice")
        .seeAlso("first listed", first.at());
  }

  static <T> ParseOutcome<T> unknownPlace(String text, Collection<String> known) {
    return new ParseOutcome.Bad<>(
        ProblemCode.UNKNOWN_PLACE,
        quoted(text) + " is not a place on a vehicle",
        "one of " + join(known),
        Nearest.of(text, known));
  }

  static <T> ParseOutcome<T> missingPlace(String text) {
    return ParseOutcome.bad(
        ProblemCode.MISSING_PLACE,
        quoted(text) + " has no place",
        "a name and its place, such as lower-arm at front-left");
  }

  static <T> ParseOutcome<T> notAnId(String text) {
    return new ParseOutcome.Bad<>(
        ProblemCode.NOT_A_NAME,
        quoted(text) + " cannot be used as a name",
        "letters A to Z or a to z, digits and single hyphens, such as T1, floor or 2417",
        Optional.of(text.strip().replaceAll("[\\s\\p{Zs}_]+", "-")).filter(Words::isId));
  }

  static <T> ParseOutcome<T> notATerm(String text) {
    return ParseOutcome.bad(
        quoted(text) + " is not a term of the trade", "one or a few words without a number");
  }

  static <T> ParseOutcome<T> notARevision(String text) {
    return ParseOutcome.bad(quoted(text) + " is not a revision", "one capital letter, such as A");
  }

  static <T> ParseOutcome<T> notAVin(String text) {
    return ParseOutcome.bad(
        quoted(text) + " is not a vehicle identification number",
        "17 figures and capital letters without I, O and Q, such as ZZ9AA1B2C3D456789");
  }

  static Problem readyBeforeArrival(Span at) {
    return Problem.of(
            ProblemCode.BAD_VALUE, at, "the vehicle is promised before the time of its arrival")
        .expecting("a time under \"ready-by\" that is later than the one under \"arrives\"");
  }

  static <T> ParseOutcome<T> notYears(String text) {
    return ParseOutcome.bad(
        quoted(text) + " is not a year or a range of years",
        "a year such as 2017, or a range such as 2015..2019");
  }

  static <T> ParseOutcome<T> notProtection(String text) {
    return ParseOutcome.bad(
        quoted(text) + " is not an ISO 7010 number of protective equipment",
        "a number such as M004");
  }

  static <T> ParseOutcome<T> notAFactor(String text) {
    return ParseOutcome.bad(
        quoted(text) + " is not a factor", "a number from 1 to 10, such as 1.5");
  }

  // --- figures ---

  static ParseOutcome.Bad<Quantity> beyondBounds(
      Quantity written, String how, String phrase, Quantity least, Quantity most) {
    return new ParseOutcome.Bad<>(
        ProblemCode.OUT_OF_RANGE,
        written.print() + " is " + how + " than " + phrase + " can be",
        "from " + least.print() + " to " + most.print(),
        Optional.empty());
  }

  /** A zero more behind the decimals, or one less, says that they are decimals. */
  static ParseOutcome<Quantity> pointOrThousands(Quantity written, Quantity thousands) {
    String figure = written.figure();
    String decimals =
        figure.endsWith("0") ? figure.substring(0, figure.length() - 1) : figure + "0";
    return ParseOutcome.bad(
        ProblemCode.POINT_OR_THOUSANDS,
        written.print() + " may also mean " + thousands.print(),
        thousands.print()
            + ", or "
            + new Quantity(new BigDecimal(decimals), written.unit()).print()
            + " if it is a decimal point");
  }

  static <T> ParseOutcome<T> notAUnit(String text, String phrase, Collection<String> known) {
    return ParseOutcome.bad(
        ProblemCode.BAD_UNIT,
        quoted(text) + " is not a unit for " + phrase,
        "one of " + join(known));
  }

  static Problem tooManyUnits(Span at) {
    return Problem.of(ProblemCode.BAD_UNIT, at, "one or two units are expected here")
        .expecting("the unit to print large, and at most one to print small");
  }

  static Problem massOutsideWheelbase(Span at, Span wheelbase) {
    return Problem.of(ProblemCode.OUT_OF_RANGE, at, "the centre of mass is outside the wheelbase")
        .expecting("less than the wheelbase")
        .seeAlso("the wheelbase", wheelbase);
  }

  // --- fasteners ---

  static Problem orderForOne(Span at, int count) {
    return Problem.of(
            ProblemCode.BAD_ORDER,
            at,
            count + (count == 1 ? " fastener has" : " fasteners have") + " no tightening sequence")
        .expecting("no key order, or the right count");
  }

  static Problem rowsDoNotSum(Span at, int sum, Located<Integer> count) {
    return Problem.of(
            ProblemCode.BAD_ORDER,
            at,
            "the rows hold " + sum + " fasteners, but the count is " + count.value())
        .seeAlso("the count", count.at());
  }

  static Problem orderOfOrders(Span at) {
    return Problem.of(ProblemCode.BAD_ORDER, at, "a list of lists is not a tightening sequence")
        .expecting(
            "circle, the positions in their sequence such as [3, 1, 2, 4], or {rows: [5, 5]}");
  }

  static Problem passesOfStages(Span at, Span torque) {
    return Problem.of(
            ProblemCode.BAD_PASSES, at, "passes need one plain torque, but this is not one")
        .expecting("passes or a list of stages, not both")
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
    return Problem.of(ProblemCode.BAD_POINTS, at, "points are not used for this form of socket")
        .expecting("6 or 12 for hex, 12 or nothing for 12-point, nothing for other forms");
  }

  static <T> ParseOutcome<T> notPoints(String text) {
    return ParseOutcome.bad(
        ProblemCode.BAD_POINTS, quoted(text) + " is not a number of points", "6 or 12");
  }

  static Problem empty(Span at, String what) {
    return Problem.of(ProblemCode.EMPTY_VALUE, at, "this is empty").expecting(what);
  }

  // --- procedures and jobs ---

  static Problem noSteps(Span at) {
    return Problem.of(ProblemCode.NO_STEPS, at, "the procedure has no step")
        .expecting("at least one step under open, work or close");
  }

  static Problem unusedBack(Located<String> back, Located<String> instead) {
    return Problem.of(
            ProblemCode.UNUSED_BACK,
            back.at(),
            "this wording is never used, because steps under close put everything back")
        .expecting("the line left out, or no step under close for what is put back here")
        .seeAlso("the step that is used", instead.at());
  }

  static Problem slackenedOrRemoved(Located<String> item, boolean slackens) {
    String what = quoted(Step.withoutPlace(item.value()));
    String said =
        slackens
            ? "removes " + what + ", and slacken says that it stays in its place"
            : "slackens " + what + ", and undo says that it comes off";
    String off = "undo: for what comes off";
    String stays = "slacken: for what stays in its place";
    return Problem.of(ProblemCode.SLACKENED_OR_REMOVED, item.at(), "the sentence " + said)
        .expecting(slackens ? off + ", " + stays : stays + ", " + off);
  }

  static Problem undoneAndSlackened(Located<String> item) {
    return Problem.of(
            ProblemCode.SLACKENED_OR_REMOVED,
            item.at(),
            "one step both undoes and slackens " + quoted(item.value()))
        .expecting("undo for what comes off, or slacken for what stays in its place");
  }

  static Problem noWork(Span at) {
    return Problem.of(ProblemCode.NO_WORK, at, "the job has no work")
        .expecting("at least one procedure with its place, such as lower-arm at front-left");
  }

  static Problem alone(Located<String> with, Located<String> by) {
    return Problem.of(
            ProblemCode.SAME_PERSON,
            with.at(),
            quoted(with.value()) + " is named under both by: and with:")
        .expecting("somebody else; or delete the line")
        .seeAlso("by", by.at());
  }

  static <T> ParseOutcome<T> appliedToNothing(String text) {
    return ParseOutcome.bad(
        quoted(text) + " does not say what it is applied to",
        "a product, or a product and its item, such as brake grease on caliper-guide-pin");
  }

  static String quoted(Object text) {
    return '"' + text.toString().replace('\n', ' ') + '"';
  }

  private static String join(Collection<String> words) {
    return String.join(", ", words);
  }
}
