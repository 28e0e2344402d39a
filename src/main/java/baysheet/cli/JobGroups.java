package baysheet.cli;

import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The job files of a command line, by shop folder.
 *
 * @param root the shop folder
 * @param jobs its job files, in the order named
 * @param days folders that were named as a whole; their sheets also go into one file
 */
record JobGroups(Path root, List<Path> jobs, List<Path> days) {

  /**
   * Sorts what was named into shop folders.
   *
   * @throws UncheckedIOException naming the path, where there is no such file or folder
   */
  static List<JobGroups> of(List<Path> paths, Problems problems) {
    Map<Path, JobGroups> groups = new LinkedHashMap<>();
    for (Path path : paths) {
      exists(path);
      Optional<Path> root = ShopFolders.rootOf(path);
      if (root.isEmpty()) {
        problems.add(noShop(path));
        continue;
      }
      groups
          .computeIfAbsent(
              root.get(), key -> new JobGroups(key, new ArrayList<>(), new ArrayList<>()))
          .add(path, problems);
    }
    return List.copyOf(groups.values());
  }

  private static void exists(Path path) {
    if (!Files.exists(path)) {
      throw new UncheckedIOException(
          "there is no " + path, new NoSuchFileException(path.toString()));
    }
  }

  private static Problem noShop(Path path) {
    return Problem.of(
            ProblemCode.NO_SHOP,
            new Source(YamlFiles.shown(path), "").whole(),
            "no folder from here upwards has a " + ShopFolders.SHOP_FILE)
        .expecting(
            "a job file in a day folder of a shop folder, the one with " + ShopFolders.SHOP_FILE);
  }

  private void add(Path path, Problems problems) {
    List<Path> found = DayFolders.jobs(path);
    if (Files.isDirectory(path)) {
      days.add(path);
      if (found.isEmpty()) {
        problems.add(
            Problem.of(
                    ProblemCode.NO_JOBS,
                    new Source(YamlFiles.shown(path), "").whole(),
                    "this folder has no job file")
                .expecting("files such as 2417.yaml"));
      }
    }
    // However it was named before.
    Set<Path> known = new HashSet<>();
    jobs.forEach(job -> known.add(whole(job)));
    found.stream().filter(job -> known.add(whole(job))).forEach(jobs::add);
  }

  private static Path whole(Path job) {
    return job.toAbsolutePath().normalize();
  }
}
