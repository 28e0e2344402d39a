package freemarker.core;

import freemarker.template.Template;
import freemarker.template.TemplateException;
import java.util.Optional;
import java.util.Set;

/**
 * The part of FreeMarker's language that a layout may use: lists, conditions, macros, functions,
 * variables, and the built-ins that make small results of what a sheet holds.
 *
 * <p>It stands in FreeMarker's own package because only there the tree of a parsed template can be
 * read and added to. It lists what is allowed, not what is forbidden: a later FreeMarker may bring
 * new ways to the clock, the locale, files or classes.
 */
@SuppressWarnings("deprecation")
public final class LayoutLanguage {
  private static final Set<Class<? extends TemplateElement>> ELEMENTS =
      Set.of(
          MixedContent.class,
          TextBlock.class,
          Comment.class,
          DollarVariable.class,
          IfBlock.class,
          ConditionalBlock.class,
          SwitchBlock.class,
          Case.class,
          On.class,
          ListElseContainer.class,
          IteratorBlock.class,
          ElseOfList.class,
          Items.class,
          Sep.class,
          BreakInstruction.class,
          ContinueInstruction.class,
          Macro.class,
          UnifiedCall.class,
          BodyInstruction.class,
          ReturnInstruction.class,
          Assignment.class,
          AssignmentInstruction.class,
          TrimInstruction.class,
          StopInstruction.class);

  private static final Set<Class<? extends Expression>> EXPRESSIONS =
      Set.of(
          Identifier.class,
          Dot.class,
          DynamicKeyName.class,
          ParentheticalExpression.class,
          StringLiteral.class,
          NumberLiteral.class,
          BooleanLiteral.class,
          ListLiteral.class,
          Range.class,
          AddConcatExpression.class,
          ArithmeticExpression.class,
          UnaryPlusMinusExpression.class,
          ComparisonExpression.class,
          AndExpression.class,
          OrExpression.class,
          NotExpression.class,
          ExistsExpression.class,
          DefaultToExpression.class,
          MethodCall.class,
          LocalLambdaExpression.class);

  private static final Set<String> BUILT_INS =
      Set.of(
          "abs",
          "c",
          "cap_first",
          "ceiling",
          "chunk",
          "contains",
          "counter",
          "ends_with",
          "filter",
          "first",
          "floor",
          "has_content",
          "has_next",
          "index",
          "int",
          "is_even_item",
          "is_first",
          "is_last",
          "is_odd_item",
          "join",
          "keep_after",
          "keep_before",
          "last",
          "length",
          "lower_case",
          "map",
          "remove_beginning",
          "remove_ending",
          "replace",
          "reverse",
          "round",
          "seq_contains",
          "size",
          "starts_with",
          "string",
          "switch",
          "then",
          "trim",
          "uncap_first",
          "upper_case");

  /** An expression of the shipped layouts has 30 pieces at most. */
  private static final int MOST_PIECES = 100;

  /** Each sum copies what stands before it. */
  private static final int MOST_SUMS = 12;

  /** A text that takes the place of every letter must not make a long text of a short one. */
  private static final int LONGEST_REPLACEMENT = 40;

  private LayoutLanguage() {}

  /** What is charged for the work of one filling. */
  public interface Budget {
    /**
     * Takes so many units.
     *
     * @throws TemplateException once there are none left
     */
    void spend(int units, Environment at) throws TemplateException;
  }

  /**
   * A piece of a layout that is not allowed.
   *
   * @param what what is wrong, as a sentence without its full stop
   */
  public record Refusal(String what, int line, int column) {}

  /** The first piece of a template that a layout may not use. */
  public static Optional<Refusal> refusal(Template template) {
    if (template.getOutputFormat() != template.getConfiguration().getOutputFormat()) {
      return Optional.of(new Refusal("a layout cannot choose its output format", 1, 1));
    }
    return Optional.ofNullable(template.getRootTreeNode()).flatMap(LayoutLanguage::ofElement);
  }

  /** Charges a template's repeated parts to the budget that {@link #fill} is given. */
  public static void charge(Template template) {
    Optional.ofNullable(template.getRootTreeNode()).ifPresent(BudgetCheck::addTo);
  }

  /** Runs a template that was {@link #charge charged}. */
  public static void fill(Environment environment, Budget budget)
      throws TemplateException, java.io.IOException {
    environment.setCustomState(Budget.class, budget);
    environment.process();
  }

  private static Optional<Refusal> ofElement(TemplateElement element) {
    if (!ELEMENTS.contains(element.getClass())) {
      return refuse(element, "a layout cannot use " + name(element));
    }
    for (int i = 0; i < element.getParameterCount(); i++) {
      Optional<Refusal> refusal = ofParameter(element, element.getParameterValue(i));
      if (refusal.isPresent()) {
        return refusal;
      }
    }
    for (int i = 0; i < element.getChildCount(); i++) {
      Optional<Refusal> refusal = ofElement(element.getChild(i));
      if (refusal.isPresent()) {
        return refusal;
      }
    }
    return Optional.empty();
  }

  private static String name(TemplateElement element) {
    if (element instanceof BlockAssignment) {
      return element.getNodeTypeSymbol() + " with content: write a macro";
    }
    return element instanceof NumericalOutput ? "#{ }: write ${ }" : element.getNodeTypeSymbol();
  }

  private static Optional<Refusal> ofParameter(TemplateElement element, Object parameter) {
    if (!(parameter instanceof Expression expression)) {
      return Optional.empty();
    }
    Pieces pieces = new Pieces();
    pieces.count(expression);
    if (pieces.all > MOST_PIECES || pieces.sums > MOST_SUMS) {
      return refuse(expression, "this expression is too long: use variables");
    }
    if (element instanceof Macro && pieces.calls > 0) {
      return refuse(expression, "the default of a parameter cannot call a function");
    }
    return ofExpression(expression, element instanceof IteratorBlock);
  }

  /**
   * Looks at an expression and all that it is made of.
   *
   * @param listed whether it is what a list goes through, where a range may stand
   */
  private static Optional<Refusal> ofExpression(Expression expression, boolean listed) {
    Optional<Refusal> own = ofPiece(expression, listed);
    for (int i = 0; i < expression.getParameterCount() && own.isEmpty(); i++) {
      Object parameter = expression.getParameterValue(i);
      if (parameter instanceof Expression inner) {
        boolean key = expression instanceof DynamicKeyName && i == 1;
        boolean brackets = expression instanceof ParentheticalExpression && listed;
        own = ofExpression(inner, key || brackets);
      } else if (parameter instanceof TemplateElement inString) {
        own = ofElement(inString);
      }
    }
    return own;
  }

  private static Optional<Refusal> ofPiece(Expression piece, boolean listed) {
    if (piece instanceof BuiltIn builtIn) {
      return BUILT_INS.contains(builtIn.key)
          ? Optional.empty()
          : refuse(piece, "a layout cannot use ?" + builtIn.key);
    }
    if (!EXPRESSIONS.contains(piece.getClass())) {
      return refuse(piece, "a layout cannot use " + piece.getCanonicalForm());
    }
    if (piece instanceof Range && !listed) {
      return refuse(piece, "a range stands in <#list> or in square brackets only");
    }
    if (piece instanceof MethodCall call && isBuiltIn(call.getTarget(), "replace")) {
      return ofReplacement(call);
    }
    boolean named = piece instanceof Dot || piece instanceof DynamicKeyName;
    return named && isBuiltIn(piece.getParameterValue(0), "string")
        ? refuse(piece, "?string takes its format in brackets, such as ?string(\"0.#\")")
        : Optional.empty();
  }

  private static boolean isBuiltIn(Object target, String key) {
    return target instanceof BuiltIn builtIn && builtIn.key.equals(key);
  }

  /** Both texts must be written down: one that comes from a variable could be of any length. */
  private static Optional<Refusal> ofReplacement(MethodCall call) {
    boolean two = call.getParameterCount() == 3;
    boolean plain = two && isShort(call.getParameterValue(1)) && isShort(call.getParameterValue(2));
    return plain
        ? Optional.empty()
        : refuse(call, "?replace takes two short texts in quotation marks");
  }

  private static boolean isShort(Object argument) {
    return argument instanceof StringLiteral text
        && text.getParameterCount() == 0
        && text.getAsString().length() <= LONGEST_REPLACEMENT;
  }

  private static Optional<Refusal> refuse(TemplateObject at, String what) {
    return Optional.of(new Refusal(what, at.getBeginLine(), at.getBeginColumn()));
  }

  /** How large an expression is. */
  private static final class Pieces {
    private int all;
    private int sums;
    private int calls;

    void count(TemplateObject piece) {
      all++;
      sums += piece instanceof AddConcatExpression ? 1 : 0;
      calls += piece instanceof MethodCall ? 1 : 0;
      for (int i = 0; i < piece.getParameterCount(); i++) {
        if (piece.getParameterValue(i) instanceof TemplateObject inner) {
          count(inner);
        }
      }
    }
  }
}
