package freemarker.core;

import freemarker.core.LayoutLanguage.Budget;
import freemarker.template.TemplateBooleanModel;
import freemarker.template.TemplateException;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateMethodModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import freemarker.template.TemplateSequenceModel;
import java.util.ArrayList;
import java.util.List;

/**
 * Stands at the start of everything in a template that may run more than once, and behind every
 * assignment. It charges what follows to the budget of the filling and looks at the variables that
 * were set last: a text that is doubled again and again costs few steps.
 */
@SuppressWarnings({"deprecation", "unchecked"})
final class BudgetCheck extends TemplateElement {
  /** A sheet's longest text has 4,000 characters. */
  private static final int LONGEST_TEXT = 20_000;

  /** Lists in lists. */
  private static final int DEEPEST_LIST = 3;

  /** The shipped layouts call macros 6 deep. */
  private static final int DEEPEST_CALL = 60;

  /** A lambda runs for every item of its list. */
  private static final int ITEMS = 30;

  /** Joins and replacements run through all of a text or list. */
  private static final int WHOLE_TEXT = 20;

  private static final int TEXT_A_UNIT = 200;
  private static final int MOST_UNITS = 1_000_000;

  private final int units;
  private final List<String> variables;

  private BudgetCheck(TemplateElement at, int units, List<String> variables) {
    this.units = units;
    this.variables = List.copyOf(variables);
    setLocation(at.getTemplate(), at.beginColumn, at.beginLine, at.beginColumn, at.beginLine);
  }

  /** Puts checks into an element and all that it holds. */
  static void addTo(TemplateElement element) {
    for (int i = element.getChildCount() - 1; i >= 0; i--) {
      TemplateElement child = element.getChild(i);
      addTo(child);
      if (child instanceof Assignment) {
        List<String> target = List.of(String.valueOf(child.getParameterValue(0)));
        element.addChild(i + 1, new BudgetCheck(child, 1, target));
      }
    }
    if (isRepeated(element)) {
      int units = (int) Math.min(MOST_UNITS, 1 + unitsWithin(element));
      element.addChild(0, new BudgetCheck(element, units, named(element)));
    }
  }

  /** A body that is handed to a macro may be repeated by it. */
  private static boolean isRepeated(TemplateElement element) {
    return element instanceof IteratorBlock
        || element instanceof Items
        || element instanceof Macro
        || element instanceof UnifiedCall && element.getChildCount() > 0;
  }

  /** The parameters of a macro, the item of a list. */
  private static List<String> named(TemplateElement element) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < element.getParameterCount(); i++) {
      ParameterRole role = element.getParameterRole(i);
      boolean variable =
          role == ParameterRole.TARGET_LOOP_VARIABLE
              || role == ParameterRole.PARAMETER_NAME
              || role == ParameterRole.CATCH_ALL_PARAMETER_NAME;
      if (variable && element.getParameterValue(i) instanceof String name) {
        names.add(name);
      }
    }
    return names;
  }

  /** What one run of an element's content costs, without what is charged there by itself. */
  private static long unitsWithin(TemplateElement element) {
    long sum = 0;
    for (int i = 0; i < element.getChildCount(); i++) {
      TemplateElement child = element.getChild(i);
      sum += unitsOfParameters(child) + (isRepeated(child) ? 0 : unitsWithin(child));
    }
    return sum;
  }

  private static long unitsOfParameters(TemplateObject piece) {
    long sum = piece instanceof TextBlock text ? text.getSource().length() / TEXT_A_UNIT : 1;
    for (int i = 0; i < piece.getParameterCount(); i++) {
      if (piece.getParameterValue(i) instanceof TemplateObject inner) {
        sum += unitsOfParameters(inner);
      }
    }
    return Math.min(MOST_UNITS, sum * factor(piece));
  }

  private static int factor(TemplateObject piece) {
    if (piece instanceof LocalLambdaExpression) {
      return ITEMS;
    }
    boolean whole =
        piece instanceof BuiltIn builtIn
            && (builtIn.key.equals("join") || builtIn.key.equals("replace"));
    return whole ? WHOLE_TEXT : 1;
  }

  @Override
  TemplateElement[] accept(Environment env) throws TemplateException {
    if (env.getCustomState(Budget.class) instanceof Budget budget) {
      budget.spend(units, env);
      checkDepth(env);
      for (String variable : variables) {
        measure(env.getVariable(variable), variable, DEEPEST_LIST, env);
      }
    }
    return null;
  }

  private static void checkDepth(Environment env) throws TemplateException {
    int depth = 0;
    for (Macro.Context at = env.getCurrentMacroContext(); at != null; at = at.prevMacroContext) {
      depth++;
    }
    if (depth > DEEPEST_CALL) {
      throw new TemplateException("its macros call one another without end", env);
    }
  }

  /** Whether a value is small, or one of the sheet's own. */
  private static void measure(TemplateModel value, String name, int lists, Environment env)
      throws TemplateException {
    if (value instanceof TemplateSequenceModel list) {
      measure(list, name, lists, env);
    } else if (value instanceof TemplateScalarModel text) {
      if (text.getAsString().length() > LONGEST_TEXT) {
        throw new TemplateException(
            "the variable " + name + " holds more than " + LONGEST_TEXT + " characters", env);
      }
    } else if (!isSmall(value)) {
      throw new TemplateException("a variable cannot hold what " + name + " is given", env);
    }
  }

  private static void measure(TemplateSequenceModel list, String name, int lists, Environment env)
      throws TemplateException {
    if (lists == 0) {
      throw new TemplateException("the variable " + name + " holds lists in lists in lists", env);
    }
    if (isView(list)) {
      throw new TemplateException("a sum or a division of lists cannot be kept in " + name, env);
    }
    Budget budget = (Budget) env.getCustomState(Budget.class);
    int size = list.size();
    for (int i = 0; i < size; i++) {
      budget.spend(1, env);
      measure(list.get(i), name, lists - 1, env);
    }
  }

  /** A list that only refers to others; kept and combined again it doubles without growing. */
  private static boolean isView(TemplateSequenceModel list) {
    Class<?> in = list.getClass().getDeclaringClass();
    return list instanceof AddConcatExpression.ConcatenatedSequence
        || in == BuiltInsForSequences.chunkBI.class
        || in == BuiltInsForSequences.reverseBI.class;
  }

  /** Numbers are held small by the arithmetic engine; hashes are records of the sheet. */
  private static boolean isSmall(TemplateModel value) {
    boolean number = value instanceof TemplateNumberModel || value instanceof TemplateBooleanModel;
    boolean named = value instanceof TemplateHashModel || value instanceof Macro;
    return value == null || number || (named && !(value instanceof TemplateMethodModel));
  }

  @Override
  protected String dump(boolean canonical) {
    return canonical ? "" : getNodeTypeSymbol();
  }

  @Override
  String getNodeTypeSymbol() {
    return "##budget";
  }

  @Override
  int getParameterCount() {
    return 0;
  }

  @Override
  Object getParameterValue(int index) {
    throw new IndexOutOfBoundsException(index);
  }

  @Override
  ParameterRole getParameterRole(int index) {
    throw new IndexOutOfBoundsException(index);
  }

  @Override
  boolean isNestedBlockRepeater() {
    return false;
  }
}
