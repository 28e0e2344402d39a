/**
 * The files of a shop folder: which there are, what is wrong with them, and all of them read.
 *
 * <p>May import: report, yaml, books, resolve, layout, ledger, pdf.
 */
package baysheet.files;
