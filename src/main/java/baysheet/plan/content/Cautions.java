package baysheet.plan.content;

import static baysheet.books.Moment.EVENING_BEFORE;

import baysheet.books.Catalogue;
import baysheet.books.Catalogue.Signal;
import baysheet.plan.graph.Lifting;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.plan.graph.TriggerMatcher;
import baysheet.report.Located;
import baysheet.resolve.BoundStep;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.sheet.CautionLine;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The cautions of a job, lettered: dangers first, then what is of the whole job, then as the
 * sequence comes to them.
 */
public final class Cautions {
  // More than this and none is read. Common practice, no source.
  private static final int ABOUT = 5;

  /** Without those that read as another sign, and without the sides L and R. */
  private static final String LETTERS = "ABCDEFGHJKMNPQSTUVWXYZ";

  private final Resolved resolved;
  private final List<PlacedStep> lines;
  private final TriggerMatcher triggers;

  /** Lines by the hazards that they name themselves. */
  private final Map<String, Set<Integer>> hazards = new HashMap<>();

  private final Set<String> eveningHazards;

  /** A caution that this job brings. */
  private record Found(
      Catalogue.Caution caution, List<Integer> lines, boolean onTop, boolean wholeJob) {
    /** Where the sheet comes to it: a danger and what is of the whole job stand on top. */
    int metAt() {
      return caution.signal() == Signal.DANGER
          ? -2
          : wholeJob || lines.isEmpty() ? -1 : lines.get(0);
    }
  }

  public Cautions(Resolved resolved, List<PlacedStep> lines) {
    this.resolved = resolved;
    this.lines = lines;
    this.triggers = new TriggerMatcher(resolved, lines);
    this.eveningHazards = eveningHazards(resolved);
    for (int i = 0; i < lines.size(); i++) {
      for (String hazard : lines.get(i).step().hazards()) {
        hazards.computeIfAbsent(hazard, key -> new TreeSet<>()).add(i);
      }
    }
  }

  public List<CautionLine> all() {
    List<Found> found = new ArrayList<>();
    for (Catalogue.Caution caution : resolved.catalogue().cautions().values()) {
      find(caution).ifPresent(found::add);
    }
    found.sort(
        Comparator.comparing(Found::metAt).thenComparing(one -> one.caution().signal().ordinal()));
    List<Found> collapsed = collapsed(found);
    List<CautionLine> cautions = new ArrayList<>();
    for (Found one : found) {
      cautions.add(line(one, letter(cautions.size()), collapsed.contains(one)));
    }
    return cautions;
  }

  private Optional<Found> find(Catalogue.Caution caution) {
    String name = caution.name().value();
    Set<Integer> named = new TreeSet<>(triggers.lines(caution.when()));
    named.addAll(hazards.getOrDefault(name, Set.of()));
    named.addAll(firstsOfRaising(named));
    named.addAll(namedAgain(named, caution.raising()));
    // What the evening's work brings has no line of the sequence to stand above.
    boolean vehicle = triggers.vehicle(caution.when()) || eveningHazards.contains(name);
    if (named.isEmpty() && !vehicle) {
      return Optional.empty();
    }
    boolean wholeJob = caution.wholeJob() || vehicle;
    boolean onTop = wholeJob || caution.signal() == Signal.DANGER;
    return Optional.of(new Found(caution, List.copyOf(named), onTop, wholeJob));
  }

  /**
   * What is warned of where the vehicle is raised is so from the first step of raising it: the
   * wheels are chocked and the pads set before it leaves the ground.
   */
  private Set<Integer> firstsOfRaising(Set<Integer> named) {
    Set<Integer> firsts = new TreeSet<>();
    for (int index : named) {
      PlannedStep raising = lines.get(index).step();
      int first = index;
      while (Lifting.raises(resolved, raising)
          && first > 0
          && Lifting.isRaising(resolved, lines.get(first - 1).step())
          && lines.get(first - 1).step().task().equals(raising.task())) {
        first--;
      }
      firsts.add(first);
    }
    return firsts;
  }

  /**
   * What is warned of where the vehicle is raised is so at each change of its height, or each up.
   */
  private Set<Integer> namedAgain(Set<Integer> named, boolean upOnly) {
    boolean raising =
        named.stream().anyMatch(index -> Lifting.raises(resolved, lines.get(index).step()));
    Set<Integer> again = new TreeSet<>();
    for (int i = 0; i < lines.size() && raising; i++) {
      if (lines.get(i).step().source() instanceof StepSource.HeightChange change
          && change.from() != change.to()
          && (!upOnly || change.from().compareTo(change.to()) < 0)) {
        again.add(i);
      }
    }
    return again;
  }

  private static Set<String> eveningHazards(Resolved resolved) {
    Set<String> hazards = new LinkedHashSet<>();
    for (Task task : resolved.ranked()) {
      Stream.of(task.open(), task.work(), task.close())
          .flatMap(List::stream)
          .map(BoundStep::step)
          .filter(step -> step.moment().filter(at -> at.value() == EVENING_BEFORE).isPresent())
          .forEach(step -> step.demands().hazards().forEach(hazard -> hazards.add(hazard.value())));
    }
    return hazards;
  }

  /**
   * What only damages things shares a line; so does what hurts lightly, where there are many, the
   * last ones met first.
   */
  private List<Found> collapsed(List<Found> found) {
    List<Found> shown = found.stream().filter(one -> waivedBy(one).isEmpty()).toList();
    List<Found> collapsed = new ArrayList<>(with(shown, Signal.NOTICE));
    List<Found> light = new ArrayList<>(with(shown, Signal.CAUTION));
    while (shown.size() - collapsed.size() > ABOUT && !light.isEmpty()) {
      collapsed.add(light.remove(light.size() - 1));
    }
    return collapsed;
  }

  /** What stands on top stands there in full. */
  private static List<Found> with(List<Found> found, Signal signal) {
    return found.stream().filter(one -> one.caution().signal() == signal && !one.onTop()).toList();
  }

  /** What to wear, each piece once, in the sequence in which it is first wanted. */
  public static List<String> protect(List<CautionLine> cautions) {
    return cautions.stream()
        .filter(caution -> caution.waivedBy().isEmpty())
        .flatMap(caution -> caution.protect().stream())
        .distinct()
        .toList();
  }

  private Optional<String> waivedBy(Found found) {
    return Optional.ofNullable(
            resolved.job().exceptions().waive().get(found.caution().name().value()))
        .map(Located::value);
  }

  private CautionLine line(Found found, String letter, boolean collapsed) {
    Catalogue.Caution caution = found.caution();
    return new CautionLine(
        letter,
        caution.name().value(),
        caution.signal(),
        new CautionLine.Text(
            caution.command().value(), caution.hazard().value(), caution.consequence().value()),
        caution.protect().stream().map(Located::value).toList(),
        caution.source().value(),
        found.lines().stream().map(index -> index + 1).toList(),
        new CautionLine.Shown(found.onTop(), found.wholeJob(), collapsed),
        waivedBy(found));
  }

  /** A to Z, then AA, AB … */
  static String letter(int index) {
    int count = LETTERS.length();
    String last = String.valueOf(LETTERS.charAt(index % count));
    return index < count ? last : letter(index / count - 1) + last;
  }
}
