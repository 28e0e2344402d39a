package baysheet.wording;

import baysheet.sheet.TorqueLine.StageLine;
import baysheet.torque.Band;

/** The accepted band of a torque in figures. */
final class BandWords {
  private BandWords() {}

  /** {@code 90.3…99.7} in the target's unit, {@code 199.5…220.5 lbf·ft} beside another's scale. */
  static String of(StageLine.Torque torque) {
    Band band = torque.band().printed();
    return band.low().figure() + "…" + band.high().figure() + unit(torque);
  }

  /**
   * {@code scale 43.6…52.2 N·m}: what the value reached is held against, in the unit of the setting
   * beside it.
   */
  static String reading(Band band) {
    String figures = band.low().figure() + "…" + band.high().figure();
    return "scale" + Phrases.NBSP + figures + Phrases.NBSP + band.low().unit().symbol();
  }

  /** Named where it is not the unit of the wrench beside it. */
  private static String unit(StageLine.Torque torque) {
    boolean same =
        torque
            .setting()
            .map(setting -> setting.unit().isAsLargeAs(torque.target().unit()))
            .orElse(true);
    return same ? "" : Phrases.NBSP + torque.target().unit().symbol();
  }

  static boolean isShops(StageLine stage) {
    return stage instanceof StageLine.Torque torque && torque.band().origin() == Band.Origin.SHOP;
  }
}
