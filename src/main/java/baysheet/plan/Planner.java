package baysheet.plan;

import baysheet.books.Job;
import baysheet.books.Moment;
import baysheet.plan.content.Cautions;
import baysheet.plan.content.CheckpointInserter;
import baysheet.plan.content.Checks;
import baysheet.plan.content.DayBeforePreparation;
import baysheet.plan.content.Headings;
import baysheet.plan.content.HoldPoints;
import baysheet.plan.content.QualificationCheck;
import baysheet.plan.content.SocketNeeds;
import baysheet.plan.content.StepBuilder;
import baysheet.plan.content.SupportCheck;
import baysheet.plan.content.TimeEstimate;
import baysheet.plan.content.ToolList;
import baysheet.plan.content.ToolSpells;
import baysheet.plan.content.TorqueTable;
import baysheet.plan.content.WrenchSelector;
import baysheet.plan.graph.ChockSteps;
import baysheet.plan.graph.CycleFinder;
import baysheet.plan.graph.HeightRule;
import baysheet.plan.graph.HeightSteps;
import baysheet.plan.graph.Lifting;
import baysheet.plan.graph.PhaseAssigner;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.ProcedureRule;
import baysheet.plan.graph.RaisingOrder;
import baysheet.plan.graph.StepGraph;
import baysheet.plan.graph.StepSequence;
import baysheet.plan.stage.StageSheets;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Evening;
import baysheet.sheet.Sheet;
import baysheet.sheet.Support;
import baysheet.sheet.TorqueLine;
import baysheet.verify.PlanVerifier;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Thinks a resolved job through to the sheet that a technician works from. */
public final class Planner {
  /**
   * More steps than that are on no page, and no person does them in a day; without a limit the time
   * for a plan has none either.
   */
  private static final int MOST_STEPS = 1000;

  private Planner() {}

  /**
   * The sheet of a job; empty when problems with errors were added.
   *
   * @throws IllegalStateException when the plan, played back step by step, does not hold: a fault
   *     of the planner, never a sheet
   */
  public static Optional<Sheet> plan(Resolved resolved, Problems problems) {
    return traced(resolved, problems).map(TracedPlan::sheet);
  }

  /** The same with what was selected for each torque line, for whoever asks why. */
  public static Optional<TracedPlan> traced(Resolved resolved, Problems problems) {
    Problems own = new Problems();
    tooMany(resolved)
        .ifPresentOrElse(
            own::add,
            () -> {
              ProcedureRule.check(resolved, own);
              HeightRule.check(resolved, own);
            });
    Optional<TracedPlan> plan = own.hasErrors() ? Optional.empty() : inOrder(resolved, own);
    problems.addAll(own);
    if (own.hasErrors()) {
      return Optional.empty();
    }
    plan.ifPresent(made -> PlanVerifier.prove(made.sheet(), resolved));
    return plan;
  }

  private static Optional<Problem> tooMany(Resolved resolved) {
    int steps = 0;
    for (Task task : resolved.tasks().values()) {
      steps += task.open().size() + task.work().size() + task.close().size();
    }
    return steps <= MOST_STEPS
        ? Optional.empty()
        : Optional.of(
            PlanSentences.tooManySteps(steps, MOST_STEPS, resolved.job().work().get(0).at()));
  }

  private static Optional<TracedPlan> inOrder(Resolved resolved, Problems problems) {
    Optional<RaisingOrder.Ordered> ordered = RaisingOrder.of(resolved);
    if (ordered.isEmpty()) {
      problems.add(
          HeightRule.outOfReach(resolved)
              .orElseGet(() -> loop(resolved, StepGraph.of(resolved, false))));
    }
    ordered.ifPresent(order -> notices(resolved, order, problems));
    return ordered.map(
        order ->
            sheet(
                resolved, order.graph(), lines(resolved, order.found(), order.graph()), problems));
  }

  private static void notices(Resolved resolved, RaisingOrder.Ordered order, Problems problems) {
    if (!order.found().proven()) {
      problems.add(PlanSentences.orderNotProven(resolved.job().work().get(0).at()));
    }
    if (order.together()) {
      problems.add(bothEndsUp(resolved, order.graph()));
    }
  }

  private static Problem bothEndsUp(Resolved resolved, StepGraph graph) {
    List<String> raising =
        graph.drafts().stream()
            .filter(step -> Lifting.raises(resolved, step))
            .map(step -> step.task().toString())
            .distinct()
            .toList();
    List<Located<Job.Work>> work = resolved.job().work();
    return PlanSentences.bothEndsUp(raising, work.size(), work.get(0).at())
        .seeAlso("bay", resolved.bay().name().at());
  }

  private static Problem loop(Resolved resolved, StepGraph graph) {
    List<CycleFinder.Wish> wishes = CycleFinder.wishes(graph);
    Problem problem =
        baysheet.plan.graph.GraphSentences.loop(wishes, resolved.job().work().get(0).at());
    for (CycleFinder.Wish wish : wishes) {
      problem = problem.seeAlso(wish.earlier().task().procedure(), wish.earlier().origin());
    }
    return problem;
  }

  private static List<PlacedStep> lines(
      Resolved resolved, StepSequence.Found found, StepGraph graph) {
    List<PlacedStep> lines = PhaseAssigner.lines(resolved, found, graph);
    return ChockSteps.among(
        resolved, HeightSteps.between(resolved, new CheckpointInserter(resolved, lines).add()));
  }

  /** A waiver of what the job does not bring is meant for another caution, or for another job. */
  private static void waivers(Resolved resolved, List<CautionLine> cautions, Problems problems) {
    List<String> brought = cautions.stream().map(CautionLine::name).sorted().toList();
    resolved
        .job()
        .exceptions()
        .waive()
        .forEach(
            (name, who) -> {
              if (!brought.contains(name)) {
                problems.add(PlanSentences.waiveUnused(name, brought, who.at()));
              }
            });
  }

  private static TracedPlan sheet(
      Resolved resolved, StepGraph graph, List<PlacedStep> lines, Problems problems) {
    WrenchSelector selector = new WrenchSelector(resolved, lines);
    SocketNeeds needs = new SocketNeeds(resolved, lines, selector);
    List<TorqueTable.Selected> selected = TorqueTable.of(resolved, lines, selector, needs);
    List<TorqueLine> torque = selected.stream().map(TorqueTable.Selected::line).toList();
    List<CautionLine> cautions = new Cautions(resolved, lines).all();
    waivers(resolved, cautions, problems);
    List<CheckLine> checks = new Checks(resolved, lines, torque).all();
    List<Support> support = SupportCheck.of(resolved, lines, problems);
    List<Sheet.SocketLine> sockets = needs.all();
    ToolList layOut = new ToolList(resolved, lines);
    List<Sheet.ToolLine> tools = layOut.tools(selected, checks);
    Evening evening =
        new DayBeforePreparation(resolved, lines).all(graph, tools, sockets, torque, checks);
    Sheet sheet =
        new Sheet(
            Headings.of(resolved),
            new Sheet.Safety(
                QualificationCheck.of(
                    resolved, lines, new HoldPoints(resolved, lines, torque), checks, problems),
                cautions,
                Cautions.protect(cautions),
                support),
            evening.all(),
            new StepBuilder(resolved, lines, torque, cautions, support).sections(),
            torque,
            new Sheet.Equipment(
                Headings.wrenches(resolved, torque),
                sockets,
                tools,
                layOut.parts(),
                layOut.consumables(torque, Set.of())),
            layOut.tally(),
            checks.stream().filter(check -> check.moment() != Moment.EVENING_BEFORE).toList(),
            new TimeEstimate(resolved).of(lines, graph.saved()),
            resolved.job().notes().map(notes -> notes.value()),
            Headings.sources(resolved, torque),
            Optional.empty());
    return new TracedPlan(
        sheet,
        selected.stream().map(TorqueTable.Selected::selection).toList(),
        new StageSheets(resolved, lines, sheet, selected, needs, checks),
        evening,
        ToolSpells.of(resolved, lines, selected));
  }
}
