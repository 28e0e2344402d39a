package baysheet.cli;

import baysheet.books.ShopFolder;
import baysheet.files.DayFolders;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import baysheet.layout.Fonts;
import baysheet.output.MadeSheet;
import baysheet.output.SheetMaker;
import baysheet.report.Problems;
import baysheet.template.LayoutTemplates;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The demo's shop folder in a place of its own, where it can be changed. */
record CopyOfTheDemo(Path root) {
  private static final Path DEMO = Path.of("jobs");

  static CopyOfTheDemo in(Path root) {
    return new CopyOfTheDemo(root).with(DEMO);
  }

  /** With all files of another folder over it. */
  CopyOfTheDemo with(Path from) {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path to = root.resolve(from.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot copy " + from, e);
    }
  }

  /** With one file more. */
  CopyOfTheDemo with(String file, String text) {
    try {
      Files.writeString(root.resolve(file), text);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + file, e);
    }
  }

  /** With something else in a file; what is replaced must be there. */
  CopyOfTheDemo replacing(String file, String what, String by) {
    try {
      String text = Files.readString(root.resolve(file));
      if (!text.contains(what)) {
        throw new IllegalArgumentException(file + " has no " + what);
      }
      return with(file, text.replace(what, by));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  /** The sheets of all its days by their names; those with problems are missing. */
  Map<String, MadeSheet> made(Problems problems) {
    return made(DayFolders.all(root), problems);
  }

  /** The sheets of one of its jobs, which has no problem: one, or one for each stage. */
  List<MadeSheet> made(String job) {
    Problems problems = new Problems();
    List<Path> one =
        DayFolders.all(root).stream().filter(it -> YamlFiles.name(it).equals(job)).toList();
    Map<String, MadeSheet> made = made(one, problems);
    if (!problems.all().isEmpty() || made.isEmpty()) {
      throw new IllegalStateException(job + ": " + problems.all());
    }
    return List.copyOf(made.values());
  }

  private Map<String, MadeSheet> made(List<Path> jobs, Problems problems) {
    Fonts fonts = Fonts.builtIn();
    ShopFolders folders = new ShopFolders(fonts);
    ShopFolder folder = folders.read(root, problems).orElseThrow();
    SheetMaker maker = new SheetMaker(folders, LayoutTemplates.builtIn(), fonts, Optional.empty());
    Map<String, MadeSheet> made = new TreeMap<>();
    for (Path job : jobs) {
      Problems own = new Problems();
      maker.make(job, folder, own).forEach(it -> made.put(it.sheet().name(), it));
      problems.addAll(own);
    }
    return made;
  }
}
