package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A wrench in one square and the only socket in another: nothing lacks but an adapter. 8 N·m are on
 * the scale of EXAMPLE-1 alone, which has 1/4 in, and the crib's T30 is 3/8 in.
 */
class MissingAdapterTest {
  @TempDir private Path folder;
  private Garage garage;
  private Path mine;
  private Path job;

  @BeforeEach
  void open() throws IOException {
    garage = Garage.in(folder);
    mine = folder.resolve("mine");
    assertEquals(Exit.DONE, garage.run("start", mine.toString()).exit());
    job = mine.resolve(Garage.DAY).resolve("1001.yaml");
    change("shop.yaml", "T27, T30]", "T27]");
    change(
        "vehicles/example-vehicle.yaml",
        "link-lower-nut: {count: 1, thread: M10, class: \"10\", head: hex 16 mm, torque: 45 ± 5",
        "link-lower-nut: {count: 1, thread: M6, class: \"10\", head: six-lobe T30, torque: 8 ± 1");
  }

  private void change(String file, String what, String by) throws IOException {
    String text = Files.readString(mine.resolve(file));
    assertTrue(text.contains(what), text);
    Files.writeString(mine.resolve(file), text.replace(what, by));
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ').replaceAll("\\s+", " ");
  }

  @Test
  void explainSaysWhatIsThereAndWhichAdapterIsMissing() {
    Garage.Run run = garage.run("explain", job.toString());
    assertTrue(
        plain(run.out())
            .contains("the crib has six-lobe T30 in 3/8 in, but no adapter 1/4 in to 3/8 in"),
        run.out());
    assertFalse(plain(run.out()).contains("no socket for six-lobe T30"), run.out());
  }

  @Test
  void checkAndTheSheetAskForOneOrTheOther() {
    String asked = "six-lobe T30 socket, 1/4 in, or adapter 1/4 in to 3/8 in for the shop's own";
    assertTrue(
        plain(garage.run("check", mine.toString()).err()).contains("borrow a " + asked + "."));
    garage.run("sheets", job.toString(), "-o", garage.out.toString());
    String sheet = Paper.of(Garage.bytes(garage.made("1001.pdf"))).text();
    assertTrue(plain(sheet).contains("Borrow: " + asked), sheet);
  }

  @Test
  void withTheAdapterNothingIsBorrowed() throws IOException {
    change("shop.yaml", "# - {name: adapter 1/2 in to 3/8 in", "- {name: adapter 1/4 in to 3/8 in");
    Garage.Run check = garage.run("check", mine.toString());
    assertEquals(Exit.DONE, check.exit(), check.err());
    assertFalse(check.err().contains("borrow"), check.err());
    assertTrue(
        plain(garage.run("explain", job.toString()).out()).contains("adapter 1/4 in to 3/8"));
  }
}
