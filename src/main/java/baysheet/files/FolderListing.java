package baysheet.files;

import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.report.Span;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What stands in one of a shop's own folders: the files to read, and everything else by name. A
 * file that is passed over could hold the one caution or the one job that matters, so none is
 * passed over without a word.
 *
 * @param files regular files called {@code *.yaml} that can be read, by name
 * @param unread files that were meant to be read and cannot be, as {@code 2407.yml}
 * @param listed whether the folder could be listed; a missing folder counts as an empty one
 */
public record FolderListing(List<Path> files, List<Path> unread, boolean listed) {
  private static final String ENDING = ".yaml";

  /** Notes that people keep beside their files. */
  private static final Set<String> NOTES = Set.of("txt", "md");

  /** What editors and systems leave behind. */
  private static final Set<String> EDITOR_ENDINGS =
      Set.of("swp", "swo", "bak", "orig", "tmp", "part");

  private static final Set<String> SYSTEM_FILES = Set.of("thumbs.db", "desktop.ini");

  /** How many names one message lists. */
  private static final int MOST_NAMES = 10;

  public FolderListing {
    files = List.copyOf(files);
    unread = List.copyOf(unread);
  }

  /** The listing of a folder that may be missing; nothing then. */
  public static FolderListing ofOptional(Path folder, Problems problems) {
    return Files.exists(folder, LinkOption.NOFOLLOW_LINKS)
        ? of(folder, problems)
        : new FolderListing(List.of(), List.of(), true);
  }

  /** The listing of a folder; what is neither read nor a note is an error. */
  public static FolderListing of(Path folder, Problems problems) {
    return of(folder, Files::isReadable, problems);
  }

  /**
   * The same.
   *
   * @param readable whether the reader of a file has the permission; the superuser always has
   */
  public static FolderListing of(Path folder, Predicate<Path> readable, Problems problems) {
    if (!Files.isDirectory(folder)) {
      problems.add(
          error(folder, ProblemCode.NOT_A_FOLDER, whatIs(folder) + ", but a folder is expected"));
      return new FolderListing(List.of(), List.of(), false);
    }
    try (Stream<Path> entries = Files.list(folder)) {
      List<Path> sorted =
          entries.sorted(Comparator.comparing(file -> file.getFileName().toString())).toList();
      return new Sorter(readable, problems).sort(folder, sorted);
    } catch (IOException | SecurityException e) {
      problems.add(error(folder, ProblemCode.CANNOT_READ, "this folder cannot be listed"));
      return new FolderListing(List.of(), List.of(), false);
    }
  }

  /** The files to read and those that were meant to be. */
  int size() {
    return files.size() + unread.size();
  }

  /** What a path that is no readable regular file is; empty where it is one. */
  private static Optional<Problem> unfit(Path file, Predicate<Path> readable) {
    if (!Files.isRegularFile(file)) {
      return Optional.of(
          error(file, ProblemCode.NOT_A_FILE, whatIs(file) + ", but a file is expected"));
    }
    return readable.test(file)
        ? Optional.empty()
        : Optional.of(
            error(file, ProblemCode.CANNOT_READ, "this file cannot be read")
                .expecting("permission to read it"));
  }

  /** Sorts what stands in a folder into files, what was meant to be one, and the rest. */
  private static final class Sorter {
    private final Predicate<Path> readable;
    private final Problems problems;
    private final List<Path> files = new ArrayList<>();
    private final List<Path> unread = new ArrayList<>();
    private final List<String> ignored = new ArrayList<>();

    Sorter(Predicate<Path> readable, Problems problems) {
      this.readable = readable;
      this.problems = problems;
    }

    FolderListing sort(Path folder, List<Path> entries) {
      entries.forEach(this::sort);
      if (!ignored.isEmpty()) {
        problems.add(notRead(folder, ignored));
      }
      return new FolderListing(files, unread, true);
    }

    private void sort(Path entry) {
      String name = entry.getFileName().toString();
      if (isLeftBehind(name)) {
        ignored.add(name);
      } else if (name.endsWith(ENDING)) {
        yaml(entry);
      } else if (isMisnamed(name)) {
        unread.add(entry);
        problems.add(misnamed(entry, name));
      } else if (NOTES.contains(ending(name)) && Files.isRegularFile(entry)) {
        ignored.add(name);
      } else {
        problems.add(unexpected(entry));
      }
    }

    private void yaml(Path entry) {
      Optional<Problem> unfit = unfit(entry, readable);
      if (unfit.isPresent()) {
        unread.add(entry);
        problems.add(unfit.get());
      } else {
        files.add(entry);
      }
    }
  }

  private static boolean isLeftBehind(String name) {
    String small = name.toLowerCase(Locale.ROOT);
    return name.startsWith(".")
        || name.endsWith("~")
        || name.startsWith("#")
        || EDITOR_ENDINGS.contains(ending(name))
        || SYSTEM_FILES.contains(small);
  }

  /** {@code .yml}, {@code .YAML} and {@code .yaml.txt}: somebody meant it to be read. */
  private static boolean isMisnamed(String name) {
    String small = name.toLowerCase(Locale.ROOT);
    return small.endsWith(ENDING)
        || small.endsWith(".yml")
        || small.contains(ENDING + ".")
        || small.equals("yaml");
  }

  private static String ending(String name) {
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  private static Problem misnamed(Path entry, String name) {
    int end = name.toLowerCase(Locale.ROOT).lastIndexOf(".y");
    String right = (end < 1 ? name : name.substring(0, end)) + ENDING;
    return error(
            entry,
            ProblemCode.MISNAMED_FILE,
            "this file is not read, because its name does not end in " + ENDING)
        .expecting("the name " + right);
  }

  private static Problem unexpected(Path entry) {
    return error(entry, ProblemCode.UNEXPECTED_FILE, whatIs(entry) + " that is not read")
        .expecting("only files with names that end in " + ENDING);
  }

  private static String whatIs(Path path) {
    if (Files.isSymbolicLink(path) && !Files.exists(path)) {
      return "this is a link to something that does not exist";
    }
    if (Files.isDirectory(path)) {
      return "this is a folder";
    }
    return Files.isRegularFile(path) ? "this is a file" : "this is neither a file nor a folder";
  }

  private static Problem notRead(Path folder, List<String> names) {
    String first = String.join(", ", names.subList(0, Math.min(MOST_NAMES, names.size())));
    int more = names.size() - MOST_NAMES;
    return Problem.of(
        ProblemCode.IGNORED_FILE,
        at(folder),
        (names.size() == 1 ? "this file is not read: " : "these files are not read: ")
            + first
            + (more > 0 ? " and " + more + " more" : ""));
  }

  /** Folders whose names are nearly those of the shop's own are never read by that name. */
  static void nearlyOwn(Path root, Problems problems) {
    for (Path folder : DayFolders.within(root)) {
      if (Files.isDirectory(folder)) {
        nearlyOwn(folder, DayFolders.OWN).ifPresent(problems::add);
      }
    }
  }

  /** Files beside the shop file that look as if they were read. */
  public static void beside(Path root, Problems problems) {
    List<String> names =
        DayFolders.within(root).stream()
            .filter(file -> !Files.isDirectory(file))
            .map(file -> file.getFileName().toString())
            .filter(name -> name.endsWith(ENDING) || isMisnamed(name))
            .filter(name -> !name.equals(ShopFolders.SHOP_FILE))
            .toList();
    if (!names.isEmpty()) {
      problems.add(notRead(root, names));
    }
  }

  /** A folder whose name is nearly one of the shop's own. */
  static Optional<Problem> nearlyOwn(Path folder, Set<String> own) {
    String name = folder.getFileName().toString();
    return own.contains(name)
        ? Optional.empty()
        : Nearest.of(name, own).map(near -> misnamedFolder(folder, near));
  }

  /** Folders that were meant for a day, as 2026-3-2, and are not read for it. */
  static void nearlyDay(Path day, Problems problems) {
    String right = DayFolders.whole(day).getFileName().toString();
    DayFolders.nearly(day).forEach(folder -> problems.add(misnamedFolder(folder, right)));
  }

  private static Problem misnamedFolder(Path folder, String right) {
    return error(folder, ProblemCode.MISNAMED_FOLDER, "a folder with this name is not read")
        .expecting("the name " + right);
  }

  private static Problem error(Path path, ProblemCode code, String what) {
    return Problem.of(code, at(path), what);
  }

  private static Span at(Path path) {
    return new Source(YamlFiles.shown(path), "").whole();
  }
}
