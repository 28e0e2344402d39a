package baysheet.collect;

import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.ledger.Joint;
import baysheet.ledger.KeptRecord;
import baysheet.ledger.SheetStory;
import baysheet.ledger.Tables;
import baysheet.output.PlainPage;
import baysheet.record.PlacedBoxes;
import baysheet.scan.Grey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Sets the crops of a day's signed sheets on pages in two columns: each figure beside its target,
 * each doubtful box beside its name, sheet by sheet.
 */
final class ReviewPages {
  private static final long MM = PlainPage.MILLIMETRE;
  private static final long MARGIN = 12 * MM;
  private static final long COLUMN = 92 * MM;
  private static final long GAP = 2 * MM;
  private static final long WORDS = 46 * MM;
  private static final long CROP_WIDTH = COLUMN - WORDS - GAP;
  private static final long CROP_HEIGHT = 14 * MM;
  private static final long BOTTOM = PlainPage.A4_HEIGHT - MARGIN;
  private static final long HEADING = 11_000;
  private static final long SIZE = 9_000;
  private static final long LINE = 4 * MM;

  /** Around a box, in mm, so that a stroke that overruns it is seen. */
  private static final double AROUND = 2;

  private final List<Page> pages = new ArrayList<>();
  private PlainPage page = fresh();
  private long x = MARGIN;
  private long y = MARGIN;

  private static PlainPage fresh() {
    return new PlainPage(PlainPage.A4_WIDTH, PlainPage.A4_HEIGHT);
  }

  /**
   * Adds a sheet.
   *
   * @param about plate and other words behind its number
   * @param boxes where its boxes are
   * @param picture the scan, set straight
   */
  void add(
      KeptRecord record,
      SheetStory story,
      String about,
      PlacedBoxes boxes,
      Optional<Grey> picture) {
    room(3 * LINE);
    page.text(true, HEADING, x, y + LINE, COLUMN, record.name() + "  " + record.title());
    page.text(false, SIZE, x, y + 2 * LINE, COLUMN, story.id() + about);
    y += 3 * LINE;
    int number = 0;
    for (KeptRecord.Box box : record.boxes()) {
      number++;
      if (SignedForm.hasCrop(box, story) && picture.isPresent()) {
        crop(number, box, record, story, place(boxes, number), picture.get());
      }
    }
    empty(record, story);
    y += LINE;
  }

  private static PlacedBoxes.Place place(PlacedBoxes boxes, int number) {
    return boxes.boxes().get(number - 1).place();
  }

  private void crop(
      int number,
      KeptRecord.Box box,
      KeptRecord record,
      SheetStory story,
      PlacedBoxes.Place place,
      Grey picture) {
    Grey crop = cut(picture, place);
    double size = (double) MM / Grey.PIXELS;
    double scale =
        Math.min(
            size,
            Math.min((double) CROP_WIDTH / crop.width(), (double) CROP_HEIGHT / crop.height()));
    long wide = (long) (crop.width() * scale);
    long high = (long) (crop.height() * scale);
    room(Math.max(2 * LINE, high) + GAP);
    page.text(true, SIZE, x, y + LINE, WORDS, "crop " + number + "  " + BoxWords.of(box.name()));
    page.text(false, SIZE, x, y + 2 * LINE, WORDS, expected(box, record, story));
    Item.Area edge = new Item.Area(x + WORDS + GAP, y, wide, high);
    page.picture(crop, edge, "What stands in the box " + box.name());
    y += Math.max(2 * LINE, high) + GAP;
  }

  private static Grey cut(Grey picture, PlacedBoxes.Place place) {
    double pixels = Grey.PIXELS * 25.4 / 72;
    int around = (int) (AROUND * Grey.PIXELS);
    int left = (int) (place.x() * pixels) - around;
    int top = picture.height() - (int) ((place.y() + place.h()) * pixels) - around;
    int wide = (int) (place.w() * pixels) + 2 * around;
    int high = (int) (place.h() * pixels) + 2 * around;
    return picture.crop(left, top, wide, high);
  }

  private static String expected(KeptRecord.Box box, KeptRecord record, SheetStory story) {
    List<String> words = new ArrayList<>();
    if (story.box(box.name()) == SheetStory.Box.DOUBTFUL) {
      words.add("doubtful");
    }
    record.joints().stream()
        .filter(joint -> joint.box().equals(box.name()))
        .forEach(joint -> words.add(expected(joint)));
    return String.join(", ", words);
  }

  private static String expected(Joint joint) {
    String target = joint.target().map(Tables::plain).orElse("no figure in the book");
    String band = joint.band().map(it -> " (" + Tables.band(it) + ")").orElse("");
    return target + band + joint.wrench().map(it -> " " + it).orElse("");
  }

  /** What nobody filled in needs no crop. */
  private void empty(KeptRecord record, SheetStory story) {
    Stream<KeptRecord.Box> required =
        record.boxes().stream()
            .filter(KeptRecord.Box::required)
            .filter(box -> story.box(box.name()) == SheetStory.Box.EMPTY);
    Stream<KeptRecord.Box> choices =
        record.choices().stream()
            .filter(
                it -> it.stream().allMatch(box -> story.box(box.name()) == SheetStory.Box.EMPTY))
            .map(it -> it.get(0));
    String empty =
        Stream.concat(required, choices)
            .map(box -> BoxWords.of(box.name()))
            .collect(Collectors.joining(", "));
    for (String line : lines(empty.isEmpty() ? "No box is empty." : "Empty: " + empty)) {
      room(LINE);
      page.text(false, SIZE, x, y + LINE, COLUMN, line);
      y += LINE;
    }
  }

  /** A long list over several lines, divided at its commas. */
  private static List<String> lines(String text) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String part : text.split("(?<=,) ")) {
      if (line.length() + part.length() > 60) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(part);
    }
    lines.add(line.toString());
    return lines;
  }

  /** Goes to the next column or page where less is left in this one. */
  private void room(long height) {
    if (y + height > BOTTOM && x == MARGIN) {
      x = MARGIN + COLUMN + GAP;
      y = MARGIN;
    } else if (y + height > BOTTOM) {
      pages.add(page.page());
      page = fresh();
      x = MARGIN;
      y = MARGIN;
    }
  }

  List<Page> pages() {
    List<Page> all = new ArrayList<>(pages);
    if (!page.isBlank()) {
      all.add(page.page());
    }
    return all;
  }
}
