package baysheet.layout;

import static baysheet.layout.Sketch.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.box.Box;
import baysheet.box.Drawing;
import baysheet.box.Mark;
import baysheet.box.Rule;
import java.util.List;
import org.junit.jupiter.api.Test;

class PageTextTest {
  /**
   * Figures by hand: margins 25.512; a line of 11 points is 12.892 high (10.208 up, 2.684 down:
   * 1900 and 500 of 2048 units in the face's horizontal header); "nut" is 484 + 483 + 295
   * thousandths of 11 points wide in the regular face (991, 990 and 605 units in its table of
   * widths).
   */
  @Test
  void pageIsTheTreeAndThenOneLineAnItem() {
    Page page =
        page(
            column(
                new Rule(pt(1), HERE),
                text("nut"),
                tick("done", "done"),
                space(5),
                new Drawing(
                    pt(20), pt(20), List.of(new Mark.Circle(500, 500, 400, false)), "O", HERE)));
    assertEquals(
        """
        page 595.276x841.89
           0 DOCUMENT
           1   P
           2   FORM for "Tick: done"
           3   FIGURE for "O"
           - line      25.512,25.512 544.252x1 1
           1 text      25.512,26.512 13.882x12.21 11 regular nut
           2 pen       25.512,38.722 14.173x14.173 tick done
           3 circle    27.212,59.595 16.6x16.6 0.6
        """,
        PageText.print(page));
  }

  private static Page page(Box box) {
    return ((PageFit.Fitted) PageFit.fit(form(box), Fonts.builtIn())).page();
  }
}
