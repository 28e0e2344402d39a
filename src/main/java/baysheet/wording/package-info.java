/**
 * The words of a sheet, in British and in American English.
 *
 * <p>May import: report, torque, books, resolve, sheet.
 */
package baysheet.wording;
