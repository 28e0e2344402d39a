package baysheet.wording;

/** What the program itself says on a sheet, in British and in American English. */
enum Phrase {
  CHECK_NOW("Do all of these:"),
  CHECK_NOW_NOT_LIFTED("Do all of these. The vehicle stays on its wheels"),
  FINAL_TORQUE("Torque the %s"),
  FIT("Fit the %s by hand", "Install the %s by hand"),
  TAKE_AWAY("Remove the %s"),
  TIGHTEN("Tighten the %s"),
  PUT_BACK("Refit the %s", "Reinstall the %s"),
  SET_LIFT_PADS(
      "Set every lift pad flat and centred under its lift point",
      "Set every lift pad flat and centered under its lift point"),
  ARM_LOCKS("Check that every arm lock is in"),
  TAKE_CHOCKS("From the side, remove every wheel chock from under the vehicle"),
  RAISE_FOR_BLOCKS(
      "With nobody in or under it, raise the vehicle until solid blocks go under its wheels"),
  PUT_UNDER(
      "From the side, push rated solid wheel blocks of one height centrally under all wheels, with room"
          + " for chocks"),
  LOWER_ONTO(
      "With nobody in or under it, lower the vehicle onto the blocks until every lift pad is"
          + " clear"),
  TAKE_CHOCKS_OF_AXLE("Remove the chocks of the %s wheels"),
  RAISE_AXLE("With nobody in or under it, raise the %s axle with the jack%s for solid blocks"),
  PUT_UNDER_AXLE(
      "From the side, push rated solid wheel blocks of one height centrally under both %s wheels, with"
          + " room for chocks"),
  LOWER_AXLE_ONTO("With nobody in or under it, lower the %s wheels onto the blocks"),
  CHOCK("From the side, chock one rear wheel in front and behind at once"),
  CHOCK_AXLE("Chock both %s wheels in front and behind"),
  CHOCK_ON_BLOCKS(
      "Chock every wheel on its block in front and behind, 30 mm from the tyre",
      "Chock every wheel on its block in front and behind, 30 mm from the tire"),
  CHOCK_AXLE_ON_BLOCKS("Chock both %s wheels on their blocks, in front and behind"),
  TYRES_ON(
      "From the side, check that every tyre stands whole on its block and no block tilts",
      "From the side, check that every tire stands whole on its block and no block tilts"),
  LEAVE_ROOM(
      "With nobody else at the vehicle, pull every chock 30 mm away from its tyre",
      "With nobody else at the vehicle, pull every chock 30 mm away from its tire"),
  NEUTRAL("From outside the vehicle, select neutral"),
  LET_ROLL("From outside the vehicle, release the parking brake"),
  MEASURE("Measure the height at the %s a second time, as before the work"),
  SETTLE(
      "From the side, push each end down several times until it settles, every tyre whole on its"
          + " block",
      "From the side, push each end down several times until it settles, every tire whole on its"
          + " block"),
  APPLY_BRAKE("Apply the parking brake"),
  HOLD_STILL("From outside the vehicle, apply the parking brake"),
  CLOSE_UP("Push every chock against its tyre", "Push every chock against its tire"),
  RAISE_OFF(
      "With nobody in or under it, raise the vehicle until its wheels are just clear of the"
          + " blocks"),
  NEXT_LOCKS("With nobody in or under it, set the lift on its next locks, every lock engaged"),
  TAKE_OUT("From the side, pull out the chocks and the blocks"),
  LOWER_TO_FLOOR(
      "With nobody in or under it and no tool in its way, lower the vehicle to the floor"),
  RAISE_AXLE_OFF(
      "With nobody in or under it, raise the %s axle clear of its blocks with the jack%s"),
  TAKE_OUT_AXLE("From the side, pull out the chocks and blocks of the %s wheels"),
  LOWER_AXLE_TO_FLOOR("With nobody in or under it, lower the %s axle to the floor"),
  LOOK_ROUND(
      "Check that nobody is inside, under, in front of or behind the vehicle and nothing is in its way"),
  PADS_UNDER(
      "Check that every lift pad is flat and centred under its lift point",
      "Check that every lift pad is flat and centered under its lift point"),
  FREE_LOCKS("Raise the lift until its locks are free, and release them"),
  FREE_LOCKS_ALONE(
      "With nobody in or under the vehicle, raise the lift until its locks are free, and release"
          + " them"),
  FREE_STANDS(
      "Raise the vehicle with the jack until its axle stands are free",
      "Raise the vehicle with the jack until its jack stands are free"),
  TAKE_STANDS("From the side, remove the axle stands", "From the side, remove the jack stands"),
  JACK_UP("Raise the vehicle with the jack"),
  SET_STANDS(
      "From the side, set the axle stands square under the support points",
      "From the side, set the jack stands square under the support points"),
  ONTO_STANDS("Lower the vehicle onto its axle stands", "Lower the vehicle onto its jack stands"),
  PUSH_SIDE("Push the vehicle firmly from the side and check that it does not move"),
  PUSH_ENDS("Push the vehicle firmly at both ends and check that it does not move"),
  ONTO_LOCKS("Set the lift on its locks and check that every lock has engaged"),
  TO_THE_GROUND("Lower the vehicle to the floor"),
  UP_TO_WHEELS_CLEAR(
      "With nobody in or under it, raise the vehicle until its wheels are just clear of the floor"),
  DOWN_TO_WHEELS_CLEAR("Lower the vehicle until its wheels are just clear of the floor"),
  TO_WORKING_HEIGHT("With nobody in or under it, raise the vehicle to working height"),
  REPLACES("Replaces %s: %s"),
  SEEN_ON_THIS("Seen on this vehicle: %s"),
  SEEN_ON_KIND("Seen on vehicles of this kind: %s"),
  SEEN_EARLIER("%s earlier"),
  SOAK_THREADS("Apply penetrating oil to these threads, cleaned: %s"),
  SOAK_SEATS("Apply penetrating oil to the seats of: %s"),
  NO_OIL_ON_LININGS(
      "Apply no penetrating oil to brake discs, drums and linings",
      "Apply no penetrating oil to brake rotors, drums and linings"),
  SOAK_ON_LIFT("Apply it from outside, or with the vehicle on the lift locks"),
  SOAK_FROM_OUTSIDE(
      "Apply it from outside only, and to the rest once the vehicle is on its axle stands",
      "Apply it from outside only, and to the rest once the vehicle is on its jack stands"),
  CLEAN_THREADS(
      "Before refitting, clean the oil off the threads",
      "Before reinstallation, clean the oil off the threads"),
  BORROW("Borrow: %s"),
  OR_ADAPTER("%s, or %s for the shop's own"),
  WRENCH_FOR("%s (row\u00a0%s)"),
  TORQUE_WRENCH("torque wrench for %s"),
  FIND_TORQUE("Ask for torque and source of the %s (row\u00a0%s): the book gives none"),
  ASK_TORQUE(
      "Ask for the correct torque of the %s (row\u00a0%s): the one given is wrong for its thread"),
  FIND_FIGURE("Ask for the %s (step\u00a0%s): the book gives none"),
  TORQUE_RECORDED("Check that torque and source of the %s are recorded before anything is opened"),
  TORQUE_NOT_GUESSED("a figure must not be guessed once the vehicle is in pieces"),
  FIGURE_RECORDED("Record the %s before anything is opened"),
  FLUID_NOT_GUESSED("the figure must be known before anything is drained"),
  RECHECK("Check the torque of the %s (row\u00a0%s) after %s"),
  RECHECK_UNKNOWN(
      "Check the torque of the %s (row\u00a0%s) after the distance in the maker's data"),
  GRADE("grade"),
  QUANTITY("quantity"),
  SUPPORT_POINTS("support points, %s"),
  JACKING_POINT("jacking point, %s"),
  HEIGHT_NOW("height now, mm"),
  LARGEST_DIFFERENCE("largest difference by the maker, mm"),
  SAME_HEIGHT(
      "this height and the one before the work differ by no more than the largest difference"),
  NO_WRENCH("no wrench, borrow"),
  UNCALIBRATED("%s; borrow a wrench"),
  LAPSED("calibration overdue: %s"),
  WAS_DUE("%s was due %s"),
  DUE_ON("%s\u00a0%s"),
  DUE_TODAY("%s\u00a0%s\u00a0(today)"),
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
  JACK_UNDER("jacking point: %s"),
  STANDS_UNDER("axle stands under: %s", "jack stands under: %s"),
  WORK_AT("%s, %s"),
  OF_PROCEDURE("procedure %s"),
  OF_THE_BOOK("the book"),
  BOOK_CHECKED("book checked by %s on %s"),
  NAMED_BOOK_CHECKED("book %s checked by %s on %s"),
  SECOND_PERSON_WANTED("a second person for the hold points"),
  TIME_RANGE("%s to %s\u00a0min, likely %s\u00a0min"),
  TIME("%s\u00a0min"),
  PLUS_UNTIMED("%s, plus untimed %s"),
  STAGE("stage\u00a0%s of\u00a0%s"),
  AT_GROUND("The vehicle stands on its wheels"),
  AT_WHEELS_CLEAR(
      "The vehicle is on the lift with its wheels just clear: set it on the next locks before you"
          + " leave it"),
  FOUND_AT_WHEELS_CLEAR(
      "The vehicle is on the first lift locks above the floor: lower it until its wheels are just"
          + " clear before you go on"),
  AT_WORKING("The vehicle is on the lift locks"),
  AT_STANDS("The vehicle is on axle stands", "The vehicle is on jack stands"),
  AT_BLOCKS(
      "The vehicle stands on solid blocks under its wheels, in neutral, held by chocks and any parking brake in use"),
  RAISED_AT("%s, raised at the %s"),
  HELD_NOW("In place and not to be removed yet: %s"),
  OFF_NOW("Removed, opened or disconnected: %s"),
  OFF_SINCE("%s (step\u00a0%s)"),
  SLACKENED_NOW("Slackened, still in place: %s", "Loosened, still in place: %s"),
  LINES_OFF("Fasteners not in place: %s"),
  LINES_LOOSE("Not torqued yet: %s"),
  STATE_ROW("%s (row\u00a0%s)"),
  ROW_OF_SHEET("%s, sheet\u00a0%s"),
  STATE_ROW_OF_SHEET("%s (row\u00a0%s, sheet\u00a0%s)"),
  LEFT_NOW("Set by earlier steps: %s"),
  ON_SHEET("%s on sheet\u00a0%s"),
  OPEN_NOW("Open or drained: %s"),
  WRITTEN_ON("Figures are written in at %s: keep those sheets with the vehicle"),
  NOTHING_OFF("Nothing is removed"),
  NOT_FINISHED(
      "The job is not finished: nobody drives the vehicle before the checks on sheet\u00a0%s"),
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
  STAND_CARRIES("load on each stand %s of %s, %s"),
  LIFT_CARRIES("load on the lift %s of %s, %s"),
  UNLOADED("vehicle unloaded"),
  LOADED("with %s on board"),
  SIDE_BY_SIDE("Steps\u00a0%s\u2013%s on one side first, then on the other"),
  RAISE("Raise"),
  LOWER("Lower"),
  WHEELS_CLEAR("Wheels just clear"),
  ONTO_BLOCKS("Onto solid blocks"),
  ON_BLOCKS("On solid blocks"),
  OFF_BLOCKS("Off the solid blocks"),
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
  NOT_TO_USE("do not use the figure from: %s"),
  NOR_OF_BOOK("do not use the %s of the book without asking"),
  RENEW("RENEW", "REPLACE"),
  RE_USE("re-use"),
  RE_USE_NOT_STATED("re-use not stated"),
  FROM_DATA("%s, by the maker"),
  MAKERS_FIGURES(
      "Read each figure “by the maker” in the vehicle maker's current data, for the book lacks it"),
  BOTH_SIDES("%s for both sides"),
  ROUNDS("rounds: %s"),
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
