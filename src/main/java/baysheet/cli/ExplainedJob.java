package baysheet.cli;

import baysheet.report.ProblemCode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;

/**
 * The job file that somebody wants explained.
 *
 * @param written as on the command line
 */
record ExplainedJob(String written) {
  private static final String EXAMPLE = "a job file such as jobs/2026-03-02/2401.yaml";
  private static final List<String> NOT_JOBS = List.of("vehicles", "procedures", "catalogue");

  /**
   * The file, if it can be one of a job; it may not be there.
   *
   * @param wrong makes the complaint about the command line
   */
  Path file(Function<String, WrongCommandLine> wrong) {
    Path path = Path.of(written);
    if (Files.isDirectory(path)) {
      throw wrong.apply(written + " is a folder").expecting(among(path));
    }
    if (ProblemCode.of(written).isPresent()) {
      throw wrong
          .apply(written + " is the code of a problem, not a job file")
          .expecting("a job file; baysheet help " + written + " prints the page of the problem");
    }
    if (path.endsWith(ShopFolders.SHOP_FILE) || NOT_JOBS.contains(DayFolders.day(path))) {
      throw wrong.apply(written + " is not a job").expecting(EXAMPLE);
    }
    return path;
  }

  private static String among(Path folder) {
    List<String> names =
        DayFolders.isInShop(folder) && !DayFolders.holdsNoJobs(DayFolders.whole(folder))
            ? names(folder)
            : List.of();
    return names.isEmpty()
        ? EXAMPLE
        : "one job file of it, such as " + folder.resolve(names.get(0));
  }

  private static List<String> names(Path folder) {
    return YamlFiles.in(folder).stream().map(file -> file.getFileName().toString()).toList();
  }
}
