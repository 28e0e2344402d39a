package baysheet.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/**
 * When each activity of a plan starts.
 *
 * @param plan what was scheduled
 * @param starts the starting working minute of each activity, in the order of the plan
 * @param pauses how many working minutes each activity pauses at each of its rests, in the order of
 *     the plan; empty for one that does not pause
 * @param chosen the resource taken for each use of each activity, in the order of the plan
 */
public record Timetable(
    DayPlan plan, List<Integer> starts, List<List<Integer>> pauses, List<List<String>> chosen) {
  /**
   * What is handed over takes time to be taken up again: a pause has to gain so many minutes of the
   * day. Common practice, no source.
   */
  private static final int HANDOVER = 15;

  public Timetable {
    starts = List.copyOf(starts);
    pauses = pauses.stream().map(List::copyOf).toList();
    chosen = chosen.stream().map(List::copyOf).toList();
    if (starts.size() != plan.activities().size() || chosen.size() != starts.size()) {
      throw new IllegalArgumentException(
          starts.size() + " starts of " + plan.activities().size() + " activities");
    }
  }

  /** The working minute at which the activity at a position of the plan ends. */
  public int end(int position) {
    return until(position, plan.activities().get(position).minutes());
  }

  /** The working minute at which a minute of the work of the activity at a position begins. */
  public int from(int position, int minute) {
    return starts.get(position)
        + plan.activities().get(position).elapsed(pauses.get(position), minute, true);
  }

  /** The working minute at which so many minutes of the activity at a position are done. */
  public int until(int position, int minutes) {
    return starts.get(position)
        + plan.activities().get(position).elapsed(pauses.get(position), minutes, false);
  }

  /** The working minute at which everything has ended. */
  public int end() {
    int end = 0;
    for (int i = 0; i < starts.size(); i++) {
      end = Math.max(end, end(i));
    }
    return end;
  }

  /**
   * By how many working minutes the activity at a position misses its promise; 0 if it does not.
   */
  public int late(int position) {
    OptionalInt promised = plan.activities().get(position).promised();
    return promised.isEmpty() ? 0 : Math.max(0, end(position) - promised.getAsInt());
  }

  /** Ids of the activities that use a resource at a working minute, in the order of the plan. */
  public List<String> usersOf(String resource, int minute) {
    List<String> users = new ArrayList<>();
    for (int i = 0; i < starts.size(); i++) {
      Activity activity = plan.activities().get(i);
      for (int k = 0; k < activity.uses().size(); k++) {
        Activity.Use use = activity.uses().get(k);
        boolean now = from(i, use.from()) <= minute && minute < until(i, use.to());
        if (now && chosen.get(i).get(k).equals(resource)) {
          users.add(activity.id());
        }
      }
    }
    return users;
  }

  /**
   * How good it is; the smaller is better. Promises come first, then the end of the day, then the
   * order in which the activities of a queue are written.
   */
  Score score() {
    int broken = 0;
    int lateness = 0;
    for (int i = 0; i < starts.size(); i++) {
      int late = late(i);
      broken += late > 0 ? 1 : 0;
      lateness += late;
    }
    return new Score(broken, lateness, end() + HANDOVER * paused(), exchanged());
  }

  private int paused() {
    return (int) pauses.stream().flatMap(List::stream).filter(minutes -> minutes > 0).count();
  }

  /** How many pairs of activities of one queue start in another order than they are written. */
  private int exchanged() {
    List<Activity> activities = plan.activities();
    int pairs = 0;
    for (int i = 0; i < starts.size(); i++) {
      for (int j = i + 1; j < starts.size(); j++) {
        boolean sameQueue =
            activities.get(i).queue().isPresent()
                && activities.get(i).queue().equals(activities.get(j).queue());
        pairs += sameQueue && starts.get(i) > starts.get(j) ? 1 : 0;
      }
    }
    return pairs;
  }

  /**
   * Compares timetables of one plan.
   *
   * @param broken promises that do not hold
   * @param lateness minutes by which they do not hold, together
   * @param end working minute at which everything has ended, and a handover for each pause
   * @param exchanged pairs of one queue out of their written order
   */
  record Score(int broken, int lateness, int end, int exchanged) implements Comparable<Score> {
    @Override
    public int compareTo(Score other) {
      int[] ours = {broken, lateness, end, exchanged};
      int[] theirs = {other.broken, other.lateness, other.end, other.exchanged};
      return Arrays.compare(ours, theirs);
    }
  }
}
