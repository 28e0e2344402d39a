package baysheet.layout;

import baysheet.box.Box;
import baysheet.box.BoxVisitor;
import baysheet.box.Boxes;
import baysheet.box.Column;
import baysheet.box.SimpleVisitor;
import baysheet.box.Table;
import baysheet.box.Text;
import baysheet.layout.PageFit.Overrun;
import baysheet.layout.PageFit.Tall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Says what makes a form too tall. */
final class Overruns {
  /** More would bury the ones that matter. */
  private static final int MOST = 5;

  private static final int WORDS = 40;

  /** What stands under one another in a box. */
  private static final BoxVisitor<List<Box>> STACKED =
      new SimpleVisitor<>() {
        @Override
        public List<Box> column(Column box) {
          return box.children();
        }

        @Override
        protected List<Box> defaultAction(Box box) {
          return List.of();
        }
      };

  /** The words by which people know a box. */
  private static final BoxVisitor<String> WORDS_OF =
      new SimpleVisitor<>() {
        @Override
        public String text(Text box) {
          return box.runs().stream().map(Text.Run::text).collect(Collectors.joining());
        }

        @Override
        public String table(Table box) {
          return box.title();
        }

        @Override
        protected String defaultAction(Box box) {
          return "";
        }
      };

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
    List<Box> children = measured instanceof Measured.Group ? box.accept(STACKED) : List.of();
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
    String kind = box.element();
    String words = firstWords(box);
    String shown = words.length() > WORDS ? words.substring(0, WORDS).strip() + "…" : words;
    return new Tall(shown.isEmpty() ? kind : kind + " “" + shown + "”", height);
  }

  private static String firstWords(Box box) {
    return Boxes.walk(box).stream()
        .map(inner -> inner.accept(WORDS_OF))
        .filter(words -> !words.isBlank())
        .findFirst()
        .map(words -> BreakCharacters.drawn(words).strip())
        .orElse("");
  }
}
