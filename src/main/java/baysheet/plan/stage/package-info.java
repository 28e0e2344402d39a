/**
 * Divides a job among several sheets, each of which is complete.
 *
 * <p>May import: report, torque, books, resolve, sheet, verify, plan.graph, plan.content.
 */
package baysheet.plan.stage;
