/**
 * The finished plan as records: what is on the sheet.
 *
 * <p>May import: report, torque, books, resolve.
 */
package baysheet.sheet;
