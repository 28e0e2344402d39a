package baysheet.output;

import baysheet.books.Bay;
import baysheet.books.Job;
import baysheet.books.JobReader;
import baysheet.books.Shop;
import baysheet.books.ShopFolder;
import baysheet.books.SpecBook;
import baysheet.plan.Planner;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.resolve.Resolver;
import baysheet.sheet.Sheet;
import baysheet.yaml.YamlFile;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which traits decide about some work: the work is planned without and with each of them, and a
 * trait decides if anything on the sheet, or the reason why there is none, is different.
 */
public final class DecidingTraits {
  private final SpecBook book;
  private final ShopFolder folder;
  private final LocalDate day;

  private DecidingTraits(SpecBook book, ShopFolder folder, LocalDate day) {
    this.book = book;
    this.folder = folder;
    this.day = day;
  }

  /**
   * Those of the shop's traits that decide and that the book does not list; all of them where no
   * bay gives a sheet to compare with.
   *
   * @param bay where the work is done, if that is known
   * @param book every fastener that the works need is in it, with a count and a head
   */
  public static List<String> of(
      SpecBook book, List<Job.Work> works, Optional<String> bay, ShopFolder folder, LocalDate day) {
    DecidingTraits traits = new DecidingTraits(book, folder, day);
    return traits.deciding(
        bays(bay, folder).stream().flatMap(it -> traits.job(it, works).stream()).toList());
  }

  /** Without the name of one, a bay for each way of raising a vehicle. */
  private static Collection<Bay> bays(Optional<String> named, ShopFolder folder) {
    Map<String, Bay> bays = new LinkedHashMap<>();
    folder.shop().bays().values().stream()
        .filter(bay -> named.map(bay.name().value()::equals).orElse(true))
        .forEach(bay -> bays.putIfAbsent(bay.equipment() + " " + bay.description().value(), bay));
    return bays.values();
  }

  /**
   * Each is tried by itself, for in a group one can undo another. Some decide only beside others,
   * so the rest are tried together, without and with each that decides.
   */
  private List<String> deciding(List<Job> jobs) {
    List<String> listed = book.traits().own().stream().map(Located::value).toList();
    List<String> others =
        folder.catalogue().vocabulary().traits().keySet().stream()
            .filter(trait -> !listed.contains(trait))
            .toList();
    Set<String> deciding = new HashSet<>();
    boolean planned = false;
    for (Job job : jobs) {
      Outcome without = outcome(job, Set.of());
      if (without.sheet().isPresent()) {
        planned = true;
        List<String> alone =
            others.stream().filter(it -> !outcome(job, Set.of(it)).equals(without)).toList();
        deciding.addAll(alone);
        deciding.addAll(changing(job, Set.of(), without, without(others, deciding)));
        for (String trait : alone) {
          Outcome with = outcome(job, Set.of(trait));
          if (with.sheet().isPresent()) {
            deciding.addAll(changing(job, Set.of(trait), with, without(others, deciding)));
          }
        }
      }
    }
    return planned ? others.stream().filter(deciding::contains).toList() : others;
  }

  private static List<String> without(List<String> traits, Set<String> deciding) {
    return traits.stream().filter(it -> !deciding.contains(it)).toList();
  }

  /**
   * Those of a group that change something where the vehicle has some already. A group that changes
   * nothing is not looked at one by one, for planning takes long; one of which only all together
   * change something counts whole.
   */
  private Set<String> changing(Job job, Set<String> has, Outcome without, List<String> group) {
    Set<String> both = new TreeSet<>(has);
    both.addAll(group);
    if (group.isEmpty() || outcome(job, both).equals(without)) {
      return Set.of();
    }
    int half = group.size() / 2;
    Set<String> found = new HashSet<>();
    if (half > 0) {
      found.addAll(changing(job, has, without, group.subList(0, half)));
      found.addAll(changing(job, has, without, group.subList(half, group.size())));
    }
    return found.isEmpty() ? Set.copyOf(group) : found;
  }

  /** What a technician of the shop would be asked to do; none where the shop has none. */
  private Optional<Job> job(Bay bay, List<Job.Work> works) {
    String asked = works.stream().map(Job.Work::toString).collect(Collectors.joining(", "));
    return folder.shop().people().values().stream()
        .filter(it -> it.grade() == Shop.Grade.TECHNICIAN)
        .findFirst()
        .map(
            person ->
                new Source(
                    "work",
                    "job: 1\nvehicle: {book: %s}\nbay: %s\nby: %s\nwork: [%s]\n"
                        .formatted(
                            book.vehicle().value(),
                            bay.name().value(),
                            person.id().value(),
                            asked)))
        .flatMap(text -> YamlFile.parse(text, new Problems()))
        .flatMap(node -> JobReader.read(node, new Problems()));
  }

  /** A sheet, or why there is none. */
  private record Outcome(Optional<Sheet> sheet, List<String> errors) {}

  private Outcome outcome(Job job, Set<String> more) {
    List<Located<String>> traits =
        Stream.concat(
                book.traits().own().stream(), more.stream().map(it -> new Located<>(it, book.at())))
            .toList();
    Map<String, SpecBook> books = new HashMap<>(folder.books());
    books.put(book.vehicle().value(), book.withTraits(traits));
    ShopFolder with =
        new ShopFolder(
            folder.shop(), books, folder.procedures(), folder.catalogue(), folder.faulty());
    Problems problems = new Problems();
    Optional<Sheet> sheet =
        Resolver.resolve(job, with, day, problems)
            .flatMap(resolved -> Planner.plan(resolved, problems));
    List<String> errors =
        problems.all().stream().filter(Problem::isError).map(Problem::what).toList();
    return new Outcome(sheet, errors);
  }
}
