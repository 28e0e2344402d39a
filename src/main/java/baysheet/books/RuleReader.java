package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.yaml.MapReader;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.util.List;
import java.util.Optional;

/** Reads a consequence: what brings a check, and when it is due. */
final class RuleReader {
  static final ValueReader<Words.Unnamed<Catalogue.Rule>> RULE =
      ValueReaders.record("a consequence", RuleReader::rule);

  private static final ValueReader<Catalogue.CheckStep> STEP =
      ValueReaders.record("a check's step", RuleReader::step);

  private RuleReader() {}

  private static Optional<Words.Unnamed<Catalogue.Rule>> rule(MapReader map) {
    Optional<List<Trigger>> when = TriggerReader.required(map);
    Optional<Located<String>> check = map.required("check", ValueReaders.text());
    Optional<Located<Moment>> moment = map.required("moment", Words.moment());
    boolean rows = map.yesNo("rows", false);
    boolean hold = map.yesNo("hold", false);
    Optional<Located<String>> needs = map.optional("needs", ValueReaders.text());
    Optional<Located<String>> keepsOpen = map.optional("keeps-open", ValueReaders.text());
    List<Located<Procedure.Use>> uses = map.listOrOne("uses", StepReader.USE);
    Optional<Located<String>> releasedBy = map.optional("released-by", ValueReaders.text());
    Optional<Located<String>> because = map.optional("because", ValueReaders.text());
    Optional<Located<String>> source = map.required("source", ValueReaders.text());
    Optional<Located<String>> left = map.optional("left", ValueReaders.text());
    Optional<Located<Catalogue.CheckStep>> step = map.optional("step", STEP);
    moment.ifPresent(due -> step.ifPresent(at -> whileRaised(due, at, map.problems())));
    return map.build(
        () ->
            name ->
                new Catalogue.Rule(
                    name,
                    when.get(),
                    check.get(),
                    moment.get(),
                    rows,
                    needs,
                    new Catalogue.Others(hold, keepsOpen, releasedBy),
                    uses,
                    new Catalogue.Grounds(because, source.get()),
                    left,
                    step.map(Located::value),
                    map.at()));
  }

  private static Optional<Catalogue.CheckStep> step(MapReader map) {
    Catalogue.CheckStep step =
        new Catalogue.CheckStep(
            Words.once(map.listOrOne("while-off", ValueReaders.name()), map.problems()),
            map.yesNo("once", false),
            map.yesNo("all-back", false),
            map.yesNo("before-covered", false),
            Words.once(map.listOrOne("height", Words.height()), map.problems()),
            map.optional("takes", FigureReaders.minutes()),
            map.listOrOne("uses", StepReader.USE),
            map.listOrOne("fills", ValueReaders.name()),
            map.listOrOne("ends", ValueReaders.name()));
    return map.build(() -> step);
  }

  /** At its other moments a check has its place on the sheet already. */
  private static void whileRaised(
      Located<Moment> moment, Located<Catalogue.CheckStep> step, Problems problems) {
    if (moment.value() != Moment.RAISED) {
      problems.add(CatalogueSentences.stepAtAnotherMoment(step.at(), moment));
    }
  }
}
