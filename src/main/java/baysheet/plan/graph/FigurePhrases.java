package baysheet.plan.graph;

import baysheet.books.SpecBook;

/** Sentences about figures other than torques: fluids, points that carry the vehicle. */
public final class FigurePhrases {
  public static final String GRADE = "grade";
  public static final String QUANTITY = "quantity";
  public static final String NO_GUESS = "the figure must be known before the fluid is drained";

  private FigurePhrases() {}

  public static String findFigure(String words, int step) {
    return "Ask for the %s (step\u00a0%s): the book gives none".formatted(words, step);
  }

  public static String figureWrittenIn(String words) {
    return "Record the %s before anything is opened".formatted(words);
  }

  /** Where the book has no grade, the place where it is written in says more. */
  public static String asWrittenIn(String fluid) {
    return fluid.replace('-', ' ') + " as recorded";
  }

  public static String fluid(String circuit, SpecBook.Fluid fluid) {
    StringBuilder text = new StringBuilder(circuit.replace('-', ' '));
    fluid.grade().ifPresent(grade -> text.append(' ').append(grade.value()));
    fluid.capacity().ifPresent(capacity -> text.append(", ").append(capacity.value().print()));
    return text.toString();
  }
}
