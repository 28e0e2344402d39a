package baysheet.yaml;

import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Source;
import baysheet.report.Span;
import java.util.Locale;

/** What is said about a file's text and form, before anybody asks what it means. */
final class FileSentences {
  private FileSentences() {}

  static Problem tooLarge(Source source) {
    return Problem.of(ProblemCode.TOO_LARGE, source.whole(), "the file is too large")
        .expecting("at most " + YamlFile.MAX_BYTES / 1024 + " KiB of text");
  }

  static Problem notAFile(Source source, boolean folder) {
    return Problem.of(
            ProblemCode.NOT_A_FILE,
            source.whole(),
            folder ? "this is a folder, but a file is expected" : "this is not a regular file")
        .expecting("a text file; pipes and devices are not read");
  }

  static Problem notUtf8(Span at, String why) {
    return Problem.of(ProblemCode.NOT_UTF8, at, why).expecting("a file saved as UTF-8");
  }

  static String looksLikeUtf16() {
    return "the file is saved as UTF-16, not as UTF-8";
  }

  /** The byte, and what it would have meant in the code page that older editors write. */
  static String strayByte(int octet) {
    String byteName = "the byte " + String.format(Locale.ROOT, "%02X", octet);
    return octet >= 0xA0
        ? byteName
            + " is not valid UTF-8; in an older encoding it means "
            + YamlSentences.quoted(latin(octet))
        : byteName + " is not valid UTF-8";
  }

  private static String latin(int octet) {
    return String.valueOf((char) octet);
  }

  static Problem controlCharacter(Span at, int point) {
    return Problem.of(
            ProblemCode.CONTROL_CHARACTER,
            at,
            "the line contains an invisible character: " + named(point))
        .expecting("letters, digits, signs and plain spaces only");
  }

  /** In a value such a character may come of a backslash, as the tab in {@code "C:\temp"}. */
  static Problem controlCharacterIn(Span at, int point) {
    return Problem.of(
            ProblemCode.CONTROL_CHARACTER,
            at,
            "the value contains an invisible character: " + named(point))
        .expecting("letters, digits, signs and plain spaces; \\\\ for \\ inside double quotes");
  }

  static Problem oddSpace(Span at, int point) {
    return Problem.of(
            ProblemCode.CONTROL_CHARACTER, at, "this is not a plain space: " + named(point))
        .expecting("plain spaces before a text and after a colon or hyphen");
  }

  private static String named(int point) {
    String name = Character.getName(point);
    String code = String.format(Locale.ROOT, "U+%04X", point);
    return name == null ? code : code + " " + name.toLowerCase(Locale.ROOT);
  }

  static Problem tabIndent(Span at, int more) {
    String what =
        switch (more) {
          case 0 -> "this line is indented with a tab";
          case 1 -> "this line and 1 more line are indented with tabs";
          default -> "this line and " + more + " more lines are indented with tabs";
        };
    return Problem.of(ProblemCode.TAB_INDENT, at, what).expecting("spaces");
  }

  static Problem emptyFile(Span at) {
    return Problem.of(ProblemCode.EMPTY_FILE, at, "the file contains only comments or blank lines")
        .expecting("keys with values");
  }

  static Problem severalDocuments(Span at) {
    return Problem.of(ProblemCode.SEVERAL_DOCUMENTS, at, "a second document starts here")
        .expecting("one document in each file: no line ---, or only as the first line");
  }

  static Problem tooDeep(Span at) {
    return Problem.of(
            ProblemCode.TOO_DEEP,
            at,
            "more than " + YamlFile.MAX_DEPTH + " lists and maps are nested here")
        .expecting("at most " + YamlFile.MAX_DEPTH);
  }

  static Problem textTooLong(Span at, int length) {
    return Problem.of(ProblemCode.TEXT_TOO_LONG, at, "this value has " + length + " characters")
        .expecting("at most " + YamlFile.MAX_TEXT);
  }

  static Problem tooManyEntries(Span at) {
    return Problem.of(
            ProblemCode.LIST_TOO_LONG,
            at,
            "this list or map has more than " + YamlFile.MAX_ENTRIES + " entries")
        .expecting("at most " + YamlFile.MAX_ENTRIES);
  }

  static Problem rightToLeft(Span at, int point) {
    return Problem.of(
            ProblemCode.RIGHT_TO_LEFT,
            at,
            "the value contains a letter of a right-to-left script: " + named(point))
        .expecting("Latin, Greek or Cyrillic letters; sheets are printed from left to right");
  }

  static Problem textCut(Span at) {
    return Problem.of(
            ProblemCode.TEXT_CUT,
            at,
            "the text ends before this #, because it starts a comment in YAML")
        .expecting(
            "quotes around a text that contains #; or, for a comment, two spaces before # and one"
                + " after it");
  }

  static Problem alias(Span at) {
    return Problem.of(ProblemCode.ALIAS_NOT_ALLOWED, at, "an alias (*) is not allowed")
        .expecting("the value itself, or quotes around a text that begins with *");
  }

  static Problem anchor(Span at) {
    return Problem.of(ProblemCode.ALIAS_NOT_ALLOWED, at, "an anchor (&) is not allowed")
        .expecting("the value alone, or quotes around a text that begins with &");
  }

  static Problem mergeKey(Span at) {
    return Problem.of(ProblemCode.ALIAS_NOT_ALLOWED, at, "a merge key (<<) is not allowed")
        .expecting("each key written out");
  }

  static Problem tag(Span at) {
    return Problem.of(ProblemCode.TAG_NOT_ALLOWED, at, "a tag (!) is not allowed")
        .expecting("the value alone, or quotes around a text that begins with !");
  }

  static Problem keyNotText(Node key) {
    return key instanceof Scalar
        ? keyMissing(key.at())
        : Problem.of(
                ProblemCode.KEY_NOT_TEXT,
                key.at(),
                "a key must be a word, but this is " + key.shape())
            .expecting("a word, or quotes around a text that begins with { or [");
  }

  static Problem keyMissing(Span at) {
    return Problem.of(ProblemCode.KEY_NOT_TEXT, at, "a key is missing before the colon")
        .expecting("\"key: value\"");
  }

  static Problem duplicateKey(Scalar key, Span first) {
    return Problem.of(
            ProblemCode.DUPLICATE_KEY,
            key.at(),
            YamlSentences.quoted(key.text()) + " is used twice in this map")
        .expecting("each key once")
        .seeAlso("first used", first);
  }

  static Problem badIndent(Span at, Places places) {
    int here = places.indentOf(at.line());
    int above = places.indentOf(places.textAbove(at.line()));
    return Problem.of(
            ProblemCode.BAD_INDENT,
            at,
            "the indentation of this line matches none of the lines above it")
        .expecting(
            here == above
                ? "a hyphen before an item of the list above; or a key with as many spaces as the"
                    + " other keys of its map"
                : "the same number of spaces for all keys of a map; this line has "
                    + (here + ", the line above it has " + above));
  }

  static Problem badEscape(Span at) {
    return Problem.of(ProblemCode.BAD_ESCAPE, at, "this escape sequence does not exist")
        .expecting("\\\\ for a backslash, or single quotes around the text");
  }
}
