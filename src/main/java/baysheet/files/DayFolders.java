package baysheet.files;

import baysheet.report.Problems;
import baysheet.yaml.ValueReaders;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which job files a command line means. */
public final class DayFolders {
  private DayFolders() {}

  /** Folders of a shop that hold no jobs. */
  static final Set<String> OWN = Set.of("vehicles", "procedures", "catalogue", NewShop.SCHEMAS);

  /** What follows the number in the name of a job file, also where it is misspelt. */
  private static final Pattern ENDING = Pattern.compile("\\.ya?ml.*$", Pattern.CASE_INSENSITIVE);

  private static final Pattern JOINED_DATE =
      Pattern.compile("(?<![0-9])([0-9]{4})([0-9]{2})([0-9]{2})(?![0-9])");

  /** At most as many digits as a year has, so that any name can be read. */
  private static final Pattern FIGURE = Pattern.compile("(?<![0-9])[0-9]{1,4}(?![0-9])");

  /** The name of the folder in which a job file stands. */
  public static String day(Path file) {
    Path folder = file.toAbsolutePath().normalize().getParent();
    return folder == null || folder.getFileName() == null ? "" : folder.getFileName().toString();
  }

  /** Every job file of a shop folder: those in folders that are not its own. */
  public static List<Path> all(Path root) {
    return all(root, new Problems());
  }

  /** The same; what stands in those folders and is not read is a problem. */
  public static List<Path> all(Path root, Problems problems) {
    List<Path> jobs = new ArrayList<>();
    for (Path folder : within(root)) {
      if (Files.isDirectory(folder) && !holdsNoJobs(folder) && isOfJobs(folder)) {
        jobs.addAll(FolderListing.of(folder, problems).files());
      }
    }
    return jobs;
  }

  /** Folders of other use may stand in a shop folder: one for the sheets, one for layouts. */
  private static boolean isOfJobs(Path folder) {
    boolean misnamed = FolderListing.nearlyOwn(folder, OWN).isPresent();
    return date(folder).isPresent() || !misnamed && !numbers(folder).isEmpty();
  }

  /** What stands in a shop folder itself, by name. */
  static List<Path> within(Path root) {
    try (Stream<Path> entries = Files.list(root)) {
      return entries.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + root, e);
    }
  }

  /** The same by number. */
  public static Map<String, List<Path>> byNumber(Path root) {
    return all(root).stream().collect(Collectors.groupingBy(DayFolders::number));
  }

  /** The name of a job's file. Some file systems take names that differ in capitals for one. */
  public static String number(Path job) {
    return YamlFiles.name(job).toLowerCase(Locale.ROOT);
  }

  /** Whether a shop's folder is one of those for its books. */
  public static boolean holdsNoJobs(Path folder) {
    return OWN.contains(folder.getFileName().toString());
  }

  /** The same for every way in which a file can be named. */
  public static Path whole(Path file) {
    return file.toAbsolutePath().normalize();
  }

  /** Whether a folder is directly in a shop folder, as the days of a shop are. */
  public static boolean isInShop(Path folder) {
    Path above = whole(folder).getParent();
    return above != null && Files.isRegularFile(above.resolve(ShopFolders.SHOP_FILE));
  }

  /** The day that a folder is named after. */
  public static Optional<LocalDate> date(Path folder) {
    return ValueReaders.dateOf(String.valueOf(whole(folder).getFileName()))
        .fold(Optional::of, wrong -> Optional.empty());
  }

  /** Folders with jobs that name a day, but otherwise than its folder does: {@code 2026-3-2}. */
  static List<Path> nearly(Path day) {
    List<Integer> figures = date(day).map(DayFolders::figures).orElse(List.of());
    Path root = whole(day).getParent();
    if (figures.isEmpty() || !isInShop(day)) {
      return List.of();
    }
    return within(root).stream()
        .filter(folder -> Files.isDirectory(folder) && date(folder).isEmpty())
        .filter(folder -> figures(folder.getFileName().toString()).equals(figures))
        .filter(folder -> !numbers(folder).isEmpty())
        .toList();
  }

  private static List<Integer> figures(LocalDate day) {
    return Stream.of(day.getYear(), day.getMonthValue(), day.getDayOfMonth()).sorted().toList();
  }

  /** Year, month and day in whatever order; nothing where a name has other figures. */
  private static List<Integer> figures(String name) {
    String parted = JOINED_DATE.matcher(name).replaceFirst("$1-$2-$3");
    return FIGURE
        .matcher(parted)
        .results()
        .map(it -> Integer.valueOf(it.group()))
        .sorted()
        .toList();
  }

  /** The numbers of all job files in a folder, of those as well that cannot be read. */
  public static Set<String> numbers(Path folder) {
    FolderListing listing = FolderListing.ofOptional(folder, new Problems());
    return Stream.concat(listing.files().stream(), listing.unread().stream())
        .map(DayFolders::numberOf)
        .collect(Collectors.toSet());
  }

  /** The number that a file was meant to have, however its name ends. */
  public static String numberOf(Path file) {
    return ENDING.matcher(file.getFileName().toString()).replaceFirst("");
  }
}
