package baysheet.plan.graph;

import baysheet.books.Catalogue;
import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.Step;
import baysheet.books.ToolNames;
import baysheet.report.Located;
import baysheet.report.Span;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.Detail;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.StepSource;
import baysheet.sheet.Teaching;
import baysheet.torque.ThreePoint;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A step on its way to the sheet: at one place, not yet numbered.
 *
 * @param origin where the step was written that this one is, or that it puts back
 * @param source where it comes from, which names it on the sheet
 * @param mirrored whether it was made by putting back what {@code origin} took off
 * @param heights at which heights of the vehicle it can be done, where it says so itself
 * @param entries what is written in here, by hand, a line for each
 * @param remarks words of the planner that follow the text
 */
public record PlannedStep(
    TaskId task,
    StepSource source,
    Span origin,
    boolean mirrored,
    Touched touched,
    Demands demands,
    Teaching teaching,
    boolean hold,
    Optional<Moment> moment,
    Set<Height> heights,
    List<Statement> entries,
    List<Detail> remarks) {
  public PlannedStep {
    heights = Set.copyOf(heights);
    entries = List.copyOf(entries);
    remarks = List.copyOf(remarks);
  }

  /** What a lift or a jack takes for one move, or a wrench at one place. Common practice. */
  private static final Optional<ThreePoint> MOVING = Optional.of(new ThreePoint(0.5, 1, 2));

  /** What it takes to carry four blocks and place them. Common practice, no source. */
  private static final Optional<ThreePoint> CARRYING = Optional.of(new ThreePoint(1, 2, 4));

  /** What a look, a push or a turn of a lever takes. Common practice, no source. */
  private static final Optional<ThreePoint> TRYING = Optional.of(ThreePoint.certain(0.5));

  private static final Teaching NOTHING =
      new Teaching(Optional.empty(), Optional.empty(), List.of());

  /** A step as its procedure has it. */
  static PlannedStep written(Task task, Sheet.Phase phase, BoundStep bound) {
    Step step = bound.step();
    StepSource.WrittenAt at = StepSource.WrittenAt.of(task.procedure(), phase, step);
    return new PlannedStep(
        task.id(),
        new StepSource.Written(at, step.text().value()),
        step.at(),
        false,
        touched(bound),
        Demands.written(step.demands()),
        new Teaching(
            step.teaching().because().map(Located::value),
            step.teaching().good().map(Located::value).map(Statement.Written::new),
            values(step.teaching().ifStuck())),
        step.hold(),
        step.moment().map(Located::value),
        Set.copyOf(values(step.heights())),
        values(step.measure()).stream().<Statement>map(Statement.Written::new).toList(),
        bound.absent().stream().<Detail>map(Detail.Absent::new).toList());
  }

  private static Touched touched(BoundStep bound) {
    return new Touched(
        bound.undo(),
        bound.slacken(),
        bound.doUp(),
        bound.disturb(),
        bound.ends(),
        List.of(),
        values(bound.step().touched().circuits()),
        bound.apply());
  }

  /** A step that only does items up, worded by whoever makes it. */
  static PlannedStep puttingBack(
      TaskId task,
      StepSource source,
      Span origin,
      List<ItemAt> doUp,
      Optional<ThreePoint> minutes) {
    return bare(task, source, origin, Touched.on(doUp, List.of()), minutes);
  }

  /** A step that only tightens, once everything is on. */
  static PlannedStep torque(TaskId task, StepSource source, Span origin, ItemAt tightened) {
    return bare(task, source, origin, Touched.on(List.of(), List.of(tightened)), MOVING);
  }

  /** A stop at which the checks before it are ticked. */
  public static PlannedStep checkpoint(TaskId task, StepSource.Checkpoint source, Span origin) {
    return bare(task, source, origin, Touched.NOTHING, TRYING);
  }

  /** A part of bringing the vehicle onto blocks, or off them. */
  static PlannedStep blocks(TaskId task, StepSource.Blocks source, Span origin) {
    Optional<ThreePoint> minutes =
        switch (source.part()) {
          case PUT_UNDER, PUT_UNDER_AXLE, TAKE_OUT, TAKE_OUT_AXLE -> CARRYING;
          case RAISE_CLEAR,
              RAISE,
              LOWER_ONTO,
              RAISE_AXLE,
              LOWER_AXLE_ONTO,
              MEASURE,
              RAISE_OFF,
              LOWER_TO_FLOOR,
              RAISE_AXLE_OFF,
              LOWER_AXLE_TO_FLOOR ->
              MOVING;
          default -> TRYING;
        };
    return bare(task, source, origin, Touched.NOTHING, minutes);
  }

  /** A step that brings the vehicle to another height. */
  static PlannedStep move(TaskId task, StepSource.HeightChange change, Span origin) {
    return bare(
        task,
        change,
        origin,
        Touched.NOTHING,
        change.part() == StepSource.HeightPart.MOVE ? MOVING : TRYING);
  }

  /** Chocks that are set or taken away. */
  static PlannedStep chocks(TaskId task, StepSource.Chocks source, Span origin) {
    PlannedStep step = bare(task, source, origin, Touched.NOTHING, TRYING);
    Procedure.Use chocks = new Procedure.Use(ToolNames.WHEEL_CHOCKS, false);
    return source.set() ? step.using(List.of(chocks)) : step;
  }

  /** A check as a step, at the place where it is done; it is named as its rule is. */
  static PlannedStep check(Place place, Catalogue.Rule rule, Catalogue.CheckStep step) {
    return new PlannedStep(
        new TaskId(rule.name().value(), place),
        new StepSource.Check(rule.name().value(), rule.check().value()),
        rule.at(),
        false,
        Touched.NOTHING,
        Demands.of(values(step.uses()), step.takes().map(Located::value)),
        new Teaching(rule.grounds().because().map(Located::value), Optional.empty(), List.of()),
        rule.others().hold(),
        Optional.empty(),
        Set.copyOf(values(step.heights())),
        rule.needs().map(needs -> Statement.writtenIn(needs.value())).stream().toList(),
        List.of());
  }

  private static PlannedStep bare(
      TaskId task, StepSource source, Span origin, Touched touched, Optional<ThreePoint> minutes) {
    return new PlannedStep(
        task,
        source,
        origin,
        true,
        touched,
        Demands.of(List.of(), minutes),
        NOTHING,
        false,
        Optional.empty(),
        Set.of(),
        List.of(),
        List.of());
  }

  static <T> List<T> values(List<Located<T>> written) {
    return written.isEmpty() ? List.of() : written.stream().map(Located::value).toList();
  }

  /** Whether a figure is the height that bushes are tightened at, with its unit or without. */
  public static boolean isHeight(Statement figure) {
    return figure instanceof Statement.Written written
        && written.text().split(",")[0].strip().equals("height");
  }

  public Sheet.Phase phase() {
    return source.phase();
  }

  public Place place() {
    return task.place();
  }

  public List<ItemAt> undo() {
    return touched.undo();
  }

  public List<ItemAt> slacken() {
    return touched.slacken();
  }

  public List<ItemAt> doUp() {
    return touched.doUp();
  }

  public List<ItemAt> disturb() {
    return touched.disturb();
  }

  public List<ItemAt> ends() {
    return touched.ends();
  }

  public List<ItemAt> tighten() {
    return touched.tighten();
  }

  public List<String> circuits() {
    return touched.circuits();
  }

  public List<BoundStep.BoundApply> apply() {
    return touched.apply();
  }

  public List<Procedure.Use> uses() {
    return demands.uses();
  }

  public List<String> hazards() {
    return demands.hazards();
  }

  public Optional<ThreePoint> minutes() {
    return demands.minutes();
  }

  public boolean impact() {
    return demands.impact();
  }

  public Step.Seizes seizes() {
    return demands.seizes();
  }

  /** Whether nothing is left for it to do once other steps do its items. */
  boolean isIdle() {
    return undo().isEmpty()
        && doUp().isEmpty()
        && disturb().isEmpty()
        && circuits().isEmpty()
        && apply().isEmpty();
  }

  /** Whether it undoes or does up something that another step would. */
  boolean sharesWorkOf(PlannedStep other) {
    return !Collections.disjoint(undo(), other.undo())
        || !Collections.disjoint(doUp(), other.doUp());
  }

  /** The same step with tools. */
  PlannedStep using(List<Procedure.Use> tools) {
    Demands more =
        new Demands(
            tools, demands.hazards(), demands.minutes(), demands.impact(), demands.seizes());
    return with(touched, more, remarks);
  }

  /** The same step, which ends what others have left of some items. */
  PlannedStep ending(List<ItemAt> left) {
    Touched more =
        new Touched(undo(), slacken(), doUp(), disturb(), left, tighten(), circuits(), apply());
    return with(more, demands, remarks);
  }

  /** The same step with figures to write down, and what shows that they are right. */
  PlannedStep measuring(List<Statement> figures, Statement right) {
    Teaching shown = new Teaching(teaching.because(), Optional.of(right), teaching.ifStuck());
    return new PlannedStep(
        task, source, origin, mirrored, touched, demands, shown, hold, moment, heights, figures,
        remarks);
  }

  /** The same step without an item that another step undoes or does up, saying so. */
  PlannedStep without(ItemAt item, Detail remark) {
    return with(touched.without(item), demands, more(remark));
  }

  PlannedStep slackening(ItemAt item) {
    return with(touched.slackening(item), demands, remarks);
  }

  /** The same step for certain heights of the vehicle. */
  PlannedStep at(Collection<Height> certain) {
    Set<Height> only = Set.copyOf(certain);
    return new PlannedStep(
        task, source, origin, mirrored, touched, demands, teaching, hold, moment, only, entries,
        remarks);
  }

  /** The same step with one more remark behind its text. */
  PlannedStep remarking(Detail remark) {
    return with(touched, demands, more(remark));
  }

  /** The same step, with what another warns of whose work it does as well. */
  PlannedStep warningOf(PlannedStep other) {
    List<String> both =
        Stream.concat(hazards().stream(), other.hazards().stream()).distinct().toList();
    Demands more =
        new Demands(demands.uses(), both, demands.minutes(), demands.impact(), demands.seizes());
    boolean held = hold || other.hold;
    return new PlannedStep(
        task, source, origin, mirrored, touched, more, teaching, held, moment, heights, entries,
        remarks);
  }

  private PlannedStep with(Touched other, Demands more, List<Detail> said) {
    return new PlannedStep(
        task, source, origin, mirrored, other, more, teaching, hold, moment, heights, entries,
        said);
  }

  private List<Detail> more(Detail remark) {
    return Stream.concat(remarks.stream(), Stream.of(remark)).toList();
  }
}
