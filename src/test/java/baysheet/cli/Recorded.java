package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.output.Exit;
import java.nio.file.Path;
import java.util.List;

/** A garage whose sheets were made with their records. */
record Recorded(Garage garage) {
  static final List<String> JOBS = List.of("501", "502", "503");

  static Recorded in(Path folder) {
    Garage garage = Garage.in(folder);
    assertEquals(Exit.DONE, garage.sheets("--record").exit());
    return new Recorded(garage);
  }

  JsonTree record(String job) {
    return JsonTree.of(Garage.bytes(garage.made(job + ".json")));
  }

  Paper paper(String job) {
    return Paper.of(Garage.bytes(garage.made(job + ".pdf")));
  }
}
