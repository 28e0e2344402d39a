package baysheet.cli;

import baysheet.files.NewFolder;
import baysheet.files.NewShop;
import baysheet.files.ShopFolders;
import baysheet.ledger.Disk;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.OutFiles;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that makes the shop folder of a garage that has none. */
final class StartCommand extends Command {
  private final Supplier<LocalDate> today;

  private final PositionalParamSpec where =
      at(0, "DIR", "1", Path.class, "The new folder. Nothing is ever overwritten.");

  private final OptionSpec date =
      option(
          "--date",
          "DAY",
          String.class,
          "The day of the example job, as in 2026-03-02 (default: today).");

  private final OptionSpec schemas =
      flag(
          "--schemas",
          "DIR is a shop folder: write only what editors complete from, DIR/schemas, anew.");

  StartCommand(Console console, Supplier<LocalDate> today) {
    super(
        console,
        "start",
        "Make a shop folder to begin with: a shop file, procedures, an example vehicle, a first job.");
    this.today = today;
  }

  @Override
  public Integer call() {
    Path folder = where.getValue();
    if (Options.isGiven(schemas)) {
      schemas(folder);
    } else {
      start(folder, day());
    }
    return Exit.DONE;
  }

  private LocalDate day() {
    Optional<String> typed = Options.given(date);
    try {
      return typed.map(LocalDate::parse).orElseGet(today);
    } catch (DateTimeParseException noDay) {
      throw wrong("--date takes a day such as 2026-03-02, not \"" + typed.orElse("") + "\"");
    }
  }

  private void start(Path folder, LocalDate day) {
    if (NewFolder.isInterrupted(folder)) {
      throw wrong(
          folder + " is what an interrupted start left; delete the folder, then run this again");
    }
    if (!NewFolder.isFree(folder)) {
      throw wrong(folder + " is there already and not empty; a new shop needs a folder of its own");
    }
    NewFolder.write(folder, NewShop.files(day));
    console.say("made " + folder + ": a shop folder with an example vehicle and a first job");
    Path first = folder.resolve(day.toString()).resolve("1001.yaml");
    String quote = folder.toString().contains(" ") ? "\"" : "";
    console.say(
        "put your garage into " + folder.resolve(ShopFolders.SHOP_FILE) + " as far as LATER,");
    console.say("and your first job into " + first + ", then");
    console.say("  cd " + quote + folder + quote);
    console.say("  baysheet draft --job 1001");
    console.say("  baysheet check");
    console.say("  baysheet sheets" + (day.equals(today.get()) ? "" : " " + day));
  }

  private void schemas(Path folder) {
    if (!Files.isRegularFile(folder.resolve(ShopFolders.SHOP_FILE))) {
      throw wrong(folder + " is no shop folder: it has no " + ShopFolders.SHOP_FILE);
    }
    OutFiles out = new OutFiles(Disk.REAL);
    OutFiles.parts(folder.resolve(NewShop.SCHEMAS)).forEach(out::remove);
    Map<String, String> files = NewShop.schemas();
    files.forEach(
        (file, text) -> out.write(folder.resolve(file), text.getBytes(StandardCharsets.UTF_8)));
    console.say("wrote " + files.size() + " files to " + folder.resolve(NewShop.SCHEMAS));
  }
}
