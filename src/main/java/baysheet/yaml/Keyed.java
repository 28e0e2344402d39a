package baysheet.yaml;

import baysheet.report.Located;

/** An entry of a map whose keys are chosen by the writer, both sides read. */
public record Keyed<K, V>(Located<K> key, Located<V> value) {}
