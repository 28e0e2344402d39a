package baysheet.scan;

import baysheet.scan.PageReading.BoxReading;
import baysheet.scan.PageReading.State;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceDictionary;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceEntry;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDButton;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * What was filled in on one page of a form, by the names of the boxes. A field has a value, which
 * programs read, and an appearance, which people see; where they say different things nobody knows
 * which was meant.
 *
 * @param fields no field stands for an empty one
 */
public record FilledForm(Map<String, Field> fields) {
  private static final Field EMPTY = new Field("", true);

  /**
   * A field.
   *
   * @param value what was typed, {@code Yes} for a tick; empty for nothing
   * @param agrees whether the page shows the same
   */
  public record Field(String value, boolean agrees) {}

  public FilledForm {
    fields = Map.copyOf(fields);
  }

  /** The fields on a page of a document; none where it is no form. */
  static FilledForm of(PDDocument document, PDPage page) throws IOException {
    // Without the library's mending: what a program left undone shows.
    PDAcroForm form = document.getDocumentCatalog().getAcroForm(null);
    Map<String, Field> fields = new HashMap<>();
    if (form != null) {
      for (PDField field : form.getFieldTree()) {
        for (PDAnnotationWidget widget : field.getWidgets()) {
          if (isOn(page, widget)) {
            String name = field.getFullyQualifiedName().replace('/', '.');
            fields.merge(name, read(field, widget), (one, two) -> new Field(one.value(), false));
          }
        }
      }
    }
    return new FilledForm(fields);
  }

  private static boolean isOn(PDPage page, PDAnnotationWidget widget) throws IOException {
    return page.getAnnotations().stream()
        .anyMatch(it -> it.getCOSObject() == widget.getCOSObject());
  }

  private static Field read(PDField field, PDAnnotationWidget widget) throws IOException {
    if (field instanceof PDButton button) {
      String off = COSName.Off.getName();
      String value = button.getValue();
      COSName shown = widget.getAppearanceState();
      boolean agrees = value.equals(shown == null ? off : shown.getName());
      return new Field(value.equals(off) ? "" : value, agrees);
    }
    String value = field.getValueAsString().strip();
    return new Field(value, plain(value).equals(plain(shown(widget))));
  }

  private static String plain(String text) {
    return text.replaceAll("\\s+", "");
  }

  /** The text of an appearance, drawn on a page of its own. */
  private static String shown(PDAnnotationWidget widget) throws IOException {
    PDAppearanceDictionary looks = widget.getAppearance();
    PDAppearanceEntry look = looks == null ? null : looks.getNormalAppearance();
    if (look == null || !look.isStream()) {
      return "";
    }
    try (PDDocument alone = new PDDocument()) {
      PDPage page = new PDPage();
      alone.addPage(page);
      try (PDPageContentStream content = new PDPageContentStream(alone, page)) {
        content.drawForm(new PDFormXObject(look.getAppearanceStream().getCOSObject()));
      }
      return new PDFTextStripper().getText(alone);
    }
  }

  /** The typed text of a box; empty where nothing was typed, or where it is not what is seen. */
  public String typed(String box) {
    Field field = fields.getOrDefault(box, EMPTY);
    return field.agrees() ? field.value() : "";
  }

  /**
   * What the page shows and what the fields say, box by box: where they differ, nothing is sure.
   */
  List<BoxReading> together(List<BoxReading> seen) {
    return seen.stream().map(this::together).toList();
  }

  private BoxReading together(BoxReading seen) {
    Field field = fields.getOrDefault(seen.name(), EMPTY);
    boolean filled = !field.value().isEmpty();
    boolean same = field.agrees() && filled == (seen.state() != State.EMPTY);
    State state = !same ? State.DOUBTFUL : filled ? State.MARKED : State.EMPTY;
    return new BoxReading(seen.name(), seen.kind(), seen.required(), state, seen.ink());
  }
}
