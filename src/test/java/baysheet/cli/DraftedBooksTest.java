package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Bay;
import baysheet.books.Job;
import baysheet.books.JobReader;
import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.books.SpecBook;
import baysheet.files.BookDraft;
import baysheet.files.ShopFolders;
import baysheet.files.WorkAt;
import baysheet.files.YamlFiles;
import baysheet.layout.Fonts;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.resolve.Needs;
import baysheet.resolve.Resolver;
import baysheet.yaml.YamlFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every procedure of the demo with every book of it: what is drafted is all that the work needs.
 */
class DraftedBooksTest {
  private static final Path DEMO = Path.of("jobs");
  private static final LocalDate DAY = LocalDate.parse("2026-03-02");
  private static ShopFolder folder;

  @BeforeAll
  static void read() {
    folder = new ShopFolders(Fonts.builtIn()).read(DEMO, new Problems()).orElseThrow();
  }

  static List<String> books() throws IOException {
    return YamlFiles.in(DEMO.resolve("vehicles")).stream().map(YamlFiles::name).toList();
  }

  /** The work of a procedure at all places where the vehicle allows it. */
  private static List<Located<Job.Work>> works(Procedure procedure, BookDraft book) {
    List<Located<Job.Work>> works = new ArrayList<>();
    WorkAt.places(procedure)
        .forEach(
            place -> {
              Located<Job.Work> work =
                  new Located<>(
                      new Job.Work(procedure.name().value(), place),
                      new Source("asked", "").whole());
              if (book.needs(folder.shop().bays().values(), List.of(work), folder).stream()
                  .anyMatch(Needs::possible)) {
                works.add(work);
              }
            });
    return works;
  }

  @ParameterizedTest
  @MethodSource("books")
  void aDraftedBookLacksFiguresOnly(String name) throws IOException {
    Path file = DEMO.resolve("vehicles/" + name + ".yaml");
    Source text = new Source(name, Files.readString(file));
    BookDraft book = BookDraft.of(text, new Problems()).orElseThrow();
    int drafted = 0;
    for (Procedure procedure : folder.procedures().values()) {
      List<Located<Job.Work>> works = works(procedure, book);
      if (!works.isEmpty()) {
        BookDraft done = drafted(book, works);
        drafted += done.added().isEmpty() ? 0 : 1;
        assertEquals(text.text().lines().toList(), kept(text.text(), done.text().text()), name);
        assertEquals(done, drafted(done, works), "twice is once");
        if (!done.added().isEmpty()) {
          assertLacksFiguresOnly(done, works);
        }
      }
    }
    assertTrue(drafted > 2, name + " was drafted " + drafted + " times");
  }

  private static BookDraft drafted(BookDraft book, List<Located<Job.Work>> works) {
    Collection<Bay> bays = folder.shop().bays().values();
    List<Needs> possible =
        book.needs(bays, works, folder).stream().filter(Needs::possible).toList();
    return book.with(possible, gap -> gap.step(folder, bays), false, new Problems()).orElseThrow();
  }

  /** The lines of the one text, as far as they stand in the other in the same order. */
  private static List<String> kept(String before, String after) {
    List<String> old = before.lines().toList();
    List<String> kept = new ArrayList<>();
    for (String line : after.lines().toList()) {
      if (kept.size() < old.size() && old.get(kept.size()).equals(line)) {
        kept.add(line);
      }
    }
    return kept;
  }

  /** As drafted, a job asks for figures; with any figures, it asks for nothing any more. */
  private static void assertLacksFiguresOnly(BookDraft draft, List<Located<Job.Work>> works) {
    TreeSet<ProblemCode> asked = errors(draft, works);
    asked.remove(ProblemCode.UNKNOWN_FIGURE);
    asked.remove(ProblemCode.LOAD_UNKNOWN);
    assertEquals(new TreeSet<>(), asked, works + " with " + draft.text());
    String filled =
        draft
            .text()
            .text()
            .replace("# kerb-mass: ", "kerb-mass: ")
            .replace("# front-share: ", "front-share: ")
            .replaceAll("(?m)^( +[a-z0-9-]+): unknown$", "$1: 1 x hex 13 mm, torque unknown");
    BookDraft whole =
        BookDraft.of(new Source(draft.text().name(), filled), new Problems()).orElseThrow();
    assertEquals(new TreeSet<>(), errors(whole, works), works + " with " + draft.text());
  }

  private static ShopFolder folderWith(BookDraft draft) {
    Map<String, SpecBook> books = new HashMap<>(folder.books());
    books.put(draft.book().vehicle().value(), draft.book());
    return new ShopFolder(
        folder.shop(), books, folder.procedures(), folder.catalogue(), folder.faulty());
  }

  /** The errors of a job in the first bay where the work is possible. */
  private static TreeSet<ProblemCode> errors(BookDraft draft, List<Located<Job.Work>> works) {
    ShopFolder with = folderWith(draft);
    String bay =
        folder.shop().bays().values().stream()
            .filter(it -> Needs.in(it, draft.book(), works, with).possible())
            .findFirst()
            .orElseThrow()
            .name()
            .value();
    Problems problems = new Problems();
    String asked = String.join(", ", works.stream().map(it -> it.value().toString()).toList());
    Source text =
        new Source(
            "9001.yaml",
            "job: 9001\nvehicle: {book: %s}\nbay: %s\nby: T1\nwork: [%s]\n"
                .formatted(draft.book().vehicle().value(), bay, asked));
    Optional<Job> job =
        YamlFile.parse(text, problems).flatMap(node -> JobReader.read(node, problems));
    Resolver.resolve(job.orElseThrow(), with, DAY, problems);
    TreeSet<ProblemCode> errors = new TreeSet<>();
    problems.all().stream().filter(Problem::isError).forEach(it -> errors.add(it.code()));
    return errors;
  }

  /** A book that cannot be used as it is: nothing is left of the demo's figures. */
  @Test
  void anEmptyBookIsDraftedToo() {
    Source text =
        NewBook.of(
            Path.of("new.yaml"),
            List.of("hydraulic-brakes", "abs", "petrol"),
            Map.of(),
            folder.shop().bays().values(),
            List.of(),
            folder);
    BookDraft book = BookDraft.of(text, new Problems()).orElseThrow();
    for (Procedure procedure : folder.procedures().values()) {
      List<Located<Job.Work>> works = works(procedure, book);
      if (!works.isEmpty()) {
        assertLacksFiguresOnly(drafted(book, works), works);
      }
    }
  }
}
