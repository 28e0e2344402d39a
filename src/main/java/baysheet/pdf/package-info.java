/**
 * Draws pages into PDF bytes, tagged and archival, and adds signed sheets to invoices.
 *
 * <p>May import: report, layout; only place for PDFBox, but for the fonts that layout reads.
 */
package baysheet.pdf;
