package baysheet.output;

import baysheet.files.YamlFiles;
import baysheet.ledger.Disk;
import baysheet.ledger.Event.Issued;
import baysheet.ledger.Event.Part;
import baysheet.ledger.Event.Replaced;
import baysheet.ledger.Event.Withdrawn;
import baysheet.ledger.Hash;
import baysheet.ledger.Index;
import baysheet.ledger.KeptRecord;
import baysheet.ledger.Ledger;
import baysheet.ledger.SheetStory;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.sheet.Heading;
import baysheet.sheet.Sheet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * The sheets of a run and the ledger: which revision each is, and that it was issued. Several
 * threads ask which revision; one alone issues.
 */
public final class SheetIssuer {
  /** The folder of the ledger below that of the sheets. */
  public static final String LEDGER = "ledger";

  private final Path folder;
  private final Disk disk;
  private final Supplier<LocalDate> today;
  private Optional<Ledger> ledger = Optional.empty();

  /** The sheets of each job before this run, those of its last revision. */
  private Map<String, List<Issued>> before = Map.of();

  /** The last sheet of each name before this run. */
  private Map<String, Issued> named = Map.of();

  /** What was found on a vehicle before the day of a job, as the ledger had it before this run. */
  private Function<Heading, List<Heading.Seen>> findings = heading -> List.of();

  /**
   * @param out the folder of the sheets
   */
  public SheetIssuer(Path out, Disk disk, Supplier<LocalDate> today) {
    this.folder = out.resolve(LEDGER);
    this.disk = disk;
    this.today = today;
  }

  /** Every sheet is the first one of its job. */
  static SheetIssuer none() {
    return new SheetIssuer(
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
        know(open.index());
        work.run();
      }
    } finally {
      ledger = Optional.empty();
    }
  }

  private void know(Index index) {
    Map<String, List<Issued>> current = new HashMap<>();
    Map<String, Issued> latest = new HashMap<>();
    for (SheetStory story : index.sheets()) {
      String job = story.issued().job();
      current.computeIfAbsent(
          job, key -> index.current(key).stream().map(SheetStory::issued).toList());
      latest.put(story.issued().name(), story.issued());
    }
    before = Map.copyOf(current);
    named = Map.copyOf(latest);
    findings = new Findings(index)::before;
  }

  /**
   * The sheets of a job in the revision that they have to have: the one that was issued, where
   * nothing on any of them changed, or else the next for all of them.
   *
   * @param make makes the sheets in a revision; none when problems with errors were added
   */
  List<Drawn> settled(
      Path job,
      Function<Revision, List<MadeSheet>> make,
      Function<MadeSheet, byte[]> draw,
      Problems problems) {
    List<Issued> last = before.getOrDefault(YamlFiles.name(job), List.of());
    Revision first =
        last.isEmpty()
            ? Revision.first(findings)
            : new Revision(last.get(0).revision(), printed(last), findings);
    List<Page> pages = pages(make.apply(first), draw);
    pages.stream()
        .map(page -> page.made().sheet().heading())
        .flatMap(it -> ledger.flatMap(open -> JobIdentity.denied(job, it, open.index())).stream())
        .limit(1)
        .forEach(problems::add);
    if (problems.hasErrors()) {
      return List.of();
    }
    if (pages.isEmpty() || last.isEmpty()) {
      return pages.stream().map(page -> drawn(page, pages)).toList();
    }
    if (isStill(last, pages)) {
      List<Page> whole =
          last.size() == pages.size() ? pages : saying(first, pages, pages, make, draw);
      return whole.stream().map(page -> drawn(page, pages)).toList();
    }
    Optional<Revision> next = first.next();
    if (next.isEmpty()) {
      problems.add(noneLeft(job, last.get(0)));
      return List.of();
    }
    List<Page> changed = pages(make.apply(next.get()), draw);
    return saying(next.get(), changed, pages, make, draw).stream()
        .map(page -> drawn(page, pages))
        .toList();
  }

  /** What the sheets that were issued say of the revision before them. */
  private Map<String, Heading.Replaced> printed(List<Issued> last) {
    Index index = ledger.orElseThrow().index();
    Map<String, Heading.Replaced> printed = new HashMap<>();
    for (Issued issued : last) {
      index
          .record(issued.sheet())
          .flatMap(KeptRecord::replaces)
          .ifPresent(it -> printed.put(issued.name(), words(it)));
    }
    return printed;
  }

  private static Heading.Replaced words(Replaced replaced) {
    return new Heading.Replaced(replaced.sheet(), replaced.changes());
  }

  /**
   * The same pages with what each replaces. Where the job needs more sheets for these words, they
   * are put on those.
   *
   * @param pages without these words
   * @param before the sheets of the job as they would be in the revision before
   */
  private List<Page> saying(
      Revision revision,
      List<Page> pages,
      List<Page> before,
      Function<Revision, List<MadeSheet>> make,
      Function<MadeSheet, byte[]> draw) {
    List<Page> said = said(revision, pages, before, make, draw);
    return names(said).equals(names(pages)) ? said : said(revision, said, before, make, draw);
  }

  private List<Page> said(
      Revision revision,
      List<Page> pages,
      List<Page> before,
      Function<Revision, List<MadeSheet>> make,
      Function<MadeSheet, byte[]> draw) {
    Map<String, Heading.Replaced> words = new HashMap<>(revision.replaces());
    for (Page page : pages) {
      drawn(page, before).replaces().ifPresent(it -> words.put(page.name(), words(it)));
    }
    return pages(make.apply(revision.replacing(words)), draw);
  }

  private static List<String> names(List<Page> pages) {
    return pages.stream().map(Page::name).toList();
  }

  /** A made sheet and its file. */
  private record Page(MadeSheet made, byte[] pdf) {
    String name() {
      return made.sheet().name();
    }
  }

  private static List<Page> pages(List<MadeSheet> made, Function<MadeSheet, byte[]> draw) {
    return made.stream().map(it -> new Page(it, draw.apply(it))).toList();
  }

  /** A run that was interrupted may have issued some of a job's sheets and not the others. */
  private static boolean isStill(List<Issued> last, List<Page> pages) {
    int of = last.get(0).stage().map(Part::of).orElse(1);
    return of == pages.size()
        && last.stream()
            .allMatch(
                it ->
                    pages.stream()
                        .anyMatch(page -> page.name().equals(it.name()) && isOf(it, page.pdf())));
  }

  /**
   * @param before the sheets of the job as they would be in the revision before
   */
  private Drawn drawn(Page page, List<Page> before) {
    Optional<Issued> old = replaced(page.made().sheet());
    boolean unchanged = old.filter(it -> isOf(it, page.pdf())).isPresent();
    Optional<Replaced> replaces =
        unchanged
            ? Optional.empty()
            : old.map(it -> new Replaced(it.sheet(), changes(it, page, before)));
    return new Drawn(page.made(), page.pdf(), replaces, unchanged);
  }

  /** The sheet of that name; for the first of other sheets than before, the first of those. */
  private Optional<Issued> replaced(Sheet sheet) {
    boolean first = sheet.stage().filter(it -> !it.isFirst()).isEmpty();
    List<Issued> last = before.getOrDefault(sheet.heading().job(), List.of());
    boolean sameParts = last.stream().anyMatch(it -> it.name().equals(sheet.name()));
    return first && !sameParts
        ? last.stream().findFirst()
        : Optional.ofNullable(named.get(sheet.name()));
  }

  private List<String> changes(Issued old, Page page, List<Page> before) {
    int parts = old.stage().map(Part::of).orElse(1);
    if (parts != before.size()) {
      return List.of(
          before.size() == 1
              ? "the job is on one sheet"
              : "the job is divided among " + before.size() + " sheets");
    }
    Page same =
        before.stream().filter(it -> it.name().equals(page.name())).findFirst().orElse(page);
    return isOf(old, same.pdf())
        ? List.of("another sheet of the job changed")
        : changes(old, same.made());
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
    boolean lies =
        open.index()
            .latest(drawn.made().sheet().name())
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
   * Writes down that a job has other sheets now than before.
   *
   * @param names those that it has
   * @throws java.io.UncheckedIOException naming the ledger
   */
  void only(String job, Set<String> names) {
    Ledger open = ledger.orElseThrow();
    for (SheetStory story : open.index().ofJob(job)) {
      boolean gone = story.hasLeft() || story.state() == SheetStory.State.SUPERSEDED;
      if (!names.contains(story.issued().name()) && !gone && story.closed().isEmpty()) {
        open.add(List.of(new Withdrawn(today.get(), story.id())), List.of());
      }
    }
  }

  /**
   * Writes down that the sheet of a day is withdrawn; nothing where another day has the job now.
   *
   * @param name of the sheet
   * @throws java.io.UncheckedIOException naming the ledger
   */
  void withdrawn(String name, Path day) {
    ledger.ifPresent(open -> withdrawn(open, name, day));
  }

  private void withdrawn(Ledger open, String name, Path day) {
    open.index()
        .latest(name)
        .filter(it -> !it.hasLeft())
        .filter(it -> it.issued().day().equals(String.valueOf(day.getFileName())))
        .ifPresent(it -> open.add(List.of(new Withdrawn(today.get(), it.id())), List.of()));
  }
}
