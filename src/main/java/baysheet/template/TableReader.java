package baysheet.template;

import baysheet.box.Length;
import baysheet.box.Table;
import baysheet.box.Vertical;
import baysheet.box.Width;
import baysheet.template.LayoutSource.Faults;
import baysheet.template.MarkupNode.Element;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code <table>}: its columns, one heading row, and rows. */
final class TableReader {
  private static final List<String> PARTS = List.of("col", "headings", "line");
  private final BoxMarkupReader boxes;
  private final Faults faults;
  private final List<Width> widths = new ArrayList<>();
  private final List<Table.Cell> header = new ArrayList<>();
  private final List<Table.Line> rows = new ArrayList<>();

  TableReader(BoxMarkupReader boxes, Faults faults) {
    this.boxes = boxes;
    this.faults = faults;
  }

  Table read(Element element) {
    Attributes in = Attributes.of(element, faults, "title", "padding", "between");
    BoxMarkupReader.children(element, faults).forEach(this::part);
    if (widths.isEmpty()) {
      faults.nothingInside(element.at(), "table", "a <col> for each column");
    }
    if (header.isEmpty()) {
      faults.nothingInside(element.at(), "table", "a <headings> row");
    }
    return new Table(
        widths,
        header,
        rows,
        in.length("padding", Length.ZERO),
        in.length("between", Length.ZERO),
        in.required("title"),
        element.at());
  }

  private void part(Element child) {
    switch (child.name()) {
      case "col" -> {
        Attributes in = Attributes.of(child, faults, "width");
        widths.add(in.width("width", new Width.Natural()));
      }
      case "headings" -> {
        Attributes.of(child, faults);
        header.addAll(cells(child));
      }
      case "line" -> {
        Attributes in = Attributes.of(child, faults, "heavy");
        rows.add(new Table.Line(cells(child), in.yes("heavy")));
      }
      default -> faults.unknownElement(child.at(), child.name(), "table", PARTS);
    }
  }

  private List<Table.Cell> cells(Element row) {
    List<Table.Cell> cells = new ArrayList<>();
    for (Element child : BoxMarkupReader.children(row, faults)) {
      if (child.name().equals("td")) {
        cells.add(cell(child));
      } else {
        faults.unknownElement(child.at(), child.name(), row.name(), List.of("td"));
      }
    }
    int across = cells.stream().mapToInt(Table.Cell::span).sum();
    if (across > widths.size()) {
      faults.count(row.at(), row.name(), "cells", across, "at most " + widths.size());
    }
    return cells;
  }

  private Table.Cell cell(Element element) {
    Attributes in = Attributes.of(element, faults, "span", "vertical", "names-row");
    return new Table.Cell(
        boxes.inside(element),
        in.whole("span", 1, 40, 1),
        in.choice("vertical", BoxMarkupReader.VERTICALS, Vertical.TOP),
        in.yes("names-row"));
  }
}
