package baysheet.cli;

import baysheet.files.DayFolders;
import baysheet.files.YamlFiles;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;

/**
 * What to type next in the folder where the program runs, for somebody who typed its name alone.
 */
final class NextStep {
  private final Optional<Path> root;
  private final Supplier<LocalDate> today;

  /**
   * A place to stand.
   *
   * @param root the shop folder here, if there is one
   */
  NextStep(Optional<Path> root, Supplier<LocalDate> today) {
    this.root = root;
    this.today = today;
  }

  String text() {
    return root.map(this::inShop)
            .orElse(
                "There is no shop folder here. To make one with an example vehicle and job:\n"
                    + "    baysheet start my-garage\n")
        + "All commands:\n    baysheet help\n";
  }

  private String inShop(Path shop) {
    LocalDate day = today.get();
    TreeMap<LocalDate, Integer> days = new TreeMap<>();
    for (Path job : DayFolders.all(shop)) {
      DayFolders.date(job.toAbsolutePath().getParent())
          .ifPresent(date -> days.merge(date, 1, Integer::sum));
    }
    if (days.containsKey(day)) {
      return "There %s for today, %s. To make the sheets:\n    baysheet sheets\n"
              .formatted(jobs(days.get(day)), day)
          + "To look for problems first:\n    baysheet check\n";
    }
    String shown = YamlFiles.shown(shop.resolve(day.toString()));
    String write =
        "To plan a job for today, write %s/NUMBER.yaml, then:\n    baysheet check\n"
            .formatted(shown);
    LocalDate next = days.higherKey(day);
    return next == null
        ? "There are no jobs for today, " + day + ".\n" + write
        : "There are no jobs for today, %s. There %s for %s. To make the sheets:\n    baysheet sheets %s\n"
                .formatted(
                    day, jobs(days.get(next)), next, YamlFiles.shown(shop.resolve(next.toString())))
            + write;
  }

  private static String jobs(int count) {
    return count == 1 ? "is 1 job" : "are " + count + " jobs";
  }
}
