package baysheet.wording;

/** What the program itself says on a sheet, in British and in American English. */
enum Phrase {
  CHECK_NOW("Do each of the following:"),
  CHECK_NOW_NOT_LIFTED("Do each of the following. The vehicle stays on its wheels"),
  FINAL_TORQUE("Torque the %s"),
  FIT("Fit the %s by hand", "Install the %s by hand"),
  TAKE_AWAY("Remove the %s"),
  TIGHTEN("Tighten the %s"),
  PUT_BACK("Refit the %s", "Reinstall the %s"),
  SET_LIFT_PADS("Set the lift pads under the lift points"),
  TAKE_CHOCKS("Remove every wheel chock from under the vehicle"),
  RAISE_FOR_BLOCKS("Raise the vehicle until solid blocks go under its wheels"),
  PUT_UNDER("Push a solid block under each wheel"),
  LOWER_ONTO("Lower the vehicle onto the blocks"),
  TAKE_CHOCKS_OF_AXLE("Remove the chocks of the %s wheels"),
  RAISE_AXLE("Raise the %s axle with the jack%s until solid blocks go under its wheels"),
  PUT_UNDER_AXLE("Push a solid block under each %s wheel"),
  LOWER_AXLE_ONTO("Lower the %s wheels onto the blocks"),
  CHOCK(
      "Chock every wheel on its block in front and behind, 30 mm from the tyre",
      "Chock every wheel on its block in front and behind, 30 mm from the tire"),
  CHOCK_AXLE("Chock the %s wheels on the blocks, in front and behind"),
  LEAVE_ROOM(
      "Pull every chock 30 mm away from its tyre", "Pull every chock 30 mm away from its tire"),
  LET_ROLL("From outside the vehicle, release the parking brake, gear lever in neutral"),
  MEASURE("Measure the height at the %s a second time, as before the work"),
  SETTLE("Push the vehicle down several times at each end until it settles"),
  HOLD_STILL("From outside the vehicle, apply the parking brake"),
  CLOSE_UP("Push every chock against its tyre", "Push every chock against its tire"),
  RAISE_OFF("Raise the vehicle clear of its blocks"),
  TAKE_OUT("Remove the chocks and the blocks"),
  LOWER_TO_FLOOR("With nobody inside or under the vehicle, lower it to the floor"),
  RAISE_AXLE_OFF("Raise the %s axle with the jack until its wheels are clear of the blocks"),
  TAKE_OUT_AXLE("Remove the chocks and the blocks of the %s wheels"),
  LOWER_AXLE_TO_FLOOR("With nobody inside or under the vehicle, lower the %s axle to the floor"),
  CHECK_CHOCKS_OF_AXLE("Check that the %s wheels are chocked in front and behind"),
  CHOCK_AXLE_ON_FLOOR("Chock the %s wheels in front and behind"),
  LOOK_ROUND("Check that nobody is inside or under the vehicle and nothing is in its way"),
  PADS_UNDER("Check that nobody is inside and every lift pad is under its lift point"),
  WHEELS_CHOCKED("Check that nobody is inside and the wheels on the floor are chocked"),
  FREE_LOCKS("Raise the lift until its locks are free, and release them"),
  FREE_STANDS(
      "Raise the vehicle with the jack until its axle stands are free",
      "Raise the vehicle with the jack until its jack stands are free"),
  TAKE_STANDS("Remove the axle stands", "Remove the jack stands"),
  JACK_UP("Raise the vehicle with the jack"),
  SET_STANDS(
      "Set the axle stands square under the support points",
      "Set the jack stands square under the support points"),
  ONTO_STANDS("Lower the vehicle onto its axle stands", "Lower the vehicle onto its jack stands"),
  PUSH_SIDE("Push the vehicle firmly from the side and check that it does not move"),
  PUSH_ENDS("Push the vehicle firmly at both ends and check that it does not move"),
  ONTO_LOCKS("Set the lift on its locks and check that every lock has engaged"),
  TO_THE_GROUND("Lower the vehicle to the floor"),
  UP_TO_WHEELS_CLEAR("Raise the vehicle until its wheels are just clear of the floor"),
  DOWN_TO_WHEELS_CLEAR("Lower the vehicle until its wheels are just clear of the floor"),
  TO_WORKING_HEIGHT("Raise the vehicle to working height"),
  REPLACES("Replaces %s: %s"),
  AT_LEAST("at least %s"),
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
  SLACKENED_NOW("Slackened, still in place: %s", "Loosened, still in place: %s"),
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
  STAKE("collar to be staked"),
  SPLIT_PIN(
      "then turn on to the next slot, never back, and fit a new split pin",
      "then turn on to the next slot, never back, and install a new cotter pin"),
  LOCK_PLATE("then bend the lock plate up"),
  LOCK_WIRE(
      "then fit lock wire so that it cannot loosen",
      "then install lock wire so that it cannot loosen"),
  OK_IF("OK if: %s"),
  DISCARD("do not re-use"),
  NEW("new"),
  SNUG_ONLY("row\u00a0%s: snug only, final torque later"),
  ASK_FIRST("row\u00a0%s: to the figure written in that row, with the wrench written there"),
  BORROW_FIRST("row\u00a0%s: borrow a torque wrench first, then torque %s"),
  EARLY_ROUND("tighten evenly by hand to %s"),
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
  BESIDE("%s, beside the %s"),
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
