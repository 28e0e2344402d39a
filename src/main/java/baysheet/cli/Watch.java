package baysheet.cli;

import baysheet.files.YamlFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Does something again whenever a file of some folders has changed and nothing more changes for a
 * moment: editors write a file in several steps. Looking is enough: shop folders have a few hundred
 * files, and not every file system reports changes.
 */
final class Watch {
  private static final long PAUSE_MILLIS = 300;

  /** Day folders and books stand no deeper. */
  private static final int DEPTH = 3;

  private final List<Path> roots;
  private final Pause pause;

  Watch(List<Path> roots) {
    this(roots, Thread::sleep);
  }

  /** Tests change files while it pauses, and end it there. */
  Watch(List<Path> roots, Pause pause) {
    this.roots = roots;
    this.pause = pause;
  }

  /** Lets time pass. */
  interface Pause {
    void millis(long time) throws InterruptedException;
  }

  /** Runs the work, and again after each change, until the thread is interrupted. */
  void run(Runnable work) {
    try {
      while (true) {
        Map<Path, String> before = files();
        work.run();
        Map<Path, String> changed = files();
        while (changed.equals(before)) {
          pause.millis(PAUSE_MILLIS);
          changed = files();
        }
        Map<Path, String> settled = before;
        while (!settled.equals(changed)) {
          settled = changed;
          pause.millis(PAUSE_MILLIS);
          changed = files();
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Size and time of each file. */
  private Map<Path, String> files() {
    Map<Path, String> files = new TreeMap<>();
    for (Path root : roots) {
      try (Stream<Path> all = Files.walk(root, DEPTH)) {
        all.filter(file -> file.toString().endsWith(YamlFiles.ENDING))
            .forEach(file -> files.put(file, state(file)));
      } catch (IOException e) {
        throw new UncheckedIOException("cannot list " + root, e);
      }
    }
    return files;
  }

  private static String state(Path file) {
    try {
      BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
      return found.lastModifiedTime() + " " + found.size();
    } catch (NoSuchFileException e) {
      // It went while the folder was listed; the next look finds it gone.
      return "gone";
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }
}
