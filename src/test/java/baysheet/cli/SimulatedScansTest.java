package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Shop;
import baysheet.output.MadeSheet;
import baysheet.output.SheetPdfs;
import baysheet.pdf.PdfWriter;
import baysheet.record.PlacedBoxes;
import baysheet.scan.IssuedSheets.Issued;
import baysheet.scan.PageReader;
import baysheet.scan.PageReading;
import baysheet.scan.PageReading.BoxReading;
import baysheet.scan.PageReading.State;
import baysheet.simulate.Simulator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Made-up scans of the demo sheets, read. {@code -Dscans=2000} for more than the fixed hundred;
 * {@code -Dscans.first=100} for others; {@code -Dscans.training} for those on which limits may be
 * set.
 */
class SimulatedScansTest {
  private static final int SCANS = Integer.getInteger("scans", 100);
  private static final int SOILED = Integer.getInteger("scans.soiled", Math.max(10, SCANS / 5));
  private static final int FIRST = Integer.getInteger("scans.first", 0);
  private static final long HALF =
      System.getProperty("scans.training") == null ? Simulator.REPORTING : Simulator.TRAINING;

  /** What came of the boxes of clean or of dirty pages. */
  private static final class Count {
    private int empty;
    private int emptyDoubtful;
    private int written;
    private int writtenMarked;
    private int writtenDoubtful;

    /** Pale ink can be lighter than the threshold of a scan in black and white. */
    private int unseen;

    double doubtful() {
      return (double) (emptyDoubtful + writtenDoubtful) / (empty + written);
    }

    @Override
    public String toString() {
      return "%d empty, of them %d doubtful; %d written, of them %d marked, %d doubtful, %d not on the scan"
          .formatted(empty, emptyDoubtful, written, writtenMarked, writtenDoubtful, unseen);
    }
  }

  private final List<String> wrong = Collections.synchronizedList(new ArrayList<>());
  private final Count clean = new Count();
  private final Count dirty = new Count();
  private final List<String> unread = Collections.synchronizedList(new ArrayList<>());

  @Test
  void emptyBoxIsNeverCalledMarkedAndFewAreDoubtful() throws IOException {
    Map<String, Issued> issued = issued();
    Simulator simulator = new Simulator(List.copyOf(issued.values()), HALF);
    PageReader reader = new PageReader(code -> Optional.ofNullable(issued.get(code)));
    IntStream.range(FIRST, FIRST + SCANS)
        .parallel()
        .forEach(number -> look(number, simulator.scan(number), reader));
    String report =
        "%d pages; clean: %s; dirty: %s; unread: %s".formatted(SCANS, clean, dirty, unread);
    System.out.println(report);
    assertEquals(List.of(), wrong, report);
    assertTrue(unread.size() * 100 <= SCANS, report);
    int written = clean.written + dirty.written;
    // One page that a fine pale pen left hardly a trace on, in black and white, takes 0.01 of a
    // hundred pages. Pages 2000 to 2299 had 0.993, 0.003 and 0.009.
    assertTrue(clean.writtenMarked + dirty.writtenMarked >= 0.98 * written, report);
    assertTrue(clean.doubtful() < 0.02 && dirty.doubtful() < 0.03, report);
  }

  /** A finger in grease leaves prints about the boxes, black on a black-and-white scan. */
  @Test
  void smudgesAboutEmptyBoxesMarkNone() throws IOException {
    Map<String, Issued> issued = issued();
    Simulator simulator = new Simulator(List.copyOf(issued.values()), HALF);
    PageReader reader = new PageReader(code -> Optional.ofNullable(issued.get(code)));
    IntStream.range(FIRST, FIRST + SOILED)
        .parallel()
        .forEach(number -> look(number, simulator.soiled(number), reader));
    System.out.println(SOILED + " soiled pages; " + dirty + "; unread: " + unread);
    assertEquals(List.of(), wrong);
    assertTrue(dirty.emptyDoubtful > SOILED, "the smudges were seen: " + dirty);
  }

  private void look(int number, Simulator.Scan scan, PageReader reader) {
    PageReading reading = reader.read(scan.picture());
    String where = number + ": " + scan.how();
    if (reading.result() == PageReading.Result.UNKNOWN
        || reading.sheet().isPresent() && !reading.sheet().get().equals(scan.sheet())) {
      wrong.add("another sheet, " + where);
    }
    if (reading.result() != PageReading.Result.READ) {
      unread.add(where + ": " + reading.reason());
    }
    synchronized (this) {
      for (BoxReading box : reading.boxes()) {
        count(box, scan.marked().contains(box.name()), scan.dirty() ? dirty : clean, where);
      }
    }
  }

  private void count(BoxReading box, boolean isWritten, Count count, String where) {
    boolean doubtful = box.state() == State.DOUBTFUL;
    if (isWritten) {
      count.written++;
      count.writtenMarked += box.state() == State.MARKED ? 1 : 0;
      count.writtenDoubtful += doubtful ? 1 : 0;
      count.unseen += box.ink() == 0 ? 1 : 0;
    } else {
      count.empty++;
      count.emptyDoubtful += doubtful ? 1 : 0;
      if (box.state() == State.MARKED) {
        wrong.add("empty box " + box.name() + " called marked, " + where);
      }
    }
  }

  private static Map<String, Issued> issued() throws IOException {
    PdfWriter writer = new PdfWriter();
    Map<String, Issued> issued = new LinkedHashMap<>();
    List<MadeSheet> sheets = DemoSheets.made(Shop.Paper.A4);
    for (MadeSheet made : sheets) {
      String id = made.id().text();
      PlacedBoxes boxes = PlacedBoxes.of(made.record());
      byte[] pdf = SheetPdfs.pdf(writer, made);
      issued.put(made.id().code(), new Issued(id, false, pdf, boxes));
    }
    assertEquals(sheets.size(), issued.size(), "each sheet has a code of its own");
    return issued;
  }
}
