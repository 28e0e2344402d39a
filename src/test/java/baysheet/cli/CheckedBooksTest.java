package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.wording.Printed;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheet names who compared a book with its source, each book that its figures come from. */
class CheckedBooksTest {
  private static final String OWN = "vehicles/larkfell-pipit-estate-2018.yaml";
  private static final String BELOW = "vehicles/larkfell-pipit-2015.yaml";
  private static final String CHECKED_OWN = "checked: {by: T2, on: 2026-02-16}\n";
  private static final String CHECKED_BELOW = "checked: {by: T1, on: 2026-01-12}\n";
  private static final String SAYS_OWN =
      "book larkfell-pipit-estate-2018 checked by T2 on 2026-02-16";
  private static final String SAYS_BELOW = "book larkfell-pipit-2015 checked by T1 on 2026-01-12";

  @TempDir private Path folder;

  @Test
  void oneBookNeedsNoName() {
    assertEquals(List.of("book checked by T1 on 2026-01-12"), checks("2404"));
  }

  @Test
  void aBookThatIsLikeAnotherIsNamedAndSoIsTheOther() {
    assertEquals(List.of(SAYS_OWN, SAYS_BELOW), checks("2408"));
  }

  @Test
  void theCheckOfABookDoesNotStandForTheBookThatItIsLike() {
    assertEquals(List.of(SAYS_OWN), checksWithout(BELOW, CHECKED_BELOW));
  }

  @Test
  void theCheckOfTheBookBelowIsReportedOfThatBookOnly() {
    assertEquals(List.of(SAYS_BELOW), checksWithout(OWN, CHECKED_OWN));
  }

  private List<String> checksWithout(String book, String check) {
    CopyOfTheDemo demo = CopyOfTheDemo.in(folder).replacing(book, check, "");
    return checks(demo, "2408");
  }

  private List<String> checks(String job) {
    return checks(CopyOfTheDemo.in(folder), job);
  }

  /** As each sheet of the job says it: whoever has one of them in hand has to know. */
  private static List<String> checks(CopyOfTheDemo demo, String job) {
    List<List<String>> said =
        demo.made(job).stream()
            .map(
                made ->
                    Printed.texts(made.sheet(), made.sheet().sources()).stream()
                        .filter(it -> it.contains(" checked by "))
                        .toList())
            .distinct()
            .toList();
    assertEquals(1, said.size(), said.toString());
    return said.get(0);
  }
}
