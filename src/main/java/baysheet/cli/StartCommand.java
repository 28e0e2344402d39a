package baysheet.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command that makes the shop folder of a garage that has none. */
@Command(
    name = "start",
    description =
        "Make a shop folder to begin with: a shop file, procedures, an example vehicle and job.",
    mixinStandardHelpOptions = true)
final class StartCommand implements Callable<Integer> {
  private final Console console;
  private final Supplier<LocalDate> today;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "DIR", description = "The new folder. Nothing is ever overwritten.")
  private Path folder;

  @Option(
      names = "--date",
      paramLabel = "DAY",
      description = "The day of the example job, as in 2026-03-02 (default: today).")
  private Optional<String> date = Optional.empty();

  @Option(
      names = "--schemas",
      description =
          "DIR is a shop folder: write only what editors complete from, DIR/schemas, anew.")
  private boolean schemas;

  StartCommand(Console console, Supplier<LocalDate> today) {
    this.console = console;
    this.today = today;
  }

  @Override
  public Integer call() {
    if (schemas) {
      schemas();
    } else {
      start(day());
    }
    return Exit.DONE;
  }

  private LocalDate day() {
    try {
      return date.map(LocalDate::parse).orElseGet(today);
    } catch (DateTimeParseException noDay) {
      throw wrong("--date takes a day such as 2026-03-02, not \"" + date.orElse("") + "\"");
    }
  }

  private void start(LocalDate day) {
    if (!NewFolder.isFree(folder)) {
      throw wrong(folder + " is there already and not empty; a new shop needs a folder of its own");
    }
    NewFolder.write(folder, NewShop.files(day));
    console.say("made " + folder + ": a shop folder with an example vehicle and an example job");
    console.say("put your own garage into " + folder.resolve(ShopFolders.SHOP_FILE) + ", then");
    console.say("  baysheet check " + folder);
    console.say("  baysheet sheets " + folder.resolve(day.toString()));
  }

  private void schemas() {
    if (!Files.isRegularFile(folder.resolve(ShopFolders.SHOP_FILE))) {
      throw wrong(folder + " is no shop folder: it has no " + ShopFolders.SHOP_FILE);
    }
    Map<String, String> files = NewShop.schemas();
    files.forEach(
        (file, text) ->
            OutFiles.write(folder.resolve(file), text.getBytes(StandardCharsets.UTF_8)));
    console.say("wrote " + files.size() + " files to " + folder.resolve(NewShop.SCHEMAS));
  }

  private CommandLine.ParameterException wrong(String what) {
    return new CommandLine.ParameterException(spec.commandLine(), what);
  }
}
