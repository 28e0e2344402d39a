/**
 * The steps of a job, which must come before which, and the order in which they are done.
 *
 * <p>May import: report, torque, books, resolve, sheet.
 */
package baysheet.plan.graph;
