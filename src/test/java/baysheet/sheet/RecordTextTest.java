package baysheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import baysheet.books.Place;
import baysheet.plan.CaseFolders;
import baysheet.plan.Planner;
import baysheet.report.Problems;
import baysheet.resolve.ItemAt;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A record as text has all its parts, so that no two sheets that differ have one id. */
class RecordTextTest {
  private record Leaf(int n, Optional<String> word) {}

  private record Tree(String name, List<Leaf> leaves, Optional<Leaf> top, List<ItemAt> items) {}

  private record Shouted(String word) {
    @Override
    public String toString() {
      return word + "!";
    }
  }

  private record Bare() {}

  private record Holder(Shouted shouted) {}

  @Test
  void everyPartIsNamedAtEveryDepth() {
    Tree tree =
        new Tree(
            "elm",
            List.of(new Leaf(1, Optional.empty()), new Leaf(2, Optional.of("red"))),
            Optional.of(new Leaf(3, Optional.of("high"))),
            List.of());
    assertEquals(
        "Tree[name=elm, leaves=[Leaf[n=1, word=Optional.empty], Leaf[n=2, word=Optional[red]]],"
            + " top=Optional[Leaf[n=3, word=Optional[high]]], items=[]]",
        text(tree));
  }

  @Test
  void whatIsWordedByHandKeepsItsWords() {
    assertEquals("Holder[shouted=up!]", text(new Holder(new Shouted("up"))));
    Tree tree =
        new Tree("", List.of(), Optional.empty(), List.of(new ItemAt("nut", Place.FRONT_LEFT)));
    assertEquals("Tree[name=, leaves=[], top=Optional.empty, items=[nut@front-left]]", text(tree));
  }

  @Test
  void aRecordWithoutPartsHasItsNameStill() {
    assertEquals("Bare[]", text(new Bare()));
  }

  /** The ids of papers that hang in a bay were made from what Java 17 says of a record. */
  @Test
  void aWholeSheetReadsAsItAlwaysDid() {
    for (CaseFolders.JobOf job : CaseFolders.demo()) {
      Sheet sheet = Planner.plan(job.resolved(), new Problems()).orElseThrow();
      assertEquals(sheet.toString(), text(sheet), job.name());
    }
  }

  @Test
  void oneWordMoreIsAnotherText() {
    assertNotEquals(text(new Leaf(1, Optional.empty())), text(new Leaf(1, Optional.of(""))));
  }

  private static String text(Record said) {
    return new String(RecordText.of(said), StandardCharsets.UTF_8);
  }
}
