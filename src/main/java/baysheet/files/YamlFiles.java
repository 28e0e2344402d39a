package baysheet.files;

import baysheet.ledger.FolderEntries;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Source;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/** The YAML files of a folder, and how they are called. */
public final class YamlFiles {
  public static final String ENDING = ".yaml";

  private YamlFiles() {}

  /** The files directly in a folder, by name; none when there is no such folder. */
  public static List<Path> in(Path folder) {
    return FolderEntries.of(folder).stream()
        .filter(file -> file.getFileName().toString().endsWith(ENDING))
        .filter(Files::isRegularFile)
        .toList();
  }

  /** A file's name without its ending. */
  public static String name(Path file) {
    String name = file.getFileName().toString();
    return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
  }

  /** A file's name up to its first point, whatever its ending. */
  public static String stem(Path file) {
    String name = file.getFileName().toString();
    return name.indexOf('.') < 1 ? name : name.substring(0, name.indexOf('.'));
  }

  /**
   * How messages call a file: as seen from the current folder where it lies below, with slashes.
   * The current folder itself is a point.
   */
  public static String shown(Path file) {
    Path here = Path.of("").toAbsolutePath();
    Path there = file.toAbsolutePath().normalize();
    Path shown = there.startsWith(here) ? here.relativize(there) : there;
    return shown.toString().isEmpty() ? "." : shown.toString().replace('\\', '/');
  }

  /** A file or folder that is not there or cannot be read, which stops no other. */
  public static Problem cannotRead(Path path, IOException why) {
    return Problem.of(
        ProblemCode.CANNOT_READ,
        new Source(shown(path), "").whole(),
        "it cannot be read: " + reason(why));
  }

  /** Why something could not be read or written, without the name of a Java class. */
  public static String reason(IOException why) {
    if (why instanceof NoSuchFileException) {
      return "there is no such file or folder";
    }
    if (why instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (why instanceof FileSystemException system && system.getReason() != null) {
      return system.getReason();
    }
    return why.getMessage() == null ? "the system gives no reason" : why.getMessage();
  }

  /** What is said of a file that took all the memory there is; others go on without it. */
  public static Problem tooMuch(Path file) {
    return Problem.of(
            ProblemCode.NOT_ENOUGH_MEMORY,
            new Source(shown(file), "").whole(),
            "the work on this file needed more memory than the program has")
        .expecting("a smaller file, or more memory: java -Xmx1g -jar baysheet.jar");
  }
}
