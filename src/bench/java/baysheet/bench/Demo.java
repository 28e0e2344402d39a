package baysheet.bench;

import java.nio.file.Path;

/** The demo jobs that are measured; paths are seen from the project's root. */
public enum Demo {
  /** An oil service: 14 steps. */
  SHORT("2404"),

  /** A lower arm: 19 steps. */
  MIDDLE("2402"),

  /** A lower arm and a track rod end: 26 steps. */
  LONG("2406");

  static final Path SHOP = Path.of("jobs");

  private final String number;

  Demo(String number) {
    this.number = number;
  }

  Path job() {
    return SHOP.resolve("2026-03-02").resolve(number + ".yaml");
  }
}
