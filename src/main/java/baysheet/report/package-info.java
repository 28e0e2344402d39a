/**
 * What is wrong and where: sources, spans, problems, the nearest name, printers for people and
 * machines.
 *
 * <p>May import: json; only place that prints problems.
 */
package baysheet.report;
