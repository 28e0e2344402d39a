package baysheet.pdf;

import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/** The metadata packet (ISO 16684-1) that names title, dates and the standards a file keeps to. */
final class Xmp {
  private Xmp() {}

  static byte[] packet(PdfInfo info, String producer, Archive.Claim claim) {
    String date = DateTimeFormatter.ISO_INSTANT.format(info.date().truncatedTo(ChronoUnit.SECONDS));
    StringBuilder xmp = new StringBuilder(4096);
    xmp.append("<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n");
    xmp.append("<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n");
    xmp.append("<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n");
    xmp.append(dublinCore(info));
    xmp.append(dates(info, producer, date));
    xmp.append(
        switch (claim) {
          case BOTH -> archive("A") + accessible() + extension();
          case ARCHIVE -> archive("B");
          case ACCESSIBLE -> accessible();
        });
    xmp.append("</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>\n");
    return xmp.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String dublinCore(PdfInfo info) {
    return description("dc", "http://purl.org/dc/elements/1.1/")
        + "<dc:format>application/pdf</dc:format>\n"
        + alternative("dc:title", info.title())
        + "<dc:creator><rdf:Seq><rdf:li>"
        + escaped(info.author())
        + "</rdf:li></rdf:Seq></dc:creator>\n"
        + alternative("dc:description", info.subject())
        + "<dc:language><rdf:Bag><rdf:li>"
        + escaped(info.language())
        + "</rdf:li></rdf:Bag></dc:language>\n"
        + "</rdf:Description>\n";
  }

  private static String alternative(String name, String value) {
    String language = "<rdf:Alt><rdf:li xml:lang=\"x-default\">";
    return element(name, language + escaped(value) + "</rdf:li></rdf:Alt>");
  }

  private static String dates(PdfInfo info, String producer, String date) {
    return description("xmp", "http://ns.adobe.com/xap/1.0/")
        + simple("xmp:CreatorTool", producer)
        + simple("xmp:CreateDate", date)
        + simple("xmp:ModifyDate", date)
        + simple("xmp:MetadataDate", date)
        + "</rdf:Description>\n"
        + description("pdf", "http://ns.adobe.com/pdf/1.3/")
        + simple("pdf:Producer", producer)
        + simple("pdf:Keywords", String.join(", ", info.keywords()))
        + "</rdf:Description>\n";
  }

  private static String archive(String level) {
    return description("pdfaid", "http://www.aiim.org/pdfa/ns/id/")
        + simple("pdfaid:part", "3")
        + simple("pdfaid:conformance", level)
        + "</rdf:Description>\n";
  }

  private static String accessible() {
    return description("pdfuaid", "http://www.aiim.org/pdfua/ns/id/")
        + simple("pdfuaid:part", "1")
        + "</rdf:Description>\n";
  }

  /**
   * PDF/A knows nothing of the PDF/UA identifier, so it must be described (ISO 19005-3, 6.6.2.3).
   */
  private static String extension() {
    return """
        <rdf:Description rdf:about=""
          xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
          xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
          xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
        <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
        <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
        <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
        <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
        <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
        <pdfaProperty:name>part</pdfaProperty:name>
        <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
        <pdfaProperty:category>internal</pdfaProperty:category>
        <pdfaProperty:description>Part of ISO 14289</pdfaProperty:description>
        </rdf:li></rdf:Seq></pdfaSchema:property>
        </rdf:li></rdf:Bag></pdfaExtension:schemas>
        </rdf:Description>
        """;
  }

  private static String description(String prefix, String namespace) {
    return "<rdf:Description rdf:about=\"\" xmlns:" + prefix + "=\"" + namespace + "\">\n";
  }

  private static String simple(String name, String value) {
    return element(name, escaped(value));
  }

  private static String element(String name, String content) {
    return "<" + name + ">" + content + "</" + name + ">\n";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  /** The text of an element, as it was before it was escaped. */
  static String unescaped(String content) {
    return content.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&");
  }
}
