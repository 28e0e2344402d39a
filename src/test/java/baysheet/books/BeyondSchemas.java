package baysheet.books;

import baysheet.report.Problem;
import java.util.List;
import java.util.regex.Pattern;

/**
 * What the readers refuse and no schema can: a schema looks at one value at a time, after the
 * editor has made a number of whatever looks like one.
 *
 * @param code of the problem
 * @param what a part of its sentence
 */
record BeyondSchemas(String code, String what, String because) {
  static final List<BeyondSchemas> ALL =
      List.of(
          of("name-differs", "", "a schema does not know the name of the file"),
          of("missing-place", "", "a schema does not know where a procedure can be done"),
          of("duplicate-key", "", "the editor itself tells a key that is written twice"),
          of("names-itself", "", "it compares two values"),
          of("same-person", "", "it compares two values"),
          of("listed-twice", "hub puller|lbf·ft", "alike under two spellings or counts"),
          of("listed-twice", "is given twice", "it compares the parts of a text"),
          of("missing-key", "of the fastener is missing", "the parts of a text stand in any order"),
          of("bad-order", "rows hold", "it compares a sum with the count"),
          of(
              "bad-order",
              "leaves out|names position 5|no tightening sequence",
              "it compares with the count"),
          of("bad-passes", "do not increase", "it compares the shares"),
          of("bad-passes", "need one plain torque", "it compares with the torque"),
          of("bad-torque", "leaves the fastener loose", "the last of a list of any length"),
          of("bad-wrench", "", "it compares the ends and the units of the scale"),
          of("bad-(torque|head)", "has the higher end first", "it compares the ends"),
          of("bad-(torque|quantity|passes)", "is not plausible", "a range across units"),
          of("out-of-range", "(less|more) than .* can be", "bounds across units"),
          of("point-or-thousands", "", "it compares with the bounds"),
          of("unused-back", "", "it compares the steps of two lists"),
          of("slackened-or-removed", "", "it compares a sentence with a key"),
          of("bad-time", "not in increasing order", "it compares the figures"),
          of("bad-value", "is not a year or a range", "it compares the ends"),
          of("bad-value", "ends before it starts", "it compares the ends"),
          of("bad-value", "the break is outside", "it compares with the working hours"),
          of("bad-value", "no working hours", "it looks at another key"),
          of("bad-value", "before the time of its arrival", "it compares two values"),
          of("out-of-range", "outside the wheelbase", "it compares two lengths"),
          of("not-a-number", "\"05\"", "05 is 5 to an editor"),
          of("bad-class", "10.90", "10.90 is 10.9 to an editor"));

  private static BeyondSchemas of(String code, String what, String because) {
    return new BeyondSchemas(code, what, because);
  }

  boolean holds(Problem problem) {
    return problem.code().word().matches(code)
        && Pattern.compile(what).matcher(problem.what()).find();
  }
}
