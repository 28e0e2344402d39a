package baysheet.cli;

import java.util.Base64;

/**
 * The reference of an electronic invoice to a signed sheet: group BG-24 of EN 16931-1, in the
 * syntax of UBL 2.1 (CEN/TS 16931-3-2).
 */
final class InvoiceReference {
  private InvoiceReference() {}

  /**
   * The element that goes into an invoice.
   *
   * @param id of the sheet, BT-122
   * @param name of the file that is attached, BT-125
   */
  static String xml(String id, String name, byte[] pdf) {
    return """
    <cac:AdditionalDocumentReference
        xmlns:cac="urn:oasis:names:specification:ubl:schema:xsd:CommonAggregateComponents-2"
        xmlns:cbc="urn:oasis:names:specification:ubl:schema:xsd:CommonBasicComponents-2">
      <cbc:ID>%s</cbc:ID>
      <cbc:DocumentDescription>Signed bay sheet %s</cbc:DocumentDescription>
      <cac:Attachment>
        <cbc:EmbeddedDocumentBinaryObject mimeCode="application/pdf" filename="%s">%s</cbc:EmbeddedDocumentBinaryObject>
      </cac:Attachment>
    </cac:AdditionalDocumentReference>
    """
        .formatted(
            escaped(id), escaped(id), escaped(name), Base64.getEncoder().encodeToString(pdf));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
  }
}
