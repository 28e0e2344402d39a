package baysheet.cli;

import baysheet.books.ShopFolder;
import baysheet.files.NaturalOrder;
import baysheet.files.YamlFiles;
import baysheet.garage.DayJob;
import baysheet.garage.DayReport;
import baysheet.garage.EveningList;
import baysheet.garage.GarageDay;
import baysheet.ledger.Index;
import baysheet.ledger.SheetStory;
import baysheet.output.RunReport;
import baysheet.output.SheetIssuer;
import baysheet.output.SheetMaker;
import baysheet.plan.Planner;
import baysheet.plan.TracedPlan;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

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
   * @param faults what went wrong in the tool itself
   */
  record Jobs(List<DayJob> planned, List<String> unplanned, List<Throwable> faults) {
    /** With files that were meant to be jobs and cannot be read. */
    Jobs and(List<Path> unread) {
      List<String> all = new ArrayList<>(unplanned);
      unread.forEach(file -> all.add(YamlFiles.stem(file)));
      return new Jobs(planned, all, faults);
    }
  }

  Jobs jobs(List<Path> files, Problems problems) {
    List<Path> ordered = new ArrayList<>(files);
    ordered.sort(Comparator.comparing(YamlFiles::name, NaturalOrder.NATURAL));
    List<Outcome> outcomes = ordered.parallelStream().map(this::outcome).toList();
    List<DayJob> planned = new ArrayList<>();
    List<String> unplanned = new ArrayList<>();
    for (Outcome outcome : outcomes) {
      problems.addAll(outcome.problems());
      outcome
          .job()
          .ifPresentOrElse(planned::add, () -> unplanned.add(YamlFiles.name(outcome.file())));
    }
    return new Jobs(
        planned, unplanned, outcomes.stream().flatMap(it -> it.fault().stream()).toList());
  }

  /** What came of one job file. */
  private record Outcome(
      Path file, Optional<DayJob> job, Problems problems, Optional<Throwable> fault) {}

  /** A fault is kept with its job, so that the others are laid out. */
  private Outcome outcome(Path file) {
    Problems own = new Problems();
    try {
      return new Outcome(file, job(file, own), own, Optional.empty());
    } catch (StackOverflowError | OutOfMemoryError e) {
      own.add(YamlFiles.tooMuch(file));
      return new Outcome(file, Optional.empty(), own, Optional.empty());
    } catch (RuntimeException e) {
      own.add(RunReport.internalError(file));
      return new Outcome(file, Optional.empty(), own, Optional.of(e));
    }
  }

  private Optional<DayJob> job(Path file, Problems problems) {
    Optional<Resolved> resolved = maker.resolve(file, folder, problems);
    Optional<TracedPlan> plan = resolved.flatMap(it -> Planner.traced(it, problems));
    return plan.map(it -> job(resolved.orElseThrow(), it, file, problems))
        .filter(it -> !problems.hasErrors());
  }

  /**
   * Only what the job file asks to divide is planned in stages. Other jobs may have several sheets,
   * but are done in one go; to find out where those end would take longer than all the rest.
   */
  private DayJob job(Resolved resolved, TracedPlan plan, Path file, Problems problems) {
    List<DayJob.Rest> rests = List.of();
    if (resolved.job().sheets().stages().isPresent()) {
      List<Sheet> sheets = maker.stages(resolved, plan, file, problems);
      rests = sheets.stream().limit(Math.max(1, sheets.size()) - 1).map(DayJob::rest).toList();
    }
    return new DayJob(resolved.job(), plan.sheet(), plan.evening(), plan.tools(), rests);
  }

  /** Everything about a day; the states of its sheets as the ledger beside the sheets has them. */
  DayReport report(LocalDate date, Jobs jobs, Path out, Problems problems) {
    Path ledger = out.resolve(SheetIssuer.LEDGER);
    Optional<Index> index =
        Files.isDirectory(ledger) ? Index.read(ledger, problems) : Optional.empty();
    Map<String, String> states = new LinkedHashMap<>();
    for (DayJob job : jobs.planned()) {
      List<SheetStory> sheets =
          index.map(it -> it.current(job.number())).orElse(List.of()).stream()
              .filter(it -> it.issued().date().equals(date))
              .toList();
      sheets.forEach(it -> states.put(it.issued().name(), it.state().words()));
      states.put(job.number(), state(sheets));
    }
    return new DayReport(
        GarageDay.of(folder.shop(), date, jobs.planned()),
        EveningList.of(folder.shop(), jobs.planned()),
        states,
        jobs.unplanned(),
        index.map(it -> gone(it, date, jobs)).orElse(Map.of()));
  }

  /** How far the sheets of one job have come. */
  private static String state(List<SheetStory> sheets) {
    List<String> words = sheets.stream().map(it -> it.state().words()).distinct().toList();
    if (words.size() < 2) {
      return words.stream().findFirst().orElse(NOT_ISSUED);
    }
    return sheets.stream()
        .map(it -> it.issued().name() + " " + it.state().words())
        .collect(Collectors.joining("; "));
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
