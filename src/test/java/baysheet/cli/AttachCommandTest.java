package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.ledger.Index;
import baysheet.ledger.PersonalFiles;
import baysheet.ledger.SheetStory;
import baysheet.output.Exit;
import baysheet.pdf.Conformance;
import baysheet.record.PlacedBoxes;
import baysheet.report.Problems;
import baysheet.scan.IssuedSheets.Issued;
import baysheet.simulate.SignedStack;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** The signed sheet goes with the invoice. */
class AttachCommandTest {
  private static final String UBL = "urn:oasis:names:specification:ubl:schema:xsd:";

  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void signAndCollect() throws IOException {
    garage = Garage.in(folder);
    garage.sheets();
    String id = last().id();
    byte[] record = Files.readAllBytes(index().recordFile(id));
    byte[] pdf = Files.readAllBytes(index().page(id));
    Issued issued = new Issued(id, false, pdf, PlacedBoxes.of(record));
    Path stack = folder.resolve("stack.pdf");
    Files.write(stack, new SignedStack(21).sign(issued, Set.of()).pdf());
    run("collect", stack.toString());
  }

  private Garage.Run run(String... arguments) {
    List<String> all = new ArrayList<>(List.of(arguments));
    all.addAll(List.of("-o", garage.out.toString()));
    return garage.run(all.toArray(String[]::new));
  }

  private Index index() {
    return Index.read(garage.out.resolve("ledger"), new Problems()).orElseThrow();
  }

  private SheetStory last() {
    return index().latest("501").orElseThrow();
  }

  private void close() throws IOException {
    Path form = garage.made("signed/501.yaml");
    FilledForm.fill(form);
    Garage.Run run = run("close", "501", "--by", "T1", "--shop", garage.root.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
  }

  private Path invoice(String words) throws IOException {
    Path file = folder.resolve("invoice.pdf");
    try (PDDocument document = new PDDocument()) {
      document.addPage(page(document, words));
      document.save(file.toFile());
    }
    return file;
  }

  private static PDPage page(PDDocument document, String words) throws IOException {
    PDPage page = new PDPage();
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      content.beginText();
      content.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 12);
      content.newLineAtOffset(72, 700);
      content.showText(words);
      content.endText();
    }
    return page;
  }

  private Garage.Run attach(Path invoice, String... options) {
    List<String> all = new ArrayList<>(List.of("attach", "501", "--invoice", invoice.toString()));
    all.addAll(List.of(options));
    return run(all.toArray(String[]::new));
  }

  private void refuses(Path invoice, String why, String... options) {
    Garage.Run run = attach(invoice, options);
    assertEquals(Exit.PROBLEMS, run.exit(), run.out());
    run.says(why);
    assertFalse(Files.exists(folder.resolve("invoice-501.pdf")));
    assertTrue(last().attached().isEmpty());
  }

  @Test
  void signedPageGoesBehindTheInvoice() throws Exception {
    close();
    Path invoice = invoice("Invoice 77 for job 501");
    byte[] before = Garage.bytes(invoice);
    Garage.Run run = attach(invoice);
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("invoice-501.pdf");
    assertArrayEquals(before, Garage.bytes(invoice), "the invoice itself stays");
    Paper paper = Paper.of(Garage.bytes(folder.resolve("invoice-501.pdf")));
    assertEquals(2, paper.pages());
    assertTrue(paper.text().contains("Invoice 77"));
    assertEquals("append", last().attached().get(0).how());
    assertFalse(last().attached().get(0).incomplete());
    refusesAgain(invoice);
  }

  private void refusesAgain(Path invoice) {
    Garage.Run again = attach(invoice);
    assertEquals(Exit.PROBLEMS, again.exit());
    again.says("invoice-501.pdf exists, and is never overwritten");
  }

  /** A sheet of ours stands for an invoice that claims PDF/A-3a and PDF/UA-1, and names its job. */
  @Test
  void claimsOfTheInvoiceAreTrueAfterwards() throws Exception {
    close();
    Path invoice = folder.resolve("invoice.pdf");
    Files.copy(garage.made("501.pdf"), invoice);
    attach(invoice);
    byte[] appended = Garage.bytes(folder.resolve("invoice-501.pdf"));
    assertEquals(List.of(), Conformance.archiveFailures(appended));
    String xmp = metadata(appended);
    assertTrue(xmp.contains("<pdfaid:conformance>B<"), xmp);
    assertFalse(xmp.contains("<pdfuaid:part>"), xmp);
    assertEquals(Set.of("501.json"), Paper.of(appended).attached().keySet());
    Path embedded = folder.resolve("embedded.pdf");
    attach(invoice, "--how", "embed", "--to", embedded.toString());
    byte[] bytes = Garage.bytes(embedded);
    assertEquals(List.of(), Conformance.failures(bytes));
    Map<String, byte[]> attached = Paper.of(bytes).attached();
    assertEquals(Set.of("501.json", "501-2.json", "501-signed.pdf"), attached.keySet());
    assertArrayEquals(Garage.bytes(garage.made("signed/501.pdf")), attached.get("501-signed.pdf"));
    try (PDDocument document = Loader.loadPDF(bytes)) {
      String relations =
          document.getDocumentCatalog().getCOSObject().getDictionaryObject("AF").toString();
      assertEquals(
          3,
          document
              .getDocumentCatalog()
              .getCOSObject()
              .getCOSArray(org.apache.pdfbox.cos.COSName.getPDFName("AF"))
              .size(),
          relations);
    }
  }

  private static String metadata(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      byte[] bytes = document.getDocumentCatalog().getMetadata().toByteArray();
      return new String(bytes, StandardCharsets.UTF_8);
    }
  }

  @Test
  void referenceIsTheElementOfAnElectronicInvoice() throws Exception {
    close();
    Path xml = folder.resolve("reference.xml");
    attach(invoice("RD08 601 and job 501"), "--how", "reference", "--to", xml.toString());
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    Document document =
        factory.newDocumentBuilder().parse(new ByteArrayInputStream(Garage.bytes(xml)));
    assertEquals("AdditionalDocumentReference", document.getDocumentElement().getLocalName());
    assertEquals(last().id(), text(document, "ID"));
    assertEquals("Signed bay sheet " + last().id(), text(document, "DocumentDescription"));
    Element file = element(document, "EmbeddedDocumentBinaryObject");
    assertEquals("application/pdf", file.getAttribute("mimeCode"));
    assertArrayEquals(
        Garage.bytes(garage.made("signed/501.pdf")),
        Base64.getDecoder().decode(file.getTextContent()));
  }

  private static Element element(Document document, String name) {
    return (Element) document.getElementsByTagNameNS(UBL + "CommonBasicComponents-2", name).item(0);
  }

  private static String text(Document document, String name) {
    return element(document, name).getTextContent();
  }

  @Test
  void openSheetNeedsAReasonWhichIsPrintedAboveItsPage() throws Exception {
    Path invoice = invoice("Job 501");
    refuses(invoice, "is not closed; close it, or give --incomplete with the reason");
    Garage.Run run = attach(invoice, "--incomplete", "the customer could not wait");
    assertEquals(Exit.DONE, run.exit(), run.err());
    String words = Paper.of(Garage.bytes(folder.resolve("invoice-501.pdf"))).text();
    assertTrue(
        words.contains(last().id() + " is not complete: the customer could not wait"), words);
    assertTrue(last().attached().get(0).incomplete());
    assertEquals("the customer could not wait", note("incomplete"));
  }

  private String note(String about) {
    return index().people().notes(last().id()).stream()
        .filter(it -> it.about().equals(about))
        .map(PersonalFiles.Note::text)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void invoiceOfSomebodyElseNeedsAReason() throws Exception {
    close();
    Path invoice = invoice("Invoice 1501 for 5010 and X501");
    refuses(invoice, "the invoice names neither the job 501 nor the plate");
    assertEquals(Exit.DONE, attach(invoice, "--anyway", "the fleet's own number").exit());
    assertEquals("the fleet's own number", note("anyway"));
  }

  @Test
  void plateIsFoundHoweverItIsSpaced() throws Exception {
    close();
    String plate = index().plate(last().id()).orElseThrow().replaceAll("[ -]", "");
    assertEquals(Exit.DONE, attach(invoice("Vehicle " + plate)).exit());
  }

  @Test
  void invoicesThatMustNotBeTouchedAreRefused() throws Exception {
    close();
    Path locked = folder.resolve("locked.pdf");
    try (PDDocument document = Loader.loadPDF(Garage.bytes(invoice("Job 501")))) {
      document.protect(new StandardProtectionPolicy("owner", "", new AccessPermission()));
      document.save(locked.toFile());
    }
    refuses(locked, "cannot be used: it is encrypted");
    Path secret = folder.resolve("secret.pdf");
    try (PDDocument document = Loader.loadPDF(Garage.bytes(invoice("Job 501")))) {
      document.protect(new StandardProtectionPolicy("owner", "reader", new AccessPermission()));
      document.save(secret.toFile());
    }
    refuses(secret, "cannot be used: it is encrypted");
    refuses(signed(), "it is signed, and adding to it would break the signature");
    Path words = Files.writeString(folder.resolve("words.pdf"), "no invoice");
    refuses(words, "it is no PDF file that can be read");
    byte[] whole = Garage.bytes(invoice("Job 501"));
    Path torn = Files.write(folder.resolve("torn.pdf"), Arrays.copyOf(whole, 30));
    refuses(torn, "it is no PDF file that can be read");
    assertEquals(Exit.FILES, attach(folder.resolve("absent.pdf")).exit());
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aPipeIsNoInvoice() throws Exception {
    close();
    Path pipe = folder.resolve("pipe.pdf");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    Garage.Run run = attach(pipe);
    assertEquals(Exit.FILES, run.exit(), run.out());
    run.says("pipe.pdf: it is no regular file");
  }

  private Path signed() throws IOException {
    Path file = folder.resolve("signed-invoice.pdf");
    try (PDDocument document = Loader.loadPDF(Garage.bytes(invoice("Job 501")))) {
      PDSignature signature = new PDSignature();
      signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
      signature.setSubFilter(PDSignature.SUBFILTER_ADBE_PKCS7_DETACHED);
      document.addSignature(signature, content -> new byte[] {1, 2, 3});
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.saveIncremental(bytes);
      Files.write(file, bytes.toByteArray());
    }
    return file;
  }

  @Test
  void sheetThatIsNotBackOrWasChangedIsRefused() throws Exception {
    close();
    Garage.Run missing =
        run("attach", "502", "--invoice", invoice("Job 502").toString(), "--incomplete", "later");
    assertEquals(Exit.PROBLEMS, missing.exit());
    missing.says("has not come back");
    Files.write(garage.made("signed/501.pdf"), new byte[] {1});
    refuses(invoice("Job 501"), "is not as it was collected");
  }

  @Test
  void commandLineThatIsWrongIsSaid() throws Exception {
    Path invoice = invoice("Job 501");
    assertEquals(Exit.USAGE, run("attach", "501").exit());
    assertEquals(Exit.USAGE, run("attach", "599", "--invoice", invoice.toString()).exit());
    Garage.Run how = attach(invoice, "--how", "staple");
    assertEquals(Exit.USAGE, how.exit());
    how.says("one of append, embed, reference");
    assertEquals(Exit.USAGE, attach(invoice, "--incomplete", "x".repeat(91)).exit());
  }

  /** Of each choice the other box is marked. */
}
