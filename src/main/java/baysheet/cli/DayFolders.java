package baysheet.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which job files a command line means. */
final class DayFolders {
  private DayFolders() {}

  /** Folders of a shop that hold no jobs. */
  static final Set<String> OWN =
      Set.of("vehicles", "procedures", "catalogue", NewShop.SCHEMAS);

  /** A job file, under an ending that is read or one that is commonly taken for it. */
  private static final Pattern JOB_FILE = Pattern.compile("(.+)\\.ya?ml", Pattern.CASE_INSENSITIVE);

  /** The name of the folder in which a job file stands. */
  static String day(Path file) {
    Path folder = file.toAbsolutePath().normalize().getParent();
    return folder == null || folder.getFileName() == null ? "" : folder.getFileName().toString();
  }

  /** The job files of a folder, none where there is no such folder. */
  static List<Path> jobs(Path folder) {
    return YamlFiles.in(folder);
  }

  /** Every job file of a shop folder: those in folders that are not its own. */
  static List<Path> all(Path root) {
    List<Path> jobs = new ArrayList<>();
    try (Stream<Path> folders = Files.list(root)) {
      folders
          .filter(Files::isDirectory)
          .filter(folder -> !holdsNoJobs(folder))
          .sorted()
          .forEach(folder -> jobs.addAll(YamlFiles.in(folder)));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + root, e);
    }
    return jobs;
  }

  /** The same by number, which is the name of the file. */
  static Map<String, List<Path>> byNumber(Path root) {
    return all(root).stream().collect(Collectors.groupingBy(YamlFiles::name));
  }

  /** Whether a shop's folder is one of those for its books. */
  static boolean holdsNoJobs(Path folder) {
    return OWN.contains(folder.getFileName().toString());
  }

  /** The same for every way in which a file can be named. */
  static Path whole(Path file) {
    return file.toAbsolutePath().normalize();
  }

  /** The day that a folder is named after. */
  static Optional<LocalDate> date(Path folder) {
    try {
      return Optional.of(LocalDate.parse(String.valueOf(whole(folder).getFileName())));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** The numbers of all job files in a folder, of those as well that cannot be read. */
  static Set<String> numbers(Path folder) {
    if (!Files.isDirectory(folder)) {
      return Set.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> JOB_FILE.matcher(file.getFileName().toString()))
          .filter(Matcher::matches)
          .map(name -> name.group(1))
          .collect(Collectors.toSet());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + folder, e);
    }
  }
}
