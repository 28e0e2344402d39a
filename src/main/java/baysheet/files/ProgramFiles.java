package baysheet.files;

import baysheet.layout.Fonts;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The files that come with the program, in its jar or in the folder it was compiled to. */
public final class ProgramFiles {
  private ProgramFiles() {}

  /** The text of a file, {@code /baysheet/start/shop.yaml}. */
  public static String text(String file) {
    return new String(Fonts.resource(file), StandardCharsets.UTF_8);
  }

  /**
   * The names of the files in a folder, in order of the alphabet.
   *
   * @throws UncheckedIOException naming the folder
   */
  public static List<String> names(String folder) {
    try {
      URI at = uri(folder);
      if (!at.getScheme().equals("jar")) {
        return names(Path.of(at));
      }
      try (FileSystem jar = FileSystems.newFileSystem(at, Map.of())) {
        return names(jar.getPath(folder));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + folder, e);
    }
  }

  private static URI uri(String folder) throws IOException {
    URL url = ProgramFiles.class.getResource(folder);
    if (url == null) {
      throw new IOException("no such resource: " + folder);
    }
    try {
      return url.toURI();
    } catch (URISyntaxException e) {
      throw new IOException("no path: " + url, e);
    }
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
