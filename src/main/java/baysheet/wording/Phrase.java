package baysheet.wording;

/** What the program itself says on a sheet, in British and in American English. */
enum Phrase {
  CHECK_NOW("Do each of the following:"),
  CHECK_NOW_NOT_LIFTED("Do each of the following. The vehicle stays on its wheels"),
  FINAL_TORQUE("Torque the %s"),
  FIT("Fit the %s by hand", "Install the %s by hand"),
  TAKE_AWAY("Remove the %s"),
  PUT_BACK("Refit the %s", "Reinstall the %s"),
  SET_LIFT_PADS("Set the lift pads under the lift points"),
  RAISE_FOR_BLOCKS(
      "Raise the vehicle until its wheels are just clear. Check by a firm push that it does not"
          + " move. Raise it until solid blocks go under its wheels"),
  PUT_UNDER("Push a solid block under each wheel"),
  LOWER_ONTO("Lower the vehicle onto the blocks"),
  RAISE_AXLE("Raise the %s axle with the jack%s until solid blocks go under its wheels"),
  PUT_UNDER_AXLE("Push a solid block under each %s wheel"),
  LOWER_AXLE_ONTO("Lower the %s wheels onto the blocks"),
  CHOCK("Chock the wheels on the blocks"),
  CHOCK_AXLE("Chock the %s wheels on the blocks, in front and behind"),
  SETTLE("Push the vehicle down several times at each end until it settles"),
  RAISE_OFF("Raise the vehicle clear of its blocks. Check by a firm push that it does not move"),
  TAKE_OUT("Remove the chocks and the blocks"),
  LOWER_TO_FLOOR("With nobody inside or under the vehicle, lower it to the floor"),
  RAISE_AXLE_OFF("Raise the %s axle with the jack until its wheels are clear of the blocks"),
  TAKE_OUT_AXLE("Remove the chocks and the blocks of the %s wheels"),
  LOWER_AXLE_TO_FLOOR("With nobody inside or under the vehicle, lower the %s axle to the floor"),
  CHOCK_AXLE_ON_FLOOR("Chock the %s wheels in front and behind"),
  TO_THE_GROUND(
      "With nobody inside or under the vehicle and nothing in its way, lower it to the ground"),
  OFF_THE_STANDS(
      "With nobody inside or under the vehicle and nothing in its way, raise it with the jack."
          + " Remove the axle stands. Lower the vehicle to the ground",
      "With nobody inside or under the vehicle and nothing in its way, raise it with the jack."
          + " Remove the jack stands. Lower the vehicle to the ground"),
  UP_TO_WHEELS_CLEAR(
      "With nobody inside, check that every lift pad is under its lift point. Raise the vehicle"
          + " until its wheels are just clear of the floor. Check by a firm push at both ends that"
          + " it does not move"),
  DOWN_TO_WHEELS_CLEAR(
      "With nobody under it and nothing in its way, lower the vehicle until its wheels just clear"
          + " the floor"),
  TO_WORKING_HEIGHT(
      "With nobody inside and the wheels just clear, check by a firm push that nothing moves. Raise"
          + " the vehicle to working height and onto the lift locks. Check that every lock is"
          + " engaged"),
  ON_TO_STANDS(
      "With nobody inside and the wheels on the floor chocked, raise the vehicle with the jack."
          + " Lower it onto its axle stands. Check by a firm push from the side that it does not"
          + " move",
      "With nobody inside and the wheels on the floor chocked, raise the vehicle with the jack."
          + " Lower it onto its jack stands. Check by a firm push from the side that it does not"
          + " move"),
  REPLACES("Replaces %s: %s"),
  SOAK_THREADS("Apply penetrating oil to these threads, cleaned: %s"),
  SOAK_SEATS("Apply penetrating oil to the seats of: %s"),
  NO_OIL_ON_LININGS(
      "Apply no penetrating oil to brake discs, drums and linings",
      "Apply no penetrating oil to brake rotors, drums and linings"),
  CLEAN_THREADS(
      "Before refitting, clean the oil off the threads",
      "Before reinstallation, clean the oil off the threads"),
  BORROW("Borrow: %s"),
  WRENCH_FOR("torque wrench for %s (row\u00a0%s)"),
  FIND_TORQUE("Ask for torque and source of the %s (row\u00a0%s): the book gives none"),
  ASK_TORQUE(
      "Ask for the correct torque of the %s (row\u00a0%s): the one given is wrong for its thread"),
  FIND_FIGURE("Ask for the %s (step\u00a0%s): the book gives none"),
  TORQUE_RECORDED("Check that torque and source of the %s are recorded before anything is opened"),
  TORQUE_NOT_GUESSED("a figure must not be guessed once the vehicle is in pieces"),
  FIGURE_RECORDED("Record the %s before anything is opened"),
  FLUID_NOT_GUESSED("the figure must be known before anything is drained"),
  RECHECK("Check the torque of the %s (row\u00a0%s) after %s"),
  RECHECK_UNKNOWN("Check the torque of the %s (row\u00a0%s) after the distance in the data"),
  GRADE("grade"),
  QUANTITY("quantity"),
  SUPPORT_POINTS("support points, %s"),
  JACKING_POINT("jacking point, %s"),
  NO_WRENCH("no wrench, borrow"),
  UNCALIBRATED("%s, borrow"),
  LAST_CALIBRATED("%s last calibrated %s"),
  LAPSED("%s: lapsed"),
  CALIBRATED_ON("%s on %s"),
  CALIBRATED_LATER("calibrated after this job's date: %s"),
  WIDER_THAN_BAND("the accuracy of wrench %s is wider than the band"),
  HIGH_TORQUE("high for an ordinary surface: compare with the source once"),
  UNDECLARED_PRODUCT(
      "no catalogue says what %s does on a thread: the clamp load may be far from what the torque"
          + " is for"),
  AS_RECORDED("%s as recorded"),
  ON_LIFT("%s lift"),
  ON_STANDS("%s stands"),
  JACK_UNDER("jack under: %s"),
  STANDS_UNDER("axle stands under: %s", "jack stands under: %s"),
  WORK_AT("%s, %s"),
  OF_PROCEDURE("procedure %s"),
  OF_THE_BOOK("the book"),
  BOOK_CHECKED("book checked by %s on %s"),
  NAMED_BOOK_CHECKED("book %s checked by %s on %s"),
  SECOND_PERSON_WANTED("a second person for the hold points"),
  TIME_RANGE("%s to %s\u00a0min, likely %s\u00a0min"),
  NO_TIME_FOR("no time for %s"),
  STAGE("stage\u00a0%s of\u00a0%s"),
  AT_GROUND("The vehicle stands on its wheels"),
  AT_WHEELS_CLEAR("The vehicle is on the lift with its wheels just clear of the floor"),
  AT_WORKING("The vehicle is on the lift locks"),
  AT_STANDS("The vehicle is on axle stands", "The vehicle is on jack stands"),
  RAISED_AT("%s, raised at the %s"),
  HELD_NOW("In place and not to be removed yet: %s"),
  OFF_NOW("Removed, opened or disconnected: %s"),
  OFF_SINCE("%s (step\u00a0%s)"),
  LINES_OFF("Fasteners not in place: %s"),
  LINES_LOOSE("Not torqued yet: %s"),
  STATE_ROW("%s (row\u00a0%s)"),
  STATE_ROW_OF_SHEET("%s (row\u00a0%s, sheet\u00a0%s)"),
  LEFT_NOW("Set by earlier steps: %s"),
  ON_SHEET("%s on sheet\u00a0%s"),
  OPEN_NOW("Open or drained: %s"),
  WRITTEN_ON("Figures are written in at %s: keep those sheets with the vehicle"),
  NOTHING_OFF("Nothing is removed"),
  NOT_FINISHED("The job is not finished: nobody drives the vehicle"),
  TAKEN_OVER("initials of the person who takes over and found the vehicle in this state"),
  CONTINUES("Continues sheet %s of %s. Check %s before you go on"),
  TICKED_TO(
      "each ticked step of that sheet up to step\u00a0%s",
      "each checked-off step of that sheet up to step\u00a0%s"),
  TICKED("each ticked step of that sheet", "each checked-off step of that sheet"),
  FOUND("Found: %s"),
  COPY_FIGURE("%s, from step\u00a0%s"),
  BOTH_ENDS_UP(
      "no wheel stays on the floor, so none can be chocked: work on a level floor only. Nobody goes"
          + " under the vehicle before all axle stands are tested",
      "no wheel stays on the floor, so none can be chocked: work on a level floor only. Nobody goes"
          + " under the vehicle before all jack stands are tested"),
  ABSENT("this vehicle has no %s"),
  IN_PLACE("the %s is in place already"),
  TAKEN_AWAY_ELSEWHERE("the %s is removed in another step"),
  OFF_ALREADY("the %s is removed already"),
  ON_ELSEWHERE("the %s is refitted in another step", "the %s is reinstalled in another step"),
  STAKE("then stake the collar"),
  SPLIT_PIN(
      "then turn on to the next slot, never back, and fit a new split pin",
      "then turn on to the next slot, never back, and install a new cotter pin"),
  LOCK_PLATE("then bend the lock plate up"),
  LOCK_WIRE(
      "then fit lock wire so that it cannot loosen",
      "then install lock wire so that it cannot loosen"),
  DISCARD("do not re-use"),
  NEW("new"),
  SNUG_ONLY("row\u00a0%s: snug only, final torque later"),
  ASK_FIRST("row\u00a0%s: to the figure written in that row, with the wrench written there"),
  BORROW_FIRST("row\u00a0%s: borrow a torque wrench first, then torque %s"),
  SNUG("row\u00a0%s: snug, no figure is published"),
  TORQUE("torque, %s"),
  ROW("row\u00a0%s: %s"),
  ROW_IN("row\u00a0%s, in sequence\u00a0%s: %s"),
  SET("set %s to %s"),
  NEXT_SET("to %s"),
  THEN(", then "),
  TURN("turn %s further"),
  LOOSEN("loosen"),
  ONCE_MORE("go round once more"),
  HEIGHT_OF("at the height measured in step\u00a0%s"),
  WITH("with %s"),
  STAND_CARRIES(
      "load on each stand %s of %s, by kerb mass", "load on each stand %s of %s, by curb mass"),
  LIFT_CARRIES(
      "load on the lift %s of %s, by kerb mass", "load on the lift %s of %s, by curb mass"),
  SIDE_BY_SIDE("Steps\u00a0%s\u2013%s on one side first, then on the other"),
  RAISE("Raise"),
  LOWER("Lower"),
  WHEELS_CLEAR("Wheels just clear"),
  EVENING_BEFORE("The evening before"),
  BEFORE_LIFTING("Before lifting"),
  RAISED("While raised"),
  REMOVAL("removal"),
  WORK("work"),
  REFITTING("refitting", "reinstallation"),
  BEFORE_LOWERING("Before lowering"),
  ON_THE_GROUND("On the ground"),
  BEFORE_MOVING("Before the vehicle moves"),
  ROAD_TEST("Road test"),
  HAND_OVER("At hand-over"),
  RE_CHECK("At the re-check"),
  ROWS_ON_THE_GROUND("On the ground or at ride height"),
  MARK_HEAD("witness mark on the head"),
  TOO_WIDE("the accuracy of this wrench is wider than the band"),
  SHOP_BAND("shop: the shop's own band, where the book gives none"),
  OF_THIS_JOB("value of this job: %s"),
  BOOK_SAYS("the book itself says %s"),
  NOT_TO_USE("do not use the value given for this job: %s"),
  NOR_OF_BOOK("do not use the %s of the book without asking"),
  RENEW("RENEW", "REPLACE"),
  RE_USE("re-use"),
  RE_USE_NOT_STATED("re-use not stated"),
  FROM_DATA("%s, from data"),
  BOTH_SIDES("%s for both sides"),
  ROUNDS("rounds: %s"),
  RE_CHECK_AFTER("re-check after %s"),
  SECOND_PERSON("second person, %s"),
  SECOND_PERSON_BUT("second person, not %s"),
  READ_ON_WRENCH(
      "with this insert the wrench reads %s when the fastener has %s: write down what the wrench"
          + " reads"),
  REMOVED_AND_REFITTED("Removed and refitted", "Removed and reinstalled");

  private final String british;
  private final String american;

  Phrase(String both) {
    this(both, both);
  }

  Phrase(String british, String american) {
    this.british = british;
    this.american = american;
  }

  String british() {
    return british;
  }

  String american() {
    return american;
  }
}
