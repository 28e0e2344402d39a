package baysheet.pdf;

import baysheet.layout.Tag;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;

/** The standard structure types (ISO 32000-1, 14.8.4) by the names they have in a file. */
final class StructureNames {
  private static final Map<Tag.Type, COSName> NAMES = new EnumMap<>(Tag.Type.class);

  static {
    NAMES.put(Tag.Type.DOCUMENT, COSName.getPDFName("Document"));
    NAMES.put(Tag.Type.H1, COSName.getPDFName("H1"));
    NAMES.put(Tag.Type.H2, COSName.getPDFName("H2"));
    NAMES.put(Tag.Type.H3, COSName.getPDFName("H3"));
    NAMES.put(Tag.Type.P, COSName.getPDFName("P"));
    NAMES.put(Tag.Type.L, COSName.getPDFName("L"));
    NAMES.put(Tag.Type.LI, COSName.getPDFName("LI"));
    NAMES.put(Tag.Type.LBL, COSName.getPDFName("Lbl"));
    NAMES.put(Tag.Type.LBODY, COSName.getPDFName("LBody"));
    NAMES.put(Tag.Type.TABLE, COSName.getPDFName("Table"));
    NAMES.put(Tag.Type.THEAD, COSName.getPDFName("THead"));
    NAMES.put(Tag.Type.TBODY, COSName.getPDFName("TBody"));
    NAMES.put(Tag.Type.TR, COSName.getPDFName("TR"));
    NAMES.put(Tag.Type.TH_COLUMN, COSName.getPDFName("TH"));
    NAMES.put(Tag.Type.TH_ROW, COSName.getPDFName("TH"));
    NAMES.put(Tag.Type.TD, COSName.getPDFName("TD"));
    NAMES.put(Tag.Type.FIGURE, COSName.getPDFName("Figure"));
    NAMES.put(Tag.Type.FORM, COSName.getPDFName("Form"));
  }

  private StructureNames() {}

  static String name(Tag.Type type) {
    return cosName(type).getName();
  }

  static COSName cosName(Tag.Type type) {
    return NAMES.get(type);
  }
}
