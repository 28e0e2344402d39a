package baysheet.template;

import baysheet.box.Box;
import baysheet.box.Boxes;
import baysheet.box.Form;
import baysheet.box.Form.Group;
import baysheet.box.Form.Hand;
import baysheet.box.Form.Paper;
import baysheet.template.LayoutSource.Faults;
import baysheet.template.MarkupNode.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a filled layout as a form. */
final class FormReader {
  private static final Map<String, Paper> PAPERS = Map.of("A4", Paper.A4, "Letter", Paper.LETTER);

  /** 8 mm: laser printers leave about 5 mm white, and a clip or a binder takes the rest. */
  private static final long LEAST_MARGIN = 22_677;

  private static final String GROUP = "group";

  private final Faults faults;

  private FormReader(Faults faults) {
    this.faults = faults;
  }

  /** The form; empty, with every mistake in {@code faults}, where there is any. */
  static Optional<Form> read(BoundedText filled, Faults faults) {
    Optional<Form> form =
        ElementReader.read(filled, faults).flatMap(root -> new FormReader(faults).form(root));
    return faults.any() ? Optional.empty() : form;
  }

  private Optional<Form> form(Element root) {
    if (!root.name().equals("form")) {
      faults.rootIsNotForm(root.at(), root.name());
      return Optional.empty();
    }
    Attributes in =
        Attributes.of(
            root,
            faults,
            "paper",
            "margin",
            "largest",
            "smallest",
            "drops-below",
            "hand",
            "least-hand",
            "language",
            "title");
    Box body = body(root);
    long smallest = in.requiredPoints("smallest");
    long dropsBelow = in.points("drops-below", smallest);
    long largest = in.requiredPoints("largest");
    long margin = in.points("margin", LEAST_MARGIN);
    checkSizes(root, margin, smallest, dropsBelow, largest);
    Hand hand = hand(root, in);
    List<Group> groups = groups(root, smallest, dropsBelow, body);
    if (faults.any()) {
      return Optional.empty();
    }
    return Optional.of(
        new Form(
            in.choice("paper", PAPERS, Paper.A4),
            margin,
            largest,
            smallest,
            dropsBelow,
            hand,
            groups,
            in.required("language"),
            in.required("title"),
            body));
  }

  private Hand hand(Element root, Attributes in) {
    long largest = in.points("hand", Hand.USUAL.largest());
    long smallest = in.points("least-hand", Math.min(largest, Hand.USUAL.smallest()));
    if (smallest < Form.LEAST_TEXT || largest < smallest) {
      faults.badValue(
          root.at(), "form", "hand, least-hand", "out of order", "7pt ≤ least-hand ≤ hand");
      return Hand.USUAL;
    }
    return new Hand(largest, smallest);
  }

  private Box body(Element root) {
    List<Element> children = BoxMarkupReader.children(root, faults);
    Names names = Names.read(children, faults);
    List<Element> boxes = children.stream().filter(FormReader::isBox).toList();
    if (boxes.isEmpty()) {
      faults.nothingInside(root.at(), "form", "at least one box");
    }
    return new BoxMarkupReader(names, faults).together(root, boxes);
  }

  private static boolean isBox(Element element) {
    return !List.of("style", "pen", GROUP).contains(element.name());
  }

  /** The groups in the order in which they give way; one that nobody declared is a slip. */
  private List<Group> groups(Element root, long smallest, long dropsBelow, Box body) {
    List<Group> groups = new ArrayList<>();
    for (Element child : BoxMarkupReader.children(root, faults)) {
      if (child.name().equals(GROUP)) {
        groups.add(group(child, smallest, dropsBelow));
      }
    }
    List<String> names = groups.stream().map(Group::name).toList();
    Boxes.groups(body).stream()
        .filter(name -> !names.contains(name))
        .forEach(name -> faults.undeclared(root.at(), "group", name, names));
    return groups;
  }

  private Group group(Element element, long smallest, long dropsBelow) {
    Attributes in = Attributes.of(element, faults, "name", "until");
    long until = in.points("until", dropsBelow);
    if (until < smallest || until > dropsBelow) {
      faults.badValue(
          element.at(), GROUP, "until", "out of order", "smallest ≤ until ≤ drops-below");
    }
    return new Group(in.required("name"), until);
  }

  private void checkSizes(Element root, long margin, long smallest, long drops, long largest) {
    if (smallest < 1 || drops < smallest || largest < drops) {
      faults.badValue(
          root.at(), "form", "sizes", "out of order", "smallest ≤ drops-below ≤ largest");
    }
    if (margin < LEAST_MARGIN) {
      faults.badValue(root.at(), "form", "margin", "under 8mm", "at least 8mm, for the printer");
    }
  }
}
