package baysheet.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Form;
import baysheet.box.TextStyle;
import baysheet.layout.Fonts;
import baysheet.layout.Page;
import baysheet.layout.PageFit;
import baysheet.layout.Samples;
import baysheet.layout.Sketch;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

class PdfWriterTest {
  private static final PdfWriter WRITER = new PdfWriter();
  private static final String SYMBOLS = "° ± × · – → ≤ ≥ ½ ⌀ ☐ ✓ ⚠ Ω µ - ’";

  @Test
  void samePageGivesTheSameBytes() {
    Page page = page(Samples.full());
    byte[] first = WRITER.write(page, info("one"), List.of(record("r.json")));
    assertArrayEquals(first, WRITER.write(page, info("one"), List.of(record("r.json"))));
    assertArrayEquals(first, new PdfWriter().write(page, info("one"), List.of(record("r.json"))));
  }

  @Test
  void whatWasWrittenBeforeDoesNotShow() {
    Page page = page(Samples.full());
    PdfWriter used = new PdfWriter();
    used.write(page(Sketch.form(Sketch.text("Україна ≠ Ελλάδα"))), info("two"), List.of());
    assertArrayEquals(
        new PdfWriter().write(page, info("one"), List.of()),
        used.write(page, info("one"), List.of()));
  }

  @Test
  void drawnTextIsAsWideAsTheLayoutThinks() throws Exception {
    Page page = page(Sketch.form(Sketch.text("Wheel nut 110 N·m ⌀ ½ Žižkov → Ω")));
    List<Float> ends = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition position) {
            ends.add(position.getXDirAdj() + position.getWidthDirAdj());
          }
        };
    try (PDDocument document = Loader.loadPDF(WRITER.write(page, info("one"), List.of()))) {
      stripper.getText(document);
    }
    double right = page.items().get(0).area().right() / 1000.0;
    assertEquals(right, ends.get(ends.size() - 1), 0.01);
  }

  @Test
  void languageAndZoneOfTheMachineDoNotShow() {
    byte[] here = WRITER.write(page(Samples.full()), info("one"), List.of(record("r.json")));
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String tag : List.of("tr-TR", "de-DE", "ar-EG-u-nu-arab")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
        byte[] there = WRITER.write(page(Samples.full()), info("one"), List.of(record("r.json")));
        assertArrayEquals(here, there, tag);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void anotherSeedGivesAnotherIdentifier() {
    Page page = page(Samples.full());
    assertFalse(
        Arrays.equals(
            WRITER.write(page, info("one"), List.of()),
            WRITER.write(page, info("two"), List.of())));
  }

  @Test
  void textIsReadInTheOrderItIsMeantToBe() throws Exception {
    String text =
        text(WRITER.write(page(Samples.full()), info("one"), List.of())).replaceAll("\\s+", " ");
    int at = 0;
    for (String words :
        List.of(
            "Job 2417",
            "DANGER",
            "Raise the front and set two stands",
            "Keep clear of it.",
            "Lever the arm down",
            "Plug the sensor rod in",
            "Fastener and place",
            "Carrier bolt",
            "On the ground",
            "Order",
            "Second person")) {
      int found = text.indexOf(words, at);
      assertTrue(found >= at, "'" + words + "' after " + at + " in\n" + text);
      at = found;
    }
  }

  @Test
  void wordsOnTwoLinesStayTwoWords() throws Exception {
    var narrow = Sketch.row(0, Sketch.cell(Sketch.fixed(50), Sketch.text("steering knuckle bolt")));
    byte[] pdf = WRITER.write(page(Sketch.form(narrow)), info("one"), List.of());
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setLineSeparator("");
      assertTrue(stripper.getText(document).startsWith("steering knuckle bolt"));
    }
  }

  @Test
  void symbolsComeBackAsTheyWere() throws Exception {
    Form form =
        Sketch.form(
            Sketch.column(
                Sketch.text(SYMBOLS),
                Sketch.text(TextStyle.Align.LEFT, Sketch.bold(SYMBOLS)),
                Sketch.text("Ärger, œuvre, Žižkov, Ελλάδα, Україна, 110\u00A0N·m")));
    List<String> lines =
        text(WRITER.write(page(form), info("one"), List.of())).lines().map(String::strip).toList();
    assertEquals(
        List.of(SYMBOLS, SYMBOLS, "Ärger, œuvre, Žižkov, Ελλάδα, Україна, 110 N·m"), lines);
  }

  @Test
  void allFontsAreEmbeddedSubsets() throws Exception {
    assertEquals(
        Set.of(
            "RobotoCondensed-Regular",
            "RobotoCondensed-Bold",
            "DejaVuSansCondensed",
            "DejaVuSansCondensed-Bold"),
        fonts(page(Samples.full())));
  }

  @Test
  void secondFontStaysOutWhereNothingNeedsIt() throws Exception {
    assertEquals(
        Set.of("RobotoCondensed-Regular"), fonts(page(Sketch.form(Sketch.text("nut, 22 N·m")))));
  }

  private static Set<String> fonts(Page page) throws Exception {
    Set<String> names = new HashSet<>();
    try (PDDocument document = Loader.loadPDF(WRITER.write(page, info("one"), List.of()))) {
      PDResources resources = document.getPage(0).getResources();
      for (COSName name : resources.getFontNames()) {
        PDFont font = resources.getFont(name);
        assertTrue(font.isEmbedded(), font.getName());
        assertTrue(font.getName().matches("[A-Z]{6}\\+.*"), font.getName());
        names.add(font.getName().substring(7));
      }
    }
    return names;
  }

  @Test
  void attachedRecordIsTheVeryBytes() throws Exception {
    byte[] pdf = WRITER.write(page(Samples.full()), info("one"), List.of(record("2417.json")));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      var file =
          document
              .getDocumentCatalog()
              .getNames()
              .getEmbeddedFiles()
              .getNames()
              .get("2417.json")
              .getEmbeddedFile();
      assertArrayEquals(record("2417.json").content(), file.toByteArray());
      assertEquals("application/json", file.getSubtype());
    }
  }

  @Test
  void twoAttachmentsOfOneNameAreRefused() {
    Page page = page(Samples.full());
    List<Attachment> twice = List.of(record("r.json"), record("r.json"));
    Exception e =
        assertThrows(IllegalArgumentException.class, () -> WRITER.write(page, info("one"), twice));
    assertTrue(e.getMessage().contains("r.json"), e.getMessage());
  }

  @Test
  void manyPagesKeepTheirSizesAndShareTheirFonts() throws Exception {
    Page page = page(Samples.full());
    byte[] one = WRITER.write(page, info("one"), List.of());
    byte[] three = WRITER.writeAll(List.of(page, page, page), info("one"), List.of());
    try (PDDocument document = Loader.loadPDF(three)) {
      assertEquals(3, document.getNumberOfPages());
      assertEquals(595.276, document.getPage(2).getMediaBox().getWidth(), 0.001);
      assertEquals(841.89, document.getPage(2).getMediaBox().getHeight(), 0.001);
      assertEquals(
          "Job 2417 · Front lower arm",
          document.getDocumentCatalog().getDocumentOutline().getFirstChild().getTitle());
    }
    assertTrue(three.length < 2 * one.length, three.length + " against " + one.length);
  }

  private static String text(byte[] pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  static Page page(Form form) {
    return ((PageFit.Fitted) PageFit.fit(form, Fonts.builtIn())).page();
  }

  static PdfInfo info(String seed) {
    return new PdfInfo(
        "Sample & <test>",
        "en-GB",
        "Larkfell Garage",
        "A form with a bit of everything",
        List.of("sample", "form"),
        Instant.parse("2026-03-02T07:30:00Z"),
        seed);
  }

  static Attachment record(String name) {
    return new Attachment(
        name,
        "application/json",
        Attachment.Relationship.DATA,
        "{\"job\": \"2417\"}".getBytes(StandardCharsets.UTF_8),
        "The same as data");
  }
}
