/**
 * Binds a job to its books, one class for each rule, keeping where every value came from.
 *
 * <p>May import: report, torque, books.
 */
package baysheet.resolve;
