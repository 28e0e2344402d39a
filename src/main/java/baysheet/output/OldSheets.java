package baysheet.output;

import baysheet.books.Job;
import baysheet.files.NaturalOrder;
import baysheet.ledger.FolderEntries;
import baysheet.pdf.PdfMetadata;
import baysheet.record.RecordHead;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The sheets in a day's folder that their jobs no longer give: a job was cancelled, has another
 * number now, or is refused. They are moved out of the way, so that nobody works from them.
 *
 * @param folder where the sheets of the day lie
 * @param shop the name of the shop; sheets of others are left alone
 * @param jobs numbers whose sheets stay
 */
public record OldSheets(Path folder, String shop, Set<String> jobs) {
  /** Below the folder: sheets as forms, by their ids. */
  public static final String FORMS = "forms";

  /** Below the folder: sheets and forms that are no longer to be used. */
  public static final String WITHDRAWN = "withdrawn";

  private static final String SHEET = ".pdf";
  private static final String RECORD = ".json";

  /** A job's number, that of a stage behind it where there are several, and what kind of file. */
  private static final Pattern NAME = Pattern.compile("((.+?)(?:-[1-9][0-9]?)?)\\.(?:pdf|json)");

  /** What stands behind a job's number in the names of its stages. */
  private static final List<String> STAGES =
      IntStream.rangeClosed(1, Job.MOST_STAGES).mapToObj(stage -> "-" + stage).toList();

  /** No sheet is nearly as large, and no other file is read for longer than this takes. */
  private static final long MOST_BYTES = 20L << 20;

  /**
   * A sheet or a record that was moved.
   *
   * @param name of the sheet
   * @param to where it is now
   */
  record Withdrawn(String name, Path to) {}

  /**
   * The names of the old sheets.
   *
   * @throws UncheckedIOException naming the folder, when it cannot be listed
   */
  List<String> find() {
    Set<String> old = new TreeSet<>(NaturalOrder.NATURAL);
    for (Path file : FolderEntries.of(folder)) {
      Matcher found = NAME.matcher(file.getFileName().toString());
      if (found.matches()) {
        String name = found.group(1);
        if (!jobs.contains(name) && !jobs.contains(found.group(2)) && isOurs(name)) {
          old.add(name);
        }
      }
    }
    return List.copyOf(old);
  }

  /**
   * The names of a job's sheets that are none of those it has now. They are looked for by name: to
   * list the folder at each job of a day would take longer, the more jobs the day has.
   */
  List<String> others(String job, Set<String> names) {
    return Stream.concat(Stream.of(job), STAGES.stream().map(stage -> job + stage))
        .filter(name -> !names.contains(name) && !isOther(name, job) && isOurs(name))
        .toList();
  }

  /** Whether another job has the number that looks like a stage of this one. */
  private boolean isOther(String name, String job) {
    return !name.equals(job) && jobs.contains(name);
  }

  private boolean isOurs(String name) {
    return isSheet(folder.resolve(name + SHEET), name)
        || isRecord(folder.resolve(name + RECORD), name);
  }

  /**
   * Moves the sheet and the record of a job, as far as there are any, beside those that were
   * withdrawn before.
   *
   * @param each is given each file once it is moved
   * @throws UncheckedIOException naming the path
   */
  void withdraw(String job, OutFiles files, Consumer<Withdrawn> each) {
    List<String> endings = new ArrayList<>();
    // The record first: without it the sheet still says everything, and never the other way round.
    if (isRecord(folder.resolve(job + RECORD), job)) {
      endings.add(RECORD);
    }
    if (isSheet(folder.resolve(job + SHEET), job)) {
      endings.add(SHEET);
    }
    withdrawForms(job, "", files);
    String free = free(job, endings);
    for (String ending : endings) {
      Path to = folder.resolve(WITHDRAWN).resolve(free + ending);
      files.move(folder.resolve(job + ending), to);
      each.accept(new Withdrawn(job, to));
    }
  }

  /**
   * Moves the forms of other revisions of a sheet; one that was filled in is still read.
   *
   * @param id of the sheet whose form stays
   */
  void withdrawForms(String name, String id, OutFiles files) {
    Pattern form = Pattern.compile(Pattern.quote(name) + "-[A-Z]-[0-9a-f]+\\.pdf");
    for (Path file : FolderEntries.of(folder.resolve(FORMS))) {
      String called = file.getFileName().toString();
      if (form.matcher(called).matches()
          && !called.equals(id + SHEET)
          && Files.isRegularFile(file)) {
        files.move(file, folder.resolve(WITHDRAWN).resolve(called));
      }
    }
  }

  /** A name that no withdrawn file has: 502, 502-2, 502-3. */
  private String free(String job, List<String> endings) {
    String name = job;
    for (int count = 2; isTaken(name, endings); count++) {
      name = job + "-" + count;
    }
    return name;
  }

  private boolean isTaken(String name, List<String> endings) {
    Path withdrawn = folder.resolve(WITHDRAWN);
    return endings.stream().anyMatch(ending -> Files.exists(withdrawn.resolve(name + ending)));
  }

  /** A sheet's id begins with its job's number; a copy under another name is none of ours. */
  private boolean isSheet(Path file, String job) {
    Pattern id = Pattern.compile(Pattern.quote(job) + "-[A-Z]-[0-9a-f]+");
    return PdfMetadata.of(bytes(file))
        .filter(it -> it.author().equals(shop))
        .filter(it -> it.keywords().stream().anyMatch(word -> id.matcher(word).matches()))
        .isPresent();
  }

  private boolean isRecord(Path file, String job) {
    return RecordHead.of(bytes(file)).filter(new RecordHead(job, shop)::equals).isPresent();
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.isRegularFile(file) && Files.size(file) <= MOST_BYTES
          ? Files.readAllBytes(file)
          : new byte[0];
    } catch (IOException e) {
      // What cannot be read is not known to be ours, and stays.
      return new byte[0];
    }
  }
}
