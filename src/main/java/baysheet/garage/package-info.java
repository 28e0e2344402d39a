/**
 * What a garage does on one day: which job is in which bay from when to when, with whom and with
 * which scarce tools, and what has to be ready the evening before.
 *
 * <p>May import: report, torque, books, resolve, sheet, day.
 */
package baysheet.garage;
