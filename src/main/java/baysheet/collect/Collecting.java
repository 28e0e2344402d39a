package baysheet.collect;

import baysheet.files.YamlFiles;
import baysheet.ledger.Disk;
import baysheet.ledger.Event.Returned;
import baysheet.ledger.Hash;
import baysheet.ledger.KeptRecord;
import baysheet.ledger.Ledger;
import baysheet.ledger.SheetStory;
import baysheet.output.LedgerSheets;
import baysheet.output.OutFiles;
import baysheet.pdf.PdfWriter;
import baysheet.scan.FilledForm;
import baysheet.scan.Grey;
import baysheet.scan.IssuedSheets.Issued;
import baysheet.scan.PageReader;
import baysheet.scan.PageReading;
import baysheet.scan.PageReading.BoxReading;
import baysheet.scan.PageReading.State;
import baysheet.scan.ScanFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Reads stacks of scans page by page. Each page is in its file before an event says that its sheet
 * came back; a run that was stopped is run again.
 */
public final class Collecting {
  /** Below the folder of the sheets: pages that belong to no sheet as far as is known. */
  static final String UNREAD = "unread";

  private static final int DIGITS = 6;

  private final Path out;
  private final Ledger ledger;
  private final LocalDate today;
  private final LedgerSheets sheets;
  private final PageReader reader;
  private final SignedPages writer = new SignedPages();
  private final OutFiles files = new OutFiles(Disk.REAL);
  private final List<Page> pages = new ArrayList<>();
  private final Map<String, Kept> kept = new LinkedHashMap<>();
  private final Map<String, Map<String, String>> typed = new HashMap<>();

  /** What became of a page. */
  public enum Result {
    READ,
    UNREAD,
    SUPERSEDED,
    TWICE,
    UNKNOWN
  }

  /**
   * A page.
   *
   * @param number from 1; 0 for a file as a whole
   * @param at where it is kept, where it is
   */
  public record Page(
      String file,
      int number,
      Result result,
      String reason,
      Optional<SheetStory> sheet,
      List<BoxReading> boxes,
      Optional<Path> at) {}

  /** The page of a sheet that is kept, and what all its scans together show. */
  private record Kept(SheetStory story, String scan, List<BoxReading> page, List<BoxReading> all) {}

  public Collecting(Path out, Ledger ledger, LocalDate today) {
    this.out = out;
    this.ledger = ledger;
    this.today = today;
    sheets = new LedgerSheets(ledger.index());
    reader = new PageReader(sheets);
  }

  /**
   * Reads one file.
   *
   * @param progress receives the number of pages read and of all pages
   */
  public void read(Path scan, Progress progress) {
    String name = String.valueOf(scan.getFileName());
    String stem = YamlFiles.stem(scan) + "-" + digits(scan);
    ScanFile.read(
        scan,
        new ScanFile.Pages() {
          private int count;

          @Override
          public void count(int pages) {
            count = pages;
          }

          @Override
          public void page(int number, Grey picture) {
            add(number, picture, reader.read(picture));
          }

          @Override
          public void form(int number, Grey picture, FilledForm form) {
            PageReading reading = reader.read(picture, form);
            add(
                number,
                picture,
                reading.sheet().map(it -> filled(it, form, reading)).orElse(reading));
          }

          private void add(int number, Grey picture, PageReading reading) {
            pages.add(took(name, stem, number, picture, reading));
            progress.read(number, count);
          }

          @Override
          public void unread(int number, String reason) {
            pages.add(without(name, number, Result.UNREAD, reason, Optional.empty()));
          }
        });
  }

  /** Hears how far a file was read. */
  public interface Progress {
    void read(int page, int of);
  }

  /** Two stacks may have one name. */
  private static String digits(Path scan) {
    if (!Files.isRegularFile(scan)) {
      return "";
    }
    try (InputStream in = Files.newInputStream(scan)) {
      return Hash.of(in).substring(0, DIGITS);
    } catch (IOException e) {
      // That it cannot be read is said of its pages.
      return "";
    }
  }

  private static Page without(
      String file, int number, Result result, String reason, Optional<Path> at) {
    return new Page(file, number, result, reason, Optional.empty(), List.of(), at);
  }

  /** What was typed is drawn anew: a form of another program is not filed. */
  private PageReading filled(Issued sheet, FilledForm form, PageReading reading) {
    try {
      Grey own = FilledPage.of(sheet, form, reading.boxes(), new PdfWriter());
      Map<String, String> values = new TreeMap<>();
      form.fields().keySet().stream()
          .filter(box -> !form.typed(box).isEmpty())
          .forEach(box -> values.put(box, form.typed(box)));
      typed.put(sheet.id(), values);
      return reading.picture().isEmpty() ? reading : reading.of(own);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot draw the issued sheet " + sheet.id(), e);
    }
  }

  private Page took(String file, String stem, int number, Grey picture, PageReading reading) {
    Optional<SheetStory> story = reading.code().flatMap(ledger.index()::ofCode);
    boolean isRead =
        reading.result() == PageReading.Result.READ
            || reading.result() == PageReading.Result.SUPERSEDED;
    if (isRead) {
      return kept(file, number, reading, story.orElseThrow());
    }
    boolean unknown = reading.result() == PageReading.Result.UNKNOWN && story.isEmpty();
    String reason =
        reading.result() == PageReading.Result.UNKNOWN
            ? sheets.why(reading.code().orElseThrow())
            : reading.reason();
    Path at = out.resolve(UNREAD).resolve(stem + "-" + number + ".pdf");
    files.write(at, writer.unread(picture, file, number, reason, today));
    return new Page(
        file,
        number,
        unknown ? Result.UNKNOWN : Result.UNREAD,
        reason,
        story,
        List.of(),
        Optional.of(at));
  }

  private Page kept(String file, int number, PageReading reading, SheetStory story) {
    if (story.closed().isPresent()) {
      String reason = "the sheet was closed on " + story.closed().get().on() + ", and stays so";
      return new Page(
          file,
          number,
          Result.TWICE,
          reason,
          Optional.of(story),
          reading.boxes(),
          Optional.empty());
    }
    Kept before = kept.get(story.id());
    List<BoxReading> all =
        before == null ? reading.boxes() : together(before.all(), reading.boxes());
    boolean better = before == null || marked(reading.boxes()) > marked(before.page());
    Path at = file(story);
    if (better) {
      byte[] pdf = pdf(story, reading);
      if (!OutFiles.holds(at, pdf)) {
        files.write(at, pdf);
      }
      kept.put(story.id(), new Kept(story, Hash.of(pdf), reading.boxes(), all));
    } else {
      kept.put(story.id(), new Kept(story, before.scan(), before.page(), all));
    }
    Result result =
        !story.isCurrent() ? Result.SUPERSEDED : before == null ? Result.READ : Result.TWICE;
    return new Page(
        file,
        number,
        result,
        reason(result, story, before != null && !all.equals(before.all())),
        Optional.of(story),
        reading.boxes(),
        Optional.of(at));
  }

  private byte[] pdf(SheetStory story, PageReading reading) {
    byte[] json = OutFiles.bytes(ledger.index().recordFile(story.id()));
    Grey picture = reading.picture().orElseThrow();
    return writer.signed(KeptRecord.of(json), json, picture, reading.boxes());
  }

  private static String reason(Result result, SheetStory story, boolean differs) {
    if (result == Result.SUPERSEDED) {
      return story
          .supersededBy()
          .map(by -> by + " has taken its place")
          .orElse("the sheet is " + story.state().words());
    }
    return result == Result.READ
        ? ""
        : differs
            ? "another page is of the same sheet, and boxes differ: they are doubtful"
            : "another page is of the same sheet, and shows the same";
  }

  /** Where the signed page of a sheet is kept: an old revision beside the current one. */
  private Path file(SheetStory story) {
    KeptRecord record = ledger.index().record(story.id()).orElseThrow();
    return file(out, record, story);
  }

  public static Path file(Path out, KeptRecord record, SheetStory story) {
    return out.resolve(record.date().toString())
        .resolve(SignedForm.FOLDER)
        .resolve((story.isCurrent() ? record.name() : story.id()) + ".pdf");
  }

  private static long marked(List<BoxReading> boxes) {
    return boxes.stream().filter(box -> box.state() == State.MARKED).count();
  }

  /** What two scans of one sheet show: where they differ, nothing is sure. */
  private static List<BoxReading> together(List<BoxReading> one, List<BoxReading> other) {
    List<BoxReading> all = new ArrayList<>();
    for (int i = 0; i < one.size(); i++) {
      BoxReading box = one.get(i);
      State state = box.state() == other.get(i).state() ? box.state() : State.DOUBTFUL;
      all.add(new BoxReading(box.name(), box.kind(), box.required(), state, box.ink()));
    }
    return all;
  }

  /** All pages, in the order of the files. */
  public List<Page> pages() {
    return List.copyOf(pages);
  }

  /** The current sheets that came back in this run. */
  public List<SheetStory> returned() {
    return kept.values().stream().map(Kept::story).filter(SheetStory::isCurrent).toList();
  }

  /** What was typed in forms, by the sheets and the names of their boxes. */
  public Map<String, Map<String, String>> typed() {
    return typed;
  }

  /** Writes down which sheets came back; those of which that is known already are left out. */
  public void record() {
    List<Returned> events = new ArrayList<>();
    for (Kept it : kept.values()) {
      Returned event =
          new Returned(
              today,
              it.story().id(),
              it.scan(),
              named(it.all(), State.MARKED),
              named(it.all(), State.EMPTY),
              named(it.all(), State.DOUBTFUL));
      if (it.story().returned().filter(old -> isSame(old, event)).isEmpty()) {
        events.add(event);
      }
    }
    if (!events.isEmpty()) {
      ledger.add(events, List.of());
    }
  }

  private static boolean isSame(Returned old, Returned now) {
    return old.scan().equals(now.scan())
        && old.marked().equals(now.marked())
        && old.empty().equals(now.empty())
        && old.doubtful().equals(now.doubtful());
  }

  private static List<String> named(List<BoxReading> boxes, State state) {
    return boxes.stream().filter(box -> box.state() == state).map(BoxReading::name).toList();
  }
}
