package baysheet.yaml;

import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;

/**
 * Builds nodes from the parser's events. The library's own tree is no use here: it turns {@code no}
 * into false and {@code 1:30} into 90, keeps the last of two equal keys, and forgets where an alias
 * was used.
 */
final class TreeBuilder {
  private final Parser parser;
  private final Places places;
  private final Problems problems;
  private int depth;

  /** Set when the rest of the file cannot be read, so that the walk ends wherever it is. */
  private boolean broken;

  /** Set when a value was left out of the tree, so that nobody reads a tree that lacks it. */
  private boolean incomplete;

  private Span reached;

  TreeBuilder(Parser parser, Places places, Problems problems) {
    this.parser = parser;
    this.places = places;
    this.problems = problems;
    this.reached = places.whole();
  }

  /** Where the last event ended. */
  Span reached() {
    return reached;
  }

  /** The only document's value; empty when a problem was added that leaves nothing to read. */
  Optional<Node> document() {
    next();
    if (parser.checkEvent(Event.ID.StreamEnd)) {
      return broken(FileSentences.emptyFile(places.whole()));
    }
    next();
    Optional<Node> root = node();
    if (broken) {
      return Optional.empty();
    }
    next();
    if (parser.checkEvent(Event.ID.DocumentStart)) {
      return broken(FileSentences.severalDocuments(places.at(parser.peekEvent().getStartMark())));
    }
    return root.filter(Node::isEmpty).isPresent()
        ? broken(FileSentences.emptyFile(places.whole()))
        : root.filter(tree -> !incomplete);
  }

  private Event next() {
    Event event = parser.getEvent();
    reached = places.at(event.getEndMark());
    return event;
  }

  private Optional<Node> broken(Problem problem) {
    problems.add(problem);
    broken = true;
    return Optional.empty();
  }

  private Optional<Node> node() {
    Event event = next();
    Span at = places.span(event.getStartMark(), event.getEndMark());
    if (event instanceof AliasEvent) {
      return Optional.of(aliasStandIn(at));
    }
    refuseAnchorAndTag((NodeEvent) event, at);
    if (event instanceof ScalarEvent scalar) {
      return Optional.of(scalar(scalar, at));
    }
    if (depth == YamlFile.MAX_DEPTH) {
      return broken(FileSentences.tooDeep(at));
    }
    depth++;
    Optional<Node> node = event instanceof MappingStartEvent ? mapping(at) : sequence(at);
    depth--;
    return node;
  }

  /**
   * Reading goes on behind an alias, for the faults that follow; the tree is given up at the end.
   */
  private Node aliasStandIn(Span at) {
    problems.add(FileSentences.alias(at));
    incomplete = true;
    return new Scalar("*", true, at);
  }

  private void refuseAnchorAndTag(NodeEvent event, Span at) {
    if (event.getAnchor() != null) {
      problems.add(FileSentences.anchor(at));
    }
    String tag =
        event instanceof ScalarEvent scalar
            ? scalar.getTag()
            : ((CollectionStartEvent) event).getTag();
    if (tag != null) {
      problems.add(FileSentences.tag(at));
    }
  }

  private Scalar scalar(ScalarEvent event, Span at) {
    String text = event.getValue();
    boolean quoted = event.getScalarStyle() != ScalarStyle.PLAIN;
    if (text.length() > YamlFile.MAX_TEXT) {
      problems.add(FileSentences.textTooLong(at, text.length()));
      incomplete = true;
      return new Scalar("", true, at);
    }
    if (!CharacterCheck.isPlain(text)) {
      refuseUnfit(text, at);
    }
    if (!quoted) {
      refuseSwallowedItem(at);
      warnOfCutText(text, at);
    }
    return new Scalar(text, quoted, at);
  }

  /** What an escape stands for is not in the file's text, which was looked through before. */
  private void refuseUnfit(String text, Span at) {
    text.codePoints()
        .filter(point -> point != '\n' && CharacterCheck.isUnfit(point))
        .findFirst()
        .ifPresent(point -> problems.add(FileSentences.controlCharacterIn(at, point)));
    text.codePoints()
        .filter(CharacterCheck::runsFromRightToLeft)
        .findFirst()
        .ifPresent(point -> problems.add(FileSentences.rightToLeft(at, point)));
  }

  /**
   * Two spaces before a comment and one behind its sign are the usual form (yamllint's rules of
   * comments ask for them); {@code Bolt #3 is cracked} has neither, and loses its end.
   */
  private void warnOfCutText(String text, Span at) {
    String behind = places.behind(at);
    int sign = behind.indexOf('#');
    if (sign < 1 || text.isEmpty() || !behind.substring(0, sign).isBlank()) {
      return;
    }
    String comment = behind.substring(sign + 1);
    boolean parted = sign >= 2 || behind.charAt(0) == '\t';
    if (!parted || !(comment.isEmpty() || Character.isWhitespace(comment.charAt(0)))) {
      int column = at.endColumn() + sign;
      problems.add(FileSentences.textCut(places.pointAt(at.endLine(), column)));
    }
  }

  /**
   * A list item indented further than the one above it is, to YAML, the rest of that item's text: a
   * line of work would be lost without a word.
   */
  private void refuseSwallowedItem(Span at) {
    for (int line = at.line() + 1; line <= at.endLine(); line++) {
      if (places.line(line).strip().startsWith("- ")) {
        problems.add(FileSentences.badIndent(places.textOf(line), places));
      }
    }
  }

  private Optional<Node> sequence(Span start) {
    List<Node> items = new ArrayList<>();
    Span end = start;
    while (!broken && !parser.checkEvent(Event.ID.SequenceEnd)) {
      Optional<Node> item = node();
      item.ifPresent(items::add);
      if (items.size() > YamlFile.MAX_ENTRIES) {
        return broken(FileSentences.tooManyEntries(start));
      }
      end = item.map(Node::at).orElse(end);
    }
    return broken ? Optional.empty() : Optional.of(new Sequence(items, ending(start, end)));
  }

  private Optional<Node> mapping(Span start) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    Span end = start;
    while (!broken && !parser.checkEvent(Event.ID.MappingEnd)) {
      Optional<Node> key = node();
      Optional<Node> value = key.flatMap(written -> node());
      if (value.isPresent()) {
        add(entries, key.get(), value.get());
        if (entries.size() > YamlFile.MAX_ENTRIES) {
          return broken(FileSentences.tooManyEntries(start));
        }
        end = value.get().at();
      }
    }
    return broken
        ? Optional.empty()
        : Optional.of(new Mapping(List.copyOf(entries.values()), ending(start, end)));
  }

  /** A block ends with its last value, for its end event lies behind comments; brackets end it. */
  private Span ending(Span start, Span lastValue) {
    Event end = next();
    boolean brackets = end.getStartMark().getIndex() < end.getEndMark().getIndex();
    return places.join(start, brackets ? reached : lastValue);
  }

  private void add(Map<String, Entry> entries, Node key, Node value) {
    if (!(key instanceof Scalar scalar) || scalar.text().isBlank()) {
      problems.add(FileSentences.keyNotText(key));
    } else if (scalar.text().equals("<<") && !scalar.quoted()) {
      problems.add(FileSentences.mergeKey(scalar.at()));
    } else {
      Entry first = entries.putIfAbsent(scalar.text(), new Entry(scalar, value));
      if (first != null) {
        problems.add(FileSentences.duplicateKey(scalar, first.key().at()));
      }
    }
  }
}
