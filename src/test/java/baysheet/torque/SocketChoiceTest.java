package baysheet.torque;

import static baysheet.torque.SocketTest.socket;
import static baysheet.torque.Written.head;
import static baysheet.torque.Written.torque;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SocketChoiceTest {
  private static final Socket THREE_EIGHTHS =
      socket(Drive.THREE_EIGHTHS, Head.Form.HEX, 12, false, "8..22 mm");
  private static final Socket HALF = socket(Drive.HALF, Head.Form.HEX, 6, true, "10..24 mm");
  private static final Socket HALF_TWELVE =
      socket(Drive.HALF, Head.Form.HEX, 12, false, "10..36 mm");
  private static final List<Socket> CRIB = List.of(HALF_TWELVE, HALF, THREE_EIGHTHS);

  private static final Optional<Quantity> NOT_KNOWN = Optional.empty();

  private static SocketChoice gentle(String head, String torque) {
    return SocketChoice.choose(
        head(head), Optional.of(torque(torque)), false, false, CRIB, Map.of());
  }

  @ParameterizedTest
  @CsvSource({
    "135 N·m, THREE_EIGHTHS",
    "135.1 N·m, HALF",
    "99 lbf·ft, THREE_EIGHTHS",
    "100 lbf·ft, HALF"
  })
  void theSmallestDriveThatCarriesTheTorqueIsTaken(String torque, Drive drive) {
    SocketChoice choice = gentle("hex 19 mm", torque);
    assertEquals(drive, choice.drive());
    assertTrue(choice.owned());
  }

  @Test
  void theReasonHoldsBothFigures() {
    assertEquals(
        List.of("3/8\u00A0in carries 110\u00A0N·m against 135\u00A0N·m"),
        gentle("hex 19 mm", "110 N·m").reasons());
  }

  @Test
  void theShopsOwnLimitCounts() {
    SocketChoice choice =
        SocketChoice.choose(
            head("hex 19 mm"),
            Optional.of(torque("110 N·m")),
            false,
            false,
            CRIB,
            Map.of(Drive.THREE_EIGHTHS, torque("100 N·m")));
    assertEquals(Drive.HALF, choice.drive());
  }

  @Test
  void sixPointsComeFirstInOneDrive() {
    assertEquals(6, gentle("hex 19 mm", "200 N·m").points());
  }

  @Test
  void aSeizedHexagonGetsSixPointsThoughTheDriveIsLarger() {
    SocketChoice choice =
        SocketChoice.choose(
            head("hex 19 mm"), Optional.of(torque("100 N·m")), true, false, CRIB, Map.of());
    assertEquals(Drive.HALF, choice.drive());
    assertEquals(6, choice.points());
  }

  @Test
  void twelvePointsOnASeizedHexagonAreSaid() {
    SocketChoice choice =
        SocketChoice.choose(
            head("hex 19 mm"),
            Optional.of(torque("100 N·m")),
            true,
            false,
            List.of(THREE_EIGHTHS),
            Map.of());
    assertTrue(choice.owned());
    assertEquals(12, choice.points());
    assertEquals(
        "the crib has twelve points only: mind the corners when breaking it loose",
        choice.reasons().get(1));
    assertEquals(1, gentle("hex 19 mm", "100 N·m").reasons().size());
  }

  @Test
  void aTwelvePointHeadNeverGetsSixPoints() {
    SocketChoice owned = gentle("12-point 19 mm", "200 N·m");
    assertEquals(12, owned.points());
    SocketChoice borrowed =
        SocketChoice.choose(
            head("12-point 19 mm"),
            Optional.of(torque("200 N·m")),
            true,
            false,
            List.of(HALF),
            Map.of());
    assertEquals(12, borrowed.points());
    assertFalse(borrowed.owned());
  }

  @Test
  void anImpactWrenchGetsImpactSocketsOnly() {
    SocketChoice choice =
        SocketChoice.choose(
            head("hex 19 mm"), Optional.of(torque("100 N·m")), false, true, CRIB, Map.of());
    assertTrue(choice.impact());
    assertEquals(Drive.HALF, choice.drive());
    SocketChoice without =
        SocketChoice.choose(
            head("hex 36 mm"), Optional.of(torque("100 N·m")), false, true, CRIB, Map.of());
    assertFalse(without.owned());
    assertTrue(without.impact());
    assertEquals(
        "the crib has no impact socket for hex\u00A036\u00A0mm that carries this torque",
        without.reasons().get(0));
  }

  @Test
  void whatTheCribLacksIsBorrowedInTheSmallestDriveThatCarriesIt() {
    SocketChoice choice = gentle("hex 41 mm", "300 N·m");
    assertFalse(choice.owned());
    assertFalse(choice.impact());
    assertEquals(Drive.HALF, choice.drive());
    assertEquals(6, choice.points());
    assertEquals(
        List.of(
            "the crib has no socket for hex\u00A041\u00A0mm",
            "1/2\u00A0in carries 300\u00A0N·m against 340\u00A0N·m"),
        choice.reasons());
  }

  @Test
  void aDriveTooWeakIsNoReasonToUseIt() {
    SocketChoice choice = gentle("hex 19 mm", "400 N·m");
    assertFalse(choice.owned());
    assertEquals(Drive.THREE_QUARTER, choice.drive());
    assertEquals(
        "no drive in the crib that takes hex\u00A019\u00A0mm carries this torque",
        choice.reasons().get(0));
  }

  @Test
  void aTorqueBeyondEveryDriveIsSaid() {
    SocketChoice choice = gentle("hex 19 mm", "2000 N·m");
    assertEquals(Drive.ONE, choice.drive());
    assertEquals(
        "no drive carries 2000\u00A0N·m against 1670\u00A0N·m on 1\u00A0in",
        choice.reasons().get(1));
  }

  @Test
  void withoutATorqueAnyDriveWillDo() {
    SocketChoice choice =
        SocketChoice.choose(head("hex 19 mm"), Optional.empty(), false, false, CRIB, Map.of());
    assertEquals(Drive.THREE_EIGHTHS, choice.drive());
    assertEquals(List.of("no torque is known, so any drive will do"), choice.reasons());
  }

  /**
   * The largest sizes in which sockets are sold for a square (common practice, no source). Torques
   * are so low that every square carries them, or are not known.
   */
  @ParameterizedTest
  @CsvSource({
    "hex 15 mm, QUARTER",
    "hex 9/16 in, QUARTER",
    "hex 16 mm, THREE_EIGHTHS",
    "hex 27 mm, THREE_EIGHTHS",
    "12-point 36 mm, THREE_EIGHTHS",
    "hex 38 mm, HALF",
    "hex 46 mm, THREE_QUARTER",
    "hex 65 mm, ONE",
    "hexagon key 10 mm, QUARTER",
    "hexagon key 12 mm, THREE_EIGHTHS",
    "six-lobe T40, QUARTER",
    "six-lobe T45, THREE_EIGHTHS",
    "six-lobe T70, HALF",
    "external six-lobe E14, THREE_EIGHTHS",
    "12-point key M8, QUARTER",
    "12-point key M14, HALF"
  })
  void noSocketIsAskedForThatIsNotMadeForItsSquare(String head, Drive drive) {
    for (Optional<Quantity> torque : List.of(Optional.of(torque("12 N·m")), NOT_KNOWN)) {
      SocketChoice choice =
          SocketChoice.choose(head(head), torque, false, false, List.of(), Map.of());
      assertEquals(drive, choice.drive());
      assertFalse(choice.owned());
    }
  }

  @Test
  void aSquareThatIsLargerForTheSizeAloneIsExplained() {
    SocketChoice choice =
        SocketChoice.choose(
            head("hex 27 mm"), Optional.of(torque("12 N·m")), false, false, List.of(), Map.of());
    assertEquals(
        List.of(
            "the crib has no socket for hex\u00A027\u00A0mm",
            "3/8\u00A0in is the smallest square for which this size is made"),
        choice.reasons());
  }

  @Test
  void aSocketOfTheCribStandsWhateverItsSize() {
    Socket odd = socket(Drive.QUARTER, Head.Form.HEX, 6, false, "27 mm");
    SocketChoice choice =
        SocketChoice.choose(
            head("hex 27 mm"), Optional.of(torque("12 N·m")), false, false, List.of(odd), Map.of());
    assertTrue(choice.owned());
    assertEquals(Drive.QUARTER, choice.drive());
  }

  @Test
  void aSeizedFastenerGetsADriveThatCarriesHalfAsMuchAgain() {
    // 3/8 in carries 135 N·m: enough for 100, not for what breaks 100 loose.
    assertEquals(Drive.THREE_EIGHTHS, gentle("hex 19 mm", "100 N·m").drive());
    SocketChoice seized =
        SocketChoice.choose(
            head("hex 19 mm"), Optional.of(torque("100 N·m")), true, false, CRIB, Map.of());
    assertEquals(Drive.HALF, seized.drive());
  }

  @Test
  void aSeizedFastenerIsNoReasonToBorrowWhatTheCribHas() {
    Socket small = socket(Drive.QUARTER, Head.Form.HEX, 6, false, "13 mm");
    SocketChoice seized =
        SocketChoice.choose(
            head("hex 13 mm"),
            Optional.of(torque("39 N·m")),
            true,
            false,
            List.of(small),
            Map.of());
    assertTrue(seized.owned());
    assertEquals(Drive.QUARTER, seized.drive());
  }

  @Test
  void keysAndLobesHaveNoChoiceOfPoints() {
    Socket lobes = socket(Drive.THREE_EIGHTHS, Head.Form.SIX_LOBE, 6, false, "T30", "T60");
    SocketChoice owned =
        SocketChoice.choose(
            head("six-lobe T60"),
            Optional.of(torque("60 N·m")),
            true,
            false,
            List.of(lobes),
            Map.of());
    assertTrue(owned.owned());
    assertEquals(0, owned.points());
    assertEquals(1, owned.reasons().size());
    assertEquals(0, gentle("six-lobe T60", "60 N·m").points());
  }

  @Test
  void aBorrowedSocketTakesTheLargerSquareOfTheWrench() {
    SocketChoice missing = gentle("hex 7 mm", "100 N·m");
    assertFalse(missing.owned());
    assertEquals(Drive.THREE_EIGHTHS, missing.drive());
    assertEquals(Drive.HALF, missing.inSquareOf(Drive.HALF).drive());
    assertFalse(missing.inSquareOf(Drive.HALF).owned());
  }

  @Test
  void neitherASmallerSquareNorASocketAtHandIsChanged() {
    SocketChoice missing = gentle("hex 7 mm", "200 N·m");
    assertEquals(missing, missing.inSquareOf(Drive.THREE_EIGHTHS));
    SocketChoice owned = gentle("hex 19 mm", "100 N·m");
    assertEquals(owned, owned.inSquareOf(Drive.THREE_QUARTER));
  }

  @Test
  void theSquareOfTheWrenchThatItHasAlreadyChangesNothing() {
    SocketChoice missing = gentle("hex 7 mm", "200 N·m");
    assertEquals(Drive.HALF, missing.drive());
    assertEquals(missing, missing.inSquareOf(Drive.HALF));
  }

  /**
   * What has seized may take half as much again to break loose (common practice, no source): 3/8 in
   * carries 135 N·m, and 90 N·m times 1.5 is just that.
   */
  @ParameterizedTest
  @CsvSource({
    "true, 90 N·m, THREE_EIGHTHS",
    "true, 90.1 N·m, HALF",
    "false, 90.1 N·m, THREE_EIGHTHS"
  })
  void aSeizedFastenerGetsADriveThatBreaksItLoose(boolean seized, String torque, Drive drive) {
    List<Socket> lobes = List.of(lobes(Drive.HALF), lobes(Drive.THREE_EIGHTHS));
    SocketChoice choice =
        SocketChoice.choose(
            head("six-lobe T50"), Optional.of(torque(torque)), seized, false, lobes, Map.of());
    assertEquals(drive, choice.drive());
  }

  @Test
  void aSeizedFastenerGetsTheWeakDriveWhereThereIsNoOther() {
    List<Socket> lobes = List.of(lobes(Drive.THREE_EIGHTHS));
    SocketChoice choice =
        SocketChoice.choose(
            head("six-lobe T50"), Optional.of(torque("120 N·m")), true, false, lobes, Map.of());
    assertEquals(Drive.THREE_EIGHTHS, choice.drive());
    assertTrue(choice.owned());
  }

  private static Socket lobes(Drive drive) {
    return socket(drive, Head.Form.SIX_LOBE, 6, false, "T50");
  }
}
