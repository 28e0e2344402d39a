/**
 * Plans a resolved job: steps in their order, what follows from them, and the proof.
 *
 * <p>May import: report, torque, books, resolve, sheet, verify, plan.graph, plan.content,
 * plan.stage.
 */
package baysheet.plan;
