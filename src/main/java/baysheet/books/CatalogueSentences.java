package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Span;
import baysheet.yaml.Scalar;
import java.util.List;
import java.util.Optional;

/** What is said of the entries of catalogues, and of names that reach for them. */
final class CatalogueSentences {
  private CatalogueSentences() {}

  static Problem emptyTrigger(Span at) {
    return Problem.of(
            ProblemCode.EMPTY_TRIGGER,
            at,
            "this trigger has no condition, so it would always apply")
        .expecting("at least one key such as undo or kind");
  }

  static Problem stepAtAnotherMoment(Span at, Located<Moment> moment) {
    return Problem.of(
            ProblemCode.STEP_AT_OTHER_MOMENT,
            at,
            "a check due " + moment.value().word() + " cannot be a step of the sequence")
        .expecting("moment: raised, or no key step")
        .seeAlso("moment", moment.at());
  }

  static Problem nearBuiltIn(String section, Scalar own, String near) {
    String what = "there is a built-in entry %s under %s, and this name is nearly the same";
    return near(own.at(), what.formatted(BookSentences.quoted(near), section), near);
  }

  static Problem nearItem(Located<String> item, String near) {
    String what = "a spec book has a fastener %s, and nothing names %s";
    return near(
        item.at(),
        what.formatted(BookSentences.quoted(near), BookSentences.quoted(item.value())),
        near);
  }

  static Problem nearRole(Located<String> role, String near) {
    String what = "procedures ask for %s, and none asks for %s";
    return near(
        role.at(),
        what.formatted(BookSentences.quoted(near), BookSentences.quoted(role.value())),
        near);
  }

  static Problem weakerSignal(Catalogue.Caution own, Catalogue.Signal builtIn) {
    String what = "is a %s, and this entry makes it a %s".formatted(builtIn, own.signal());
    return weaker(own.name(), "caution", what, "signal: " + builtIn);
  }

  static Problem weakerHold(Located<String> own) {
    return weaker(own, "check", "is a hold point, and this entry makes it none", "hold: yes");
  }

  static Problem weakerKey(Located<String> own, String key, String builtIn) {
    String says = key + ": " + builtIn;
    return weaker(own, "check", "says \"" + says + "\", and this entry has no " + key, says);
  }

  static Problem inTwoFiles(String section, Scalar again, Scalar first) {
    return Problem.of(
            ProblemCode.IN_TWO_FILES,
            again.at(),
            BookSentences.quoted(again.text())
                + " is listed under "
                + section
                + " in two files of the shop")
        .expecting("each name in one file only")
        .seeAlso("first listed", first.at());
  }

  /** A tool or a product that no catalogue knows. */
  static Problem undeclared(String word, Located<String> name) {
    return Problem.of(
            ProblemCode.UNDECLARED,
            name.at(),
            "no catalogue declares the " + word + " \"" + name.value() + "\"")
        .expecting(
            "an entry in the shop's catalogue, as in %ss: {%s: {means: …}}, with \"like\" where it has"
                    .formatted(word, name.value())
                + " the cautions of another");
  }

  /** A part that may be one of which checks ask whether it is new. */
  static Problem renewsUnstated(Procedure.Part part, List<String> items) {
    return Problem.of(
            ProblemCode.RENEWS_UNSTATED,
            part.name().at(),
            "the part \"" + part.name().value() + "\" does not say which item it renews")
        .expecting(
            "renews: %s, if it goes on there; the checks of a new one then come with it"
                .formatted(String.join(" or ", items)));
  }

  private static Problem weaker(Located<String> own, String sort, String what, String expected) {
    String name = "the built-in " + sort + " " + BookSentences.quoted(own.value()) + " ";
    String other = ", or a " + sort + " of another name in addition to the built-in one";
    return Problem.of(ProblemCode.WEAKER_ENTRY, own.at(), name + what).expecting(expected + other);
  }

  private static Problem near(Span at, String what, String near) {
    return Problem.of(ProblemCode.NEAR_NAME, at, what)
        .expecting("the same name, or one that cannot be confused with it")
        .near(Optional.of(near));
  }
}
