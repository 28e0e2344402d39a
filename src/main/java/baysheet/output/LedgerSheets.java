package baysheet.output;

import baysheet.ledger.Hash;
import baysheet.ledger.Index;
import baysheet.ledger.SheetStory;
import baysheet.record.PlacedBoxes;
import baysheet.scan.IssuedSheets;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The sheets of the ledger as a scan needs them. */
public record LedgerSheets(Index index) implements IssuedSheets {
  @Override
  public Optional<Issued> find(String code) {
    return index.ofCode(code).filter(story -> trouble(story).isEmpty()).map(this::issued);
  }

  private Issued issued(SheetStory story) {
    byte[] record = OutFiles.bytes(index.recordFile(story.id()));
    try {
      return new Issued(
          story.id(),
          !story.isCurrent(),
          OutFiles.bytes(index.page(story.id())),
          PlacedBoxes.of(record));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the record of " + story.id(), e);
    }
  }

  /** Why no sheet with a code can be compared with a scan. */
  public String why(String code) {
    return index
        .ofCode(code)
        .flatMap(this::trouble)
        .orElse("no sheet was issued with the code " + code);
  }

  /** A page that is not as it was issued would show boxes where there are none. */
  private Optional<String> trouble(SheetStory story) {
    Path page = index.page(story.id());
    Path record = index.recordFile(story.id());
    if (story.isForgotten() || !Files.exists(page) || !Files.exists(record)) {
      return Optional.of("the page of " + story.id() + " was forgotten");
    }
    boolean same =
        Hash.of(OutFiles.bytes(page)).equals(story.issued().prints().page())
            && Hash.of(OutFiles.bytes(record)).equals(story.issued().prints().record());
    return same
        ? Optional.empty()
        : Optional.of(
            "the ledger's page of " + story.id() + " is not as it was issued; put back the backup");
  }
}
