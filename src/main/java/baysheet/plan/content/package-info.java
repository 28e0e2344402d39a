/**
 * What follows from the order of the steps: torque rows, tools, cautions, checks, support and time.
 *
 * <p>May import: report, torque, books, resolve, sheet, plan.graph.
 */
package baysheet.plan.content;
