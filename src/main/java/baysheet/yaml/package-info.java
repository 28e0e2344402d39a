/**
 * A file as a tree in which every key and value has a span, with typed readers that collect
 * problems.
 *
 * <p>May import: report; only place for SnakeYAML.
 */
package baysheet.yaml;
