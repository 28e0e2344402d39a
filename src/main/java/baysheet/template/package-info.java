/**
 * Runs a FreeMarker layout on a sheet and reads the result as a tree of boxes.
 *
 * <p>May import: report, wording, box; only place for FreeMarker.
 */
package baysheet.template;
