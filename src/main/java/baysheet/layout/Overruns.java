package baysheet.layout;

import baysheet.layout.PageFit.Overrun;
import baysheet.layout.PageFit.Tall;
import baysheet.template.Box;
import baysheet.template.Boxes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Says what makes a form too tall. */
final class Overruns {
  /** More would bury the ones that matter. */
  private static final int MOST = 5;

  private static final int WORDS = 40;

  private Overruns() {}

  /**
   * @param measured the form's body as measured
   * @param body the same as boxes
   * @param room the height there is
   */
  static Overrun of(
      Measured measured, List<TooWide> tooWide, Box body, long room, int measurements) {
    List<Tall> blocks = new ArrayList<>();
    gather(body, measured, blocks);
    blocks.sort(Comparator.comparingLong(Tall::height).reversed());
    List<Tall> tallest = blocks.subList(0, Math.min(MOST, blocks.size()));
    return new Overrun(Math.max(0, measured.height() - room), tallest, tooWide, measurements);
  }

  /** The outermost column's children are the blocks that people know by their headings. */
  private static void gather(Box box, Measured measured, List<Tall> blocks) {
    boolean stacked = box instanceof Box.Column && measured instanceof Measured.Group;
    List<Box> children = stacked ? ((Box.Column) box).children() : List.of();
    if (children.isEmpty()) {
      blocks.add(tall(box, measured.height()));
    } else if (children.size() == 1) {
      gather(children.get(0), ((Measured.Group) measured).children().get(0).box(), blocks);
    } else {
      for (int i = 0; i < children.size(); i++) {
        Measured child = ((Measured.Group) measured).children().get(i).box();
        blocks.add(tall(children.get(i), child.height()));
      }
    }
  }

  private static Tall tall(Box box, long height) {
    String kind = box.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    String words = firstWords(box);
    String shown = words.length() > WORDS ? words.substring(0, WORDS).strip() + "…" : words;
    return new Tall(shown.isEmpty() ? kind : kind + " “" + shown + "”", box.at(), height);
  }

  private static String firstWords(Box box) {
    if (box instanceof Box.Table table && !table.title().isEmpty()) {
      return table.title();
    }
    for (Box inner : Boxes.walk(box)) {
      if (inner instanceof Box.Text text) {
        StringBuilder words = new StringBuilder();
        text.runs().forEach(run -> words.append(run.text()));
        if (!words.toString().isBlank()) {
          return Characters.drawn(words.toString()).strip();
        }
      }
    }
    return "";
  }
}
