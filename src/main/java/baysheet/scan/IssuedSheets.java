package baysheet.scan;

import baysheet.record.PlacedBoxes;
import java.util.Optional;

/** The sheets that were issued, by the code on their page. */
public interface IssuedSheets {
  /** The sheet with a code; empty when none was issued with it. */
  Optional<Issued> find(String code);

  /**
   * A sheet as it was issued.
   *
   * @param id the sheet's id
   * @param superseded whether a later revision has taken its place
   * @param pdf its page; not copied, so leave it alone
   */
  record Issued(String id, boolean superseded, byte[] pdf, PlacedBoxes boxes) {}
}
