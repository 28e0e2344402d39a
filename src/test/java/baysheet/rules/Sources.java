package baysheet.rules;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The project's own classes and files, as the rules look at them. */
final class Sources {
  static final Path MAIN = Path.of("src/main/java");
  static final Path TESTS = Path.of("src/test/java");

  /** Everything that ships; read once, since that takes seconds. */
  static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("baysheet");

  private Sources() {}

  static String read(String file) {
    return read(Path.of(file));
  }

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  static List<Path> java(Path folder) {
    return files(folder).stream().filter(file -> file.toString().endsWith(".java")).toList();
  }

  static List<Path> files(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + folder, e);
    }
  }
}
