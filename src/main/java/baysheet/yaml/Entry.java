package baysheet.yaml;

/** A key and its value. */
public record Entry(Scalar key, Node value) {}
