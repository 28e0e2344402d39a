/**
 * Measures boxes, breaks lines, fits one page and returns items at fixed positions; knows nothing
 * of cars.
 *
 * <p>May import: report, box; only place for font metrics.
 */
package baysheet.layout;
