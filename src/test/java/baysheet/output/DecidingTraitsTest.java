package baysheet.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Job;
import baysheet.books.Place;
import baysheet.books.ShopFolder;
import baysheet.books.SpecBook;
import baysheet.files.ShopFolders;
import baysheet.layout.Fonts;
import baysheet.report.Problems;
import baysheet.resolve.ShopTexts;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DecidingTraitsTest {
  private static final LocalDate DAY = LocalDate.parse("2026-03-02");
  private ShopFolder folder;
  private SpecBook book;

  @BeforeEach
  void read() {
    folder = new ShopFolders(Fonts.builtIn()).read(Path.of("jobs"), new Problems()).orElseThrow();
    book = folder.books().get("larkfell-pipit-2015").withTraits(List.of());
  }

  private List<String> of(String bay, Job.Work... works) {
    return DecidingTraits.of(book, List.of(works), Optional.of(bay), folder, DAY);
  }

  private String bay(String kind) {
    return folder.shop().bays().values().stream()
        .filter(it -> it.isOf(kind))
        .findFirst()
        .orElseThrow()
        .name()
        .value();
  }

  /** Every one of those brings a caution, a step or another wording, and each other one nothing. */
  @Test
  void aTraitThatBringsACautionOrAStepDecides() {
    List<String> traits = of(bay("lift"), new Job.Work("lower-arm", Place.FRONT_LEFT));
    assertTrue(traits.containsAll(List.of("air-suspension", "heavy-wheels")), traits.toString());
    for (String other : List.of("xenon-lamps", "petrol", "tpms", "drum-brakes", "gas-fuel")) {
      assertTrue(!traits.contains(other), traits.toString());
    }
  }

  /**
   * A jack raises one end, and a parking brake at that end holds nothing. A lift takes all wheels
   * off the floor at once.
   */
  @Test
  void theBayDecidesToo() {
    Job.Work oil = new Job.Work("oil-service", Place.ENGINE);
    assertTrue(of(bay("jack"), oil).contains("front-parking-brake"));
    assertTrue(!of(bay("lift"), oil).contains("front-parking-brake"));
  }

  /** With nothing to compare with, each may matter. */
  @Test
  void whereThereIsNoSheetAllAreAskedFor() {
    assertEquals(
        List.copyOf(folder.catalogue().vocabulary().traits().keySet()),
        of(bay("lift"), new Job.Work("electric-coolant-pump", Place.ENGINE)));
  }

  /** Each brings the check unless the vehicle has the other as well. */
  @Test
  void twoTraitsThatUndoEachOtherBothDecide() {
    folder =
        ShopTexts.of(Path.of("jobs"))
            .withBuiltIn()
            .with(
                "catalogue/hitches.yaml",
                """
                traits: {ball-hitch: a hitch with a ball, jaw-hitch: a hitch with a jaw}
                consequences:
                  hitch-clear:
                    when: [{kind: wheel, trait: ball-hitch, without: jaw-hitch}, {kind: wheel, trait: jaw-hitch, without: ball-hitch}]
                    check: Check that nothing touches the hitch
                    moment: before-moving
                    because: a hitch that touches breaks
                    source: "common practice, no source"
                """)
            .folder();
    List<String> traits = of(bay("lift"), new Job.Work("lower-arm", Place.FRONT_LEFT));
    assertTrue(traits.containsAll(List.of("ball-hitch", "jaw-hitch")), traits.toString());
  }
}
