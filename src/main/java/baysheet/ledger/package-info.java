/**
 * What became of each sheet: append-only events in a hash chain, the issued sheets, and the answers
 * that they give years later.
 *
 * <p>May import: report, json, torque, books, record.
 */
package baysheet.ledger;
