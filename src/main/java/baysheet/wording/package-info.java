/**
 * The words of a sheet and of a day, in British and in American English.
 *
 * <p>May import: report, torque, books, resolve, sheet, garage.
 */
package baysheet.wording;
