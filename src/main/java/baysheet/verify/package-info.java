/**
 * Proves a finished sheet against its job by playing it back, step by step.
 *
 * <p>May import: report, torque, books, resolve, sheet.
 */
package baysheet.verify;
