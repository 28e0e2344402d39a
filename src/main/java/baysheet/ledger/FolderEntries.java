package baysheet.ledger;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What lies directly in a folder. */
public final class FolderEntries {
  private FolderEntries() {}

  /**
   * By name; none when there is no such folder.
   *
   * @throws UncheckedIOException naming the folder, when it cannot be listed
   */
  public static List<Path> of(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + folder, e);
    }
  }
}
