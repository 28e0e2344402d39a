package baysheet.plan.content;

import baysheet.books.Bay;
import baysheet.books.Fastener;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.SpecBook;
import baysheet.plan.graph.Lifting;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.CautionLine;
import baysheet.sheet.Detail;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.Support;
import baysheet.sheet.Teaching;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Turns the numbered lines into the steps that are printed, under their headings. */
public final class StepBuilder {
  private final Resolved resolved;
  private final List<PlacedStep> lines;
  private final Map<ItemAt, TorqueLine> torque = new HashMap<>();

  /** The cautions at each step, by its number; those that somebody waives stand at none. */
  private final Map<Integer, List<CautionLine>> cautions = new HashMap<>();

  private final List<Support> support;
  private final HoldPoints holds;
  private final TimeEstimate time;
  private final List<MissingFigures.Missing> missing;

  public StepBuilder(
      Resolved resolved,
      List<PlacedStep> lines,
      List<TorqueLine> torque,
      List<CautionLine> cautions,
      List<Support> support) {
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
    List<StepHeading> headings = StepHeading.of(resolved, lines);
    for (int i = 0; i < lines.size(); i++) {
      open.add(step(i));
      StepHeading heading = headings.get(i);
      if (i + 1 == lines.size() || !heading.equals(headings.get(i + 1))) {
        sections.add(
            new Sheet.Section(
                heading.title(), heading.places(), stretch(i + 1 - open.size()), open));
        open = new ArrayList<>();
      }
    }
    return sections;
  }

  /** Where steps on both sides begin that are gone through on one side before the other. */
  private Optional<Sheet.Stretch> stretch(int first) {
    List<Place> places = lines.get(first).places();
    boolean begins = first == 0 || !lines.get(first - 1).places().equals(places);
    int end = first;
    while (end < lines.size() && lines.get(end).places().equals(places)) {
      end++;
    }
    return places.size() > 1 && begins && end - first > 1
        ? Optional.of(new Sheet.Stretch(first + 1, end))
        : Optional.empty();
  }

  private Sheet.SheetStep step(int index) {
    PlacedStep line = lines.get(index);
    PlannedStep step = line.step();
    boolean reasons = resolved.with().isPresent();
    return new Sheet.SheetStep(
        index + 1,
        step.source(),
        step.task().procedure(),
        new Sheet.Where(line.moment(), line.height(), line.places()),
        new Sheet.Actions(
            line.undo(),
            line.slacken(),
            line.doUp(),
            line.disturb(),
            step.circuits(),
            torqueNumbers(line)),
        details(line),
        new Sheet.Letters(letters(index, false), letters(index, true)),
        time.minutes(line),
        holds.at(index),
        entries(index),
        new Teaching(
            step.teaching().because().filter(text -> reasons),
            step.teaching().good(),
            step.teaching().ifStuck()));
  }

  private List<Statement> entries(int index) {
    List<Statement> entries = new ArrayList<>(lines.get(index).step().entries());
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
    return items.stream().filter(this::isFastener).toList();
  }

  private boolean isFastener(ItemAt item) {
    return resolved.thing(item) instanceof Bound.OfBook;
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

  private List<Detail> details(PlacedStep line) {
    PlannedStep step = line.step();
    List<Detail> details = new ArrayList<>();
    fasteners(step.undo()).stream()
        .filter(item -> !step.slacken().contains(item))
        .forEach(item -> details.add(new Detail.Removed(lineOf(item).n())));
    Stream.concat(step.slacken().stream(), step.disturb().stream())
        .distinct()
        .filter(this::isFastener)
        .filter(torque::containsKey)
        .forEach(item -> details.add(new Detail.Slackened(lineOf(item).n())));
    fasteners(step.doUp()).forEach(item -> details.add(new Detail.Installed(lineOf(item).n())));
    fasteners(step.tighten()).forEach(item -> details.add(new Detail.Tightened(lineOf(item).n())));
    measured(line).ifPresent(details::add);
    for (String name : MissingFigures.filled(resolved, step)) {
      resolved.book().fluid(name).ifPresent(fluid -> details.add(fluid(name, fluid)));
    }
    List<String> special = special(step);
    if (!special.isEmpty()) {
      details.add(new Detail.Tools(special));
    }
    if (isSupported(line)) {
      support(step).forEach(one -> details.add(new Detail.Carried(one)));
    }
    details.addAll(step.remarks());
    return details;
  }

  /** On a lift the pads are set first; a jack is set where it lifts, then the stands beside it. */
  private boolean isSupported(PlacedStep line) {
    if (resolved.bay().equipment() == Bay.Equipment.JACK) {
      return Lifting.holds(resolved, line.undo());
    }
    return lines.stream()
        .filter(one -> one.step().task().equals(line.step().task()))
        .filter(one -> Lifting.isRaising(resolved, one.step()))
        .findFirst()
        .equals(Optional.of(line));
  }

  private static Detail fluid(String name, SpecBook.Fluid fluid) {
    return new Detail.Fluid(
        name, fluid.grade().map(Located::value), fluid.capacity().map(Located::value));
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

  private List<Support> support(PlannedStep step) {
    return support.stream()
        .filter(one -> support.size() == 1 || step.place().axle().isEmpty() || isAxle(one, step))
        .toList();
  }

  /** What is tightened at ride height is so at the height that was measured before, if it was. */
  private Optional<Detail> measured(PlacedStep line) {
    if (!isAtRideHeight(line)) {
      return Optional.empty();
    }
    for (int i = 0; i < lines.size(); i++) {
      PlacedStep before = lines.get(i);
      if (before.step().entries().stream().anyMatch(PlannedStep::isHeight)
          && before.places().containsAll(line.places())) {
        return Optional.of(new Detail.AtHeightOf(i + 1));
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

  private static boolean isAxle(Support support, PlannedStep step) {
    return step.place().axle().filter(axle -> support.raised().equals(axle.word())).isPresent();
  }

  private Bound.OfBook fastener(ItemAt item) {
    return (Bound.OfBook) resolved.thing(item);
  }
}
