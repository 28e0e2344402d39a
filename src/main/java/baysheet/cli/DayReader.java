package baysheet.cli;

import baysheet.books.ShopFolder;
import baysheet.garage.DayJob;
import baysheet.garage.DayReport;
import baysheet.garage.EveningList;
import baysheet.garage.GarageDay;
import baysheet.ledger.Index;
import baysheet.ledger.SheetStory;
import baysheet.plan.Planner;
import baysheet.plan.TracedPlan;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Plans all jobs of a day and lays the day out. */
final class DayReader {
  private static final String NOT_ISSUED = "not issued";

  private final SheetMaker maker;
  private final ShopFolder folder;

  DayReader(SheetMaker maker, ShopFolder folder) {
    this.maker = maker;
    this.folder = folder;
  }

  /**
   * The jobs that can be planned, with the problems of all.
   *
   * @param unplanned numbers of the others
   */
  record Jobs(List<DayJob> planned, List<String> unplanned) {
    /** With files that were meant to be jobs and cannot be read. */
    Jobs and(List<Path> unread) {
      List<String> all = new ArrayList<>(unplanned);
      unread.forEach(file -> all.add(YamlFiles.stem(file)));
      return new Jobs(planned, all);
    }
  }

  Jobs jobs(List<Path> files, Problems problems) {
    List<DayJob> planned = new ArrayList<>();
    List<String> unplanned = new ArrayList<>();
    List<Path> ordered = new ArrayList<>(files);
    ordered.sort(Comparator.comparing(YamlFiles::name, NaturalOrder.NATURAL));
    for (Path file : ordered) {
      Problems own = new Problems();
      Optional<DayJob> job = job(file, own);
      problems.addAll(own);
      job.ifPresentOrElse(planned::add, () -> unplanned.add(YamlFiles.name(file)));
    }
    return new Jobs(planned, unplanned);
  }

  private Optional<DayJob> job(Path file, Problems problems) {
    Optional<Resolved> resolved = maker.resolve(file, folder, problems);
    Optional<TracedPlan> plan = resolved.flatMap(it -> Planner.traced(it, problems));
    return plan.filter(it -> !problems.hasErrors())
        .map(it -> new DayJob(resolved.orElseThrow().job(), it.sheet(), it.evening(), it.tools()));
  }

  /** Everything about a day; the states of its sheets as the ledger beside the sheets has them. */
  DayReport report(LocalDate date, Jobs jobs, Path out, Problems problems) {
    Path ledger = out.resolve(Issues.LEDGER);
    Optional<Index> index =
        Files.isDirectory(ledger) ? Index.read(ledger, problems) : Optional.empty();
    Map<String, String> states = new LinkedHashMap<>();
    for (DayJob job : jobs.planned()) {
      states.put(
          job.number(),
          index
              .flatMap(it -> it.latest(job.number()))
              .filter(it -> it.issued().date().equals(date))
              .map(it -> it.state().words())
              .orElse(NOT_ISSUED));
    }
    return new DayReport(
        GarageDay.of(folder.shop(), date, jobs.planned()),
        EveningList.of(folder.shop(), jobs.planned()),
        states,
        jobs.unplanned(),
        index.map(it -> gone(it, date, jobs)).orElse(Map.of()));
  }

  /** Jobs whose last sheet for this day was carried over or withdrawn. */
  private static Map<String, String> gone(Index index, LocalDate date, Jobs jobs) {
    Map<String, String> gone = new LinkedHashMap<>();
    for (SheetStory story : index.sheets()) {
      String job = story.issued().job();
      boolean here =
          jobs.unplanned().contains(job)
              || jobs.planned().stream().anyMatch(it -> it.number().equals(job));
      boolean left =
          story.state() == SheetStory.State.CARRIED || story.state() == SheetStory.State.WITHDRAWN;
      if (!here && left && story.issued().date().equals(date)) {
        gone.put(job, story.state().words());
      }
    }
    return gone;
  }
}
