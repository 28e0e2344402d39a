package baysheet.plan.content;

import baysheet.books.Fastener;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.SpecBook;
import baysheet.plan.graph.FigurePhrases;
import baysheet.plan.graph.Lifting;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlanPhrases;
import baysheet.plan.graph.PlannedStep;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.CautionLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Turns the numbered lines into the steps that are printed, under their headings. */
public final class StepBuilder {
  private final Resolved resolved;
  private final List<PlacedStep> lines;
  private final Map<ItemAt, TorqueLine> torque = new HashMap<>();

  /** The cautions at each step, by its number; those that somebody waives stand at none. */
  private final Map<Integer, List<CautionLine>> cautions = new HashMap<>();

  private final List<Sheet.Support> support;
  private final HoldPoints holds;
  private final TimeEstimate time;
  private final List<MissingFigures.Missing> missing;

  public StepBuilder(
      Resolved resolved,
      List<PlacedStep> lines,
      List<TorqueLine> torque,
      List<CautionLine> cautions,
      List<Sheet.Support> support) {
    this.resolved = resolved;
    this.lines = lines;
    this.support = support;
    this.holds = new HoldPoints(resolved, lines, torque);
    this.time = new TimeEstimate(resolved);
    this.missing = MissingFigures.of(resolved, lines);
    torque.forEach(this::add);
    cautions.stream().filter(caution -> caution.waivedBy().isEmpty()).forEach(this::add);
  }

  private void add(TorqueLine line) {
    line.places().forEach(place -> torque.putIfAbsent(new ItemAt(line.fastener(), place), line));
  }

  private void add(CautionLine caution) {
    for (int n : caution.steps()) {
      cautions.computeIfAbsent(n, key -> new ArrayList<>()).add(caution);
    }
  }

  /** The sections, a new one wherever the heading changes. */
  public List<Sheet.Section> sections() {
    List<Sheet.Section> sections = new ArrayList<>();
    List<Sheet.SheetStep> open = new ArrayList<>();
    List<String> headings = lines.stream().map(this::heading).toList();
    for (int i = 0; i < lines.size(); i++) {
      open.add(step(i));
      boolean ends = i + 1 == lines.size() || !headings.get(i).equals(headings.get(i + 1));
      if (ends) {
        PlacedStep line = lines.get(i);
        sections.add(
            new Sheet.Section(
                headings.get(i),
                namesPlace(line),
                note(i + 1 - open.size()),
                line.step().phase(),
                line.moment(),
                line.places(),
                open));
        open = new ArrayList<>();
      }
    }
    return sections;
  }

  /** Before the vehicle goes up, while it does and once it is down a heading names no place. */
  private boolean namesPlace(PlacedStep line) {
    return !heading(line).equals(PlanPhrases.RAISE)
        && !Lifting.holds(resolved, line.doUp())
        && PlanPhrases.headingNamesPlace(line);
  }

  /** What makes sure that the lift carries the whole vehicle is still raising it. */
  private String heading(PlacedStep line) {
    boolean lifting =
        line.step().phase() == Sheet.Phase.OPEN
            && line.step().place().equals(Place.VEHICLE)
            && lines.stream()
                .anyMatch(
                    raising ->
                        raising.step().task().equals(line.step().task())
                            && Lifting.holds(resolved, raising.undo()));
    return lifting ? PlanPhrases.RAISE : PlanPhrases.heading(resolved, line);
  }

  /** Where steps on both sides begin that are gone through on one side before the other. */
  private Optional<String> note(int first) {
    List<Place> places = lines.get(first).places();
    boolean begins = first == 0 || !lines.get(first - 1).places().equals(places);
    int end = first;
    while (end < lines.size() && lines.get(end).places().equals(places)) {
      end++;
    }
    return places.size() > 1 && begins && end - first > 1
        ? Optional.of(PlanPhrases.sideBySide(first + 1, end))
        : Optional.empty();
  }

  private Sheet.SheetStep step(int index) {
    PlacedStep line = lines.get(index);
    PlannedStep step = line.step();
    boolean reasons = resolved.with().isPresent();
    return new Sheet.SheetStep(
        index + 1,
        step.phase(),
        line.moment(),
        line.places(),
        step.task().procedure(),
        step.text(),
        details(line),
        line.undo(),
        line.doUp(),
        line.disturb(),
        step.circuits(),
        torqueNumbers(line),
        letters(index, false),
        letters(index, true),
        time.minutes(line),
        holds.at(index),
        entries(index),
        step.because().filter(text -> reasons),
        step.good().filter(text -> reasons),
        step.ifStuck());
  }

  private List<String> entries(int index) {
    List<String> entries = new ArrayList<>(lines.get(index).step().entries());
    entries.addAll(MissingFigures.entries(missing, index));
    return entries;
  }

  private List<Integer> torqueNumbers(PlacedStep line) {
    Set<Integer> numbers = new LinkedHashSet<>();
    fasteners(line.doUp()).forEach(item -> numbers.add(lineOf(item).n()));
    fasteners(line.tighten()).forEach(item -> numbers.add(lineOf(item).n()));
    return List.copyOf(numbers);
  }

  private List<ItemAt> fasteners(List<ItemAt> items) {
    List<ItemAt> fasteners = new ArrayList<>();
    for (ItemAt item : items) {
      if (resolved.thing(item) instanceof Bound.OfBook) {
        fasteners.add(item);
      }
    }
    return fasteners;
  }

  private TorqueLine lineOf(ItemAt item) {
    TorqueLine line = torque.get(item);
    if (line == null) {
      throw new IllegalStateException("no torque line for " + item);
    }
    return line;
  }

  /** The letters of the cautions at a step; {@code above} only those whose text stands above it. */
  private List<String> letters(int index, boolean above) {
    List<String> letters = new ArrayList<>();
    for (CautionLine caution : cautions.getOrDefault(index + 1, List.of())) {
      if (!above || isAbove(caution, index + 1)) {
        letters.add(caution.letter());
      }
    }
    return letters;
  }

  private static boolean isAbove(CautionLine caution, int n) {
    return !caution.onTop() && !caution.collapsed() && caution.steps().get(0) == n;
  }

  private List<String> details(PlacedStep line) {
    PlannedStep step = line.step();
    List<String> details = new ArrayList<>();
    details.addAll(undoing(fasteners(step.undo())));
    fasteners(step.doUp()).forEach(item -> details.add(StepDetails.doingUp(lineOf(item))));
    fasteners(step.tighten()).forEach(item -> details.add(StepDetails.tightening(lineOf(item))));
    measured(line).ifPresent(details::add);
    details.addAll(fluids(step));
    List<String> special = special(step);
    if (!special.isEmpty()) {
      details.add(StepDetails.with(special));
    }
    if (Lifting.raises(resolved, step)) {
      details.addAll(support(step));
    }
    details.addAll(step.remarks());
    return details;
  }

  private List<String> fluids(PlannedStep step) {
    List<String> fluids = new ArrayList<>();
    for (String name : MissingFigures.filled(resolved, step)) {
      Optional<SpecBook.Fluid> fluid = resolved.book().fluid(name);
      fluid.ifPresent(known -> fluids.add(FigurePhrases.fluid(name, known)));
    }
    return fluids;
  }

  private static List<String> special(PlannedStep step) {
    List<String> special = new ArrayList<>();
    for (Procedure.Use use : step.uses()) {
      if (use.special()) {
        special.add(use.name());
      }
    }
    return special;
  }

  private List<String> support(PlannedStep step) {
    List<String> words = new ArrayList<>();
    for (Sheet.Support one : support) {
      if (support.size() == 1 || step.place().axle().isEmpty() || isAxle(one, step)) {
        words.addAll(StepDetails.support(one));
      }
    }
    return words;
  }

  /** What is tightened at ride height is so at the height that was measured before, if it was. */
  private Optional<String> measured(PlacedStep line) {
    if (!isAtRideHeight(line)) {
      return Optional.empty();
    }
    for (int i = 0; i < lines.size(); i++) {
      PlacedStep before = lines.get(i);
      if (before.step().entries().contains(PlanPhrases.HEIGHT)
          && before.places().containsAll(line.places())) {
        return Optional.of(StepDetails.height(i + 1));
      }
    }
    return Optional.empty();
  }

  private boolean isAtRideHeight(PlacedStep line) {
    for (ItemAt item : fasteners(line.tighten())) {
      if (fastener(item).values().moment() == Fastener.Moment.RIDE_HEIGHT) {
        return true;
      }
    }
    return false;
  }

  private List<String> undoing(List<ItemAt> fasteners) {
    List<String> details = new ArrayList<>();
    for (ItemAt item : fasteners) {
      String words = StepDetails.undoing(fastener(item), lineOf(item), fasteners.size() > 1);
      if (!words.isEmpty()) {
        details.add(words);
      }
    }
    return details;
  }

  private static boolean isAxle(Sheet.Support support, PlannedStep step) {
    return step.place()
        .axle()
        .filter(axle -> support.raised().equals(PlanPhrases.place(axle)))
        .isPresent();
  }

  private Bound.OfBook fastener(ItemAt item) {
    return (Bound.OfBook) resolved.thing(item);
  }
}
