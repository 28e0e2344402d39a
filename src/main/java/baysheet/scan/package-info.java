/**
 * Reads scanned sheets: pages as grey pictures, the code on each, and which boxes hold ink.
 *
 * <p>May import: record; with {@code pdf} the only place for PDFBox, with {@code template} for the
 * code library.
 */
package baysheet.scan;
