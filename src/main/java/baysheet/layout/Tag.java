package baysheet.layout;

/**
 * What a piece of the page is to somebody who cannot see it.
 *
 * @param alternate the words that stand for it, empty where its own text does
 * @param title what it is called, empty where it has no name
 * @param span how many columns a table cell covers, 1 for everything else
 */
public record Tag(Type type, String alternate, String title, int span) {
  public Tag {
    if (span < 1) {
      throw new IllegalArgumentException("span " + span);
    }
  }

  static Tag of(Type type) {
    return new Tag(type, "", "", 1);
  }

  static Tag cell(Type type, int span) {
    return new Tag(type, "", "", span);
  }

  Tag as(Type other) {
    return new Tag(other, alternate, title, span);
  }

  /** The kinds of structure, named as tagged PDF (ISO 32000-1, 14.8.4) has them. */
  public enum Type {
    DOCUMENT,
    H1,
    H2,
    H3,
    P,
    L,
    LI,
    LBL,
    LBODY,
    TABLE,
    THEAD,
    TBODY,
    TR,
    /** A header cell that names its column. */
    TH_COLUMN,
    /** A header cell that names its row. */
    TH_ROW,
    TD,
    FIGURE,
    /** An empty box for a pen: a form field on paper. */
    FORM
  }
}
