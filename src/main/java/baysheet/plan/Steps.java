package baysheet.plan;

import baysheet.books.Fastener;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.SpecBook;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Turns the numbered lines into the steps that are printed, under their headings. */
final class Steps {
  private final Resolved resolved;
  private final List<Laid> lines;
  private final Map<ItemAt, TorqueLine> torque = new HashMap<>();

  /** The cautions at each step, by its number; those that somebody waives stand at none. */
  private final Map<Integer, List<CautionLine>> cautions = new HashMap<>();

  private final List<Sheet.Support> support;
  private final Holds holds;
  private final TimeSum time;
  private final List<MissingFigures.Missing> missing;

  Steps(
      Resolved resolved,
      List<Laid> lines,
      List<TorqueLine> torque,
      List<CautionLine> cautions,
      List<Sheet.Support> support) {
    this.resolved = resolved;
    this.lines = lines;
    this.support = support;
    this.holds = new Holds(resolved, lines, torque);
    this.time = new TimeSum(resolved);
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
  List<Sheet.Section> sections() {
    List<Sheet.Section> sections = new ArrayList<>();
    List<Sheet.SheetStep> open = new ArrayList<>();
    List<String> headings = lines.stream().map(this::heading).toList();
    for (int i = 0; i < lines.size(); i++) {
      open.add(step(i));
      boolean ends = i + 1 == lines.size() || !headings.get(i).equals(headings.get(i + 1));
      if (ends) {
        Laid line = lines.get(i);
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
  private boolean namesPlace(Laid line) {
    return !heading(line).equals(Words.RAISE)
        && !Lifting.holds(resolved, line.doUp())
        && Words.headingNamesPlace(line);
  }

  /** What makes sure that the lift carries the whole vehicle is still raising it. */
  private String heading(Laid line) {
    boolean lifting =
        line.step().phase() == Sheet.Phase.OPEN
            && line.step().place().equals(Place.VEHICLE)
            && lines.stream()
                .anyMatch(
                    raising ->
                        raising.step().task().equals(line.step().task())
                            && Lifting.holds(resolved, raising.undo()));
    return lifting ? Words.RAISE : Words.heading(resolved, line);
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
        ? Optional.of(Words.sideBySide(first + 1, end))
        : Optional.empty();
  }

  private Sheet.SheetStep step(int index) {
    Laid line = lines.get(index);
    Draft step = line.step();
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

  private List<Integer> torqueNumbers(Laid line) {
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

  private List<String> details(Laid line) {
    Draft step = line.step();
    List<String> details = new ArrayList<>();
    details.addAll(undoing(fasteners(step.undo())));
    fasteners(step.doUp()).forEach(item -> details.add(Details.doingUp(lineOf(item))));
    fasteners(step.tighten()).forEach(item -> details.add(Details.tightening(lineOf(item))));
    measured(line).ifPresent(details::add);
    details.addAll(fluids(step));
    List<String> special = special(step);
    if (!special.isEmpty()) {
      details.add(Details.with(special));
    }
    if (Lifting.raises(resolved, step)) {
      details.addAll(support(step));
    }
    details.addAll(step.remarks());
    return details;
  }

  private List<String> fluids(Draft step) {
    List<String> fluids = new ArrayList<>();
    for (String name : MissingFigures.filled(resolved, step)) {
      Optional<SpecBook.Fluid> fluid = resolved.book().fluid(name);
      fluid.ifPresent(known -> fluids.add(FigureWords.fluid(name, known)));
    }
    return fluids;
  }

  private static List<String> special(Draft step) {
    List<String> special = new ArrayList<>();
    for (Procedure.Use use : step.uses()) {
      if (use.special()) {
        special.add(use.name());
      }
    }
    return special;
  }

  private List<String> support(Draft step) {
    List<String> words = new ArrayList<>();
    for (Sheet.Support one : support) {
      if (support.size() == 1 || step.place().axle().isEmpty() || isAxle(one, step)) {
        words.addAll(Details.support(one));
      }
    }
    return words;
  }

  /** What is tightened at ride height is so at the height that was measured before, if it was. */
  private Optional<String> measured(Laid line) {
    if (!isAtRideHeight(line)) {
      return Optional.empty();
    }
    for (int i = 0; i < lines.size(); i++) {
      Laid before = lines.get(i);
      if (before.step().entries().contains(Words.HEIGHT)
          && before.places().containsAll(line.places())) {
        return Optional.of(Details.height(i + 1));
      }
    }
    return Optional.empty();
  }

  private boolean isAtRideHeight(Laid line) {
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
      String words = Details.undoing(fastener(item), lineOf(item), fasteners.size() > 1);
      if (!words.isEmpty()) {
        details.add(words);
      }
    }
    return details;
  }

  private static boolean isAxle(Sheet.Support support, Draft step) {
    return step.place()
        .axle()
        .filter(axle -> support.raised().equals(Words.place(axle)))
        .isPresent();
  }

  private Bound.OfBook fastener(ItemAt item) {
    return (Bound.OfBook) resolved.thing(item);
  }
}
