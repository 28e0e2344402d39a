package baysheet.yaml;

import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Span;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Says in plain words what a parser's exception means. The parser gives what it was doing (the
 * context) and what it met (the problem), each with a mark; a problem says what the person wrote.
 */
final class SyntaxFault {
  /** What a rule is recognised by: parts of the parser's two texts. */
  private record Rule(String context, String problem, Telling telling) {
    boolean fits(MarkedYAMLException e) {
      return text(e.getContext()).contains(context) && text(e.getProblem()).contains(problem);
    }
  }

  private interface Telling {
    Problem of(SyntaxFault fault);
  }

  /** The first that fits is reported; the last fits everything. */
  private static final List<Rule> RULES =
      List.of(
          new Rule("quoted scalar", "unexpected", SyntaxFault::unclosedQuote),
          new Rule("flow sequence", "expected ',' or ']'", SyntaxFault::unclosedList),
          new Rule("flow mapping", "expected ',' or '}'", SyntaxFault::unclosedMap),
          new Rule("", "mapping values are not allowed", SyntaxFault::colon),
          new Rule("", "could not find expected ':'", SyntaxFault::missingColonAtContext),
          new Rule("", "sequence entries are not allowed", SyntaxFault::listBesideKey),
          new Rule("", "expected <block end>, but found '<scalar>'", SyntaxFault::afterValue),
          new Rule("", "expected <block end>, but found ']'", SyntaxFault::strayBracket),
          new Rule("", "expected <block end>, but found '}'", SyntaxFault::strayBracket),
          new Rule("", "but found ':'", fault -> FileSentences.keyMissing(fault.found)),
          new Rule("", "expected <block end>", SyntaxFault::badIndent),
          new Rule("", "TAB", SyntaxFault::tab),
          new Rule("", "cannot start any token", SyntaxFault::needsQuotes),
          new Rule("", "expected the node content", SyntaxFault::needsQuotes),
          new Rule("double-quoted", "escape", SyntaxFault::badEscape),
          new Rule("block scalar", "", SyntaxFault::blockHeader),
          new Rule("an alias", "", fault -> FileSentences.alias(fault.contextOrFound())),
          new Rule("an anchor", "", fault -> FileSentences.anchor(fault.contextOrFound())),
          new Rule("a tag", "", fault -> FileSentences.tag(fault.contextOrFound())),
          new Rule("", "tag handle", fault -> FileSentences.tag(fault.contextOrFound())),
          new Rule("", "expected '<document start>'", SyntaxFault::afterEnd),
          new Rule("", "", SyntaxFault::plain));

  private final Places places;
  private final Span found;
  private final Optional<Span> context;

  private SyntaxFault(MarkedYAMLException e, Places places) {
    this.places = places;
    this.found = place(e.getProblemMark(), places).orElseGet(places::whole);
    this.context = place(e.getContextMark(), places);
  }

  private static Optional<Span> place(Mark mark, Places places) {
    return Optional.ofNullable(mark).map(places::at);
  }

  private static String text(String orNull) {
    return Optional.ofNullable(orNull).orElse("");
  }

  /** The problem that this exception stands for. */
  static Problem of(MarkedYAMLException e, Places places) {
    SyntaxFault fault = new SyntaxFault(e, places);
    Rule rule = RULES.stream().filter(known -> known.fits(e)).findFirst().orElseThrow();
    return rule.telling().of(fault);
  }

  private Span contextOrFound() {
    return context.orElse(found);
  }

  private Problem unclosedQuote() {
    return Problem.of(
            ProblemCode.UNCLOSED_QUOTE,
            contextOrFound(),
            "the quote that starts here is not closed")
        .expecting("the same quote mark at the end of the text");
  }

  private Problem unclosedList() {
    return unclosed("list", "[", "]");
  }

  private Problem unclosedMap() {
    return unclosed("map", "{", "}");
  }

  private Problem unclosed(String shape, String open, String close) {
    String what =
        "the " + shape + " that starts here with " + open + " is not closed, or a comma is missing";
    return Problem.of(ProblemCode.UNCLOSED_BRACKET, contextOrFound(), what)
        .expecting("a comma between two values, and " + close + " at the end")
        .seeAlso("reading stopped", found);
  }

  /**
   * A colon where none can be: a second one on its line, or the first on a line that is taken for
   * the rest of the text above, because that has no colon or this is indented too far.
   */
  private Problem colon() {
    int line = found.line();
    if (keysBefore(found) > 0) {
      return strayColon();
    }
    int above = places.textAbove(line);
    return places.indentOf(line) > places.indentOf(above) || places.line(above).contains(":")
        ? FileSentences.badIndent(places.textOf(line), places)
        : missingColon(places.textOf(Math.max(above, 1)));
  }

  private long keysBefore(Span colon) {
    String line = places.line(colon.line());
    int to = line.offsetByCodePoints(0, colon.column() - 1);
    return line.substring(0, to).split(": ", -1).length - 1L;
  }

  private Problem strayColon() {
    return Problem.of(ProblemCode.STRAY_COLON, found, "the value contains a second colon")
        .expecting("quotes around a text that contains a colon and a space");
  }

  private Problem missingColonAtContext() {
    return missingColon(contextOrFound());
  }

  private Problem missingColon(Span at) {
    return places.line(at.line()).contains(":")
        ? Problem.of(ProblemCode.MISSING_COLON, at, "the colon of this line has no space after it")
            .expecting("\"key: value\" with a space")
        : Problem.of(ProblemCode.MISSING_COLON, at, "this line has no colon after its key")
            .expecting("\"key: value\"; indent the next lines of a long text further than its key");
  }

  private Problem listBesideKey() {
    return Problem.of(
            ProblemCode.BAD_INDENT,
            found,
            "a list with hyphens cannot start on the line of its key")
        .expecting(
            "each item on a line of its own, or [ ] around the list, or quotes around a text");
  }

  /** What ended before may be a quoted text; or a long text, by a line that is indented less. */
  private Problem afterValue() {
    if (found.column() == places.indentOf(found.line()) + 1) {
      return badIndent();
    }
    return Problem.of(
            ProblemCode.UNCLOSED_QUOTE, found, "there is more text after the closing quote")
        .expecting("quotes around the whole value; '' for a single quote inside single quotes");
  }

  private Problem strayBracket() {
    return Problem.of(
            ProblemCode.UNCLOSED_BRACKET, found, "this closing bracket has no opening bracket")
        .expecting("no bracket, or its opening bracket");
  }

  private Problem badIndent() {
    return FileSentences.badIndent(found, places);
  }

  private Problem tab() {
    return Problem.of(ProblemCode.TAB_INDENT, found, "there is a tab before this value")
        .expecting("spaces");
  }

  private Problem needsQuotes() {
    return Problem.of(ProblemCode.NEEDS_QUOTES, found, "a value cannot begin with this character")
        .expecting("quotes around the value");
  }

  private Problem badEscape() {
    return FileSentences.badEscape(found);
  }

  private Problem blockHeader() {
    return Problem.of(
            ProblemCode.YAML_SYNTAX, found, "a text after | or > must start on the next line")
        .expecting("an indented new line, or quotes around a text that begins with | or >");
  }

  /**
   * The file's value has ended before the file: by a line of {@code ...}, by a line that is
   * indented less than the first, or because it stood in brackets or quotes.
   */
  private Problem afterEnd() {
    int above = places.textAbove(found.line());
    if (places.line(above).startsWith("...")) {
      return FileSentences.severalDocuments(found);
    }
    return places.indentOf(found.line()) < places.indentOf(above)
        ? badIndent()
        : Problem.of(
                ProblemCode.YAML_SYNTAX,
                found,
                "there is more text after the end of the file's value")
            .expecting("one map of keys and values in each file");
  }

  private Problem plain() {
    return unmarked(found);
  }

  /** What an exception that says nothing of a place stands for. */
  static Problem unmarked(Span at) {
    return Problem.of(ProblemCode.YAML_SYNTAX, at, "this is not valid YAML")
        .expecting("\"key: value\", \"- item\", or quotes around a text with special characters");
  }
}
