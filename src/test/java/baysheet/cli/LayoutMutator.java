package baysheet.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Changes a layout's text by chance: slips of the keyboard, and things that are meant to harm. */
final class LayoutMutator {
  /** Pieces that are put in at any place, whole or in the middle of something. */
  private static final List<String> PIECES =
      List.of(
          "<#list 1.. as i>",
          "<#list 1..99999 as i><b>x</b></#list>",
          "<#list 1..300 as i><row><cell><text>${i}</text></cell></row></#list>",
          "<#list 1..200 as i><columns count=\"3\"></#list>",
          "<#list 1..50 as i><columns count=\"2\"><column></#list>x"
              + "<#list 1..50 as i></column></columns></#list>",
          "<#list 1..50 as i><row><cell></#list><text>x</text>"
              + "<#list 1..50 as i></cell></row></#list>",
          "<#list 1..40 as i><table title=\"t\"><col width=\"natural\"/><line><td></#list><text>x</text>"
              + "<#list 1..40 as i></td></line></table></#list>",
          "<#list 1..25 as i><items><entry><text>l</text></#list><text>x</text>"
              + "<#list 1..25 as i></entry></items></#list>",
          "<#list 1..500 as i><droppable group=\"drawings\"><text>x</text></droppable></#list>",
          "<#assign s = 'x'><#list 1..60 as i><#assign s = s + s></#list>",
          "<#assign n = 9><#list 1..60 as i><#assign n = n * n></#list>${n}",
          "${''?left_pad(2000000000)}",
          "<#macro m><@m/><@m/></#macro><@m/>",
          "<#function f x><#return f(x) + f(x)></#function>${f(1)}",
          "${.now}",
          "<#setting locale='tr_TR'>",
          "<#ftl output_format='plainText'>",
          "<#include 'x'>",
          "<#noparse>",
          "<#--",
          "<![CDATA[",
          "]]>",
          "<?x ",
          "<!DOCTYPE a [<!ENTITY b \"c\">]>",
          "&#0;",
          "&#x1F697;",
          "&#xD800;",
          "&b;",
          "\u0000",
          "\uD83D",
          "\u202E",
          "\t",
          "<group name=\"g\" until=\"8pt\"/>",
          "<style name=\"body\" scale=\"9\" floor=\"50pt\"/>",
          "<style name=\"figure\" scale=\"0.1\" floor=\"7pt\"/>",
          "<pen name=\"tick\" width=\"900mm\" height=\"900mm\"/>",
          "<fill/>",
          "<space height=\"-3mm\"/>",
          "<space height=\"99999mm\"/>",
          "<rule thickness=\"99999pt\"/>",
          "<frame border=\"500pt\" padding=\"9em\"><fill/></frame>",
          "<drawing width=\"9999mm\" height=\"9999mm\" says=\"d\"/>",
          "<drawing width=\"9mm\" height=\"9mm\" says=\"d\"><circle x=\"4000\" y=\"4000\" radius=\"4000\"/></drawing>",
          "<drawing width=\"9mm\" height=\"9mm\" says=\"d\"><label x=\"0\" y=\"0\" height=\"4000\" text=\"8\"/></drawing>",
          "<field name=\"x\" kind=\"tick\" says=\"x\"/>",
          "<text>" + "x".repeat(3000) + "</text>",
          "<text>" + "x ".repeat(3000) + "</text>",
          "<#list 1..2000 as i><text>word</text></#list>");

  private static final List<String> VALUES =
      List.of(
          "",
          "0",
          "-1",
          "1",
          "999999",
          "99999999999999999999",
          "0pt",
          "-5mm",
          "1e9mm",
          "0.0001mm",
          "9999999999mm",
          "1*",
          "999*",
          "natural",
          "yes",
          "8pt",
          "400pt",
          "body",
          "NaN",
          "1em");

  private static final List<String> SIGNS = List.of("<>/\"'&#{}()[]=?! ".split(""));

  private final Random random;

  LayoutMutator(long seed) {
    random = new Random(seed);
  }

  /** The text with one to four changes. */
  String mutate(String text) {
    String changed = text;
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      changed = change(changed);
    }
    return changed;
  }

  private String change(String text) {
    return switch (random.nextInt(8)) {
      case 0 -> without(text, place(text), 1 + random.nextInt(30));
      case 1 -> with(text, place(text), any(PIECES));
      case 2 -> with(text, startOfLine(text), any(PIECES));
      case 3 -> otherAttribute(text);
      case 4 -> otherNumber(text);
      case 5 -> doubled(text);
      case 6 -> swapped(text);
      default -> with(text, place(text), any(SIGNS));
    };
  }

  private int place(String text) {
    return text.isEmpty() ? 0 : random.nextInt(text.length());
  }

  private <T> T any(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private static String without(String text, int from, int count) {
    return text.substring(0, from) + text.substring(Math.min(text.length(), from + count));
  }

  private static String with(String text, int at, String piece) {
    return text.substring(0, at) + piece + text.substring(at);
  }

  private int startOfLine(String text) {
    return text.lastIndexOf('\n', place(text)) + 1;
  }

  /** Another value between two quotation marks. */
  private String otherAttribute(String text) {
    int start = text.indexOf("=\"", place(text));
    int end = start < 0 ? -1 : text.indexOf('"', start + 2);
    return end < 0 ? text : text.substring(0, start + 2) + any(VALUES) + text.substring(end);
  }

  private String otherNumber(String text) {
    int from = place(text);
    while (from < text.length() && !Character.isDigit(text.charAt(from))) {
      from++;
    }
    int to = from;
    while (to < text.length() && Character.isDigit(text.charAt(to))) {
      to++;
    }
    return text.substring(0, from) + any(VALUES) + text.substring(to);
  }

  /** Some lines twice, or many times. */
  private String doubled(String text) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (lines.isEmpty()) {
      return text;
    }
    int from = random.nextInt(lines.size());
    int to = Math.min(lines.size(), from + 1 + random.nextInt(10));
    String some = String.join("\n", lines.subList(from, to)) + "\n";
    lines.add(from, some.repeat(random.nextInt(10) == 0 ? 20 : 1).strip());
    return String.join("\n", lines) + "\n";
  }

  private String swapped(String text) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (lines.isEmpty()) {
      return text;
    }
    String moved = lines.remove(random.nextInt(lines.size()));
    lines.add(random.nextInt(lines.size() + 1), moved);
    return String.join("\n", lines) + "\n";
  }
}
