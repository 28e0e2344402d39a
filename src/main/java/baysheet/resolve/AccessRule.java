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

/**
 * What a job asks for, and everything that gives access to it. Where several procedures serve one
 * access, the bay decides.
 */
final class AccessRule {
  private final ShopFolder folder;
  private final Bay bay;
  private final Problems problems;
  private final Map<TaskId, Set<TaskId>> found = new LinkedHashMap<>();
  private final Map<TaskId, Located<Job.Work>> origins = new LinkedHashMap<>();
  private final Deque<TaskId> path = new ArrayDeque<>();

  AccessRule(ShopFolder folder, Bay bay, Problems problems) {
    this.folder = folder;
    this.bay = bay;
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
    List<TaskId> tasks = tasks(work.value().procedure(), from, work);
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
      for (TaskId next : tasks(access.value().procedure(), from, access)) {
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

  private List<TaskId> tasks(String name, Place from, Located<?> asking) {
    Optional<Procedure> procedure = serving(name, asking);
    if (procedure.isEmpty()) {
      return List.of();
    }
    Place.Kind kind = procedure.get().at().value();
    List<Place> places = PlaceRule.places(from, kind);
    if (places.isEmpty()) {
      problems.add(
          Problem.of(
                  ProblemCode.PLACE_UNCLEAR,
                  asking.at(),
                  name
                      + " is done at one "
                      + kind.word()
                      + ", and \""
                      + from
                      + "\" does not say which")
              .expecting(name + " at " + WorkPlaces.phrase(kind)));
    }
    String served = procedure.get().name().value();
    return places.stream().map(place -> new TaskId(served, place)).toList();
  }

  /** The procedure of that name, or the one that serves it in this bay. */
  private Optional<Procedure> serving(String name, Located<?> asking) {
    Procedure own = folder.procedures().get(name);
    // By its own name a procedure is no more possible in a bay that lacks what it needs.
    List<Procedure> serving = own == null ? servers(name) : List.of(own);
    List<Procedure> here = serving.stream().filter(this::isPossible).toList();
    Located<String> named = new Located<>(name, asking.at());
    if (own == null && here.isEmpty() && isInFaultyFile(named)) {
      problems.stop();
      return Optional.empty();
    }
    if (here.size() != 1) {
      problems.add(
          serving.isEmpty() ? folder.names().noProcedure(named) : unserved(name, here, asking));
      return Optional.empty();
    }
    return Optional.of(here.get(0));
  }

  /** A file with errors may be the procedure; or serve this role, if the name is not a slip. */
  private boolean isInFaultyFile(Located<String> name) {
    Set<String> faulty = folder.faulty().procedures();
    return faulty.contains(name.value())
        || !faulty.isEmpty() && folder.names().noProcedure(name).nearest().isEmpty();
  }

  private boolean isPossible(Procedure procedure) {
    return procedure.needs().map(needs -> needs.value() == bay.equipment()).orElse(true);
  }

  private List<Procedure> servers(String name) {
    return folder.procedures().values().stream()
        .filter(p -> p.serves().map(s -> s.value().equals(name)).orElse(false))
        .toList();
  }

  private Problem unserved(String name, List<Procedure> here, Located<?> asking) {
    String which =
        here.isEmpty()
            ? "no procedure serves \"" + name + "\" with a " + bay.equipment().word()
            : "several procedures serve \"" + name + "\" with a " + bay.equipment().word();
    Problem problem =
        Problem.of(
            ProblemCode.NO_ACCESS,
            asking.at(),
            which + ", the equipment of bay " + bay.name().value());
    return misspelt(name)
        .filter(role -> here.isEmpty())
        .map(role -> problem.seeAlso("a procedure serves \"" + role.value() + "\"", role.at()))
        .orElse(problem);
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
