/**
 * Signed sheets that come back: their readings, forms and pages kept beside the jobs.
 *
 * <p>May import: report, json, yaml, torque, layout, record, ledger, pdf, scan, files, output.
 */
package baysheet.collect;
