package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.SmallShop;
import baysheet.resolve.Resolved;
import baysheet.rules.Altered;
import baysheet.sheet.QualifiedWork;
import baysheet.sheet.Sheet;
import baysheet.wording.Printed;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Nobody does work that needs a certificate, or looks at it, whom the sheet does not name. */
class QualifiedStaffCheckTest {
  private static final SmallShop SHOP =
      new SmallShop(
              SmallShop.empty()
                  .texts()
                  .replacing("shop.yaml", "T1: {name: R. Fenwake, grade: technician}", people()))
          .with(
              "catalogue/more.yaml",
              """
              items:
                cell: {name: cell, kinds: [high-voltage]}
              qualifications:
                volts: {name: high voltage, when: {kind: high-voltage}, source: us}
                gas: {name: gas, when: {undo: three}, source: us}
              consequences:
                safe: {when: {kind: high-voltage}, check: Look at the cell, moment: before-moving, hold: yes, source: us}
                seen: {when: {undo: lid}, check: Look at the lid, moment: before-moving, hold: yes, source: us}
              """)
          .procedure(
              "cell-out",
              """
              at: vehicle
              open:
                - {do: Lid off, undo: lid}
                - {do: Cell out, undo: cell}
              work: [{do: Look round}]
              close:
                - {do: Cell in, do-up: cell, hold: yes}
                - {do: Lid on, do-up: lid}
              """)
          .procedure("asked", "at: vehicle\nqualification: volts", "One off", "one")
          .procedure("plain", "at: vehicle", "Two off", "two");

  private static final SmallShop CELL = SHOP.job("floor", "cell-out at vehicle");

  private static final Sheet SHEET = CELL.sheet();

  private static String people() {
    return person("T1", "technician", "HV 1", "2026-03-02")
        + person("T2", "technician", "HV 2", "unlimited")
        + "\n  T3: {name: Nobody Three, grade: technician}"
        + person("T4", "technician", "HV 9", "unlimited").replace("volts", "gas")
        + person("A2", "apprentice", "HV 4", "unlimited");
  }

  private static String person(String id, String grade, String number, String until) {
    String line =
        "%s: {name: Nobody %s, grade: %s, qualifications: [volts: {certificate: %s, until: %s}]}"
            .formatted(id, id, grade, number, until);
    return id.equals("T1") ? line : "\n  " + line;
  }

  private static List<String> faults(Sheet sheet, Resolved resolved) {
    SheetIndex printed = new SheetIndex(sheet);
    return QualifiedStaffCheck.faults(
        sheet, printed, resolved, new TriggerIndex(printed, resolved));
  }

  /** The faults once a part of the one work that needs a certificate is another. */
  private static List<String> faults(SmallShop shop, String part, Object other) {
    Sheet sheet = shop == CELL ? SHEET : shop.sheet();
    assertEquals(List.of(), faults(sheet, shop.resolved()));
    return faults(with(sheet, part, other), shop.resolved());
  }

  private static Sheet with(Sheet sheet, String part, Object other) {
    QualifiedWork work = Altered.with(sheet.safety().qualified().get(0), part, other);
    return Altered.with(sheet, "safety.qualified", List.of(work));
  }

  private static QualifiedWork.Holder holder(String person, String certificate) {
    return new QualifiedWork.Holder(person, "Nobody", certificate, Optional.empty());
  }

  private static int step(Sheet sheet, String text) {
    return sheet.steps().stream()
        .filter(it -> Printed.text(it).equals(text))
        .findFirst()
        .orElseThrow()
        .n();
  }

  /** Whoever puts back what was taken off does the same work. */
  @ParameterizedTest
  @ValueSource(strings = {"Cell out", "Cell in"})
  void eachStepOfTheWorkNamesWhoDoesIt(String text) {
    Sheet sheet = SHEET;
    int step = step(sheet, text);
    List<Integer> others = new ArrayList<>(sheet.safety().qualified().get(0).steps());
    assertTrue(others.remove(Integer.valueOf(step)), others + " has no " + step);
    assertEquals(
        List.of("step " + step + " names nobody certified for volts"),
        faults(CELL, "steps", others));
  }

  /** The lid is off for it, and is no work on it. */
  @Test
  void aStepOfOtherWorkNamesNobody() {
    Sheet sheet = SHEET;
    assertEquals(
        List.of(step(sheet, "Cell out"), step(sheet, "Cell in")),
        sheet.safety().qualified().get(0).steps());
    SmallShop both = SHOP.job("floor", "asked at vehicle", "plain at vehicle");
    assertEquals(List.of(), faults(both.sheet(), both.resolved()));
    assertEquals(List.of("volts"), names(both.sheet()));
    SmallShop plain = SHOP.job("floor", "plain at vehicle");
    assertEquals(List.of(), names(plain.sheet()));
    assertEquals(List.of(), faults(plain.sheet(), plain.resolved()));
  }

  private static List<String> names(Sheet sheet) {
    return sheet.safety().qualified().stream().map(QualifiedWork::qualification).toList();
  }

  @Test
  void aProcedureAsksForACertificateItself() {
    SmallShop shop = SHOP.job("floor", "asked at vehicle");
    int step = step(shop.sheet(), "One off");
    List<String> faults = faults(shop, "steps", List.of());
    assertTrue(
        faults.contains("step " + step + " names nobody certified for volts"), () -> faults + "");
    assertTrue(!faults(shop, "qualification", "gas").isEmpty());
  }

  /** Each with the certificate of the shop file, valid on the day. */
  @ParameterizedTest
  @CsvSource({
    "T1, HV 1, true",
    "T2, HV 2, false",
    "T1, HV 7, false",
    "T4, HV 9, false",
    "T3, HV 1, false",
    "T9, HV 1, false"
  })
  void whoDoesItHasTheCertificateThatTheSheetNames(String person, String number, boolean holds) {
    List<String> faults = faults(CELL, "by", holder(person, number));
    // Whoever looks must be another than whoever does the work: T2 is named for that.
    assertEquals(holds, faults.isEmpty(), faults.toString());
  }

  @ParameterizedTest
  @CsvSource({"2026-03-01, true", "2026-03-02, true", "2026-03-03, false"})
  void aCertificateHoldsUpToItsLastDay(LocalDate day, boolean holds) {
    Resolved then = Altered.with(CELL.resolved(), "date", day);
    List<String> faults = faults(SHEET, then);
    assertEquals(holds, faults.isEmpty(), faults.toString());
  }

  @ParameterizedTest
  @CsvSource({"T2, HV 2, true", "T1, HV 1, false", "T2, HV 1, false", "T3, HV 2, false"})
  void somebodyElseCertifiedLooksAtAHoldPoint(String person, String number, boolean holds) {
    List<String> faults = faults(CELL, "second", List.of(holder(person, number)));
    String fault = "hold point " + step(SHEET, "Cell in") + " names nobody else certified";
    assertEquals(!holds, faults.stream().anyMatch(it -> it.startsWith(fault)), faults.toString());
  }

  @Test
  void aHoldPointIsLookedAtBySomebody() {
    List<QualifiedWork.Holder> two = List.of(holder("T2", "HV 2"), holder("T3", "HV 3"));
    for (List<QualifiedWork.Holder> second : List.of(List.<QualifiedWork.Holder>of(), two)) {
      assertTrue(faults(CELL, "second", second).toString().contains("names nobody else certified"));
    }
  }

  /** What only this work brings is checked by whoever does it. */
  @Test
  void aHeldCheckOfTheWorkNamesWhoIsCertified() {
    assertEquals(
        List.of("check safe names nobody certified for high voltage"),
        faults(CELL, "checks", List.of()));
  }

  /** A shop that has nobody else who may look is not at fault; one that has is. */
  @ParameterizedTest
  @CsvSource({
    "grade: technician, grade: technician, true",
    "grade: technician, grade: apprentice, false",
    "until: unlimited, until: 2026-03-02, true",
    "until: unlimited, until: 2026-03-01, false",
    "volts: {certificate: HV 2, gas: {certificate: HV 2, false"
  })
  void aHeldCheckIsSeenBySomebodyElseWhereTheShopHasOne(String now, String then, boolean fault) {
    String line = person("T2", "technician", "HV 2", "unlimited");
    SmallShop shop =
        new SmallShop(CELL.texts().replacing("shop.yaml", line, line.replace(now, then)));
    Sheet seen = withoutHolds(with(SHEET, "second", List.of()));
    assertEquals(
        fault ? List.of("check safe is seen by nobody certified for high voltage") : List.of(),
        faults(seen, shop.resolved()));
  }

  /** No step is a hold point, so that the check alone has to be looked at. */
  private static Sheet withoutHolds(Sheet sheet) {
    return AlteredSheets.inOrder(
        sheet, sheet.steps().stream().map(it -> Altered.with(it, "hold", false)).toList());
  }

  /** An inspector from outside releases it, or it is no held check. */
  @Test
  void aCheckThatSomebodyElseReleasesOrNobodyHoldsNeedsNoSecond() {
    Sheet seen = withoutHolds(with(SHEET, "second", List.of()));
    for (String part : List.of("hold", "releasedBy", "because")) {
      Object other =
          switch (part) {
            case "hold" -> false;
            case "because" -> List.of();
            default -> Optional.of("an inspector");
          };
      Sheet released =
          Altered.with(
              seen,
              "checks",
              seen.checks().stream()
                  .map(it -> it.name().equals("safe") ? Altered.with(it, part, other) : it)
                  .toList());
      assertEquals(List.of(), faults(released, CELL.resolved()), part);
    }
  }
}
