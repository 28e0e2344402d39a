package baysheet.template;

import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.report.Span;
import java.util.List;
import java.util.Optional;

/**
 * A layout file with the blocks that stand before it, and the sentences of this package about both.
 * Lines are counted through the two as if they were one file.
 */
final class LayoutSource {
  private final Source source;

  /** Empty, or whole lines. */
  private final Source blocks;

  private final int linesBefore;

  LayoutSource(Source source, Source blocks) {
    boolean whole = blocks.text().isEmpty() || blocks.text().endsWith("\n");
    this.source = source;
    this.blocks = whole ? blocks : new Source(blocks.name(), blocks.text() + "\n");
    linesBefore = (int) this.blocks.text().chars().filter(c -> c == '\n').count();
  }

  /** A layout that makes do without blocks. */
  LayoutSource(Source source) {
    this(source, new Source(source.name(), ""));
  }

  /** The layout's name. */
  String name() {
    return source.name();
  }

  /** What is filled. */
  String text() {
    return blocks.text() + source.text();
  }

  /** Where the layout itself begins. */
  Span start() {
    return source.at(1, 1);
  }

  /** Collects what is wrong with the markup of one filling. */
  Faults collect(Problems problems) {
    return new Faults(this, problems);
  }

  /** The place in the file that a line and column of both together stand for. */
  Span span(Position position) {
    return position.line() <= linesBefore
        ? blocks.at(position.line(), position.column())
        : source.at(position.line() - linesBefore, position.column());
  }

  /** What FreeMarker cannot read or fill. */
  Problem cannotFill(Span at, String message) {
    return Problem.of(ProblemCode.TEMPLATE_ERROR, at, "this layout cannot be filled: " + message);
  }

  /** More came out of a layout than a page can need. */
  Problem tooLong(int limit) {
    return cannotFill(
        start(), "it writes more than " + limit + " characters; does a list never end?");
  }

  /** Macros that call one another without end. */
  Problem tooDeep() {
    return cannotFill(start(), "its macros call one another without end");
  }

  /** Problems of the box markup, all under one code. */
  static final class Faults {
    private final LayoutSource layout;
    private final Problems problems;
    private boolean any;

    private Faults(LayoutSource layout, Problems problems) {
      this.layout = layout;
      this.problems = problems;
    }

    /** Where something is that nothing in the markup says. */
    Span start() {
      return layout.start();
    }

    /** The place in the file that a line and column of a layout with its blocks stand for. */
    Span span(Position position) {
      return layout.span(position);
    }

    /** Whether anything was wrong. */
    boolean any() {
      return any;
    }

    /**
     * The text does not hold together.
     *
     * @param inside the element that is open there
     * @param near what stands in the filled layout around the fault
     */
    void notWellFormed(Span at, Optional<String> inside, String near) {
      add(
          at,
          "the markup is not well-formed at or after this element, "
              + inside.map(name -> "inside <" + name + ">").orElse("outside all elements")
              + (near.isEmpty() ? "" : ": \"" + near + "\""),
          "one <form>, each element closed inside the one around it, each attribute given once and"
              + " in quotes, &amp; for & and &lt; for <");
    }

    void documentType(Span at) {
      add(at, "a layout cannot have a document type", "no <!DOCTYPE>");
    }

    void tooDeep(Span at, int limit) {
      add(at, "elements are nested more than " + limit + " deep", "");
    }

    void rootIsNotForm(Span at, String name) {
      add(at, "a layout must start with <form>, not with <" + name + ">", "<form>");
    }

    void unknownElement(Span at, String name, String parent, List<String> known) {
      add(at, "<" + parent + "> cannot contain <" + name + ">", "one of " + tags(known));
    }

    void strayText(Span at, String name, String text) {
      add(
          at,
          "<" + name + "> contains text that is not in <text>: \"" + brief(text) + "\"",
          "<text> around it");
    }

    void nothingInside(Span at, String name, String wanted) {
      add(at, "<" + name + "> is empty", wanted);
    }

    void count(Span at, String name, String what, int found, String wanted) {
      add(at, "<" + name + "> has " + found + " " + what, wanted);
    }

    void unknownAttribute(Span at, String element, String name, List<String> known) {
      String wanted = known.isEmpty() ? "no attribute" : "one of " + String.join(", ", known);
      add(at, "<" + element + "> has no attribute \"" + name + "\"", wanted);
    }

    void missing(Span at, String element, String attribute) {
      add(at, "<" + element + "> needs the attribute \"" + attribute + "\"", "");
    }

    void badValue(Span at, String element, String attribute, String value, String wanted) {
      add(at, "%s=\"%s\" of <%s>".formatted(attribute, brief(value), element), wanted);
    }

    void undeclared(Span at, String kind, String name, List<String> known) {
      String wanted =
          known.isEmpty() ? "a declaration of it before" : "one of " + String.join(", ", known);
      add(at, "there is no " + kind + " \"" + name + "\" in this layout", wanted);
    }

    void twice(Span at, String kind, String name) {
      add(at, "the " + kind + " \"" + name + "\" is declared twice", "another name");
    }

    private void add(Span at, String what, String expected) {
      any = true;
      Problem problem = Problem.of(ProblemCode.TEMPLATE_MARKUP, at, what);
      problems.add(expected.isEmpty() ? problem : problem.expecting(expected));
    }

    private static String tags(List<String> names) {
      return "<" + String.join(">, <", names) + ">";
    }

    private static String brief(String text) {
      return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }
  }
}
