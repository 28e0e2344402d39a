package baysheet.books;

/** When something is due, in the order of the day. */
public enum Moment {
  EVENING_BEFORE("evening-before"),
  BEFORE_LIFTING("before-lifting"),
  RAISED("raised"),
  BEFORE_LOWERING("before-lowering"),
  ON_THE_GROUND("on-the-ground"),
  BEFORE_MOVING("before-moving"),
  ROAD_TEST("road-test"),
  HAND_OVER("hand-over"),
  RE_CHECK("re-check");

  private final String word;

  Moment(String word) {
    this.word = word;
  }

  /** As written in files. */
  public String word() {
    return word;
  }
}
