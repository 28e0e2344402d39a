/**
 * Commands, exit codes, clock, streams and files.
 *
 * <p>May import: everything; only place for picocli and System.
 */
package baysheet.cli;
