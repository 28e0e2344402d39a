package baysheet.torque;

/** Placeholder. */
public enum Unit {
  NEWTON_METRE
}
