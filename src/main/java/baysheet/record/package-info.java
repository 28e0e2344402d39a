/**
 * The sheet as data: writes the machine-readable record of a sheet and its page.
 *
 * <p>May import: report, torque, books, sheet, wording, layout.
 */
package baysheet.record;
