package baysheet.bench;

import baysheet.layout.FontFile;
import baysheet.layout.Fonts;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.yaml.snakeyaml.Yaml;

/**
 * What somebody would write instead: the same files by SnakeYAML, a FreeMarker template that lists
 * the steps of all procedures the job comes to and the book's figures, and openhtmltopdf. It plans,
 * computes and proves nothing, and finds no size at which a page is full.
 */
final class Instead {
  private static final String PAGE =
      """
      <html><head><style>
      @page { size: A4; margin: 8mm }
      body { font-family: sheet; font-size: 6pt; line-height: 1.172 }
      table { width: 100%; border-collapse: collapse }
      td { border: 0.5pt solid black; padding: 1pt; text-align: left; vertical-align: top }
      .box { display: inline-block; width: 10pt; height: 10pt; border: 0.5pt solid black }
      </style></head><body>
      <h1>${job.job?c} ${job.customer} ${job.vehicle.plate}</h1>
      <#list procedures as procedure>
      <h2>${procedure.title}</h2>
      <#list ["open", "work", "close"] as part>
      <#list procedure[part]! as step>
      <p><span class="box"></span> ${step.do?xml}<#if step.good??>: OK if ${step.good?xml}</#if></p>
      </#list></#list></#list>
      <table>
      <#list fasteners as name, values>
      <tr><td>${name?xml}</td><td>${(values.torque!"")?xml}</td><td>${(values.thread!"")?xml}</td>
      <td><span class="box"></span></td></tr>
      </#list></table></body></html>
      """;

  private final Path shop;
  private final Template template;
  private final byte[] regular = FontFile.trueType(Fonts.REGULAR);
  private final byte[] bold = FontFile.trueType(Fonts.BOLD);

  Instead(Path shop) throws IOException {
    XRLog.setLoggingEnabled(false);
    this.shop = shop;
    this.template = new Template("page", PAGE, new Configuration(Configuration.VERSION_2_3_34));
  }

  byte[] write(Path jobFile) throws IOException {
    Map<String, Object> job = yaml(jobFile);
    String book = (String) ((Map<?, ?>) job.get("vehicle")).get("book");
    Map<String, Object> figures = yaml(shop.resolve("vehicles").resolve(book + ".yaml"));
    List<Object> procedures = new ArrayList<>();
    for (Object work : (List<?>) job.get("work")) {
      add(((String) work).replaceFirst(" at .*", ""), procedures);
    }
    StringWriter html = new StringWriter();
    try {
      Object fasteners = figures.getOrDefault("fasteners", Map.of());
      template.process(
          Map.of("job", job, "procedures", procedures, "fasteners", flat(fasteners)), html);
    } catch (TemplateException e) {
      throw new IOException(e);
    }
    return pdf(html.toString());
  }

  /** A procedure behind those that give access to it. */
  private void add(String name, List<Object> procedures) throws IOException {
    Map<String, Object> procedure = yaml(shop.resolve("procedures").resolve(name + ".yaml"));
    if (procedure.get("behind") instanceof List<?> behind) {
      for (Object access : behind) {
        Path file = shop.resolve("procedures").resolve(access + ".yaml");
        if (Files.exists(file)) {
          add(access.toString(), procedures);
        }
      }
    }
    procedures.add(procedure);
  }

  /** Fasteners by name, without the places under which a book has them. */
  private static Map<String, Object> flat(Object fasteners) {
    Map<String, Object> flat = new LinkedHashMap<>();
    ((Map<?, ?>) fasteners)
        .forEach(
            (key, value) -> {
              if (value instanceof Map<?, ?> values && values.containsKey("torque")) {
                flat.put(key.toString(), values);
              } else if (value instanceof Map<?, ?> place) {
                flat.putAll(flat(place));
              }
            });
    flat.values().removeIf(values -> !(((Map<?, ?>) values).get("torque") instanceof String));
    return flat;
  }

  private byte[] pdf(String html) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream(65_536);
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFont(() -> new ByteArrayInputStream(regular), "sheet");
    builder.useFont(
        () -> new ByteArrayInputStream(bold),
        "sheet",
        700,
        PdfRendererBuilder.FontStyle.NORMAL,
        true);
    builder.withHtmlContent(html, null);
    builder.toStream(out);
    builder.run();
    return out.toByteArray();
  }

  private static Map<String, Object> yaml(Path file) throws IOException {
    try (Stream<String> lines = Files.lines(file)) {
      return new Yaml().load(String.join("\n", lines.toList()));
    }
  }
}
