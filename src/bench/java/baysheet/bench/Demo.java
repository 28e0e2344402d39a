package baysheet.bench;

import java.nio.file.Path;

/** Demo jobs that one page holds; paths are seen from the project's root. */
public enum Demo {
  /** Drop links: 28 steps. */
  SHORT("2026-03-02/2407.yaml"),

  /** A track rod end: 40 steps. */
  MIDDLE("2026-03-03/2410.yaml"),

  /** An oil service: 43 steps. */
  LONG("2026-03-02/2404.yaml");

  static final Path SHOP = Path.of("jobs");

  private final String file;

  Demo(String file) {
    this.file = file;
  }

  Path job() {
    return SHOP.resolve(file);
  }
}
