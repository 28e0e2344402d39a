package baysheet.cli;

import baysheet.report.Explanations;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The codes of which there is a page. They are listed where they lie, in a jar or a folder. */
final class ExplainedCodes {
  private static final String ANY_PAGE = "/baysheet/explain/unknown-key.md";
  private static final String END = ".md";

  private ExplainedCodes() {}

  /** Every code, in the order of the alphabet. */
  static List<String> all() {
    URL page = Explanations.class.getResource(ANY_PAGE);
    if (page == null) {
      throw new IllegalStateException("no " + ANY_PAGE + " in this build");
    }
    try {
      return page.getProtocol().equals("jar") ? inJar(page.toURI()) : in(Path.of(page.toURI()));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list the pages beside " + page, e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException("no place for a page: " + page, e);
    }
  }

  private static List<String> inJar(URI page) throws IOException {
    try (FileSystem jar = FileSystems.newFileSystem(page, Map.of())) {
      return in(jar.getPath(ANY_PAGE));
    }
  }

  private static List<String> in(Path page) throws IOException {
    try (Stream<Path> pages = Files.list(page.getParent())) {
      return pages
          .map(it -> it.getFileName().toString())
          .filter(name -> name.endsWith(END))
          .map(name -> name.substring(0, name.length() - END.length()))
          .sorted()
          .toList();
    }
  }
}
