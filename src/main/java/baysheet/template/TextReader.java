package baysheet.template;

import baysheet.box.Text;
import baysheet.template.LayoutSource.Faults;
import baysheet.template.MarkupNode.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code <text>}: runs of words, with white space as a typist would set it. */
final class TextReader {
  private final Faults faults;
  private final List<Text.Run> runs = new ArrayList<>();

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
    for (MarkupNode node : element.content()) {
      if (node instanceof MarkupNode.Words words) {
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
    String text = afterSpace && words.startsWith(" ") ? words.substring(1) : words;
    if (!text.isEmpty()) {
      afterSpace = text.endsWith(" ");
      runs.add(new Text.Run(text, bold, group));
    }
  }

  private List<Text.Run> trimmed() {
    if (runs.isEmpty() || !runs.get(runs.size() - 1).text().endsWith(" ")) {
      return runs;
    }
    Text.Run last = runs.remove(runs.size() - 1);
    String text = last.text().substring(0, last.text().length() - 1);
    if (!text.isEmpty()) {
      runs.add(new Text.Run(text, last.bold(), last.group()));
    }
    return runs;
  }
}
