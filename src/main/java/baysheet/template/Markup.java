package baysheet.template;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of a filled layout, taken piece by piece from left to right: XML 1.0 without document
 * types, which would only be a way out of the file.
 *
 * <p>The text is in memory, forty thousand characters of it for each sheet. A general reader, which
 * must be ready for any length and encoding, took as long over it as the filling.
 */
final class Markup {
  private static final Map<String, Character> ENTITIES =
      Map.of("lt", '<', "gt", '>', "amp", '&', "quot", '"', "apos", '\'');

  private static final Pattern NUMBER = Pattern.compile("#([0-9]{1,7})|#x([0-9A-Fa-f]{1,6})");
  private static final int NONE = -1;

  /** Names met before, each where its hash says: a sheet has thousands, but of fifty kinds. */
  private final String[] names = new String[256];

  private final char[] text;
  private final int length;
  private int at;

  /**
   * The first characters of an array that nobody changes any more.
   *
   * @param length how many
   */
  Markup(char[] text, int length) {
    this.text = text;
    this.length = length;
  }

  static Markup of(String text) {
    return new Markup(text.toCharArray(), text.length());
  }

  boolean ended() {
    return at == length;
  }

  /** Whether this character is next. */
  boolean ahead(char c) {
    return at < length && text[at] == c;
  }

  /** Steps over a piece if it is next. */
  boolean skip(String piece) {
    if (length - at < piece.length()) {
      return false;
    }
    for (int i = 0; i < piece.length(); i++) {
      if (text[at + i] != piece.charAt(i)) {
        return false;
      }
    }
    at += piece.length();
    return true;
  }

  void expect(char c) throws Broken {
    if (!ahead(c)) {
      throw new Broken("\"" + c + "\" is missing");
    }
    at++;
  }

  /** Steps over white space; whether there was any. */
  boolean skipSpaces() {
    int from = at;
    while (at < length && Node.Words.isXmlSpace(text[at])) {
      at++;
    }
    return at > from;
  }

  /** What stands before the next such end, stepping over both. */
  String through(String end) throws Broken {
    int from = at;
    while (!skip(end)) {
      if (ended()) {
        throw new Broken("\"" + end + "\" is missing");
      }
      check(text[at++]);
    }
    return new String(text, from, at - end.length() - from);
  }

  /** The name of an element or an attribute. */
  String name() throws Broken {
    int from = at;
    int hash = 0;
    while (at < length && MarkedText.isNamePart(text[at])) {
      hash = 31 * hash + text[at++];
    }
    if (at == from || !startsName(text[from])) {
      throw new Broken("a name is missing");
    }
    int slot = hash & names.length - 1;
    if (names[slot] == null || !reads(names[slot], from)) {
      names[slot] = new String(text, from, at - from);
    }
    return names[slot];
  }

  /** Whether what was read from a place on is a word. */
  private boolean reads(String word, int from) {
    if (word.length() != at - from) {
      return false;
    }
    for (int i = 0; i < word.length(); i++) {
      if (text[from + i] != word.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  private static boolean startsName(char c) {
    return Character.isLetter(c) || c == '_' || c == ':';
  }

  /** The words before the next tag. */
  Node.Words words() throws Broken {
    int from = at;
    boolean blank = true;
    boolean plain = true;
    char before = 0;
    for (; !ended() && text[at] != '<'; at++) {
      char c = text[at];
      blank &= Node.Words.isXmlSpace(c);
      plain &= isPlain(c) && (c != ' ' || before != ' ');
      before = c;
    }
    if (blank) {
      // Most words of a layout only indent it.
      return Node.Words.SPACE;
    }
    return plain ? new Node.Words(string(from, true)) : Node.Words.of(string(from, false));
  }

  /** The value of an attribute. */
  String value() throws Broken {
    char quote = ahead('"') ? '"' : '\'';
    if (!ahead(quote)) {
      throw new Broken("a value is not in quotes");
    }
    int from = ++at;
    boolean plain = true;
    for (; !ended() && text[at] != quote && text[at] != '<'; at++) {
      plain &= isPlain(text[at]);
    }
    String value = string(from, plain);
    expect(quote);
    return value;
  }

  private String string(int from, boolean plain) throws Broken {
    return plain ? new String(text, from, at - from) : resolved(from, at);
  }

  /** Whether a character stands for itself. */
  private static boolean isPlain(char c) {
    return c >= ' ' && c != '&' && c < '\uFFFE';
  }

  /** White space becomes spaces, as in any value (XML 1.0, 3.3.3); in words it does not matter. */
  private String resolved(int from, int to) throws Broken {
    StringBuilder out = new StringBuilder(to - from);
    for (int i = from; i < to; i++) {
      if (text[i] == '&') {
        int end = semicolon(i, to);
        out.appendCodePoint(referred(new String(text, i + 1, end - i - 1)));
        i = end;
      } else {
        check(text[i]);
        out.append(Node.Words.isXmlSpace(text[i]) ? ' ' : text[i]);
      }
    }
    return out.toString();
  }

  private int semicolon(int from, int to) throws Broken {
    for (int i = from; i < to; i++) {
      if (text[i] == ';') {
        return i;
      }
    }
    throw new Broken("\"&\" stands without \";\"");
  }

  /** The character that a name or a number stands for. */
  private static int referred(String name) throws Broken {
    int character = ENTITIES.containsKey(name) ? ENTITIES.get(name) : numbered(name);
    if (!isPermitted(character)) {
      throw new Broken("\"&" + name + ";\" is no character");
    }
    return character;
  }

  private static int numbered(String name) {
    Matcher number = NUMBER.matcher(name);
    if (!number.matches()) {
      return NONE;
    }
    return number.group(1) == null
        ? Integer.parseInt(number.group(2), 16)
        : Integer.parseInt(number.group(1));
  }

  private static void check(char c) throws Broken {
    if (!isPermitted(c)) {
      throw new Broken("U+" + Integer.toHexString(c) + " is no character of a text");
    }
  }

  /** XML 1.0, production 2; half of a pair is judged where glyphs are. */
  private static boolean isPermitted(int c) {
    return c >= ' ' && c < 0xFFFE || Node.Words.isXmlSpace(c) || c > 0xFFFF && c <= 0x10FFFF;
  }

  /** The markup does not hold together; the message says why, in half a sentence. */
  static final class Broken extends Exception {
    private static final long serialVersionUID = 1L;

    Broken(String why) {
      super(why);
    }
  }
}
