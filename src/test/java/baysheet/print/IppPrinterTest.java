package baysheet.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The exchange with a printer, byte by byte after RFC 8010, and its refusals. */
class IppPrinterTest {
  private static final byte[] PDF = "%PDF-1.7 a page".getBytes(StandardCharsets.US_ASCII);

  /** A printer's answers, recorded as RFC 8010 appendix A writes them. */
  private static final byte[] READY =
      answer(
          0x0000,
          0x04,
          "22 printer-is-accepting-jobs 01",
          "49 document-format-supported @application/pdf");

  private static final byte[] TAKEN = answer(0x0000, 0x02, "21 job-id 00000007");

  @TempDir private Path folder;
  private final List<byte[]> received = new ArrayList<>();
  private final Deque<byte[]> answers = new ArrayDeque<>();
  private HttpServer server;
  private int status = 200;

  @BeforeEach
  void open() throws IOException {
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext("/ipp/print", this::answer);
    server.start();
  }

  @AfterEach
  void close() {
    server.stop(0);
  }

  private void answer(HttpExchange exchange) throws IOException {
    received.add(exchange.getRequestBody().readAllBytes());
    assertEquals("application/ipp", exchange.getRequestHeaders().getFirst("Content-Type"));
    byte[] next = answers.remove();
    exchange.sendResponseHeaders(status, next.length);
    exchange.getResponseBody().write(next);
    exchange.close();
  }

  private String address() {
    return "ipp://localhost:" + server.getAddress().getPort() + "/ipp/print";
  }

  private List<String> print() throws IOException {
    Path file = Files.write(folder.resolve("501.pdf"), PDF);
    return Printer.of(address())
        .print(new Printer.Document("501-A-0d313a", "iso_a4_210x297mm", file));
  }

  @Test
  void theJobIsSentAsTheStandardWritesIt() throws IOException {
    answers.add(READY);
    answers.add(TAKEN);
    assertEquals(List.of(), print());
    assertEquals(2, received.size());
    ByteArrayOutputStream expected = new ByteArrayOutputStream();
    // Version 1.1, Print-Job, second request; then the groups with their tags.
    expected.write(new byte[] {1, 1, 0, 2, 0, 0, 0, 2, 1});
    attribute(expected, 0x47, "attributes-charset", "utf-8");
    attribute(expected, 0x48, "attributes-natural-language", "en");
    attribute(expected, 0x45, "printer-uri", address());
    attribute(expected, 0x42, "requesting-user-name", "baysheet");
    attribute(expected, 0x42, "job-name", "501-A-0d313a");
    attribute(expected, 0x49, "document-format", "application/pdf");
    expected.write(2);
    attribute(expected, 0x44, "print-scaling", "none");
    attribute(expected, 0x44, "sides", "one-sided");
    attribute(expected, 0x44, "media", "iso_a4_210x297mm");
    expected.write(3);
    expected.write(PDF);
    assertArrayEquals(expected.toByteArray(), received.get(1));
  }

  @Test
  void thePrinterIsAskedFirstWhatItTakes() throws IOException {
    answers.add(READY);
    answers.add(TAKEN);
    print();
    byte[] first = received.get(0);
    // Get-Printer-Attributes.
    assertEquals(0x0B, first[3]);
    assertTrue(new String(first, StandardCharsets.US_ASCII).contains("document-format-supported"));
  }

  @Test
  void aBusyPrinterIsAskedAgain() throws IOException {
    answers.add(READY);
    answers.add(answer(0x0507, 0x01, "41 status-message @busy"));
    answers.add(TAKEN);
    print();
    assertEquals(3, received.size());
  }

  @Test
  void aPrinterThatMayScaleIsReported() throws IOException {
    answers.add(READY);
    answers.add(answer(0x0001, 0x05, "44 print-scaling @none"));
    List<String> otherwise = print();
    assertEquals(1, otherwise.size());
    assertTrue(otherwise.get(0).contains("fit to page"), otherwise.toString());
  }

  @Test
  void aRefusalHasThePrintersReason() {
    answers.add(READY);
    answers.add(answer(0x040A, 0x01, "41 status-message @no such format"));
    String message = assertThrows(IOException.class, this::print).getMessage();
    assertTrue(message.contains("0x040a"), message);
    assertTrue(message.contains("no such format"), message);
  }

  @Test
  void aPrinterThatTakesNoJobsIsSaid() {
    answers.add(
        answer(
            0x0000,
            0x04,
            "22 printer-is-accepting-jobs 00",
            "44 printer-state-reasons @media-empty-error"));
    String message = assertThrows(IOException.class, this::print).getMessage();
    assertTrue(message.contains("media-empty-error"), message);
    assertEquals(1, received.size());
  }

  @Test
  void aPrinterWithoutPdfIsSaid() {
    answers.add(answer(0x0000, 0x04, "49 document-format-supported @image/urf"));
    String message = assertThrows(IOException.class, this::print).getMessage();
    assertTrue(message.contains("does not print PDF"), message);
  }

  @Test
  void whatIsNoPrinterIsSaid() {
    answers.add(new byte[] {'<', 'h'});
    String message = assertThrows(IOException.class, this::print).getMessage();
    assertTrue(message.contains("no printer"), message);
  }

  @Test
  void aWrongPathIsSaid() {
    status = 404;
    answers.add(new byte[] {'n'});
    String message = assertThrows(IOException.class, this::print).getMessage();
    assertTrue(message.contains("HTTP status 404"), message);
  }

  private static void attribute(ByteArrayOutputStream out, int tag, String name, String value)
      throws IOException {
    DataOutputStream data = new DataOutputStream(out);
    data.writeByte(tag);
    data.writeShort(name.length());
    data.writeBytes(name);
    data.writeShort(value.length());
    data.writeBytes(value);
  }

  /**
   * A response with one group.
   *
   * @param attributes tag in hexadecimal, name, and a value in hexadecimal or, behind an @, as text
   */
  private static byte[] answer(int code, int group, String... attributes) {
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      DataOutputStream out = new DataOutputStream(bytes);
      out.writeShort(0x0101);
      out.writeShort(code);
      out.writeInt(1);
      out.writeByte(group);
      for (String attribute : attributes) {
        String[] parts = attribute.split(" ", 3);
        byte[] value =
            parts[2].startsWith("@")
                ? parts[2].substring(1).getBytes(StandardCharsets.US_ASCII)
                : hexadecimal(parts[2]);
        out.writeByte(Integer.parseInt(parts[0], 16));
        out.writeShort(parts[1].length());
        out.writeBytes(parts[1]);
        out.writeShort(value.length);
        out.write(value);
      }
      out.writeByte(3);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new AssertionError("memory fails", e);
    }
  }

  private static byte[] hexadecimal(String digits) {
    byte[] bytes = new byte[digits.length() / 2];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = (byte) Integer.parseInt(digits.substring(2 * i, 2 * i + 2), 16);
    }
    return bytes;
  }
}
