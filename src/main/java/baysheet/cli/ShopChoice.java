package baysheet.cli;

import baysheet.files.DayFolders;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** Which shop a command is about, and what the words of its command line mean there. */
final class ShopChoice {
  /** The environment variable that names the shop folder. */
  static final String VARIABLE = "BAYSHEET_SHOP";

  private static final String TODAY = "today";
  private static final String TOMORROW = "tomorrow";

  final OptionSpec shop =
      Options.one(
          "--shop",
          "DIR",
          Path.class,
          "The shop folder (default: the one here, in jobs/, or in " + VARIABLE + ").");

  private final Supplier<LocalDate> today;

  ShopChoice(Supplier<LocalDate> today) {
    this.today = today;
  }

  /**
   * The shop folder: the one that the option names, else the one in which the command runs, else
   * the one that the environment names.
   */
  Path root(CommandLine command) {
    Optional<Path> named = Options.given(shop);
    if (named.isPresent()) {
      return checked(named.get(), "--shop", command);
    }
    return ShopFolders.here()
        .or(() -> ofEnvironment().map(it -> checked(it, VARIABLE, command)))
        .orElseThrow(() -> new WrongCommandLine(command, ShopFolders.NOT_HERE));
  }

  /** The shop folder that the environment names. */
  static Optional<Path> ofEnvironment() {
    return Optional.ofNullable(System.getenv(VARIABLE)).filter(it -> !it.isBlank()).map(Path::of);
  }

  private static Path checked(Path folder, String from, CommandLine command) {
    if (!Files.isRegularFile(folder.resolve(ShopFolders.SHOP_FILE))) {
      throw new WrongCommandLine(
          command, "%s is %s, which has no shop.yaml".formatted(from, YamlFiles.shown(folder)));
    }
    return folder;
  }

  /**
   * What a word means: a file or folder that is there, {@code today}, {@code tomorrow}, a day of
   * the shop, or the number of a job. What means nothing stays as it is, to be reported with the
   * rest.
   */
  Path meant(Path word, CommandLine command) {
    boolean isPath = Files.exists(word) || word.getNameCount() > 1 || word.isAbsolute();
    if (isPath) {
      return word;
    }
    String text = word.toString();
    Optional<LocalDate> day = day(text);
    if (day.isPresent()) {
      return root(command).resolve(day.get().toString());
    }
    boolean known =
        Options.given(shop).isPresent()
            || ShopFolders.here().isPresent()
            || ofEnvironment().isPresent();
    if (!known) {
      return word;
    }
    List<Path> jobs =
        DayFolders.byNumber(root(command)).getOrDefault(DayFolders.number(word), List.of());
    return jobs.size() == 1 ? jobs.get(0) : word;
  }

  /** The day of a word, if it is one. */
  Optional<LocalDate> day(String word) {
    return switch (word) {
      case TODAY -> Optional.of(today.get());
      case TOMORROW -> Optional.of(today.get().plusDays(1));
      default -> DayFolders.date(Path.of(word));
    };
  }

  /** Today's folder in the shop. */
  Path today(CommandLine command) {
    return root(command).resolve(today.get().toString());
  }

  /**
   * The shop folder that is named, or the one here.
   *
   * @param command for the complaint when there is none
   */
  static Path rootFor(Optional<Path> named, CommandLine command) {
    return named.isPresent()
        ? ShopFolders.rootOf(named.get())
            .orElseThrow(
                () ->
                    new WrongCommandLine(
                        command,
                        named.get() + " is no shop folder: it has no " + ShopFolders.SHOP_FILE))
        : ShopFolders.here().orElseThrow(() -> new WrongCommandLine(command, ShopFolders.NOT_HERE));
  }
}
