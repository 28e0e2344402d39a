package baysheet.wording;

/** What the program itself says on a sheet, in British and in American English. */
enum Phrase {
  TICK_NOW("Tick these now", "Mark these now"),
  NOT_LIFTED("Do the checks listed for before lifting now; this car stays on its wheels"),
  FINAL_TORQUE("Tighten the %s"),
  START_ONE("Start the %s by hand and run it up snug"),
  START_SEVERAL("Start the %s by hand and run them up snug"),
  TAKE_AWAY("Take away the %s"),
  PUT_BACK("Put back the %s"),
  LIFT_ON_TO_BLOCKS(
      "Set pads again, lift a little, push hard; solid blocks under all wheels; lower, chock on"
          + " them, rock the car settled"),
  JACK_ON_TO_BLOCKS(
      "Jack each axle%s, solid blocks under all wheels; chock on them, rock the car settled"),
  LIFT_OFF_BLOCKS("Set pads, lift, push hard; blocks and chocks out; lower"),
  JACK_OFF_BLOCKS("Jack each axle, blocks out; chock on the floor"),
  TO_THE_GROUND(
      "Check that nobody is inside or under the vehicle and nothing is in its way. Lower it to the"
          + " ground"),
  OFF_THE_STANDS(
      "Check that nobody is inside or under the vehicle and nothing is in its way. Jack it up,"
          + " remove the stands and lower it to the ground"),
  UP_TO_WHEELS_CLEAR(
      "Check that nobody is inside and that all lift pads are under the support points. Raise the"
          + " vehicle until the wheels are just clear of the floor. Push it hard at both ends:"
          + " nothing moves"),
  DOWN_TO_WHEELS_CLEAR(
      "Check that nobody is under the vehicle and nothing is in its way. Lower it until the wheels"
          + " are just clear of the floor"),
  TO_WORKING_HEIGHT(
      "Check that nobody is inside. Raise the vehicle to working height and set it on the lift"
          + " locks. Check that all locks are engaged and push hard: nothing moves"),
  ON_TO_STANDS(
      "Check that nobody is inside and that the wheels on the floor are chocked. Jack up the"
          + " vehicle and set it on the stands again. Push it from the side: nothing moves"),
  STAGE("stage\u00a0%s of\u00a0%s"),
  AT_GROUND("The car stands on its wheels"),
  AT_WHEELS_CLEAR("The car is on the lift with its wheels just clear of the floor"),
  AT_WORKING("The car is on the lift locks"),
  AT_STANDS("The car is on axle stands", "The car is on jack stands"),
  RAISED_AT("%s, raised at the %s"),
  HELD_NOW("In place, and stays there: %s"),
  OFF_NOW("Off: %s"),
  OFF_SINCE("%s (step\u00a0%s)"),
  LINES_OFF("Fasteners off: torque %s"),
  LINES_LOOSE("Not at their final torque, only snug or loosened: torque %s"),
  OPEN_NOW("Open or drained: %s"),
  WRITTEN_ON("Figures were written in at %s: keep those sheets with the car"),
  NOTHING_OFF("Nothing is off"),
  NOT_FINISHED("The job is not finished: nobody drives the car"),
  TAKEN_OVER("the car was found so by whoever takes over"),
  COPY_FIGURE("%s, from step\u00a0%s"),
  BOTH_ENDS_UP(
      "no wheel stays on the floor, so none can be chocked: use a level floor, and let nobody go"
          + " under the vehicle before all stands are tested"),
  ABSENT("this vehicle has no %s"),
  IN_PLACE("the %s is in place already"),
  TAKEN_AWAY_ELSEWHERE("the %s is taken away in another step"),
  OFF_ALREADY("the %s is off already"),
  ON_ELSEWHERE("the %s goes on in another step"),
  STAKE("then stake the collar"),
  SPLIT_PIN(
      "then on to the next slot, never back, and a new split pin",
      "then on to the next slot, never back, and a new cotter pin"),
  LOCK_PLATE("then bend the lock plate up"),
  LOCK_WIRE("then wire it so that it cannot loosen"),
  DISCARD("discard"),
  NEW("new"),
  SNUG_ONLY("snug only, line\u00a0%s"),
  AS_WRITTEN_IN("line\u00a0%s as written in; nothing there: stop"),
  SNUG("line\u00a0%s: snug"),
  TO("line\u00a0%s: %s"),
  HEIGHT_OF("height as in step\u00a0%s"),
  WITH("with %s"),
  STAND_CARRIES("each stand carries %s of %s"),
  LIFT_CARRIES("the lift carries %s of %s"),
  SIDE_BY_SIDE("Steps\u00a0%s\u2013%s on one side, then on the other"),
  RAISE("Raise"),
  LOWER("Lower"),
  WHEELS_CLEAR("Wheels just clear"),
  BEFORE_LIFTING("Before lifting"),
  REMOVAL("take apart"),
  WORK("work"),
  REFITTING("put together"),
  BEFORE_LOWERING("Before lowering"),
  ON_THE_GROUND("On the ground"),
  BEFORE_MOVING("Before moving"),
  ROAD_TEST("Road test"),
  HAND_OVER("Hand-over"),
  RE_CHECK("Re-check");

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
