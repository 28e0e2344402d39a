package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DraftCommandTest {
  private static final String BOOK = "vehicles/hollin-wren-2014.yaml";

  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
    garage.write(
        "procedures/carrier.yaml",
        """
        procedure: carrier
        title: Carrier
        at: wheel
        behind: [wheel-off]
        open:
          - {do: Take out the two carrier bolts, undo: carrier-bolt}
        """);
  }

  private Garage.Run draft(String... words) {
    String[] all = new String[words.length + 3];
    System.arraycopy(words, 0, all, 1, words.length);
    all[0] = "draft";
    all[words.length + 1] = "--shop";
    all[words.length + 2] = garage.root.toString();
    return garage.run(all);
  }

  private String text(String file) throws IOException {
    return Files.readString(garage.root.resolve(file));
  }

  @Test
  void whatIsMissingIsAddedOnceAtItsPlace() throws IOException {
    garage.write(BOOK, "\uFEFF" + text(BOOK).replace("\n", "\r\n"));
    String before = text(BOOK);
    Garage.Run run = draft("hollin-wren-2014", "--for", "carrier@front");
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("front-wheels: carrier-bolt\n");
    String drafted = text(BOOK);
    assertTrue(
        drafted.startsWith(before + "    # As in: 2 x M12x1.5 class 10.9, hex 17 mm"), drafted);
    String added = "    # carrier: Take out the two carrier bolts\r\n    carrier-bolt: unknown\r\n";
    assertTrue(drafted.endsWith(added), drafted);
    assertEquals(1, drafted.substring(before.length()).split(": unknown").length - 1);
    assertEquals(Exit.DONE, draft("hollin-wren-2014", "--for", "carrier@front-left").exit());
    assertEquals(drafted, text(BOOK));
  }

  /** A work that is about one item and its screws says how a vehicle without both is written. */
  @Test
  void whatTheVehicleMayNotHaveAtAllIsSaid() throws IOException {
    garage.write(
        "procedures/tray.yaml",
        """
        procedure: tray
        title: Tray
        at: vehicle
        open:
          - {do: Remove the screws of the tray, undo: undertray-screw}
          - {do: Remove the tray, undo: undertray}
        """);
    Garage.Run run = draft("hollin-wren-2014", "--for", "tray");
    assertEquals(Exit.DONE, run.exit(), run.err());
    String comment = "    # without it, delete this line and write: absent: [undertray]\n";
    assertTrue(text(BOOK).contains(comment + "    undertray-screw: unknown\n"), text(BOOK));
  }

  @Test
  void theNextCommandNamesTheShopThatIsElsewhere() {
    String book = garage.root.resolve(BOOK).toString();
    Garage.Run run = garage.run("draft", book, "--for", "carrier@front");
    run.says("baysheet procedures --vehicle hollin-wren-2014 --shop \"SHOP\" says");
  }

  @Test
  void aBookIsNotWrittenElsewhereThanItsPathSays() {
    Garage.Run run =
        garage.run(
            "draft", garage.root.resolve("shop.yaml").toString(), "--for", "carrier@front-left");
    assertEquals(Exit.USAGE, run.exit(), run.out());
    run.says("shop.yaml is not in the folder of the shop's spec books");
    run.says("Expected: vehicles/shop.yaml");
    assertFalse(Files.exists(garage.root.resolve("vehicles/shop.yaml")));
  }

  @Test
  void aJobSaysForWhichBookAndWork() throws IOException {
    garage.change(
        "2026-04-07/501.yaml", "  - link at front", "  - link at front\n  - carrier at rear");
    Garage.Run run = garage.run("draft", "--job", "501", "--shop", garage.root.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("then run baysheet check 501");
    assertTrue(text(BOOK).contains("  rear-wheels:\n    # As in"), text(BOOK));
    assertTrue(text(BOOK).contains("    # carrier: Take out"), text(BOOK));
    Garage.Run check = garage.run("check", "501", "--shop", garage.root.toString());
    check.says("the count and the head of carrier-bolt are unknown, and the work needs them");
    List<String> lines = text(BOOK).lines().toList();
    int line = lines.indexOf("    carrier-bolt: unknown") + 1;
    check.says("in line " + line + ", how many there are at one place");
    check.says("and the size and form of the head, such as");
    check.says("1 error in 1 file");
  }

  @Test
  void aNewBookIsBegun() throws IOException {
    Garage.Run run =
        draft("new-van", "--traits", "hydraulic-brakes,abs", "--for", "carrier", "link@front");
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("made vehicles/new-van.yaml:");
    String text = text("vehicles/new-van.yaml");
    assertTrue(text.contains("traits: [hydraulic-brakes, abs]"), text);
    assertTrue(text.contains("  rear-wheels:\n"), text);
    assertEquals(Exit.DONE, draft("new-van", "--for", "carrier", "link@front").exit());
    assertEquals(text, text("vehicles/new-van.yaml"));
    assertEquals(Exit.USAGE, draft("new-van", "--traits", "abs", "--for", "carrier").exit());
  }

  /** A folder says once how a drafted book is filled in, and what its traits mean. */
  @Test
  void aLaterBookPointsToTheFirst() throws IOException {
    draft("new-van", "--for", "link@front");
    String first = text("vehicles/new-van.yaml");
    assertTrue(first.contains("# As in: 2 x M12x1.5"), first);
    assertTrue(first.contains("springs filled with air\n"), first);
    draft("new-car", "--for", "link@front");
    String later = text("vehicles/new-car.yaml");
    assertTrue(later.startsWith("# Fill it in as vehicles/new-van.yaml explains.\n"), later);
    assertFalse(later.contains("# As in"), later);
    assertFalse(later.contains("springs filled with air"), later);
    assertTrue(Pattern.compile("\n#   [a-z, -]*\\bair-suspension\\b").matcher(later).find(), later);
    assertTrue(later.contains("    link-upper-nut: unknown\n"), later);
  }

  /** Of the link's work, only how the vehicle is raised depends on what it has. */
  @Test
  void onlyTraitsThatChangeTheWorkAreAskedFor() throws IOException {
    Garage.Run run = draft("new-van", "--traits", "abs", "--for", "link@front");
    run.says("type over each unknown that you can look up, and fill in the traits; ");
    String text = text("vehicles/new-van.yaml");
    assertTrue(text.contains("\n#   air-suspension "), text);
    assertTrue(text.contains("\ntraits: [abs]\n"), text);
    for (String other : List.of("xenon-lamps", "diesel", "drum-brakes")) {
      assertFalse(text.contains(other), text);
    }
    assertFalse(draft("new-van", "--for", "carrier@front").out().contains("traits"), text);
  }

  /** What the bay does not need is not asked for: no jacking points, no share of the front axle. */
  @Test
  void aJobOnALiftAsksForNothingThatOnlyAJackNeeds() throws IOException {
    String job = "job: 509\nvehicle: {book: %s}\nbay: %s\nby: T1\nwork: link at front\n";
    garage.write("2026-04-07/509.yaml", job.formatted("on-lift-2019", "1"));
    draft("--job", garage.job("509").toString());
    String onLift = text("vehicles/on-lift-2019.yaml");
    assertTrue(onLift.contains("\nname: On Lift 2019 "), onLift);
    assertTrue(onLift.contains("\n# supports: "), onLift);
    assertFalse(onLift.contains("jacking") || onLift.contains("front-share"), onLift);
    garage.write("2026-04-07/509.yaml", job.formatted("on-jack", "2"));
    draft("--job", garage.job("509").toString());
    String onJack = text("vehicles/on-jack.yaml");
    assertTrue(onJack.contains("\n# jacking: ") && onJack.contains("\n# front-share: "), onJack);
  }

  /** A book without the question gets it when it is drafted for other work. */
  @Test
  void aBookThatIsThereIsAskedInTheReport() {
    String asked = "this work also goes by traits that the book does not name";
    draft("hollin-wren-2014", "--for", "carrier@front").says(asked);
    garage.change(BOOK, "traits: [", "traits: [air-suspension, front-parking-brake, ");
    Garage.Run run = draft("hollin-wren-2014", "--for", "carrier@rear");
    assertFalse(run.out().contains("air-suspension"), run.out());
  }

  @Test
  void aTableFillsInWhatItHasAndKeepsWhatIsThere() throws IOException {
    Path table =
        Files.writeString(
            folder.resolve("t.csv"),
            "fastener;place;count;head;class;torque (N·m)\n"
                + "carrier-bolt;front-wheels;2;hex 17 mm;10.9;\"102,5\"\n"
                + "wheel-nut;wheels;5;hex 17 mm;10;90\n");
    Garage.Run run =
        draft("hollin-wren-2014", "--for", "carrier@front", "--table", table.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("kept, as it is there: wheel-nut under wheels");
    assertTrue(
        text(BOOK)
            .endsWith(
                "    carrier-bolt: {count: 2, thread: unknown, class: \"10.9\", head: hex 17 mm,"
                    + " torque: 102.5 N·m}\n"),
        text(BOOK));
  }

  @Test
  void aFaultyTableAddsNothing() throws IOException {
    String before = text(BOOK);
    Path table =
        Files.writeString(folder.resolve("t.csv"), "fastener,place,torque\nx-nut,wheels,9\n");
    Garage.Run run =
        draft("hollin-wren-2014", "--for", "carrier@front", "--table", table.toString());
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("t.csv:2:14: error: ");
    assertEquals(before, text(BOOK));
  }

  @Test
  void workThatDoesNotSuitTheVehicleAddsNothing() throws IOException {
    garage.write(
        "procedures/carrier.yaml", text("procedures/carrier.yaml") + "only-with: [electric]\n");
    String before = text(BOOK);
    Garage.Run run = draft("hollin-wren-2014", "--for", "carrier");
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("carrier is only for a vehicle that has the trait electric");
    assertEquals(before, text(BOOK));
  }

  @Test
  void slipsAreAnsweredWithWhatWasMeant() {
    assertEquals(Exit.USAGE, draft().exit());
    Garage.Run run = draft("hollin-wren-2014", "--for", "carier@front");
    assertEquals(Exit.USAGE, run.exit());
    run.says("Did you mean carrier?");
    draft("hollin-wren-2014", "--for", "carrier@frnt").says("Did you mean front?");
  }

  @Test
  void theListOfProceduresSaysWhatABookLacks() {
    garage
        .run("procedures", "--shop", garage.root.toString())
        .says("carrier  Carrier\n    at each wheel: front, rear\n    fasteners: carrier-bolt\n");
    Garage.Run before = procedures();
    before.says(
        "carrier  Carrier\n"
            + "    at front: missing carrier-bolt\n"
            + "    at rear: missing carrier-bolt\n");
    before.says("link  Anti-roll bar link\n    at front: ready\n");
    draft("hollin-wren-2014", "--for", "carrier@front");
    procedures().says("at front: unknown count of carrier-bolt, head of carrier-bolt\n");
    garage.change(BOOK, "carrier-bolt: unknown", "carrier-bolt: 2 x hex 17 mm, torque unknown");
    procedures().says("at front: unknown torque of carrier-bolt\n");
    garage.change(BOOK, "17 mm, torque unknown", "17 mm, 99 N·m");
    procedures().says("carrier  Carrier\n    at front: ready\n    at rear: missing carrier-bolt\n");
    assertFalse(procedures().out().contains("unknown"));
  }

  private Garage.Run procedures() {
    Garage.Run run =
        garage.run("procedures", "--vehicle", "hollin-wren-2014", "--shop", garage.root.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    return run;
  }

  @Test
  void theListCanBeAskedForByWords() {
    Garage.Run run = garage.run("procedures", "BAR", "roll", "--shop", garage.root.toString());
    run.says("link  Anti-roll bar link\n");
    assertFalse(run.out().contains("carrier"), run.out());
    Garage.Run none = garage.run("procedures", "gearbox", "--shop", garage.root.toString());
    assertEquals(Exit.USAGE, none.exit());
    none.says("no procedure has gearbox in its title");
  }

  @Test
  void aBookWithErrorsIsNotSaidToBeMissing() {
    garage.change(BOOK, "kerb-mass: 1100 kg", "kerb-mass: 1100");
    Garage.Run run =
        garage.run("procedures", "--vehicle", "hollin-wren-2014", "--shop", garage.root.toString());
    run.says("the spec book \"hollin-wren-2014\" has errors");
  }

  @Test
  void theListIsAlsoGivenAsJson() {
    Garage.Run run =
        garage.run(
            "procedures",
            "--json",
            "--vehicle",
            "hollin-wren-2014",
            "--shop",
            garage.root.toString());
    JsonTree list = JsonTree.of(run.out().getBytes(java.nio.charset.StandardCharsets.UTF_8));
    JsonTree carrier =
        list.list("procedures").stream()
            .filter(it -> it.text("name").equals("carrier"))
            .findFirst()
            .orElseThrow();
    assertEquals("incomplete", carrier.list("vehicle").get(0).text("state"));
  }
}
