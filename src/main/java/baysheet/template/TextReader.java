package baysheet.template;

import baysheet.template.Box.Run;
import baysheet.template.Box.Text;
import baysheet.template.LayoutSource.Faults;
import baysheet.template.Node.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code <text>}: runs of words, with white space as a typist would set it. */
final class TextReader {
  private final Faults faults;
  private final List<Run> runs = new ArrayList<>();

  /** Whether a further space would stand at the start or after another one. */
  private boolean afterSpace = true;

  private TextReader(Faults faults) {
    this.faults = faults;
  }

  static Text read(Element element, Names names, Faults faults) {
    Attributes in = Attributes.of(element, faults, "style", "align", "role");
    Names.Style named =
        in.text("style").map(name -> names.style(element, name, faults)).orElse(names.body());
    Names.Style style = named.aligned(in.choice("align", Names.ALIGNS, named.text().align()));
    TextReader reader = new TextReader(faults);
    reader.content(element, style.bold(), Optional.empty());
    return new Text(
        reader.trimmed(), style.text(), in.choice("role", Names.ROLES, style.role()), element.at());
  }

  private void content(Element element, boolean bold, Optional<String> group) {
    for (Node node : element.content()) {
      if (node instanceof Node.Words words) {
        add(words.text(), bold, group);
      } else if (node instanceof Element inner) {
        inner(inner, bold, group);
      }
    }
  }

  private void inner(Element element, boolean bold, Optional<String> group) {
    switch (element.name()) {
      case "b" -> {
        Attributes.of(element, faults);
        content(element, true, group);
      }
      case "run" -> {
        Attributes in = Attributes.of(element, faults, "group");
        content(element, bold, in.text("group").or(() -> group));
      }
      default -> faults.unknownElement(element.at(), element.name(), "text", List.of("b", "run"));
    }
  }

  private void add(String words, boolean bold, Optional<String> group) {
    String spaced = isSpaced(words) ? words : spaced(words);
    if (!spaced.isEmpty()) {
      afterSpace = spaced.endsWith(" ");
      runs.add(new Run(spaced, bold, group));
    }
  }

  /** Whether there is single spaces only, as in nearly all words. */
  private boolean isSpaced(String words) {
    boolean after = afterSpace;
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      if (c < ' ' || c == ' ' && after) {
        return false;
      }
      after = c == ' ';
    }
    return true;
  }

  /** Runs of white space become one space; a non-breaking space is a character like others. */
  private String spaced(String words) {
    StringBuilder out = new StringBuilder();
    boolean after = afterSpace;
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      boolean space = Node.Words.isXmlSpace(c);
      if (!space || !after) {
        out.append(space ? ' ' : c);
      }
      after = space;
    }
    return out.toString();
  }

  private List<Run> trimmed() {
    if (runs.isEmpty() || !runs.get(runs.size() - 1).text().endsWith(" ")) {
      return runs;
    }
    Run last = runs.remove(runs.size() - 1);
    String text = last.text().substring(0, last.text().length() - 1);
    if (!text.isEmpty()) {
      runs.add(new Run(text, last.bold(), last.group()));
    }
    return runs;
  }
}
