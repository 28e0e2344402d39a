package baysheet.pdf;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;

/** Attaches files to a document as a whole (ISO 19005-3, annex E). */
record AttachedFiles(COSDictionary catalog, PdfInfo info) {
  private static final COSName AF = COSName.getPDFName("AF");

  void attach(List<Attachment> attachments) {
    if (attachments.isEmpty()) {
      return;
    }
    // A name tree is sorted by its keys.
    Map<String, COSDictionary> byName = new TreeMap<>();
    COSArray associated = DirectObjects.array();
    for (Attachment attachment : attachments) {
      COSDictionary file = file(attachment);
      if (byName.putIfAbsent(attachment.name(), file) != null) {
        throw new IllegalArgumentException("two attachments named " + attachment.name());
      }
      associated.add(file);
    }
    COSArray names = DirectObjects.array();
    byName.forEach(
        (name, file) -> {
          names.add(new COSString(name));
          names.add(file);
        });
    catalog.setItem(COSName.NAMES, holding(COSName.EMBEDDED_FILES, holding(COSName.NAMES, names)));
    catalog.setItem(AF, associated);
  }

  private COSDictionary file(Attachment attachment) {
    HeldStream content = Streams.compressed(attachment.content());
    content.setItem(COSName.TYPE, COSName.getPDFName("EmbeddedFile"));
    content.setItem(COSName.SUBTYPE, COSName.getPDFName(attachment.mime()));
    COSDictionary params = DirectObjects.dictionary();
    params.setInt(COSName.SIZE, attachment.content().length);
    params.setString(COSName.getPDFName("ModDate"), Archive.date(info.date()));
    content.setItem(COSName.PARAMS, params);
    COSDictionary embedded = DirectObjects.dictionary();
    embedded.setItem(COSName.F, content);
    embedded.setItem(COSName.UF, content);
    COSDictionary file = new COSDictionary();
    file.setItem(COSName.TYPE, COSName.FILESPEC);
    file.setString(COSName.F, attachment.name());
    file.setString(COSName.UF, attachment.name());
    file.setString(COSName.DESC, attachment.description());
    file.setItem(COSName.EF, embedded);
    file.setItem(
        COSName.getPDFName("AFRelationship"),
        COSName.getPDFName(attachment.relationship().pdfName()));
    return file;
  }

  private static COSDictionary holding(COSName key, COSBase value) {
    COSDictionary dictionary = DirectObjects.dictionary();
    dictionary.setItem(key, value);
    return dictionary;
  }
}
