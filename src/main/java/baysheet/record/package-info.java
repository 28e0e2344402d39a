/**
 * The sheet and the day as data: writes their machine-readable records.
 *
 * <p>May import: report, json, torque, books, sheet, garage, wording, layout.
 */
package baysheet.record;
