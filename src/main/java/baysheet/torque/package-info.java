/**
 * Mechanics: quantities and units, threads and preload, wrench settings, passes, tightening orders.
 *
 * <p>May import: nothing of the project (pure functions).
 */
package baysheet.torque;
