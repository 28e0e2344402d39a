/**
 * What people write: job, shop, spec book, procedure and catalogue as records with their readers.
 *
 * <p>May import: report, yaml, torque; only place for key names.
 */
package baysheet.books;
