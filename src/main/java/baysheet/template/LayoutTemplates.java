package baysheet.template;

import baysheet.box.Form;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.wording.DayText;
import baysheet.wording.SheetText;
import freemarker.template.Configuration;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The layouts there are: those of the tool, or those of a folder. Before each stand the blocks: the
 * macros of the folder's own {@code blocks.ftlx}, or else the tool's. Each is read and parsed once,
 * when this is made; filling is safe for several threads.
 */
public final class LayoutTemplates {
  private static final String ENDING = ".ftlx";
  private static final String RESOURCES = "/baysheet/templates/";
  private static final List<String> BUILT_IN = List.of("bay-sheet");
  private static final String DAY = "day";
  private static final String BLOCKS = "blocks";

  /** Ten times the blocks that ship, and more. */
  private static final int LARGEST_FILE = 400_000;

  /** A folder with more is not a folder of layouts. */
  private static final int MOST_FILES = 100;

  private final String folder;
  private final Map<String, LayoutTemplate> layouts;

  private LayoutTemplates(String folder, Map<String, Source> sources, Source blocks) {
    this.folder = folder;
    this.layouts = new TreeMap<>();
    Configuration freemarker = Sandbox.configuration();
    sources.forEach(
        (name, source) ->
            layouts.put(name, LayoutTemplate.parse(new LayoutSource(source, blocks), freemarker)));
  }

  /** The layouts of sheets that come with the tool. */
  public static LayoutTemplates builtIn() {
    return builtIn(BUILT_IN);
  }

  /** The layout of a day's page; a run that only makes sheets does not read it. */
  public static LayoutTemplates ofDay() {
    return builtIn(List.of(DAY));
  }

  private static LayoutTemplates builtIn(List<String> names) {
    Map<String, Source> sources = new TreeMap<>();
    names.forEach(name -> sources.put(name, builtIn(name)));
    return new LayoutTemplates("templates", sources, builtIn(BLOCKS));
  }

  private static Source builtIn(String name) {
    String file = name + ENDING;
    return new Source("templates/" + file, resource(RESOURCES + file));
  }

  /**
   * The layouts of a folder: the files directly in it that end in {@code .ftlx}.
   *
   * @throws UncheckedIOException naming the path, where the folder or a layout in it cannot be read
   */
  public static LayoutTemplates in(Path folder) {
    Map<String, Source> sources = new TreeMap<>();
    for (Path file : files(folder)) {
      String fileName = file.getFileName().toString();
      String name = fileName.substring(0, fileName.length() - ENDING.length());
      sources.put(name, new Source(slashed(file), read(file)));
    }
    Source own = sources.remove(BLOCKS);
    return new LayoutTemplates(slashed(folder), sources, own == null ? builtIn(BLOCKS) : own);
  }

  /**
   * Fills a layout.
   *
   * @param name the layout's file name without its ending
   * @return the form; empty, with the reasons in {@code problems}, where there is no such layout or
   *     it has a mistake
   */
  public Optional<Form> fill(String name, SheetText sheet, Problems problems) {
    return find(name, problems)
        .flatMap(layout -> layout.fill(new LayoutTemplate.OfSheet(sheet), problems));
  }

  /** Fills the layout of a day's page. */
  public Optional<Form> fill(DayText day, Problems problems) {
    return find(DAY, problems)
        .flatMap(layout -> layout.fill(new LayoutTemplate.OfDay(day), problems));
  }

  /** The box markup that a layout writes for a sheet, before it is read as boxes. */
  Optional<String> write(String name, SheetText sheet, Problems problems) {
    return find(name, problems)
        .flatMap(layout -> layout.write(new LayoutTemplate.OfSheet(sheet), problems))
        .map(BoundedText::toString);
  }

  private Optional<LayoutTemplate> find(String name, Problems problems) {
    Optional<LayoutTemplate> layout = Optional.ofNullable(layouts.get(name));
    if (layout.isEmpty()) {
      problems.add(unknown(name));
    }
    return layout;
  }

  private Problem unknown(String name) {
    Problem problem =
        Problem.of(
            ProblemCode.UNKNOWN_LAYOUT,
            new Source(folder, "").whole(),
            "there is no layout \"" + name + ENDING + "\" in this folder");
    return layouts.isEmpty()
        ? problem.expecting("a file ending in " + ENDING)
        : problem.expecting("one of " + String.join(", ", layouts.keySet()));
  }

  private static String resource(String path) {
    try (InputStream in = LayoutTemplates.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("no layout " + path + " in the jar");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }

  private static List<Path> files(Path folder) {
    try (var entries = Files.list(folder)) {
      List<Path> files =
          entries
              .filter(file -> file.getFileName().toString().endsWith(ENDING))
              .filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
              .sorted()
              .toList();
      if (files.size() > MOST_FILES) {
        throw new IOException(files.size() + " layouts, at most " + MOST_FILES + " are read");
      }
      return files;
    } catch (IOException e) {
      throw new UncheckedIOException(slashed(folder), e);
    }
  }

  private static String read(Path file) {
    try {
      long size = Files.size(file);
      if (size > LARGEST_FILE) {
        throw new IOException(size + " bytes, at most " + LARGEST_FILE + " are read");
      }
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(slashed(file), e);
    }
  }

  private static String slashed(Path path) {
    return path.toString().replace('\\', '/');
  }
}
