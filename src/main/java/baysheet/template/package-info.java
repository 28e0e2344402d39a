/**
 * Runs a FreeMarker layout on a plan and reads the result as a tree of boxes.
 *
 * <p>May import: report, torque, books, plan, box; only place for FreeMarker.
 */
package baysheet.template;
