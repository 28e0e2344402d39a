package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Trigger.Condition;
import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.torque.Treatment;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CatalogueReaderTest {
  private static final Catalogue WHOLE =
      CatalogueReader.read(Shelf.whole("catalogue.yaml"), new Problems()).orElseThrow();

  @Test
  void anItemIsReadAsWritten() {
    Catalogue.Item pads = WHOLE.items().get("brake-pads");
    assertEquals("brake-pads", pads.name().value());
    assertEquals("brake pads", pads.british().value());
    assertEquals(Optional.of("brake pad set"), pads.american().map(Located::value));
    assertEquals(List.of("brake-friction"), pads.kinds().stream().map(Located::value).toList());
    assertEquals(Optional.of("Fit the pads"), pads.back().map(Located::value));
    assertEquals(Optional.empty(), WHOLE.items().get("brake-piston").american());
  }

  @Test
  void aCautionIsReadAsWritten() {
    Catalogue.Caution dust = WHOLE.cautions().get("brake-dust");
    assertEquals(Catalogue.Signal.WARNING, dust.signal());
    assertEquals("Wet the dust before you sweep it", dust.command().value());
    assertEquals("brake dust", dust.hazard().value());
    assertEquals("it can harm the lungs", dust.consequence().value());
    assertEquals(List.of("M016", "M009"), dust.protect().stream().map(Located::value).toList());
    assertEquals("common practice, no source", dust.source().value());
    assertTrue(dust.wholeJob());
  }

  @Test
  void aTriggerIsReadAsWritten() {
    Trigger first = WHOLE.cautions().get("brake-dust").when().get(0);
    assertEquals(List.of("brake-friction"), first.names(Condition.KIND));
    assertEquals(List.of("brake-pads"), first.names(Condition.UNDO));
    assertEquals(List.of("brake-pads"), first.names(Condition.DO_UP));
    assertEquals(Optional.empty(), first.impact());
    Trigger second = WHOLE.cautions().get("brake-dust").when().get(1);
    assertEquals(List.of("brake-piston"), second.names(Condition.DISTURB));
    assertEquals(List.of("brake-hydraulics"), second.names(Condition.CIRCUIT));
    assertEquals(List.of("brake cleaner"), second.names(Condition.APPLY));
    assertEquals(List.of("air gun"), second.names(Condition.USES));
    assertEquals(List.of("discs-and-pads"), second.names(Condition.PROCEDURE));
    assertEquals(List.of("raise"), second.names(Condition.SERVES));
    assertEquals(List.of("jack"), second.names(Condition.BAY));
    assertEquals(List.of("height"), second.names(Condition.MEASURE));
    assertEquals(List.of("hub-nut"), second.names(Condition.DO_UP_KIND));
    assertEquals(List.of("brake-friction"), second.names(Condition.RENEW_KIND));
    assertEquals(List.of("abs"), second.names(Condition.TRAIT));
    assertEquals(List.of("airbags"), second.names(Condition.WITHOUT));
    assertEquals(List.of("rusty"), second.names(Condition.STATE));
    assertEquals(Optional.of(true), second.impact());
  }

  @Test
  void aConsequenceIsReadAsWritten() {
    Catalogue.Rule firm = WHOLE.rules().get("pedal-firm");
    assertEquals("Pump the pedal until it is firm", firm.check().value());
    assertEquals(List.of("brake-piston"), firm.when().get(0).names(Condition.DISTURB));
    assertEquals(Moment.BEFORE_MOVING, firm.moment().value());
    assertTrue(firm.rows());
    assertTrue(firm.others().hold());
    assertEquals(Optional.of("how often to pump"), firm.needs().map(Located::value));
    assertEquals(Optional.of("wheel alignment"), firm.others().keepOpen().map(Located::value));
    assertEquals(Optional.of("the foreman"), firm.others().release().map(Located::value));
    assertEquals(Optional.of("the pads stand off"), firm.grounds().because().map(Located::value));
  }

  @Test
  void aStateIsReadAsWritten() {
    Catalogue.State rusty = WHOLE.states().get("rusty");
    assertEquals(new BigDecimal("1.5"), rusty.likelyFactor());
    assertEquals(new BigDecimal("1.25"), rusty.possibleFactor());
  }

  @Test
  void theShopsEntryStandsOverTheBuiltInOneInItsPlace() {
    Catalogue shop = read("items:\n  brake-piston: {name: piston}\n  towbar: {name: towbar}\n");
    Catalogue both = CatalogueReader.merge(List.of(WHOLE, shop));
    assertEquals("piston", both.items().get("brake-piston").british().value());
    assertEquals(
        List.of("brake-pads", "wheel-nut", "brake-piston", "brake-hydraulics", "towbar"),
        List.copyOf(both.items().keySet()));
    assertEquals(WHOLE.cautions(), both.cautions());
    assertEquals(WHOLE.rules(), both.rules());
    assertEquals(WHOLE.states(), both.states());
  }

  /** By these the rules know it: dropped, they would bring no caution and no check. */
  @Test
  void theShopsEntryKeepsWhatRulesKnowTheBuiltInOneBy() {
    Catalogue builtIn =
        read(
            """
            items: {axle: {name: axle, american: beam, kinds: [hub, spring], back: Fit it, fluid: oil}}
            cautions: {c: {signal: NOTICE, when: {kind: hub}, do: d, hazard: h, consequence: c, source: s}}
            qualifications: {q: {name: q, when: {kind: hub}, source: s}}
            tools: {press: {means: presses, like: puller}}
            products: {tin: {means: a paste, like: wax, thread: anti-seize}}
            """);
    Catalogue shop =
        read(
            """
            items: {axle: {name: our axle, kinds: [spring, mount]}}
            cautions: {c: {signal: WARNING, do: d2, hazard: h, consequence: c, source: s}}
            qualifications: {q: {name: our q, source: s}}
            tools: {press: {means: ours, like: hammer}}
            products: {tin: {means: ours}}
            """);
    Catalogue both = CatalogueReader.merge(List.of(builtIn, shop));
    Catalogue.Item axle = both.items().get("axle");
    assertEquals("our axle", axle.british().value());
    assertEquals(Optional.empty(), axle.american());
    assertEquals(
        List.of("hub", "spring", "mount"), axle.kinds().stream().map(Located::value).toList());
    assertEquals(Optional.of("Fit it"), axle.back().map(Located::value));
    assertEquals(Optional.of("oil"), axle.fluid().map(Located::value));
    Catalogue.Caution caution = both.cautions().get("c");
    assertEquals("d2", caution.command().value());
    assertEquals(List.of("hub"), caution.when().get(0).names(Condition.KIND));
    assertEquals(
        List.of("hub"), both.qualifications().get("q").when().get(0).names(Condition.KIND));
    assertEquals(
        List.of("press", "puller", "hammer"), List.copyOf(both.vocabulary().tool("press")));
    assertEquals(Optional.of("anti-seize"), both.vocabulary().onThread("tin").map(Treatment::word));
  }

  @Test
  void theShopsTermsStandOverTheBuiltInOnes() {
    Catalogue shop = read("terms: {tyre: tyre, mole grips: locking pliers}\n");
    Catalogue builtIn = read("terms: {tyre: tire, bonnet: hood}\n");
    Glossary both = CatalogueReader.merge(List.of(builtIn, shop)).glossary();
    assertEquals("tyre, hood, locking pliers", both.translate("tyre, bonnet, mole grips"));
  }

  /** A trigger of one file may name what another one has. */
  @Test
  void namesAreLookedUpInTheWholeCatalogue() {
    String caution =
        "cautions: {c: {signal: NOTICE, when: {undo: %s}, do: d, hazard: h, consequence: c,"
            + " source: s}}";
    Catalogue pads = read(caution.formatted("brake-pads"));
    assertEquals(List.of("unknown-item"), checked(pads, List.of()));
    assertEquals(List.of(), checked(CatalogueReader.merge(List.of(WHOLE, pads)), List.of()));
    SpecBook book =
        SpecBookReader.read(Shelf.whole("test-book.yaml"), new Problems()).orElseThrow();
    Catalogue nut = read(caution.formatted("drive-nut"));
    assertEquals(List.of("unknown-item"), checked(nut, List.of()));
    assertEquals(List.of(), checked(nut, List.of(book)));
  }

  @Test
  void nothingIsHeldOnlyWhenItIsSaid() {
    Catalogue calm =
        read("consequences: {c: {when: {trait: abs}, check: c, moment: raised, source: s}}");
    assertFalse(calm.rules().get("c").others().hold());
  }

  private static List<String> checked(Catalogue catalogue, List<SpecBook> books) {
    Problems problems = new Problems();
    CatalogueCheck.check(Shelf.folder(catalogue, books), Set.of(), problems);
    return problems.all().stream().map(problem -> problem.code().word()).toList();
  }

  private static Catalogue read(String text) {
    Problems problems = new Problems();
    Optional<Catalogue> catalogue =
        Shelf.parse(text, problems).flatMap(node -> CatalogueReader.read(node, problems));
    assertEquals(List.of(), problems.all());
    return catalogue.orElseThrow();
  }
}
