package baysheet.torque;

/**
 * Torque and clamp load of a fastener with a hexagon head.
 *
 * <p>The form of VDI 2230 with its exact thread term: M = F · (P/2π + d2·μ/(2·cos 30°) + μ·DKm/2).
 * Friction is taken to be the same in the thread and under the head.
 */
public final class Preload {
  /** Friction of the middle class B of VDI 2230, table A5; the usual figure of torque tables. */
  public static final double USUAL_FRICTION = 0.12;

  private static final double COS_30 = Math.sqrt(3) / 2;

  private Preload() {}

  /**
   * Clamp load in N that a torque gives.
   *
   * @param torque the torque at the nut
   * @param friction coefficient in thread and under the head
   */
  public static double clampLoad(Quantity torque, ScrewThread thread, double friction) {
    return torque.in(Unit.NEWTON_METRE) * 1000 / leverMm(thread, friction);
  }

  /** Torque in N·m that gives a clamp load in N. */
  public static double torque(double clampLoad, ScrewThread thread, double friction) {
    return clampLoad * leverMm(thread, friction) / 1000;
  }

  /** Torque for one newton of clamp load, in mm. */
  private static double leverMm(ScrewThread thread, double friction) {
    return thread.pitchMm() / (2 * Math.PI)
        + thread.pitchDiameterMm() * friction / (2 * COS_30)
        + friction * BearingFace.meanDiameterMm(thread.diameterMm()) / 2;
  }
}
