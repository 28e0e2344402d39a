package baysheet.yaml;

import baysheet.report.Problems;
import baysheet.report.Source;
import java.nio.file.Path;
import java.util.Optional;

/** Reads a file's text, strictly and with a bound. */
public final class SourceFile {
  private SourceFile() {}

  /**
   * The file's text; empty when a problem was added because it is too large or not UTF-8.
   *
   * @param shownName the name to print before line and column
   * @throws java.io.UncheckedIOException naming the path, when there is no such file or it cannot
   *     be read
   */
  public static Optional<Source> read(Path path, String shownName, Problems problems) {
    throw new UnsupportedOperationException(path + ", " + shownName + ", " + problems);
  }
}
