package baysheet.bench;

import java.nio.file.Path;

/** The demo job that one page holds; its path is seen from the project's root. */
public enum Demo {
  /** Drop links: 28 steps. */
  ONE_PAGE("2026-03-02/2407.yaml");

  static final Path SHOP = Path.of("jobs");

  private final String file;

  Demo(String file) {
    this.file = file;
  }

  Path job() {
    return SHOP.resolve(file);
  }
}
