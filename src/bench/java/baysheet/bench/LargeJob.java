package baysheet.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A made-up job of twelve works, three at each wheel, in a copy of the demo shop folder.
 *
 * @param root of the copy
 * @param file the job file
 */
record LargeJob(Path root, Path file) {
  static final int STEPS = 200;

  private static final List<String> WHEELS =
      List.of("front-left", "front-right", "rear-left", "rear-right");

  private static final int WORKS_AT_A_WHEEL = 3;

  /** Five off, five back, five between, and the wheels: a little over 200 in all. */
  private static final int FASTENERS = 5;

  private static final int LOOKS = 6;

  /** Writes it into a temporary folder. */
  static LargeJob write() throws IOException {
    Path root = Files.createTempDirectory("baysheet-large-job");
    Folders.copy(Demo.SHOP, root);
    StringBuilder work = new StringBuilder();
    StringBuilder fasteners = new StringBuilder();
    for (String wheel : WHEELS) {
      fasteners.append("  ").append(wheel).append(":\n");
      for (int i = 0; i < WORKS_AT_A_WHEEL; i++) {
        String name = "strut-brace-" + wheel + "-" + "abc".charAt(i);
        Path procedure = root.resolve("procedures").resolve(name + ".yaml");
        Files.writeString(procedure, procedure(name, fasteners));
        work.append("  - ").append(name).append(" at ").append(wheel).append('\n');
      }
    }
    Files.writeString(root.resolve("vehicles/bench-test-2020.yaml"), book(fasteners));
    Path day = Files.createDirectory(root.resolve("2026-05-04"));
    Path file = day.resolve("9000.yaml");
    Files.writeString(file, job(work));
    return new LargeJob(root, file);
  }

  private static String procedure(String name, StringBuilder fasteners) {
    StringBuilder text = new StringBuilder();
    text.append("procedure: %s%ntitle: Brace %s%nat: wheel%n".formatted(name, name));
    text.append("behind: [wheel-off]\nopen:\n");
    for (int i = 1; i <= FASTENERS; i++) {
      String bolt = name + "-bolt-" + i;
      text.append("  - {do: Take out bolt %s, undo: %s, takes: 2/3/5 min}%n".formatted(i, bolt));
      fasteners.append(
          "    %s: {count: 2, thread: M10x1.5, class: \"10.9\", head: hex 16 mm, torque: %s N·m, reuse: yes}%n"
              .formatted(bolt, 50 + i));
    }
    text.append("work:\n");
    for (int i = 1; i <= LOOKS; i++) {
      text.append("  - {do: Look at seat %s of the brace and clean it, takes: 1 min}%n".formatted(i));
    }
    return text.append("close: []\n").toString();
  }

  private static String book(StringBuilder fasteners) {
    return """
        vehicle: bench-test-2020
        name: Bench test, made up
        years: 2020..2021
        like: larkfell-pipit-2015
        source: made up
        checked: {by: T1, on: 2026-01-12}
        fasteners:
        """
        + fasteners;
  }

  private static String job(StringBuilder work) {
    return """
        job: 9000
        customer: Nobody
        vehicle: {book: bench-test-2020, plate: AA 00-000, odometer: 1000 km}
        bay: 1
        by: T1
        work:
        """
        + work;
  }
}
