package baysheet.cli;

import baysheet.books.Shop;
import baysheet.garage.DayJob;
import baysheet.garage.GarageDay;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.wording.DayWords;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What is wrong with a day as a whole: tools that several jobs want at once, and late promises. */
record DayWarnings(Shop shop, LocalDate date, List<DayJob> jobs) {
  void addTo(Problems problems) {
    GarageDay day = GarageDay.of(shop, date, jobs);
    Map<String, GarageDay.Placed> placed =
        day.jobs().stream().collect(Collectors.toMap(it -> it.job().number(), Function.identity()));
    day.clashes().forEach(clash -> problems.add(clash(clash, placed)));
    day.jobs().stream().filter(it -> it.late() > 0).map(this::late).forEach(problems::add);
  }

  private static Problem clash(GarageDay.Together clash, Map<String, GarageDay.Placed> placed) {
    List<String> numbers = clash.jobs();
    String starts =
        numbers.stream()
            .map(it -> it + " at " + DayWords.clock(placed.get(it).from()))
            .collect(Collectors.joining(", "));
    Problem problem =
        Problem.of(
                ProblemCode.TOOL_CLASH,
                number(placed.get(numbers.get(numbers.size() - 1)).job()),
                DayWords.clash(clash))
            .expecting("the order of baysheet day, which begins " + starts + "; or one more of it");
    for (String other : numbers.subList(0, numbers.size() - 1)) {
      problem = problem.seeAlso("job " + other, number(placed.get(other).job()));
    }
    return problem;
  }

  private Problem late(GarageDay.Placed job) {
    return Problem.of(
            ProblemCode.LATE_PROMISE,
            job.job().job().request().readyBy().orElseThrow().at(),
            "job %s is promised for %s and is expected to be ready at %s"
                .formatted(
                    job.job().number(),
                    DayWords.clock(job.promised().orElseThrow()),
                    DayWords.clock(job.to())))
        .expecting(
            "a later time, or another day, bay or person for one of the jobs; baysheet day "
                + date
                + " shows what it waits for");
  }

  private static Span number(DayJob job) {
    return job.job().number().at();
  }
}
