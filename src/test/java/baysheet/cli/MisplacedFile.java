package baysheet.cli;

import baysheet.files.YamlFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Ways in which a file of a shop is not where, or not what, it should be; each can be undone. */
enum MisplacedFile {
  SHORT_ENDING {
    @Override
    void apply(Path file) throws IOException {
      Files.move(file, named(file, ".yml"));
    }
  },
  CAPITAL_ENDING {
    @Override
    void apply(Path file) throws IOException {
      Files.move(file, named(file, ".YAML"));
    }
  },
  FOLDER_IN_ITS_PLACE {
    @Override
    void apply(Path file) throws IOException {
      Files.delete(file);
      Files.createDirectory(file);
    }
  },
  LINK_TO_NOWHERE {
    @Override
    void apply(Path file) throws IOException {
      Files.delete(file);
      Files.createSymbolicLink(file, file.resolveSibling("gone"));
    }
  },
  IN_A_FOLDER_WITHIN {
    @Override
    void apply(Path file) throws IOException {
      Path within = Files.createDirectory(file.resolveSibling("within"));
      Files.move(file, within.resolve(file.getFileName()));
    }
  },
  COPIED {
    @Override
    void apply(Path file) throws IOException {
      Files.copy(file, named(file, "-copy.yaml"));
    }
  },
  EMPTY {
    @Override
    void apply(Path file) throws IOException {
      Files.writeString(file, "");
    }
  },
  IN_UTF_16 {
    @Override
    void apply(Path file) throws IOException {
      Files.write(file, Files.readString(file).getBytes(StandardCharsets.UTF_16));
    }
  },
  WITH_A_ZERO_BYTE {
    @Override
    void apply(Path file) throws IOException {
      Files.writeString(file, Files.readString(file) + "\0");
    }
  };

  abstract void apply(Path file) throws IOException;

  /** The file as it was, and nothing beside it that was not there. */
  void undo(Path file, String text) {
    try {
      for (Path trace :
          new Path[] {
            file,
            named(file, ".yml"),
            named(file, ".YAML"),
            named(file, "-copy.yaml"),
            file.resolveSibling("within")
          }) {
        remove(trace);
      }
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot put back " + file, e);
    }
  }

  private static void remove(Path trace) throws IOException {
    if (Files.isDirectory(trace)) {
      try (Stream<Path> all = Files.walk(trace)) {
        for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    } else {
      Files.deleteIfExists(trace);
    }
  }

  private static Path named(Path file, String ending) {
    return file.resolveSibling(YamlFiles.name(file) + ending);
  }
}
