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
 * static final ValueReader<Bay> BAY = Read.record("a bay", map -> {
 *   var number = map.required("number", Read.wholeNumber(1, 99));
 *   var rated = map.optional("rated", Read.value(Quantities::mass));   // String -> Outcome<Mass>
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
 * map.list("bays", BAY)}, {@code map.listOrOne("uses", Read.text())}, {@code map.entries("bays",
 * Read::nameOf, BAY)}, {@code Read.scalarOr(...)} where a value may be written short or long.
 */
package baysheet.yaml;
