package baysheet.cli;

import baysheet.ledger.Disk;
import baysheet.ledger.Event.Issued;
import baysheet.ledger.Event.Replaced;
import baysheet.ledger.Event.Withdrawn;
import baysheet.ledger.Hash;
import baysheet.ledger.Ledger;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * The sheets of a run and the ledger: which revision each is, and that it was issued. Several
 * threads ask which revision; one alone issues.
 */
final class Issues {
  /** The folder of the ledger below that of the sheets. */
  static final String LEDGER = "ledger";

  private final Path folder;
  private final Disk disk;
  private final Supplier<LocalDate> today;
  private Optional<Ledger> ledger = Optional.empty();

  /** What each job's last sheet was before this run. */
  private Map<String, Issued> before = Map.of();

  /**
   * @param out the folder of the sheets
   */
  Issues(Path out, Disk disk, Supplier<LocalDate> today) {
    this.folder = out.resolve(LEDGER);
    this.disk = disk;
    this.today = today;
  }

  /** Every sheet is the first one of its job. */
  static Issues none() {
    return new Issues(
        Path.of(""),
        Disk.REAL,
        () -> {
          throw new IllegalStateException("nothing is issued");
        });
  }

  /**
   * A sheet as a file.
   *
   * @param replaces the revision before, where this one is new in this run
   * @param unchanged whether it was issued before, byte for byte
   */
  record Drawn(MadeSheet made, byte[] pdf, Optional<Replaced> replaces, boolean unchanged) {}

  /**
   * Does something while the ledger is open; nothing where its lines do not chain, which is then
   * among the problems.
   *
   * @param any whether there are jobs; a run without any opens no ledger that is not there
   */
  void whileOpen(boolean any, Problems problems, Runnable work) {
    if (any || Files.exists(folder)) {
      whileOpen(problems, work);
    } else {
      work.run();
    }
  }

  private void whileOpen(Problems problems, Runnable work) {
    try (Ledger open = Ledger.open(folder, disk, problems).orElse(null)) {
      if (open != null) {
        ledger = Optional.of(open);
        Map<String, Issued> latest = new HashMap<>();
        open.index().sheets().forEach(it -> latest.put(it.issued().job(), it.issued()));
        before = Map.copyOf(latest);
        work.run();
      }
    } finally {
      ledger = Optional.empty();
    }
  }

  /**
   * The sheet of a job in the revision that it has to have: the one that was issued, where nothing
   * on it changed, or else the next.
   *
   * @param make makes the sheet in a revision
   */
  Optional<Drawn> settled(
      Path job,
      Function<Revision, Optional<MadeSheet>> make,
      Function<MadeSheet, byte[]> draw,
      Problems problems) {
    Optional<Issued> last = Optional.ofNullable(before.get(YamlFiles.name(job)));
    Revision first =
        last.map(it -> new Revision(it.revision(), it.replaces())).orElse(Revision.FIRST);
    Optional<Drawn> same =
        make.apply(first)
            .map(made -> new Drawn(made, draw.apply(made), Optional.empty(), last.isPresent()));
    if (same.isEmpty() || last.isEmpty() || isOf(last.get(), same.get().pdf())) {
      return same;
    }
    List<String> changes = changes(last.get(), same.get().made());
    Optional<Revision> next =
        Revision.after(last.get().revision(), new Replaced(last.get().sheet(), changes));
    if (next.isEmpty()) {
      problems.add(noneLeft(job, last.get()));
    }
    return next.flatMap(make)
        .map(made -> new Drawn(made, draw.apply(made), next.get().replaces(), false));
  }

  private static boolean isOf(Issued issued, byte[] pdf) {
    return issued.prints().page().equals(Hash.of(pdf));
  }

  /** Safe on several threads: it reads files of the ledger that are never written again. */
  private List<String> changes(Issued last, MadeSheet made) {
    return ledger.orElseThrow().index().changes(last.sheet(), made.record());
  }

  private static Problem noneLeft(Path job, Issued last) {
    return Problem.of(
            ProblemCode.NO_REVISION_LEFT,
            new Source(YamlFiles.shown(job), "").whole(),
            "the sheet %s was changed, and no letter follows %s"
                .formatted(last.sheet(), last.revision()))
        .expecting("a job of another number");
  }

  /**
   * Writes down that a sheet is issued, unless it was. When this returns, the ledger has it on the
   * device.
   *
   * @throws java.io.UncheckedIOException naming the ledger
   */
  void issue(Drawn drawn) {
    Ledger open = ledger.orElseThrow();
    String job = drawn.made().sheet().heading().job();
    boolean lies =
        open.index()
            .latest(job)
            .filter(it -> !it.hasLeft())
            .filter(it -> isOf(it.issued(), drawn.pdf()))
            .isPresent();
    if (!lies) {
      byte[] record = drawn.made().record();
      open.issue(
          Issued.of(record, Hash.of(drawn.pdf()), drawn.replaces(), today.get()),
          drawn.pdf(),
          record);
    }
  }

  /**
   * Writes down that the sheet of a day is withdrawn; nothing where another day has the job now.
   *
   * @throws java.io.UncheckedIOException naming the ledger
   */
  void withdrawn(String job, Path day) {
    ledger.ifPresent(open -> withdrawn(open, job, day));
  }

  private void withdrawn(Ledger open, String job, Path day) {
    open.index()
        .latest(job)
        .filter(it -> !it.hasLeft())
        .filter(it -> it.issued().day().equals(String.valueOf(day.getFileName())))
        .ifPresent(it -> open.add(List.of(new Withdrawn(today.get(), it.id())), List.of()));
  }
}
