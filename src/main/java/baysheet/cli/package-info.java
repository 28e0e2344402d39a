/**
 * Commands, their options, clock and streams.
 *
 * <p>May import: everything; only place for picocli and System.
 */
package baysheet.cli;
