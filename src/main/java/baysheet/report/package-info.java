/**
 * What is wrong and where: sources, spans, problems, the nearest name, printers for people and
 * machines.
 *
 * <p>May import: nothing of the project; only place that prints problems.
 */
package baysheet.report;
