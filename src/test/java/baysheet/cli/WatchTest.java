package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WatchTest {
  @TempDir private Path folder;

  private void write(String file, String text) {
    try {
      Path path = folder.resolve(file);
      Files.createDirectories(path.getParent());
      Files.writeString(path, text);
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }

  /** What is done at each pause, in turn; at the end the watch is interrupted. */
  private List<String> watch(List<Runnable> pauses) {
    List<String> happened = new ArrayList<>();
    Watch watch =
        new Watch(
            List.of(folder),
            time -> {
              int pause = (int) happened.stream().filter("pause"::equals).count();
              happened.add("pause");
              if (pause == pauses.size()) {
                throw new InterruptedException("the test ends");
              }
              pauses.get(pause).run();
            });
    watch.run(() -> happened.add("check"));
    assertTrue(Thread.interrupted(), "the thread stays interrupted");
    return happened;
  }

  @Test
  void nothingIsCheckedAgainWhileNothingChanges() {
    write("shop.yaml", "a");
    assertEquals(List.of("check", "pause", "pause", "pause"), watch(List.of(() -> {}, () -> {})));
  }

  @Test
  void aChangeIsCheckedOnceItHasSettled() {
    write("shop.yaml", "a");
    assertEquals(
        List.of("check", "pause", "pause", "pause", "check", "pause"),
        watch(
            List.of(
                () -> write("2026-03-02/2401.yaml", "b"),
                () -> write("2026-03-02/2401.yaml", "written on"),
                () -> {})));
  }

  @Test
  void otherFilesDoNotCount() {
    write("shop.yaml", "a");
    assertEquals(List.of("check", "pause", "pause"), watch(List.of(() -> write("notes.txt", "b"))));
  }
}
