package baysheet.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing in a shop's own folder is passed over without a word. */
class FolderListingTest {
  @TempDir private Path folder;

  private final Problems problems = new Problems();

  private List<ProblemCode> codes() {
    return problems.all().stream().map(Problem::code).toList();
  }

  private static List<String> names(List<Path> files) {
    return files.stream().map(file -> file.getFileName().toString()).toList();
  }

  private Path file(String name) throws IOException {
    return Files.writeString(folder.resolve(name), "job: 1\n");
  }

  @Test
  void filesAreListedByName() throws IOException {
    file("b.yaml");
    file("a.yaml");
    FolderListing listing = FolderListing.of(folder, problems);
    assertEquals(List.of("a.yaml", "b.yaml"), names(listing.files()));
    assertEquals(List.of(), codes());
  }

  @ParameterizedTest
  @ValueSource(strings = {"a.yml", "a.YAML", "a.Yml", "a.yaml.txt", "a.yaml.1", "yaml"})
  void aFileUnderAnotherEndingWasMeantToBeRead(String name) throws IOException {
    file(name);
    FolderListing listing = FolderListing.of(folder, problems);
    assertEquals(List.of(ProblemCode.MISNAMED_FILE), codes());
    assertEquals(List.of(name), names(listing.unread()));
    assertEquals(1, listing.size());
  }

  @Test
  void theRightNameIsOffered() throws IOException {
    file("2407.YML");
    FolderListing.of(folder, problems);
    assertEquals("the name 2407.yaml", problems.all().get(0).expected().orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"old", "2026-03-02", "a.d"})
  void aFolderWithinIsNotRead(String name) throws IOException {
    Files.createDirectory(folder.resolve(name));
    FolderListing.of(folder, problems);
    assertEquals(List.of(ProblemCode.UNEXPECTED_FILE), codes());
  }

  @Test
  void aFolderIsNoFileWhateverItIsCalled() throws IOException {
    Files.createDirectory(folder.resolve("a.yaml"));
    FolderListing listing = FolderListing.of(folder, problems);
    assertEquals(List.of(ProblemCode.NOT_A_FILE), codes());
    assertEquals(1, listing.unread().size());
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aLinkIsFollowedAndOneThatLeadsNowhereIsNamed() throws IOException {
    Path to = file("a.yaml");
    Files.createSymbolicLink(folder.resolve("b.yaml"), to);
    Files.createSymbolicLink(folder.resolve("c.yaml"), folder.resolve("gone.yaml"));
    Files.createSymbolicLink(folder.resolve("d"), folder.resolve("gone"));
    FolderListing listing = FolderListing.of(folder, problems);
    assertEquals(List.of("a.yaml", "b.yaml"), names(listing.files()));
    assertEquals(List.of("c.yaml"), names(listing.unread()));
    assertEquals(List.of(ProblemCode.NOT_A_FILE, ProblemCode.UNEXPECTED_FILE), codes());
    problems.all().forEach(it -> assertTrue(it.what().contains("does not exist"), it.what()));
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aPipeIsNoFile() throws IOException, InterruptedException {
    String pipe = folder.resolve("a.yaml").toString();
    assertEquals(0, new ProcessBuilder("mkfifo", pipe).start().waitFor());
    FolderListing.of(folder, problems);
    assertEquals(List.of(ProblemCode.NOT_A_FILE), codes());
  }

  @ParameterizedTest
  @ValueSource(strings = {"notes.json", "sheet.pdf", "README", "2407"})
  void anyOtherFileIsNamed(String name) throws IOException {
    file(name);
    FolderListing.of(folder, problems);
    assertEquals(List.of(ProblemCode.UNEXPECTED_FILE), codes());
  }

  @Test
  void notesAndWhatEditorsLeaveBehindAreNamedAsNotRead() throws IOException {
    for (String name :
        List.of(
            "notes.txt",
            "README.md",
            ".a.yaml.swp",
            ".hidden",
            "a.yaml~",
            "#a.yaml#",
            "a.yaml.bak",
            ".DS_Store",
            "Thumbs.db")) {
      file(name);
    }
    assertEquals(List.of(), FolderListing.of(folder, problems).files());
    assertEquals(List.of(ProblemCode.IGNORED_FILE), codes());
    Problem only = problems.all().get(0);
    assertFalse(only.isError());
    assertTrue(only.what().contains("README.md") && only.what().contains("a.yaml~"), only.what());
  }

  @Test
  void aFolderThatIsAFileIsNamedAndAMissingOneIsEmpty() throws IOException {
    FolderListing.ofOptional(file("vehicles"), problems);
    assertEquals(List.of(ProblemCode.NOT_A_FOLDER), codes());
    assertEquals(0, FolderListing.ofOptional(folder.resolve("gone"), new Problems()).size());
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aFolderThatIsALinkToNowhereIsNamed() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("vehicles"), folder.resolve("gone"));
    FolderListing.ofOptional(link, problems);
    assertEquals(List.of(ProblemCode.NOT_A_FOLDER), codes());
  }

  @Test
  void whatMayNotBeReadIsNamed() throws IOException {
    Path closed = file("a.yaml");
    file("b.yaml");
    FolderListing listing = FolderListing.of(folder, file -> !file.equals(closed), problems);
    assertEquals(List.of("b.yaml"), names(listing.files()));
    assertEquals(List.of(ProblemCode.CANNOT_READ), codes());
    assertEquals(List.of("a.yaml"), names(listing.unread()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Vehicles", "vehicle", "procedure", "catalog", "Catalogue"})
  void aFolderWithNearlyTheNameOfOneOfTheShopsIsNamed(String name) {
    assertTrue(FolderListing.nearlyOwn(folder.resolve(name), DayFolders.OWN).isPresent());
  }

  @ParameterizedTest
  @ValueSource(strings = {"vehicles", "2026-03-02", "out", "templates", "archive"})
  void otherFoldersAreNot(String name) {
    assertTrue(FolderListing.nearlyOwn(folder.resolve(name), DayFolders.OWN).isEmpty());
  }
}
