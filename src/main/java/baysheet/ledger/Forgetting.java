package baysheet.ledger;

import baysheet.ledger.Event.Forgotten;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;

/**
 * Deletes names, plates, pages and typed notes of jobs of earlier days. The event comes last: after
 * a fault the next run finds the same sheets and deletes what is left.
 *
 * @param before jobs of this day and later ones stay
 */
public record Forgetting(LocalDate before) {
  /**
   * What was deleted.
   *
   * @param lines of names and notes
   * @param files pages and records
   */
  public record Done(List<String> sheets, int lines, int files) {}

  /** The sheets that are concerned and were not forgotten before. */
  public List<SheetStory> sheets(Index index) {
    return index.sheets().stream()
        .filter(it -> it.issued().date().isBefore(before) && !it.isForgotten())
        .toList();
  }

  /**
   * Does it.
   *
   * @param others files outside the ledger that show the same
   * @throws java.io.UncheckedIOException naming the ledger
   */
  public Done run(Ledger ledger, List<Path> others, LocalDate on) {
    Index index = ledger.index();
    List<String> ids = sheets(index).stream().map(SheetStory::id).toList();
    Set<String> gone = ids.stream().collect(Collectors.toUnmodifiableSet());
    AtomicInteger lines = new AtomicInteger();
    AtomicInteger files = new AtomicInteger();
    ledger.orStop(
        () -> {
          lines.set(index.people().forget(gone::contains, new WholeFiles(ledger.disk())));
          for (Path file : others) {
            delete(file, ledger.disk(), files);
          }
          for (String id : ids) {
            delete(index.page(id), ledger.disk(), files);
            delete(index.recordFile(id), ledger.disk(), files);
          }
        });
    if (!ids.isEmpty()) {
      ledger.add(List.of(new Forgotten(on, before, ids)), List.of());
    }
    return new Done(ids, lines.get(), files.get());
  }

  private static void delete(Path file, Disk disk, AtomicInteger count) throws IOException {
    if (Files.exists(file)) {
      disk.delete(file);
      count.incrementAndGet();
    }
  }
}
