package baysheet.plan;

import baysheet.books.ShopFolder;
import baysheet.resolve.Resolved;
import baysheet.resolve.ShopTexts;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The shop folders that tests plan from: the small ones of the cases, and the demo. */
public final class CaseFolders {
  static final Path CASES = Path.of("src/test/resources/cases/plan");

  private static final Path DEMO = Path.of("jobs");

  private static final Path RARER = Path.of("src/test/resources/cases/workshop");

  private CaseFolders() {}

  /** A job and the name that failures give it. */
  public record JobOf(String name, ShopTexts shop, ShopFolder folder, String path) {
    public Resolved resolved() {
      return shop.resolved(path, folder);
    }

    @Override
    public String toString() {
      return name;
    }
  }

  /** The case folders, by name. */
  public static List<Path> cases() {
    try (Stream<Path> folders = Files.list(CASES)) {
      return folders.filter(Files::isDirectory).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + CASES, e);
    }
  }

  /** The one job of a case. */
  public static JobOf job(Path folder) {
    ShopTexts shop = ShopTexts.of(folder);
    List<String> jobs = shop.jobs();
    if (jobs.size() != 1) {
      throw new IllegalStateException(folder + " has the jobs " + jobs);
    }
    return new JobOf(folder.getFileName().toString(), shop, shop.folder(), jobs.get(0));
  }

  /** Every job of the demo days. */
  public static List<JobOf> demo() {
    ShopTexts shop = ShopTexts.of(DEMO).withBuiltIn();
    ShopFolder folder = shop.folder();
    return shop.jobs().stream().map(path -> new JobOf(path, shop, folder, path)).toList();
  }

  /** The rarer jobs of a workshop, whose files are laid over the demo. */
  public static List<JobOf> workshop() {
    ShopTexts shop = ShopTexts.of(DEMO).withBuiltIn();
    ShopTexts rarer = ShopTexts.of(RARER);
    for (String path : rarer.paths("")) {
      shop = shop.with(path, rarer.text(path));
    }
    ShopTexts both = shop;
    ShopFolder folder = both.folder();
    return rarer.jobs().stream().map(path -> new JobOf(path, both, folder, path)).toList();
  }
}
