/**
 * The tree of boxes that a filled layout becomes, what stands in what and nothing of where; knows
 * nothing of cars.
 *
 * <p>May import: report.
 */
package baysheet.box;
