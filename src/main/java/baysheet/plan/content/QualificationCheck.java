package baysheet.plan.content;

import baysheet.books.Catalogue;
import baysheet.books.Job;
import baysheet.books.Shop;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.TriggerMatcher;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.CheckLine;
import baysheet.sheet.QualifiedWork;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Whether everybody who does work that needs a qualification, and everybody who looks at its hold
 * points and at the held checks that follow from it alone, is certified for it on the day of the
 * job. Work for which nobody is certified is an error, not a note.
 */
public final class QualificationCheck {
  private final Resolved resolved;
  private final List<PlacedStep> lines;
  private final HoldPoints stops;
  private final List<CheckLine> checks;
  private final Problems problems;
  private final Set<String> needed = new LinkedHashSet<>();

  private QualificationCheck(
      Resolved resolved,
      List<PlacedStep> lines,
      HoldPoints stops,
      List<CheckLine> checks,
      Problems problems) {
    this.resolved = resolved;
    this.lines = lines;
    this.stops = stops;
    this.checks = checks;
    this.problems = problems;
  }

  public static List<QualifiedWork> of(
      Resolved resolved,
      List<PlacedStep> lines,
      HoldPoints stops,
      List<CheckLine> checks,
      Problems problems) {
    QualificationCheck check = new QualificationCheck(resolved, lines, stops, checks, problems);
    TriggerMatcher triggers = new TriggerMatcher(resolved, lines);
    List<QualifiedWork> all = new ArrayList<>();
    for (Catalogue.Qualification it : resolved.catalogue().qualifications().values()) {
      check.work(it, triggers).ifPresent(all::add);
    }
    check.unused();
    return all;
  }

  private Optional<QualifiedWork> work(Catalogue.Qualification it, TriggerMatcher triggers) {
    Set<Integer> steps = steps(it, triggers);
    if (steps.isEmpty()) {
      return Optional.empty();
    }
    String name = it.name().value();
    needed.add(name);
    Shop.Person doing = resolved.qualified().getOrDefault(name, resolved.by());
    Optional<QualifiedWork.Holder> by = holder(doing, name);
    if (by.isEmpty()) {
      problems.add(notQualified(it, doing, whoDoes(name), certifiedToWork(name, doing)));
      return Optional.empty();
    }
    List<Integer> holds = steps.stream().filter(stops::at).map(index -> index + 1).toList();
    List<CheckLine> held =
        checks.stream()
            .filter(CheckLine::hold)
            .filter(check -> follows(check, steps, name))
            .toList();
    // Where the check says itself who releases the vehicle, nobody else looks. Where nobody else is
    // certified, who does the work does the check alone; a hold point needs a second one.
    boolean looked =
        held.stream().anyMatch(check -> check.releasedBy().isEmpty())
            && (resolved.second().isPresent() || !others(name, doing).isEmpty());
    List<QualifiedWork.Holder> second = looked || !holds.isEmpty() ? second(it, doing) : List.of();
    return Optional.of(
        new QualifiedWork(
            name,
            it.words().value(),
            steps.stream().map(index -> index + 1).toList(),
            by.get(),
            holds,
            held.stream().map(CheckLine::text).toList(),
            second));
  }

  /** Whether only steps that need a qualification bring a check, or their procedure asks for it. */
  private boolean follows(CheckLine check, Set<Integer> steps, String qualification) {
    return check.because().isEmpty()
        ? resolved.tasks().values().stream()
            .filter(task -> task.id().procedure().equals(check.name()))
            .flatMap(task -> task.procedure().needs().qualifications().stream())
            .anyMatch(asked -> asked.value().equals(qualification))
        : check.because().stream().allMatch(n -> steps.contains(n - 1));
  }

  /** What its triggers find, what undoes that again, and all of a procedure that asks for it. */
  private Set<Integer> steps(Catalogue.Qualification it, TriggerMatcher triggers) {
    Set<Integer> steps = new TreeSet<>(triggers.lines(it.when()));
    Set<ItemAt> touched = new LinkedHashSet<>();
    steps.forEach(index -> touched.addAll(lines.get(index).undo()));
    boolean whole = triggers.vehicle(it.when());
    for (int i = 0; i < lines.size(); i++) {
      PlacedStep line = lines.get(i);
      boolean back = line.doUp().stream().anyMatch(touched::contains);
      if (line.step().phase().isWork() && (whole || back || asks(line, it.name().value()))) {
        steps.add(i);
      }
    }
    return steps;
  }

  private boolean asks(PlacedStep line, String qualification) {
    return line.all().stream()
        .flatMap(
            step -> resolved.tasks().get(step.task()).procedure().needs().qualifications().stream())
        .anyMatch(asked -> asked.value().equals(qualification));
  }

  private Optional<QualifiedWork.Holder> holder(Shop.Person person, String qualification) {
    return person
        .certificate(qualification)
        .filter(it -> it.isValidOn(resolved.date()))
        .map(
            it ->
                new QualifiedWork.Holder(
                    person.id().value(), person.name().value(), it.number().value(), it.until()));
  }

  /** Whom the job names for its hold points; otherwise everybody who may, but who does the work. */
  private List<QualifiedWork.Holder> second(Catalogue.Qualification it, Shop.Person doing) {
    String name = it.name().value();
    if (resolved.second().isPresent()) {
      Shop.Person second = resolved.second().get();
      Span at = resolved.job().crew().second().orElseThrow().at();
      Optional<QualifiedWork.Holder> holder =
          second.id().value().equals(doing.id().value()) ? Optional.empty() : holder(second, name);
      if (holder.isEmpty()) {
        problems.add(
            second.id().value().equals(doing.id().value())
                ? ContentSentences.ownSecond(second, at)
                : notQualified(it, second, at, toLook(name, doing)));
      }
      return holder.stream().toList();
    }
    List<QualifiedWork.Holder> all = others(name, doing);
    if (all.isEmpty()) {
      problems.add(nobodyLooks(it, doing));
    }
    return all;
  }

  private List<QualifiedWork.Holder> others(String qualification, Shop.Person doing) {
    return resolved.shop().people().values().stream()
        .filter(person -> person.grade() == Shop.Grade.TECHNICIAN)
        .filter(person -> !person.id().value().equals(doing.id().value()))
        .flatMap(person -> holder(person, qualification).stream())
        .toList();
  }

  /** Where the job says who does it. */
  private Span whoDoes(String qualification) {
    Job.Qualified named = resolved.job().crew().qualified().get(qualification);
    return named == null ? resolved.job().crew().by().at() : named.person().at();
  }

  private Problem notQualified(
      Catalogue.Qualification it, Shop.Person person, Span at, String expected) {
    return ContentSentences.notQualified(it, person, resolved.date(), at).expecting(expected);
  }

  private String certifiedToWork(String name, Shop.Person person) {
    return ContentSentences.certified(names(name, person), Optional.of(name));
  }

  private String toLook(String name, Shop.Person doing) {
    return ContentSentences.certified(names(name, doing), Optional.empty());
  }

  private List<String> names(String qualification, Shop.Person doing) {
    return others(qualification, doing).stream().map(QualifiedWork.Holder::person).toList();
  }

  private Problem nobodyLooks(Catalogue.Qualification it, Shop.Person doing) {
    return ContentSentences.nobodyLooks(it, doing, resolved.date(), whoDoes(it.name().value()))
        .seeAlso("shop", resolved.shop().at());
  }

  /** A name that changes nothing is a mistake about the work or the qualification. */
  private void unused() {
    for (Job.Qualified it : resolved.job().crew().qualified().values()) {
      Located<String> name = it.qualification();
      if (!needed.contains(name.value())) {
        problems.add(ContentSentences.qualifiedUnused(name));
      }
    }
  }
}
