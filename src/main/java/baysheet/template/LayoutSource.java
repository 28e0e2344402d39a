package baysheet.template;

import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.report.Span;
import baysheet.template.Box.Where;
import java.util.List;
import java.util.Objects;

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
    this.source = Objects.requireNonNull(source);
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
  Where start() {
    return new Where(linesBefore + 1, 1);
  }

  /** Collects what is wrong with the markup of one filling. */
  Faults collect(Problems problems) {
    return new Faults(this, problems);
  }

  Span span(Where where) {
    return where.line() <= linesBefore
        ? blocks.at(where.line(), where.column())
        : source.at(where.line() - linesBefore, where.column());
  }

  /** What FreeMarker cannot read or fill. */
  Problem cannotFill(Where where, String message) {
    return Problem.of(
        ProblemCode.TEMPLATE_ERROR, span(where), "this layout cannot be filled: " + message);
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

    /** Where something is that nothing in the markup tells. */
    Where start() {
      return layout.start();
    }

    /** Whether anything was wrong. */
    boolean any() {
      return any;
    }

    void notWellFormed(Where where, String message) {
      add(where, "the markup is not well-formed at or after this element: " + message, "");
    }

    void tooDeep(Where where, int limit) {
      add(where, "elements are nested more than " + limit + " deep", "");
    }

    void rootIsNotForm(Where where, String name) {
      add(where, "a layout must start with <form>, not with <" + name + ">", "<form>");
    }

    void unknownElement(Where where, String name, String parent, List<String> known) {
      add(where, "<" + parent + "> cannot contain <" + name + ">", "one of " + tags(known));
    }

    void strayText(Where where, String name, String text) {
      add(
          where,
          "<" + name + "> contains text that is not in <text>: \"" + brief(text) + "\"",
          "<text> around it");
    }

    void nothingInside(Where where, String name, String wanted) {
      add(where, "<" + name + "> is empty", wanted);
    }

    void count(Where where, String name, String what, int found, String wanted) {
      add(where, "<" + name + "> has " + found + " " + what, wanted);
    }

    void unknownAttribute(Where where, String element, String name, List<String> known) {
      String wanted = known.isEmpty() ? "no attribute" : "one of " + String.join(", ", known);
      add(where, "<" + element + "> has no attribute \"" + name + "\"", wanted);
    }

    void missing(Where where, String element, String attribute) {
      add(where, "<" + element + "> needs the attribute \"" + attribute + "\"", "");
    }

    void badValue(Where where, String element, String attribute, String value, String wanted) {
      add(where, "%s=\"%s\" of <%s>".formatted(attribute, brief(value), element), wanted);
    }

    void undeclared(Where where, String kind, String name, List<String> known) {
      String wanted =
          known.isEmpty() ? "a declaration of it before" : "one of " + String.join(", ", known);
      add(where, "there is no " + kind + " \"" + name + "\" in this layout", wanted);
    }

    void twice(Where where, String kind, String name) {
      add(where, "the " + kind + " \"" + name + "\" is declared twice", "another name");
    }

    private void add(Where where, String what, String expected) {
      any = true;
      Problem problem = Problem.of(ProblemCode.TEMPLATE_MARKUP, layout.span(where), what);
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
