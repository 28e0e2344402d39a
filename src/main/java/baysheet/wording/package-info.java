/**
 * The words of a finished sheet in the terms that the shop uses.
 *
 * <p>May import: books, sheet.
 */
package baysheet.wording;
