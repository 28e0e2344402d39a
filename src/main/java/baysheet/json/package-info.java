/**
 * JSON as a tree: objects that are built key by key, read with the types that are expected, and
 * written in the forms that the program uses.
 *
 * <p>May import: torque (a quantity is an object of value and unit); only place that touches the
 * JSON library.
 */
package baysheet.json;
