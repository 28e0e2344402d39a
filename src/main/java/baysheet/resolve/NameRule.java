package baysheet.resolve;

import baysheet.books.Catalogue;
import baysheet.books.Job;
import baysheet.books.Procedure;
import baysheet.books.Step;
import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Names that refer to the catalogue: hazards, circuits, states, waived cautions. */
final class NameRule {
  private final Catalogue catalogue;
  private final Problems problems;
  private final Set<String> circuits = new TreeSet<>();

  NameRule(Catalogue catalogue, Problems problems) {
    this.catalogue = catalogue;
    this.problems = problems;
    catalogue.items().forEach(this::circuit);
  }

  private void circuit(String name, Catalogue.Item item) {
    for (Located<String> kind : item.kinds()) {
      if (kind.value().equals("circuit")) {
        circuits.add(name);
      }
    }
  }

  void check(Job job) {
    job.state()
        .forEach(
            state -> known(ProblemCode.UNKNOWN_STATE, "state", state, catalogue.states().keySet()));
    job.waive()
        .forEach(
            (name, who) ->
                known(
                    ProblemCode.UNKNOWN_CAUTION,
                    "caution",
                    new Located<>(name, who.at()),
                    catalogue.cautions().keySet()));
  }

  void check(Procedure procedure) {
    Stream.of(procedure.open(), procedure.work(), procedure.close())
        .flatMap(List::stream)
        .forEach(this::check);
  }

  private void check(Step step) {
    step.hazards()
        .forEach(
            hazard ->
                known(
                    ProblemCode.UNKNOWN_CAUTION, "caution", hazard, catalogue.cautions().keySet()));
    step.openCircuit()
        .forEach(circuit -> known(ProblemCode.UNKNOWN_CIRCUIT, "circuit", circuit, circuits));
  }

  private void known(
      ProblemCode code, String what, Located<String> name, Collection<String> known) {
    if (known.contains(name.value())) {
      return;
    }
    Optional<String> nearest = Nearest.of(name.value(), known);
    problems.add(
        Problem.of(code, name.at(), "the catalogue has no " + what + " \"" + name.value() + "\"")
            .near(nearest));
  }
}
