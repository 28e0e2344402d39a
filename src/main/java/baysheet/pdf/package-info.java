/**
 * Draws a page into PDF bytes, tagged and archival.
 *
 * <p>May import: report, layout; only place for PDFBox, but for the fonts that layout reads.
 */
package baysheet.pdf;
