package baysheet.files;

import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The job files of a command line, by shop folder.
 *
 * @param root the shop folder
 * @param jobs its job files, in the order named
 * @param unread files of such folders that were meant to be jobs and cannot be read
 * @param days folders that were named as a whole; their sheets also go into one file. A day for
 *     which nothing is planned may have no folder.
 */
public record JobGroups(Path root, List<Path> jobs, List<Path> unread, List<Path> days) {

  /** Sorts what was named into shop folders. A name that leads nowhere does not stop the others. */
  public static List<JobGroups> of(List<Path> paths, Problems problems) {
    Map<Path, JobGroups> groups = new LinkedHashMap<>();
    for (Path path : paths) {
      root(path, problems)
          .ifPresent(
              root ->
                  groups
                      .computeIfAbsent(
                          root,
                          key ->
                              new JobGroups(
                                  key, new ArrayList<>(), new ArrayList<>(), new ArrayList<>()))
                      .add(path, problems));
    }
    return List.copyOf(groups.values());
  }

  /** The shop folder of something that can be made into sheets. */
  private static Optional<Path> root(Path path, Problems problems) {
    boolean exists = Files.exists(path);
    if (!exists && !isUnplanned(path)) {
      problems.add(notThere(path));
      return Optional.empty();
    }
    Optional<Path> root = ShopFolders.rootOf(path);
    if (root.isEmpty()) {
      problems.add(noShop(path));
    }
    Optional<Problem> noDay = root.flatMap(it -> notADay(path, it));
    noDay.ifPresent(problems::add);
    return root.filter(it -> noDay.isEmpty());
  }

  /** A day of the shop without jobs, or without a folder: no run must fail on a Sunday. */
  private static boolean isUnplanned(Path path) {
    return DayFolders.date(path).isPresent() && DayFolders.isInShop(path);
  }

  /** That nothing is called so, and what is nearly. */
  public static Problem notThere(Path path) {
    return Problem.of(
            ProblemCode.CANNOT_READ,
            new Source(YamlFiles.shown(path), "").whole(),
            "there is no such file or folder")
        .near(meant(path));
  }

  /** A job that was named without its ending, or by its number alone; else the nearest name. */
  private static Optional<String> meant(Path path) {
    String name = String.valueOf(path.getFileName());
    Path file = path.resolveSibling(name + YamlFiles.ENDING);
    if (Files.isRegularFile(file)) {
      return Optional.of(YamlFiles.shown(file));
    }
    return ofNumber(path)
        .or(
            () ->
                Nearest.of(name, siblings(path))
                    .map(near -> YamlFiles.shown(path.resolveSibling(near))));
  }

  private static Optional<String> ofNumber(Path path) {
    return Optional.of(path)
        .filter(it -> it.getNameCount() == 1 && !it.isAbsolute())
        .flatMap(it -> ShopFolders.here())
        .flatMap(
            root ->
                DayFolders.byNumber(root).getOrDefault(DayFolders.number(path), List.of()).stream()
                    .findFirst())
        .map(YamlFiles::shown);
  }

  private static List<String> siblings(Path path) {
    Path folder = DayFolders.whole(path).getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      return List.of();
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

  /** The shop folder itself, its shop file, and what is in the folders of its books. */
  private static Optional<Problem> notADay(Path path, Path root) {
    Path full = DayFolders.whole(path);
    boolean shop = full.equals(root) || full.equals(root.resolve(ShopFolders.SHOP_FILE));
    boolean books = !shop && DayFolders.holdsNoJobs(root.resolve(root.relativize(full).getName(0)));
    String what =
        shop
            ? "this is the shop folder itself, not one of its days"
            : "the folder " + root.relativize(full).getName(0) + " of the shop holds no jobs";
    return Optional.of(
            Problem.of(ProblemCode.NOT_A_DAY, new Source(YamlFiles.shown(path), "").whole(), what)
                .expecting("a day folder or a job file, as in " + example(root)))
        .filter(it -> shop || books);
  }

  /** The last day that is planned. */
  private static String example(Path root) {
    String day =
        siblings(root.resolve(ShopFolders.SHOP_FILE)).stream()
            .filter(name -> DayFolders.date(root.resolve(name)).isPresent())
            .reduce((first, second) -> second)
            .orElse("2026-03-02");
    return YamlFiles.shown(root.resolve(day));
  }

  private void add(Path path, Problems problems) {
    boolean day = Files.isDirectory(path) || !Files.exists(path);
    FolderListing listing =
        day
            ? FolderListing.ofOptional(path, problems)
            : new FolderListing(List.of(path), List.of(), true);
    List<Path> found = listing.files();
    boolean planned = listing.size() > 0 || !listing.listed() || isUnplanned(path);
    if (day && listing.listed() && planned) {
      FolderListing.nearlyDay(path, problems);
      days.add(path);
      unread.addAll(listing.unread());
    }
    if (!planned) {
      problems.add(
          Problem.of(
                  ProblemCode.NO_JOBS,
                  new Source(YamlFiles.shown(path), "").whole(),
                  "this folder has no job file")
              .expecting("files such as 2417.yaml"));
    }
    // However it was named before.
    Set<Path> known = new HashSet<>();
    jobs.forEach(job -> known.add(DayFolders.whole(job)));
    found.stream().filter(job -> known.add(DayFolders.whole(job))).forEach(jobs::add);
  }
}
