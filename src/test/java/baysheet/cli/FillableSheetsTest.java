package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.ledger.Index;
import baysheet.ledger.KeptRecord;
import baysheet.ledger.SheetStory;
import baysheet.output.Exit;
import baysheet.pdf.Conformance;
import baysheet.report.Problems;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDCheckBox;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets as forms, filled in by another program: PDFBox. */
class FillableSheetsTest {
  private static final String JOB = "501";

  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void print() {
    garage = Garage.in(folder);
    assertEquals(Exit.DONE, garage.sheets("--fillable").exit());
  }

  private Index index() {
    return Index.read(garage.out.resolve("ledger"), new Problems()).orElseThrow();
  }

  private SheetStory last() {
    return index().latest(JOB).orElseThrow();
  }

  private KeptRecord record() {
    return index().record(last().id()).orElseThrow();
  }

  private Path form() {
    return garage.made("forms/" + last().id() + ".pdf");
  }

  /** Fills in what has to be, and the first box of each choice. */
  private void fill(PDAcroForm form) {
    try {
      for (KeptRecord.Box box : record().boxes()) {
        PDField field = form.getField(box.name().replace('.', '/'));
        if (box.required() || box.name().endsWith(".yes")) {
          if (field instanceof PDCheckBox tick) {
            tick.check();
          } else {
            field.setValue(box.kind().equals("value") ? value(box.name()) : "J. Müller");
          }
        }
      }
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private String value(String box) {
    return record().joints().stream()
        .filter(joint -> joint.box().equals(box))
        .flatMap(joint -> joint.setting().stream())
        .map(setting -> setting.figure())
        .findFirst()
        .orElse("7");
  }

  private Path filled(Consumer<PDAcroForm> change) throws IOException {
    Path to = folder.resolve("filled.pdf");
    try (PDDocument document = Loader.loadPDF(form().toFile())) {
      PDAcroForm form = document.getDocumentCatalog().getAcroForm();
      fill(form);
      change.accept(form);
      document.save(to.toFile());
    }
    return to;
  }

  private Garage.Run collect(Path file) {
    return garage.run("collect", file.toString(), "-o", garage.out.toString());
  }

  private Garage.Run close() {
    return garage.run(
        "close", JOB, "--by", "T1", "--shop", garage.root.toString(), "-o", garage.out.toString());
  }

  private static PDField first(PDAcroForm form, boolean tick) {
    for (PDField field : form.getFieldTree()) {
      if (field instanceof PDCheckBox == tick
          && !field.getValueAsString().isEmpty()
          && !field.getValueAsString().equals("Off")) {
        return field;
      }
    }
    throw new AssertionError("nothing is filled in");
  }

  private static String box(PDField field) {
    return field.getFullyQualifiedName().replace('/', '.');
  }

  @Test
  void everyBoxIsAFieldThatSaysWhatItIsFor() throws Exception {
    byte[] pdf = Garage.bytes(form());
    assertEquals(List.of(), Conformance.accessFailures(pdf));
    String text = new String(pdf, StandardCharsets.ISO_8859_1);
    assertTrue(text.contains("pdfuaid:part") && !text.contains("pdfaid:part"), "what is claimed");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDAcroForm form = document.getDocumentCatalog().getAcroForm();
      assertEquals(
          record().boxes().stream().map(KeptRecord.Box::name).toList(),
          form.getFields().stream().map(FillableSheetsTest::box).toList());
      for (PDField field : form.getFields()) {
        assertFalse(field.getAlternateFieldName().isBlank(), field.getFullyQualifiedName());
        assertFalse(field.getCOSObject().containsKey(COSName.AA), "no scripts");
      }
      assertFalse(document.getDocumentCatalog().getCOSObject().containsKey(COSName.OPEN_ACTION));
      assertEquals(
          COSName.S, document.getPage(0).getCOSObject().getItem(COSName.getPDFName("Tabs")));
      PDFont font = form.getDefaultResources().getFont(COSName.getPDFName("F"));
      assertTrue(font.isEmbedded() && !font.getName().contains("+"), font.getName());
    }
  }

  /** Poppler 22.12 draws a tick only where no reference leads from the field to its pictures. */
  @Test
  void tickIsDrawnWhereItIsSet() throws Exception {
    BufferedImage before = picture(form());
    BufferedImage after = picture(filled(form -> {}));
    try (PDDocument document = Loader.loadPDF(folder.resolve("filled.pdf").toFile())) {
      int ticks = 0;
      for (PDField field : document.getDocumentCatalog().getAcroForm(null).getFieldTree()) {
        if (field instanceof PDCheckBox tick) {
          COSBase looks = tick.getCOSObject().getItem(COSName.AP);
          assertTrue(looks instanceof COSDictionary, "a reference to " + box(tick));
          COSBase states = ((COSDictionary) looks).getItem(COSName.N);
          assertTrue(states instanceof COSDictionary, "a reference to the states of " + box(tick));
          PDRectangle place = tick.getWidgets().get(0).getRectangle();
          float top = document.getPage(0).getMediaBox().getHeight();
          assertEquals(0, dark(before, place, top), box(tick) + " while it is empty");
          assertEquals(tick.isChecked(), dark(after, place, top) > 0, box(tick));
          ticks += tick.isChecked() ? 1 : 0;
        }
      }
      assertTrue(ticks > 20, ticks + " ticks");
    }
  }

  private static BufferedImage picture(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFRenderer(document).renderImage(0, 2);
    }
  }

  /** Dark pixels in a field, two to a point. */
  private static long dark(BufferedImage picture, PDRectangle place, float top) {
    long dark = 0;
    for (float y = place.getLowerLeftY() + 1; y < place.getUpperRightY() - 1; y += 0.5f) {
      for (float x = place.getLowerLeftX() + 1; x < place.getUpperRightX() - 1; x += 0.5f) {
        int rgb = picture.getRGB(Math.round(2 * x), Math.round(2 * (top - y)));
        dark += (rgb & 0xff) < 128 ? 1 : 0;
      }
    }
    return dark;
  }

  @Test
  void formIsTheSameSheetAndIsIssuedOnce() {
    int issued = index().sheets().size();
    byte[] ledger = Garage.bytes(garage.out.resolve("ledger/2026.jsonl"));
    Garage.Run run = garage.sheets("--fillable", "--again");
    run.says("form  OUT/" + Garage.DAY + "/forms/" + last().id() + ".pdf");
    assertEquals(issued, index().sheets().size());
    assertArrayEquals(ledger, Garage.bytes(garage.out.resolve("ledger/2026.jsonl")));
  }

  @Test
  void filledFormIsCompleteAndItsFiguresNeedNotBeTypedAgain() throws Exception {
    Garage.Run run = collect(filled(form -> {}));
    long figures = record().boxes().stream().filter(box -> box.kind().equals("value")).count();
    run.says(
        Garage.DAY
            + "  "
            + JOB
            + "  complete, not closed yet; "
            + figures
            + " figures typed in, to look through\n");
    byte[] signed = Garage.bytes(garage.made("signed/" + JOB + ".pdf"));
    assertEquals(List.of(), Conformance.archiveFailures(signed));
    assertFalse(new String(signed, StandardCharsets.ISO_8859_1).contains("/AcroForm"));
    String form = Files.readString(garage.made("signed/" + JOB + ".yaml"));
    // With an insert, and on a scale of another unit, what the wrench reads is not the book's.
    String first = "target: 40 N·m, setting: 34.5 N·m, band: 31..37.8 N·m";
    assertTrue(form.contains(first) && form.contains("value: 34.5 N·m}"), form);
    assertTrue(form.contains("value: 44.5 N·m}"), form);
    assertTrue(form.contains("value: 105 N·m}"), form);
    Garage.Run close = close();
    assertEquals(Exit.DONE, close.exit(), close.out() + close.err());
    assertEquals(SheetStory.State.CLOSED, last().state());
  }

  /** The book's 40 N·m on the scale of a wrench with this insert are 46 N·m at the nut. */
  @Test
  void bookFigureOnAWrenchWithAnInsertIsOutsideItsBand() throws Exception {
    String first = record().joints().get(0).box();
    collect(
        filled(
            form -> {
              try {
                form.getField(box(first)).setValue("40");
              } catch (IOException e) {
                throw new AssertionError(e);
              }
            }));
    Garage.Run close = close();
    assertEquals(Exit.PROBLEMS, close.exit(), close.out() + close.err());
    close.says("40 N·m is outside 31..37.8 N·m");
  }

  @Test
  void nothingFilledInIsNothingMarked() throws Exception {
    Garage.Run run = collect(form());
    run.says("open:");
    assertTrue(last().returned().orElseThrow().marked().isEmpty(), run.out());
    assertTrue(last().returned().orElseThrow().doubtful().isEmpty(), run.out());
  }

  /** A program changed what is stored and not what is shown, or the other way round. */
  @Test
  void valueThatIsNotWhatIsSeenIsDoubtful() throws Exception {
    String[] boxes = new String[4];
    Path file =
        filled(
            form -> {
              PDField figure = form.getField(box(record().joints().get(0).box()));
              boxes[0] = box(figure);
              figure.getCOSObject().setString(COSName.V, "999");
              PDField tick = first(form, true);
              boxes[1] = box(tick);
              tick.getCOSObject().setItem(COSName.V, COSName.getPDFName("Off"));
              PDField words = first(form, false);
              boxes[2] = box(words);
              words.getCOSObject().removeItem(COSName.V);
            });
    collect(file).says("(doubtful)");
    List<String> doubtful = last().returned().orElseThrow().doubtful();
    for (int i = 0; i < 3; i++) {
      assertTrue(doubtful.contains(boxes[i]), boxes[i] + " in " + doubtful);
    }
    String figures = Files.readString(garage.made("signed/" + JOB + ".yaml"));
    assertFalse(figures.contains("999"), figures);
  }

  private static String box(String name) {
    return name.replace('.', '/');
  }

  @Test
  void formThatLiesThereIsLeftAloneAndLeavesWithItsRevision() throws Exception {
    Path old = form();
    String name = old.getFileName().toString();
    Files.copy(filled(form -> {}), old, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    byte[] filled = Garage.bytes(old);
    garage.sheets("--fillable", "--again");
    assertArrayEquals(filled, Garage.bytes(old));
    garage.change(Garage.DAY + "/" + JOB + ".yaml", "bay: ", "notes: Look twice.\nbay: ");
    garage.sheets("--fillable");
    assertFalse(Files.exists(old));
    assertArrayEquals(filled, Garage.bytes(garage.made("withdrawn/" + name)));
    assertTrue(Files.exists(form()));
  }
}
