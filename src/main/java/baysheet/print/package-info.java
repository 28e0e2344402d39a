/**
 * Sends files to a printer: by IPP over HTTP, or to a named queue of the system.
 *
 * <p>May import: nothing of the project.
 */
package baysheet.print;
