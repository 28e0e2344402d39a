/**
 * A file as a tree in which every key and value has a span, with typed readers that collect
 * problems.
 *
 * <p>May import: report; only place for SnakeYAML.
 *
 * <p>A record and its reader, as packages that know keys write them:
 *
 * <pre>{@code
 * record Bay(Located<Integer> number, Optional<Located<Mass>> rated, boolean lift) {}
 *
 * static final ValueReader<Bay> BAY = ValueReaders.record("a bay", map -> {
 *   var number = map.required("number", ValueReaders.wholeNumber(1, 99));
 *   var rated = map.optional("rated", ValueReaders.value(Masses::of));   // String -> ParseOutcome<Mass>
 *   var lift = map.yesNo("lift", false);
 *   return map.build(() -> new Bay(number.get(), rated, lift));
 * });
 *
 * Problems problems = new Problems();
 * Optional<Located<Bay>> bay =
 *     SourceFile.read(path, "jobs/shop.yaml", problems)
 *         .flatMap(source -> YamlFile.parse(source, problems))
 *         .flatMap(node -> BAY.read(node, problems));
 * }</pre>
 *
 * <p>{@code build} reports unknown keys, and calls its supplier only when every required value is
 * there: the {@code get()} in it is safe for what came from {@code required}. Readers nest: {@code
 * map.list("bays", BAY)}, {@code map.listOrOne("uses", ValueReaders.text())}, {@code
 * map.entries("bays", ValueReaders::nameOf, BAY)}, {@code ValueReaders.scalarOr(...)} where a value
 * may be written short or long.
 */
package baysheet.yaml;
