package baysheet.ledger;

import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import baysheet.report.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What belongs to people and can be forgotten: names, plates and typed notes, each in a file of its
 * own beside the chain, keyed by the sheet's id. A later line about the same takes the place of the
 * earlier one.
 */
public final class PersonalFiles {
  private static final String CUSTOMERS = "customers.jsonl";
  private static final String NOTES = "notes.jsonl";

  private final AppendedLines customerLines;
  private final AppendedLines noteLines;
  private final Map<String, Customer> customers = new LinkedHashMap<>();
  private final Map<String, Note> notes = new LinkedHashMap<>();

  private PersonalFiles(Path folder) {
    customerLines = AppendedLines.of(folder.resolve(CUSTOMERS));
    noteLines = AppendedLines.of(folder.resolve(NOTES));
  }

  /** Whose vehicle a sheet is about. */
  public record Customer(
      String sheet, Optional<String> name, Optional<String> plate, Optional<String> vin) {
    boolean isNobody() {
      return name.isEmpty() && plate.isEmpty() && vin.isEmpty();
    }

    private JsonObject json() {
      return new JsonObject()
          .put("sheet", sheet)
          .put("name", name)
          .put("plate", plate)
          .put("vin", vin);
    }

    private static Customer of(JsonObject json) {
      return new Customer(
          json.text("sheet"),
          json.maybeText("name"),
          json.maybeText("plate"),
          json.maybeText("vin"));
    }
  }

  /**
   * Something that a person typed about a sheet.
   *
   * @param about the box whose exception it explains, {@code found.1} for a finding, or {@code
   *     incomplete}
   */
  public record Note(String sheet, String about, String text) {
    private JsonObject json() {
      return new JsonObject().put("sheet", sheet).put("about", about).put("text", text);
    }

    private static Note of(JsonObject json) {
      return new Note(json.text("sheet"), json.text("about"), json.text("text"));
    }

    private String key() {
      return sheet + " " + about;
    }
  }

  /**
   * Reads both files; empty, with a problem, where a line is not one of theirs.
   *
   * @throws UncheckedIOException naming the path, when something cannot be read
   */
  static Optional<PersonalFiles> read(Path folder, Problems problems) {
    PersonalFiles files = new PersonalFiles(folder);
    boolean read =
        read(files.customerLines, it -> files.add(Customer.of(it)), problems)
            && read(files.noteLines, it -> files.add(Note.of(it)), problems);
    return read ? Optional.of(files) : Optional.empty();
  }

  private interface Adding {
    void add(JsonObject json);
  }

  private static boolean read(AppendedLines lines, Adding adding, Problems problems) {
    int number = 0;
    for (byte[] line : lines.whole()) {
      number++;
      try {
        adding.add(JsonText.read(line));
      } catch (IOException e) {
        problems.add(LedgerSentences.badLine(lines.file(), number, "it is not JSON"));
        return false;
      } catch (IllegalArgumentException e) {
        problems.add(LedgerSentences.badLine(lines.file(), number, e.getMessage()));
        return false;
      }
    }
    return true;
  }

  private void add(Customer customer) {
    customers.put(customer.sheet(), customer);
  }

  private void add(Note note) {
    notes.put(note.key(), note);
  }

  public Optional<Customer> customer(String sheet) {
    return Optional.ofNullable(customers.get(sheet));
  }

  /** What was typed about a sheet, in the order of writing. */
  public List<Note> notes(String sheet) {
    return notes.values().stream().filter(it -> it.sheet().equals(sheet)).toList();
  }

  /** Shortens both files to their whole lines: what is torn belongs to no event. */
  void mend(Disk disk) throws IOException {
    for (AppendedLines lines : List.of(customerLines, noteLines)) {
      if (lines.isTorn()) {
        disk.truncate(lines.file(), lines.size());
        disk.force(lines.file());
      }
    }
  }

  void write(Customer customer, Disk disk) throws IOException {
    if (!customer.isNobody() && !customer.equals(customers.get(customer.sheet()))) {
      append(customerLines.file(), List.of(customer.json()), disk);
      add(customer);
    }
  }

  void write(List<Note> added, Disk disk) throws IOException {
    List<Note> fresh = added.stream().filter(it -> !it.equals(notes.get(it.key()))).toList();
    if (!fresh.isEmpty()) {
      append(noteLines.file(), fresh.stream().map(Note::json).toList(), disk);
      fresh.forEach(this::add);
    }
  }

  private static void append(Path file, List<JsonObject> lines, Disk disk) throws IOException {
    disk.append(file, bytes(lines));
    disk.force(file);
  }

  private static byte[] bytes(List<JsonObject> lines) {
    StringBuilder text = new StringBuilder();
    lines.forEach(line -> text.append(JsonText.line(line)).append('\n'));
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Writes both files anew without what is about these sheets; how many lines went. */
  int forget(Predicate<String> sheets, WholeFiles disk) throws IOException {
    int before = customers.size() + notes.size();
    customers.keySet().removeIf(sheets);
    notes.values().removeIf(it -> sheets.test(it.sheet()));
    int gone = before - customers.size() - notes.size();
    if (gone > 0 || customerLines.isTorn() || noteLines.isTorn()) {
      write(customerLines.file(), customers.values(), Customer::json, disk);
      write(noteLines.file(), notes.values(), Note::json, disk);
    }
    return gone;
  }

  private static <T> void write(
      Path file, Iterable<T> kept, Function<T, JsonObject> json, WholeFiles disk)
      throws IOException {
    List<JsonObject> lines = new ArrayList<>();
    kept.forEach(it -> lines.add(json.apply(it)));
    disk.write(file, bytes(lines));
  }
}
