/**
 * Draws a page into PDF bytes, tagged and archival.
 *
 * <p>May import: report, layout; only place for PDFBox.
 */
package baysheet.pdf;
