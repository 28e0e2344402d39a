package baysheet.ledger;

import baysheet.ledger.Event.Issued;
import baysheet.ledger.Event.Superseded;
import baysheet.report.Problems;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The ledger of a garage, open for writing. Nobody else can write to it until it is closed. After
 * the first fault nothing more is written, so that events stand in the order of what happened; the
 * next run finds out how far this one came.
 *
 * <p>Everything is on the device before an event says so: the page and the record of a sheet, then
 * the customer, then the event. What was written before a fault is written again or found there.
 */
public final class Ledger implements AutoCloseable {
  private static final String LOCK = ".lock";

  private final Path folder;
  private final Disk disk;
  private final Closeable lock;
  private final EventChain chain;
  private final Index index;
  private Optional<IOException> fault = Optional.empty();

  private Ledger(Path folder, Disk disk, Closeable lock, EventChain chain, PersonalFiles people) {
    this.folder = folder;
    this.disk = disk;
    this.lock = lock;
    this.chain = chain;
    this.index = new Index(folder, people, chain.takeEvents());
  }

  /**
   * Opens the ledger in a folder, which is made when there is none. An end that was not written in
   * full is moved to a file of its own, with a warning.
   *
   * @return empty, with a problem, where the lines that are there do not chain
   * @throws UncheckedIOException naming the path, when another run has it open or something cannot
   *     be read or written
   */
  public static Optional<Ledger> open(Path folder, Disk disk, Problems problems) {
    Closeable lock = lock(folder, disk);
    Optional<Ledger> ledger = Optional.empty();
    try {
      Optional<EventChain> chain = EventChain.read(folder, problems);
      Optional<PersonalFiles> people = chain.flatMap(it -> PersonalFiles.read(folder, problems));
      ledger = people.map(it -> new Ledger(folder, disk, lock, chain.get(), it));
      if (ledger.isPresent()) {
        ledger.get().mend(problems);
      }
      return ledger;
    } finally {
      if (ledger.isEmpty()) {
        release(folder, lock);
      }
    }
  }

  private static Closeable lock(Path folder, Disk disk) {
    try {
      disk.createFolders(folder.resolve(Index.SHEETS));
      return disk.lock(folder.resolve(LOCK));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write to the ledger " + folder, e);
    }
  }

  private static void release(Path folder, Closeable lock) {
    try {
      lock.close();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot release the ledger " + folder, e);
    }
  }

  private void mend(Problems problems) {
    try {
      new WholeFiles(disk).clear(folder);
      new WholeFiles(disk).clear(folder.resolve(Index.SHEETS));
      index.people().mend(disk);
      if (chain.torn().isPresent()) {
        AppendedLines cut = chain.torn().get();
        Path kept = free(cut.file());
        new WholeFiles(disk).write(kept, cut.torn());
        disk.truncate(cut.file(), cut.size());
        disk.force(cut.file());
        chain.mended();
        problems.add(LedgerSentences.torn(cut.file(), cut.whole().size() + 1, Optional.of(kept)));
      }
    } catch (IOException e) {
      release(folder, lock);
      throw new UncheckedIOException("cannot mend the ledger " + folder, e);
    }
  }

  /** {@code 2026.jsonl.torn}, {@code 2026.jsonl.torn-2} … */
  private static Path free(Path file) {
    Path free = file.resolveSibling(file.getFileName() + ".torn");
    for (int count = 2; Files.exists(free); count++) {
      free = file.resolveSibling(file.getFileName() + ".torn-" + count);
    }
    return free;
  }

  /** What stands in the ledger, with all that was added since it was opened. */
  public Index index() {
    return index;
  }

  /**
   * Keeps an issued sheet and writes its event, with one that supersedes the revision it replaces.
   *
   * @param pdf the page as printed
   * @param record its record, whose hash and figures the event holds
   * @throws UncheckedIOException naming the ledger; how far it came is known when it is opened
   *     again
   */
  public void issue(Issued issued, byte[] pdf, byte[] record) {
    List<Event> events = new ArrayList<>(List.of(issued));
    issued
        .replaces()
        .ifPresent(it -> events.add(new Superseded(issued.on(), it.sheet(), issued.sheet())));
    orStop(
        () -> {
          keep(index.page(issued.sheet()), pdf);
          keep(index.recordFile(issued.sheet()), record);
          index.people().write(KeptRecord.of(record).customer(), disk);
          append(events);
        });
  }

  private void keep(Path file, byte[] content) throws IOException {
    if (!WholeFiles.holds(file, content)) {
      new WholeFiles(disk).write(file, content);
    }
  }

  /**
   * Writes events in one go, all of them or none, and before them what was typed about them.
   *
   * @throws UncheckedIOException naming the ledger; how far it came is known when it is opened
   *     again
   */
  public void add(List<? extends Event> events, List<PersonalFiles.Note> notes) {
    orStop(
        () -> {
          index.people().write(notes, disk);
          append(List.copyOf(events));
        });
  }

  private void append(List<Event> events) throws IOException {
    EventChain.Addition addition = chain.addition(events);
    disk.append(addition.file(), addition.lines());
    disk.force(addition.file());
    chain.added(events, addition);
    events.forEach(index::add);
  }

  /** A piece of writing. */
  interface Writing {
    void run() throws IOException;
  }

  void orStop(Writing work) {
    try {
      if (fault.isPresent()) {
        throw fault.get();
      }
      work.run();
    } catch (IOException e) {
      fault = Optional.of(e);
      throw new UncheckedIOException("cannot write to the ledger " + folder, e);
    }
  }

  Disk disk() {
    return disk;
  }

  /** Lets others write. */
  @Override
  public void close() {
    release(folder, lock);
  }
}
