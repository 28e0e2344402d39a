package baysheet.resolve;

import baysheet.books.Bay;
import baysheet.books.Job;
import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.books.SpecBook;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What some work needs of a spec book, in one bay: what the book lacks, and which of its figures
 * nobody has looked up yet.
 *
 * @param gaps fasteners that the book does not have
 * @param unknown figures that are written {@code unknown}: {@code torque of carrier-bolt}
 * @param possible whether the work can be done on this vehicle once all that is known
 * @param problems why not, where that is not reported elsewhere
 */
public record Needs(List<Gap> gaps, Set<String> unknown, boolean possible, List<Problem> problems) {
  private static final Set<ProblemCode> FOUND_HERE =
      Set.of(ProblemCode.MISSING_FASTENER, ProblemCode.UNKNOWN_FIGURE);

  public Needs {
    gaps = List.copyOf(gaps);
    unknown = Collections.unmodifiableSet(new TreeSet<>(unknown));
    problems = List.copyOf(problems);
  }

  /**
   * A fastener that the book does not have.
   *
   * @param fastener its name, where a step of the procedure has it
   * @param group under which group of a book it usually stands
   * @param whole the item that it belongs to, which the vehicle may not have either
   */
  public record Gap(
      Located<String> fastener, String group, String procedure, Optional<String> whole) {
    /**
     * The sentence of the step that names it in one of these bays; the title where no step but a
     * part does.
     */
    public String step(ShopFolder folder, Collection<Bay> bays) {
      Procedure own = folder.procedures().get(procedure);
      return own.blocks()
          .steps()
          .filter(step -> bays.stream().anyMatch(step::isFor))
          .filter(step -> step.touched().items().anyMatch(it -> it.at().equals(fastener.at())))
          .findFirst()
          .map(step -> step.text().value())
          .orElse(own.title().value());
    }
  }

  /** What the works need; each bay of the shop may need something else. */
  public static List<Needs> inEachBay(
      SpecBook book, List<Located<Job.Work>> works, ShopFolder folder) {
    return folder.shop().bays().values().stream().map(bay -> in(bay, book, works, folder)).toList();
  }

  /** What the works need in one bay. */
  public static Needs in(Bay bay, SpecBook book, List<Located<Job.Work>> works, ShopFolder folder) {
    Problems all = new Problems();
    List<Gap> gaps = new ArrayList<>();
    Set<String> unknown = new TreeSet<>();
    Optional<EffectiveBook> whole = LikeRule.apply(book, folder, all);
    whole.ifPresent(
        it -> {
          FolderCheck.book(it, new NameRule(folder.names(), all), all);
          FastenerRule fasteners = new FastenerRule(it, List.of(), "", folder.catalogue(), all);
          ItemRule items = new ItemRule(it, folder, fasteners, all);
          bind(new AccessRule(folder, bay, it, all), works, folder, items);
          gaps.addAll(items.gaps());
          unknown.addAll(fasteners.unknown());
          items.things().values().forEach(thing -> unknown.addAll(unknown(thing)));
        });
    List<Problem> others =
        all.all().stream().filter(it -> it.isError() && !FOUND_HERE.contains(it.code())).toList();
    boolean stopped = all.hasErrors() && all.all().stream().noneMatch(Problem::isError);
    return new Needs(gaps, unknown, !stopped && others.isEmpty(), others);
  }

  private static void bind(
      AccessRule access, List<Located<Job.Work>> works, ShopFolder folder, ItemRule items) {
    for (TaskId id : access.closure(access.asked(works)).keySet()) {
      Procedure procedure = folder.procedures().get(id.procedure());
      ItemRule.Asking asking = new ItemRule.Asking(id, access.origin(id).at());
      items.bind(procedure, procedure.blocks().open(), asking);
      items.bind(procedure, procedure.blocks().work(), asking);
      items.bind(procedure, procedure.blocks().close(), asking);
      items.renewed(items.parts(procedure.needs().parts(), asking), asking);
    }
  }

  private static List<String> unknown(Bound thing) {
    return thing instanceof Bound.OfBook fastener && fastener.values().isUnknown()
        ? List.of("torque of " + fastener.item().item())
        : List.of();
  }
}
