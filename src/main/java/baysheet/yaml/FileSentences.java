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
    return Problem.of(ProblemCode.TOO_LARGE, source.whole(), "the file is too large to be read")
        .expecting("at most " + YamlFile.MAX_BYTES / 1024 + " KiB of text");
  }

  static Problem notAFile(Source source, boolean folder) {
    return Problem.of(
            ProblemCode.NOT_A_FILE,
            source.whole(),
            folder ? "this is a folder where a file should be" : "this is not a regular file")
        .expecting("a file of text; pipes and devices are not read");
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
            + " is not UTF-8; an older editor may have meant "
            + Sentences.quoted(latin(octet))
        : byteName + " is not UTF-8";
  }

  private static String latin(int octet) {
    return String.valueOf((char) octet);
  }

  static Problem controlCharacter(Span at, int point) {
    return Problem.of(
            ProblemCode.CONTROL_CHARACTER,
            at,
            "a character that cannot be seen stands here: " + named(point))
        .expecting("letters, figures, signs and plain spaces only");
  }

  /** In a value such a character may come of a backslash, as the tab in {@code "C:\temp"}. */
  static Problem controlCharacterIn(Span at, int point) {
    return Problem.of(
            ProblemCode.CONTROL_CHARACTER,
            at,
            "a character that cannot be seen stands in this value: " + named(point))
        .expecting("letters, figures, signs and plain spaces; \\\\ for \\ between double quotes");
  }

  static Problem oddSpace(Span at, int point) {
    return Problem.of(
            ProblemCode.CONTROL_CHARACTER, at, "this space is not a plain one: " + named(point))
        .expecting("plain spaces before a text and behind a colon or hyphen");
  }

  private static String named(int point) {
    String name = Character.getName(point);
    String code = String.format(Locale.ROOT, "U+%04X", point);
    return name == null ? code : code + " " + name.toLowerCase(Locale.ROOT);
  }

  static Problem tabIndent(Span at, int more) {
    String others = more == 0 ? "" : ", and " + more + " more " + (more == 1 ? "line" : "lines");
    return Problem.of(ProblemCode.TAB_INDENT, at, "this line is indented with a tab" + others)
        .expecting("spaces");
  }

  static Problem emptyFile(Span at) {
    return Problem.of(
            ProblemCode.EMPTY_FILE, at, "the file has nothing in it but comments or blank lines")
        .expecting("keys with values");
  }

  static Problem severalDocuments(Span at) {
    return Problem.of(ProblemCode.SEVERAL_DOCUMENTS, at, "a second document begins here")
        .expecting("one document a file: no line of ---, or only as the first");
  }

  static Problem tooDeep(Span at) {
    return Problem.of(
            ProblemCode.TOO_DEEP,
            at,
            "more than " + YamlFile.MAX_DEPTH + " values stand inside one another")
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
            "more than " + YamlFile.MAX_ENTRIES + " entries stand here together")
        .expecting("at most " + YamlFile.MAX_ENTRIES);
  }

  static Problem rightToLeft(Span at, int point) {
    return Problem.of(
            ProblemCode.RIGHT_TO_LEFT,
            at,
            "this value has a letter of a script that runs from right to left: " + named(point))
        .expecting("letters of Latin, Greek or Cyrillic; sheets are printed from left to right");
  }

  static Problem textCut(Span at) {
    return Problem.of(
            ProblemCode.TEXT_CUT, at, "the text ends before this #, which begins a comment in YAML")
        .expecting(
            "quotes around a text with # in it; two spaces before a comment and one behind #");
  }

  static Problem alias(Span at) {
    return Problem.of(
            ProblemCode.ALIAS_NOT_ALLOWED, at, "a value cannot stand for another one with *")
        .expecting("the value itself, or quotes around a text that begins with *");
  }

  static Problem anchor(Span at) {
    return Problem.of(ProblemCode.ALIAS_NOT_ALLOWED, at, "a value cannot be given a name with &")
        .expecting("the value alone, or quotes around a text that begins with &");
  }

  static Problem mergeKey(Span at) {
    return Problem.of(ProblemCode.ALIAS_NOT_ALLOWED, at, "keys cannot be taken over with <<")
        .expecting("each key written out");
  }

  static Problem tag(Span at) {
    return Problem.of(ProblemCode.TAG_NOT_ALLOWED, at, "a value cannot be given a type with !")
        .expecting("the value alone, or quotes around a text that begins with !");
  }

  static Problem keyNotText(Node key) {
    return key instanceof Scalar
        ? keyMissing(key.at())
        : Problem.of(ProblemCode.KEY_NOT_TEXT, key.at(), "a key cannot be " + key.shape())
            .expecting("a word, or quotes around a text that begins with { or [");
  }

  static Problem keyMissing(Span at) {
    return Problem.of(ProblemCode.KEY_NOT_TEXT, at, "a key is missing before the colon")
        .expecting("\"key: value\"");
  }

  static Problem duplicateKey(Scalar key, Span first) {
    return Problem.of(
            ProblemCode.DUPLICATE_KEY, key.at(), Sentences.quoted(key.text()) + " is written twice")
        .expecting("each key once")
        .seeAlso("first written here", first);
  }

  static Problem badIndent(Span at, Places places) {
    int here = places.indentOf(at.line());
    int above = places.indentOf(places.textAbove(at.line()));
    return Problem.of(
            ProblemCode.BAD_INDENT,
            at,
            "this line is indented like none of the lines it could belong to")
        .expecting(
            "the same number of spaces before everything that belongs together;"
                + (" here are " + here + ", on the line above " + above));
  }

  static Problem badEscape(Span at) {
    return Problem.of(
            ProblemCode.BAD_ESCAPE, at, "this backslash means nothing between double quotes")
        .expecting("\\\\ for a backslash, or single quotes around the text");
  }
}
