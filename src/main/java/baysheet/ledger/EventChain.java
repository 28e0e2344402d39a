package baysheet.ledger;

import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import baysheet.report.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The events of all years in their order. Each line holds the hash of the line before it, the first
 * of a year that of the last line of the year before.
 *
 * <p>What was written in one go stays together: all but its last line say that more follows, so
 * that a run that was killed never leaves half of it.
 */
final class EventChain {
  private static final Pattern YEAR = Pattern.compile("[0-9]{4}\\.jsonl");

  private final Path folder;
  private final List<Event> events = new ArrayList<>();

  /** How many lines there are, in all years. */
  private int count;

  private String last = Hash.NONE;
  private int year;
  private Optional<AppendedLines> torn = Optional.empty();

  private EventChain(Path folder) {
    this.folder = folder;
  }

  /**
   * Reads all years; empty, with a problem that names file and line, where they do not chain.
   *
   * @throws UncheckedIOException naming the path, when something cannot be read
   */
  static Optional<EventChain> read(Path folder, Problems problems) {
    EventChain chain = new EventChain(folder);
    List<Path> files = files(folder);
    for (Path file : files) {
      boolean isLast = file.equals(files.get(files.size() - 1));
      if (!chain.add(file, isLast, problems)) {
        return Optional.empty();
      }
    }
    return Optional.of(chain);
  }

  private static List<Path> files(Path folder) {
    return FolderEntries.of(folder).stream()
        .filter(it -> YEAR.matcher(it.getFileName().toString()).matches())
        .toList();
  }

  private boolean add(Path file, boolean isLast, Problems problems) {
    AppendedLines lines = AppendedLines.of(file);
    year = Integer.parseInt(file.getFileName().toString().substring(0, 4));
    int unfinished = 0;
    String end = last;
    int number = 0;
    for (byte[] line : lines.whole()) {
      number++;
      try {
        JsonObject json = JsonText.read(line);
        follow(json);
        events.add(EventJson.read(json));
        count++;
        last = Hash.of(line);
        unfinished = json.truth("more") ? unfinished + 1 : 0;
        end = unfinished == 0 ? last : end;
      } catch (IOException e) {
        problems.add(LedgerSentences.badLine(file, number, "it is not JSON"));
        return false;
      } catch (IllegalArgumentException | ArithmeticException | DateTimeException e) {
        problems.add(LedgerSentences.badLine(file, number, e.getMessage()));
        return false;
      }
    }
    return finish(lines, unfinished, end, isLast, problems);
  }

  private void follow(JsonObject json) {
    if (json.number("n") != count + 1) {
      throw new IllegalArgumentException(
          "it has the number " + json.number("n") + " in place of " + (count + 1));
    }
    if (!json.text("previous").equals(last)) {
      throw new IllegalArgumentException("it does not hold the hash of the line before it");
    }
  }

  private boolean finish(
      AppendedLines lines, int unfinished, String end, boolean isLast, Problems problems) {
    AppendedLines cut = lines.without(unfinished);
    if (!cut.isTorn()) {
      return true;
    }
    if (!isLast) {
      int number = lines.whole().size() + (lines.isTorn() ? 1 : 0);
      problems.add(
          LedgerSentences.badLine(lines.file(), number, "it has no end, and years follow"));
      return false;
    }
    events.subList(events.size() - unfinished, events.size()).clear();
    count -= unfinished;
    last = end;
    torn = Optional.of(cut);
    return true;
  }

  /** The events that were read. They are not kept here: the index has what is asked of them. */
  List<Event> takeEvents() {
    List<Event> taken = List.copyOf(events);
    events.clear();
    return taken;
  }

  /** The file whose end was not written, with what there is of it. */
  Optional<AppendedLines> torn() {
    return torn;
  }

  void mended() {
    torn = Optional.empty();
  }

  /** Events as they are to be written behind one another, and where. */
  record Addition(Path file, byte[] lines, String last) {}

  /** A clock that was set back never opens an earlier year again. */
  Addition addition(List<Event> added) {
    int into = added.stream().mapToInt(event -> event.on().getYear()).reduce(year, Math::max);
    StringBuilder lines = new StringBuilder();
    String before = last;
    for (int i = 0; i < added.size(); i++) {
      boolean more = i + 1 < added.size();
      String line = line(added.get(i), count + i + 1, before, more);
      before = Hash.of(line.getBytes(StandardCharsets.UTF_8));
      lines.append(line).append('\n');
    }
    return new Addition(
        folder.resolve(into + ".jsonl"), lines.toString().getBytes(StandardCharsets.UTF_8), before);
  }

  private static String line(Event event, int number, String before, boolean more) {
    JsonObject line =
        new JsonObject().put("n", number).putAll(EventJson.write(event)).put("previous", before);
    return JsonText.line(more ? line.put("more", true) : line);
  }

  /** The same chain once an addition is in its file. */
  void added(List<Event> added, Addition addition) {
    count += added.size();
    last = addition.last();
    year = Integer.parseInt(addition.file().getFileName().toString().substring(0, 4));
  }
}
