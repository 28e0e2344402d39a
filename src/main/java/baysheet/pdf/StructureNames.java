package baysheet.pdf;

import baysheet.layout.Tag;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;

/** The standard structure types (ISO 32000-1, 14.8.4) by the names they have in a file. */
final class StructureNames {
  private static final Map<Tag.Type, String> NAMES = new EnumMap<>(Tag.Type.class);

  static {
    NAMES.put(Tag.Type.DOCUMENT, "Document");
    NAMES.put(Tag.Type.H1, "H1");
    NAMES.put(Tag.Type.H2, "H2");
    NAMES.put(Tag.Type.H3, "H3");
    NAMES.put(Tag.Type.P, "P");
    NAMES.put(Tag.Type.L, "L");
    NAMES.put(Tag.Type.LI, "LI");
    NAMES.put(Tag.Type.LBL, "Lbl");
    NAMES.put(Tag.Type.LBODY, "LBody");
    NAMES.put(Tag.Type.TABLE, "Table");
    NAMES.put(Tag.Type.THEAD, "THead");
    NAMES.put(Tag.Type.TBODY, "TBody");
    NAMES.put(Tag.Type.TR, "TR");
    NAMES.put(Tag.Type.TH_COLUMN, "TH");
    NAMES.put(Tag.Type.TH_ROW, "TH");
    NAMES.put(Tag.Type.TD, "TD");
    NAMES.put(Tag.Type.FIGURE, "Figure");
    NAMES.put(Tag.Type.FORM, "Form");
  }

  private StructureNames() {}

  static String name(Tag.Type type) {
    return NAMES.get(type);
  }

  static COSName cosName(Tag.Type type) {
    return COSName.getPDFName(name(type));
  }
}
