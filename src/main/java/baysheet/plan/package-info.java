/**
 * What the sheet says, in reading order: sequence, tally, sockets, cautions, checks, support, time.
 *
 * <p>May import: report, torque, books, resolve.
 */
package baysheet.plan;
