package baysheet.resolve;

import baysheet.books.Bay;
import baysheet.books.Job;
import baysheet.books.Procedure;
import baysheet.books.Shop;
import baysheet.books.ShopFolder;
import baysheet.books.SpecBook;
import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Binds a job to the shop folder: every name to its definition, nothing guessed. */
public final class Resolver {
  private Resolver() {}

  /**
   * The job with everything it needs; empty when problems with errors were added.
   *
   * @param date the day of the job
   */
  public static Optional<Resolved> resolve(
      Job job, ShopFolder folder, LocalDate date, Problems problems) {
    Problems own = new Problems();
    Optional<Resolved> resolved = bind(job, folder, date, own);
    problems.addAll(own);
    return resolved.filter(all -> !own.hasErrors());
  }

  private static Optional<Resolved> bind(
      Job job, ShopFolder folder, LocalDate date, Problems problems) {
    CrewRule crew = new CrewRule(folder.shop(), problems);
    Optional<Bay> bay = crew.bay(job);
    Optional<Shop.Person> by = crew.by(job.crew());
    Optional<Shop.Person> with = crew.with(job.crew());
    Optional<Shop.Person> second = crew.second(job.crew());
    Map<String, Shop.Person> qualified = crew.qualified(job.crew());
    crew.waivers(job);
    NameRule names = new NameRule(folder.names(), problems);
    names.check(job);
    names.check(folder.shop());
    Optional<EffectiveBook> book = book(job, folder, problems);
    book.ifPresent(it -> FolderCheck.book(it, names, problems));
    book.ifPresent(it -> it.books().forEach(one -> checkedLater(one, date, problems)));
    if (bay.isEmpty() || by.isEmpty() || book.isEmpty()) {
      return Optional.empty();
    }
    FastenerRule fasteners =
        new FastenerRule(
            book.get(),
            job.exceptions().overrides(),
            job.number().value(),
            folder.catalogue(),
            problems);
    ItemRule items = new ItemRule(book.get(), folder, fasteners, problems);
    Map<TaskId, Task> tasks = tasks(job, folder, bay.get(), book.get(), items, names, problems);
    if (tasks.values().stream().anyMatch(items::raises)) {
      masses(job, book.get(), bay.get(), problems);
    }
    fasteners.reportUnknown();
    overrides(job, items.fastenersNamed(), book.get(), problems);
    return Optional.of(
        new Resolved(
            job,
            date,
            folder.shop(),
            book.get(),
            bay.get(),
            by.get(),
            with,
            second,
            qualified,
            tasks,
            items.things(),
            folder.catalogue()));
  }

  /**
   * The load on what carries the vehicle is compared with its rating, so its mass must be known; on
   * a jack, which raises one axle at a time, that of each axle.
   */
  private static void masses(Job job, EffectiveBook book, Bay bay, Problems problems) {
    boolean shared =
        book.frontShare().isPresent()
            || (book.wheelbase().isPresent() && book.massBehindFront().isPresent());
    List<String> lacks = new ArrayList<>();
    if (book.kerbMass().isEmpty()) {
      lacks.add("kerb-mass");
    }
    if (bay.equipment() == Bay.Equipment.JACK && !shared) {
      lacks.add("front-share");
    }
    if (!lacks.isEmpty()) {
      problems.add(
          Problem.of(
                  ProblemCode.LOAD_UNKNOWN,
                  book.own().vehicle().at(),
                  "the vehicle is raised, but the spec book has no %s, so the load on its supports is not known"
                      .formatted(String.join(" and no ", lacks)))
              .expecting(
                  "the key%s %s"
                      .formatted(lacks.size() == 1 ? "" : "s", String.join(" and ", lacks)))
              .seeAlso("job", job.at()));
    }
  }

  /** The sheet prints the date, and nobody can have checked the book on a day to come. */
  private static void checkedLater(SpecBook book, LocalDate date, Problems problems) {
    book.origin()
        .checked()
        .map(SpecBook.Checked::on)
        .filter(on -> on.value().isAfter(date))
        .ifPresent(
            on ->
                problems.add(
                    Problem.of(
                            ProblemCode.CHECKED_LATER,
                            on.at(),
                            "the book is said to have been checked on "
                                + on.value()
                                + ", after the day of a job that uses it")
                        .expecting("the day on which the book was compared with its source")));
  }

  private static Optional<EffectiveBook> book(Job job, ShopFolder folder, Problems problems) {
    Located<String> name = job.vehicle().book();
    SpecBook book = folder.books().get(name.value());
    if (folder.faulty().books().contains(name.value())) {
      problems.stop();
      return Optional.empty();
    }
    if (book == null) {
      problems.add(
          Problem.of(
                  ProblemCode.UNKNOWN_BOOK,
                  name.at(),
                  "there is no spec book \"" + name.value() + "\"")
              .expecting("a file vehicles/" + name.value() + ".yaml")
              .near(Nearest.of(name.value(), folder.books().keySet())));
      return Optional.empty();
    }
    return LikeRule.apply(book, folder, problems);
  }

  private static Map<TaskId, Task> tasks(
      Job job,
      ShopFolder folder,
      Bay bay,
      EffectiveBook book,
      ItemRule items,
      NameRule names,
      Problems problems) {
    AccessRule rule = new AccessRule(folder, bay, book, problems);
    Set<TaskId> asked = rule.asked(job.work());
    Map<TaskId, Set<TaskId>> access = rule.closure(asked);
    Map<TaskId, Task> tasks = new LinkedHashMap<>();
    for (TaskId id : access.keySet()) {
      Procedure procedure = folder.procedures().get(id.procedure());
      names.check(procedure);
      List<TaskId> direct = List.copyOf(access.get(id));
      List<TaskId> after = after(id, access, folder);
      ItemRule.Asking asking = new ItemRule.Asking(id, rule.origin(id).at());
      Task task = task(asking, procedure, asked.contains(id), direct, after, items);
      tasks.put(id, task);
      if (task.asked() && task.isEmpty() && !problems.hasErrors()) {
        problems.add(nothingToDo(asking));
      }
    }
    return withoutNeedless(tasks, bay);
  }

  /** Without the steps for other lifts, and those that take away what no step has put there. */
  private static Map<TaskId, Task> withoutNeedless(Map<TaskId, Task> tasks, Bay bay) {
    Set<ItemAt> left = new HashSet<>();
    tasks.values().stream()
        .flatMap(Task::steps)
        .forEach(
            step -> {
              left.addAll(step.undo());
              left.addAll(step.disturb());
            });
    Map<TaskId, Task> needed = new LinkedHashMap<>();
    tasks.forEach((id, task) -> needed.put(id, task.keeping(step -> isNeeded(step, left, bay))));
    return needed;
  }

  private static boolean isNeeded(BoundStep step, Set<ItemAt> left, Bay bay) {
    boolean isThere =
        step.step().touched().takesAway().isEmpty() || !Collections.disjoint(step.ends(), left);
    return isThere && step.step().isFor(bay);
  }

  private static Problem nothingToDo(ItemRule.Asking asking) {
    return Problem.of(
        ProblemCode.NOTHING_TO_DO,
        asking.work(),
        "nothing is left to do for "
            + asking.task()
            + ": the spec book says that the vehicle has none of what its steps are about");
  }

  private static Task task(
      ItemRule.Asking asking,
      Procedure procedure,
      boolean asked,
      List<TaskId> access,
      List<TaskId> after,
      ItemRule items) {
    return new Task(
        asking.task(),
        procedure,
        asked,
        access,
        after,
        items.bind(procedure, procedure.blocks().open(), asking),
        items.bind(procedure, procedure.blocks().work(), asking),
        items.bind(procedure, procedure.blocks().close(), asking),
        items.parts(procedure.needs().parts(), asking),
        items.renewed(procedure.needs().parts(), asking));
  }

  /** Tasks that must be finished before this one: by its own word or by theirs. */
  private static List<TaskId> after(TaskId id, Map<TaskId, Set<TaskId>> access, ShopFolder folder) {
    List<TaskId> after = new ArrayList<>();
    for (TaskId other : access.keySet()) {
      Procedure own = folder.procedures().get(id.procedure());
      Procedure its = folder.procedures().get(other.procedure());
      boolean follows = names(own.after(), its);
      boolean precedes = names(its.before(), own);
      if (!other.equals(id)
          && (follows || precedes)
          && !liesBehind(id, other, access)
          && id.place().meets(other.place())) {
        after.add(other);
      }
    }
    return after;
  }

  /** What gives access to a task, directly or through others, is opened before it in any case. */
  private static boolean liesBehind(TaskId task, TaskId other, Map<TaskId, Set<TaskId>> access) {
    Set<TaskId> seen = new HashSet<>();
    Deque<TaskId> next = new ArrayDeque<>(List.of(task));
    while (!next.isEmpty()) {
      access.get(next.remove()).stream().filter(seen::add).forEach(next::add);
    }
    return seen.contains(other);
  }

  /** Whether a procedure is named, or a role that it serves. */
  private static boolean names(List<Located<String>> names, Procedure procedure) {
    Optional<String> role = procedure.serves().map(Located::value);
    for (Located<String> name : names) {
      if (name.value().equals(procedure.name().value()) || role.equals(Optional.of(name.value()))) {
        return true;
      }
    }
    return false;
  }

  /** An override that changes nothing on the sheet is a mistake about the name or the place. */
  private static void overrides(Job job, Set<ItemAt> named, EffectiveBook book, Problems problems) {
    for (Job.Replacement change : job.exceptions().overrides()) {
      boolean used =
          named.stream()
              .anyMatch(
                  item ->
                      item.item().equals(change.item().value())
                          && FastenerRule.covers(change.place(), item.place()));
      if (!used) {
        problems.add(unused(change, named, book));
      }
    }
  }

  private static Problem unused(Job.Replacement change, Set<ItemAt> named, EffectiveBook book) {
    String name = change.item().value();
    if (book.absent(name, change.place()).isPresent()) {
      return Problem.of(
              ProblemCode.OVERRIDE_UNUSED,
              change.item().at(),
              "the spec book says that this vehicle has no \"%s\" at %s"
                  .formatted(name, change.place()))
          .seeAlso("spec book", book.absent(name, change.place()).get().at());
    }
    boolean known = book.names().contains(name);
    List<String> used =
        named.stream()
            .map(item -> item.item() + (known ? " at " + item.place() : ""))
            .distinct()
            .toList();
    String what =
        known
            ? "no step of this job uses \"" + name + "\" at " + change.place()
            : "spec book \"%s\" has no fastener \"%s\""
                .formatted(book.own().vehicle().value(), name);
    return Problem.of(
            known ? ProblemCode.OVERRIDE_UNUSED : ProblemCode.UNKNOWN_FASTENER,
            change.item().at(),
            what)
        .expecting("one of " + String.join(", ", used))
        .near(known ? Optional.empty() : Nearest.of(name, used))
        .seeAlso("spec book", book.own().vehicle().at());
  }
}
