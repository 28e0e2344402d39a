package baysheet.yaml;

import java.util.Objects;

/** A key and its value. */
public record Entry(Scalar key, Node value) {
  public Entry {
    Objects.requireNonNull(key);
    Objects.requireNonNull(value);
  }
}
