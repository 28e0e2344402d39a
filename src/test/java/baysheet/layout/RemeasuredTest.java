package baysheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import baysheet.box.Box;
import baysheet.box.Form;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a measurer keeps of the pages it measured before changes nothing of the next one. */
class RemeasuredTest {
  private static final Fonts FONTS = Fonts.builtIn();

  @Test
  void aPageAfterOthersIsThePageMeasuredAlone() {
    for (Form form : List.of(Samples.full(), Samples.tight())) {
      for (long size = form.smallest(); size <= form.largest(); size += 500) {
        assertEquals(alone(form, size), oneAfterAnother(form, size), form.title() + " " + size);
      }
    }
  }

  /** The second room is so narrow that words do not fit it: that is noted anew each time. */
  @Test
  void whatWasTooWideIsReportedOfEveryPage() {
    Form form = Samples.full();
    Measurer measurer = measurer(form.smallest());
    long room = room(form);
    measurer.whole(form.body(), room);
    List<TooWide> wide = measurer.tooWide();
    measurer.whole(form.body(), 60_000);
    List<TooWide> narrow = measurer.tooWide();
    assertFalse(narrow.isEmpty());
    measurer.whole(form.body(), 60_000);
    assertEquals(narrow, measurer.tooWide());
    measurer.whole(form.body(), room);
    assertEquals(wide, measurer.tooWide());
  }

  private static List<Page> alone(Form form, long size) {
    List<Page> pages = new ArrayList<>();
    for (Box body : levels(form)) {
      pages.add(page(form, body, measurer(size)));
    }
    return pages;
  }

  private static List<Page> oneAfterAnother(Form form, long size) {
    Measurer measurer = measurer(size);
    List<Page> pages = new ArrayList<>();
    for (Box body : levels(form)) {
      pages.add(page(form, body, measurer));
    }
    return pages;
  }

  /** The form with one group after another gone, and whole again. */
  private static List<Box> levels(Form form) {
    List<Box> levels = new ArrayList<>();
    List<String> gone = new ArrayList<>();
    levels.add(form.body().without(Set.copyOf(gone)).orElseThrow());
    for (Form.Group group : form.groups()) {
      gone.add(group.name());
      levels.add(form.body().without(Set.copyOf(gone)).orElseThrow());
    }
    levels.add(levels.get(0));
    return levels;
  }

  private static Page page(Form form, Box body, Measurer measurer) {
    return PageBuilder.page(form, measurer.whole(body, room(form)), FONTS).page();
  }

  private static Measurer measurer(long size) {
    return new Measurer(
        new MeasureSettings(FONTS, size, 8_000, true, new MeasureSettings.Paragraphs(FONTS)));
  }

  private static long room(Form form) {
    return form.paper().width() - 2 * form.margin();
  }
}
