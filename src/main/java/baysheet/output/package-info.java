/**
 * A run that makes sheets: each job planned, drawn and issued, its files written, and what became
 * of it reported.
 *
 * <p>May import: report, json, yaml, books, resolve, sheet, plan, plan.stage, wording, template,
 * box, layout, record, ledger, pdf, scan, print, files.
 */
package baysheet.output;
