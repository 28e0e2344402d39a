/**
 * The timetable of a day: activities, resources and working hours in, starting times out.
 *
 * <p>May import: nothing of the project (pure functions on whole minutes).
 */
package baysheet.day;
