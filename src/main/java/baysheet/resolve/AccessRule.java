package baysheet.resolve;

import baysheet.books.Bay;
import baysheet.books.Job;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.books.WorkPlaces;
import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Span;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a job asks for, and everything that gives access to it. Where several procedures serve one
 * access, the bay and the traits of the vehicle decide. What the job names itself is never replaced
 * by anything else: where it does not suit the vehicle it is refused.
 */
final class AccessRule {
  private final ShopFolder folder;
  private final Bay bay;
  private final ApplicabilityRule applicability;
  private final Problems problems;
  private final Set<String> refused = new LinkedHashSet<>();
  private final Map<TaskId, Set<TaskId>> found = new LinkedHashMap<>();
  private final Map<TaskId, Located<Job.Work>> origins = new LinkedHashMap<>();
  private final Deque<TaskId> path = new ArrayDeque<>();

  AccessRule(ShopFolder folder, Bay bay, EffectiveBook book, Problems problems) {
    this.folder = folder;
    this.bay = bay;
    this.applicability = new ApplicabilityRule(book);
    this.problems = problems;
  }

  /**
   * What the job names, in its order, each with the places that its procedure's kind makes of it.
   */
  Set<TaskId> asked(List<Located<Job.Work>> works) {
    Set<TaskId> asked = new LinkedHashSet<>();
    for (Located<Job.Work> work : works) {
      for (TaskId id : asked(work)) {
        origins.putIfAbsent(id, work);
        if (!asked.add(id)) {
          problems.add(Problem.of(ProblemCode.WORK_TWICE, work.at(), id + " is listed twice"));
        }
      }
    }
    return asked;
  }

  /** The work's tasks, if the place that it names is one at which the procedure is done. */
  private List<TaskId> asked(Located<Job.Work> work) {
    Place from = work.value().place();
    String name = work.value().procedure();
    Procedure own = folder.procedures().get(name);
    List<Procedure> named = own == null ? servers(name) : List.of(own);
    List<TaskId> tasks = tasks(name, named, from, work);
    boolean inside =
        tasks.stream().allMatch(id -> id.place() == from || id.place().outward().contains(from));
    if (inside) {
      return tasks;
    }
    problems.add(elsewhere(work, tasks.get(0)));
    return List.of();
  }

  /** Done where the job does not say, the job's place would be dropped. */
  private Problem elsewhere(Located<Job.Work> work, TaskId id) {
    String places = WorkPlaces.phrase(id.place().kind());
    return Problem.of(
            ProblemCode.PLACE_UNCLEAR,
            work.at(),
            "%s is done at %s, not at %s"
                .formatted(work.value().procedure(), places, work.value().place()))
        .expecting(work.value().procedure() + " at " + places);
  }

  /** Every task of the closure with its direct access; what is asked for comes first. */
  Map<TaskId, Set<TaskId>> closure(Collection<TaskId> asked) {
    asked.forEach(id -> found.put(id, new LinkedHashSet<>()));
    asked.forEach(this::open);
    return found;
  }

  /** The work for which a task is there: its own, or the first that it gives access to. */
  Located<Job.Work> origin(TaskId id) {
    return origins.get(id);
  }

  private void open(TaskId id) {
    path.addLast(id);
    for (Located<Procedure.Access> access : procedure(id).behind()) {
      Place from = access.value().place().orElse(id.place());
      String name = access.value().procedure();
      for (TaskId next : tasks(name, serving(name), from, access)) {
        step(id, next, access);
      }
    }
    path.removeLast();
  }

  private void step(TaskId id, TaskId next, Located<?> access) {
    if (path.contains(next)) {
      problems.add(loop(next, access));
      return;
    }
    boolean known = found.containsKey(next) && (found.get(id).contains(next) || !fresh(next));
    found.computeIfAbsent(next, key -> new LinkedHashSet<>());
    found.get(id).add(next);
    origins.putIfAbsent(next, origins.get(id));
    if (!known) {
      open(next);
    }
  }

  /** Whether the access of a task has not been looked at yet. */
  private boolean fresh(TaskId id) {
    return found.get(id).isEmpty() && !procedure(id).behind().isEmpty();
  }

  private Problem loop(TaskId again, Located<?> access) {
    List<TaskId> circle = new ArrayList<>(path);
    circle = new ArrayList<>(circle.subList(circle.indexOf(again), circle.size()));
    circle.add(again);
    List<String> wants = new ArrayList<>();
    for (int i = 1; i < circle.size(); i++) {
      wants.add(circle.get(i - 1) + " is behind " + circle.get(i));
    }
    Problem problem =
        Problem.of(
                ProblemCode.ACCESS_LOOP,
                access.at(),
                String.join(", ", wants) + ": none of these can be opened first")
            .expecting("one of these procedures without the next one under behind");
    for (int i = 1; i < circle.size() - 1; i++) {
      Span behind = behind(circle.get(i - 1), circle.get(i));
      problem = problem.seeAlso(circle.get(i - 1).procedure(), behind);
    }
    return problem;
  }

  /** Where a procedure says that it is behind another one, by its name or by its role. */
  private Span behind(TaskId id, TaskId access) {
    Optional<String> role = procedure(access).serves().map(Located::value);
    return procedure(id).behind().stream()
        .filter(
            it ->
                it.value().procedure().equals(access.procedure())
                    || role.equals(Optional.of(it.value().procedure())))
        .findFirst()
        .map(Located::at)
        .orElse(procedure(id).name().at());
  }

  private Procedure procedure(TaskId id) {
    return folder.procedures().get(id.procedure());
  }

  private List<TaskId> tasks(String name, List<Procedure> named, Place from, Located<?> asking) {
    List<Procedure> here = named.stream().filter(this::isPossible).toList();
    if (here.isEmpty()) {
      nothingServes(new Located<>(name, asking.at()), named);
      return List.of();
    }
    Map<Place, List<Procedure>> byPlace = new LinkedHashMap<>();
    for (Procedure procedure : here) {
      PlaceRule.places(from, procedure.at().value())
          .forEach(at -> byPlace.computeIfAbsent(at, key -> new ArrayList<>()).add(procedure));
    }
    if (byPlace.isEmpty()) {
      problems.add(unplaced(name, here.get(0), from, asking));
    }
    if (here.stream().map(it -> it.at().value()).distinct().count() > 1) {
      // At places of several kinds it would be a guess which of them is meant.
      problems.add(several(name, here, asking));
      return List.of();
    }
    List<TaskId> tasks = new ArrayList<>();
    byPlace.forEach(
        (place, some) ->
            suiting(name, some, place, asking)
                .ifPresent(it -> tasks.add(new TaskId(it.name().value(), place))));
    return tasks;
  }

  private static Problem unplaced(String name, Procedure procedure, Place from, Located<?> asking) {
    return Problem.of(
            ProblemCode.PLACE_UNCLEAR,
            asking.at(),
            "%s is done at one %s, and \"%s\" does not say which"
                .formatted(name, procedure.at().value().word(), from))
        .expecting(name + " at " + WorkPlaces.phrase(procedure.at().value()));
  }

  /** The one procedure that suits the vehicle at a place. */
  private Optional<Procedure> suiting(
      String name, List<Procedure> possible, Place place, Located<?> asking) {
    List<Procedure> suiting =
        possible.stream().filter(it -> applicability.suits(it, place)).toList();
    List<Procedure> best = best(name, suiting);
    if (best.isEmpty()) {
      Problem problem = applicability.refusal(possible.get(0), place, asking.at());
      if (refused.add(asking.at() + problem.what())) {
        problems.add(problem);
      }
    } else if (best.size() > 1) {
      problems.add(several(name, best, asking));
    }
    return best.size() == 1 ? Optional.of(best.get(0)) : Optional.empty();
  }

  /** What is written for a trait of the vehicle goes before what is for any; then the name. */
  private static List<Procedure> best(String name, List<Procedure> suiting) {
    List<Procedure> forTrait =
        suiting.stream().filter(it -> !it.applicability().onlyWith().isEmpty()).toList();
    List<Procedure> best = forTrait.isEmpty() ? suiting : forTrait;
    List<Procedure> own = best.stream().filter(it -> it.name().value().equals(name)).toList();
    return own.isEmpty() ? best : own;
  }

  /** The procedure of that name, and those that serve it. */
  private List<Procedure> serving(String name) {
    Procedure own = folder.procedures().get(name);
    return Stream.concat(Stream.ofNullable(own), servers(name).stream()).toList();
  }

  private void nothingServes(Located<String> name, List<Procedure> named) {
    if (!folder.procedures().containsKey(name.value()) && isInFaultyFile(name)) {
      problems.stop();
    } else {
      problems.add(
          named.isEmpty() ? folder.names().noProcedure(name) : unserved(name.value(), name));
    }
  }

  /**
   * A file with errors may be the procedure; or serve this role, if it has the name anywhere and
   * the name is not a slip.
   */
  private boolean isInFaultyFile(Located<String> name) {
    return folder.faulty().procedures().contains(name.value())
        || folder.faulty().mayServe(name.value())
            && folder.names().noProcedure(name).nearest().isEmpty();
  }

  private boolean isPossible(Procedure procedure) {
    return procedure
        .needs()
        .equipment()
        .map(needs -> needs.value() == bay.equipment())
        .orElse(true);
  }

  private List<Procedure> servers(String name) {
    return folder.procedures().values().stream()
        .filter(p -> p.serves().map(s -> s.value().equals(name)).orElse(false))
        .toList();
  }

  private Problem unserved(String name, Located<?> asking) {
    Problem problem = noAccess("no procedure serves", name, asking);
    return misspelt(name)
        .map(role -> problem.seeAlso("a procedure serves \"" + role.value() + "\"", role.at()))
        .orElse(problem);
  }

  private Problem several(String name, List<Procedure> serving, Located<?> asking) {
    Problem problem = noAccess("several procedures serve", name, asking);
    for (Procedure procedure : serving) {
      problem = problem.seeAlso(procedure.name().value(), procedure.name().at());
    }
    return problem;
  }

  private Problem noAccess(String what, String name, Located<?> asking) {
    return Problem.of(
        ProblemCode.NO_ACCESS,
        asking.at(),
        "%s \"%s\" with a %s, the equipment of bay %s"
            .formatted(what, name, bay.equipment().word(), bay.name().value()));
  }

  /** A role that a procedure possible in this bay serves, one slip of the pen away. */
  private Optional<Located<String>> misspelt(String name) {
    return folder.procedures().values().stream()
        .filter(this::isPossible)
        .flatMap(procedure -> procedure.serves().stream())
        .filter(role -> Nearest.slip(role.value(), List.of(name)).isPresent())
        .findFirst();
  }
}
