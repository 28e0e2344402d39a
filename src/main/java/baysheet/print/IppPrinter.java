package baysheet.print;

import baysheet.print.IppMessage.Kind;
import baysheet.print.IppMessage.Request;
import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpTimeoutException;
import java.nio.file.Files;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** A printer that is reached by the Internet Printing Protocol over HTTP (RFC 8010, RFC 8011). */
final class IppPrinter implements Printer {
  private static final int PORT = 631;
  private static final Duration CONNECT = Duration.ofSeconds(10);
  private static final Duration ANSWER = Duration.ofSeconds(60);

  /** A page takes a small printer some seconds, and the one before it is all it waits for. */
  private static final long BUSY_MILLIS = 1000;

  private static final int TRIES = 90;
  private static final String PDF = "application/pdf";
  private static final String SCALING = "print-scaling";
  private static final String USER = "baysheet";

  private final String address;
  private final URI http;
  private final HttpClient client;
  private int requests;

  IppPrinter(String address) {
    this.address = address;
    this.http = http(address);
    // Printers do not understand the offer of another version of HTTP.
    this.client =
        HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .connectTimeout(CONNECT)
            .build();
  }

  private static URI http(String address) {
    URI ipp = URI.create(address);
    if (ipp.getHost() == null) {
      throw new IllegalArgumentException(address + " names no host");
    }
    String scheme = ipp.getScheme().equals("ipps") ? "https" : "http";
    int port = ipp.getPort() < 0 ? PORT : ipp.getPort();
    String path = ipp.getRawPath() == null || ipp.getRawPath().isEmpty() ? "/" : ipp.getRawPath();
    return URI.create(scheme + "://" + ipp.getHost() + ":" + port + path);
  }

  @Override
  public List<String> print(Document document) throws IOException {
    askWhetherItWill();
    byte[] pdf = Files.readAllBytes(document.file());
    IppMessage answer = send(job(document), pdf);
    for (int tries = 1; answer.code() == IppMessage.BUSY && tries < TRIES; tries++) {
      pause();
      answer = send(job(document), pdf);
    }
    if (!answer.isSuccessful()) {
      throw refused(answer);
    }
    List<String> otherwise = new ArrayList<>();
    if (answer.unsupported().contains(SCALING)) {
      otherwise.add(
          "the printer may scale the page: switch off \"fit to page\" at the printer, for scans need"
              + " the true size");
    }
    if (answer.unsupported().contains("media")) {
      otherwise.add("the printer does not say that it has the paper " + document.media());
    }
    return otherwise;
  }

  private Request job(Document document) throws IOException {
    return request(IppMessage.PRINT_JOB)
        .put(Kind.NAME, "job-name", document.title())
        .put(Kind.MIME_TYPE, "document-format", PDF)
        .group(Request.JOB)
        .put(Kind.KEYWORD, SCALING, "none")
        .put(Kind.KEYWORD, "sides", "one-sided")
        .put(Kind.KEYWORD, "media", document.media());
  }

  /** Small printers take one document after the other. */
  private static void pause() throws IOException {
    try {
      Thread.sleep(BUSY_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted while the printer was busy", e);
    }
  }

  private Request request(int operation) throws IOException {
    return new Request(operation, ++requests)
        .group(Request.OPERATION)
        .put(Kind.CHARSET, "attributes-charset", "utf-8")
        .put(Kind.LANGUAGE, "attributes-natural-language", "en")
        .put(Kind.URI, "printer-uri", address)
        .put(Kind.NAME, "requesting-user-name", USER);
  }

  /**
   * A printer that takes no jobs or no PDF files is distinguished from one that fails to print
   * ours.
   */
  private void askWhetherItWill() throws IOException {
    IppMessage answer =
        send(
            request(IppMessage.GET_PRINTER_ATTRIBUTES)
                .put(
                    Kind.KEYWORD,
                    "requested-attributes",
                    "printer-is-accepting-jobs",
                    "printer-state-reasons",
                    "document-format-supported"),
            new byte[0]);
    if (!answer.isSuccessful()) {
      throw refused(answer);
    }
    if (answer.values("printer-is-accepting-jobs").contains("false")) {
      throw new IOException(
          "it takes no jobs at present ("
              + String.join(", ", answer.values("printer-state-reasons"))
              + "); look at its display");
    }
    List<String> formats = answer.values("document-format-supported");
    if (!formats.isEmpty() && !formats.contains(PDF)) {
      throw new IOException(
          "it does not print PDF files by itself; set it up as a queue of this machine and give the"
              + " name of the queue");
    }
  }

  private IppMessage send(Request request, byte[] document) throws IOException {
    HttpRequest post =
        HttpRequest.newBuilder(http)
            .timeout(ANSWER)
            .header("Content-Type", "application/ipp")
            .POST(
                BodyPublishers.concat(
                    BodyPublishers.ofByteArray(request.bytes()),
                    BodyPublishers.ofByteArray(document)))
            .build();
    try {
      HttpResponse<byte[]> answer = client.send(post, HttpResponse.BodyHandlers.ofByteArray());
      if (answer.statusCode() != 200) {
        throw new IOException(
            "it answers with HTTP status "
                + answer.statusCode()
                + "; compare the path of its address with its network page, often /ipp/print");
      }
      return IppMessage.read(new ByteArrayInputStream(answer.body()));
    } catch (ConnectException | HttpTimeoutException e) {
      throw new IOException(
          "nothing answers there; see that the printer is switched on and in this network", e);
    } catch (EOFException e) {
      throw new IOException("what answers there is no printer", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted while the printer took the document", e);
    }
  }

  private static IOException refused(IppMessage answer) {
    List<String> message = answer.values("status-message");
    return new IOException(
        "it refused the document: status 0x%04x%s"
            .formatted(answer.code(), message.isEmpty() ? "" : ", \"" + message.get(0) + '"'));
  }
}
