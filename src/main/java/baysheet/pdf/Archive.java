package baysheet.pdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/** Gives a document everything that archives and reading aloud ask of it beside its pages. */
record Archive(PdfInfo info, Claim claim) {
  /** The standards that a file keeps to. */
  enum Claim {
    /** PDF/A-3a and PDF/UA-1. */
    BOTH,
    /** PDF/A-3b: handwriting cannot be read aloud. */
    ARCHIVE,
    /** PDF/UA-1: a form is not filed, what was filled in is. */
    ACCESSIBLE
  }

  /** Without a version: an upgrade that changes nothing on the page leaves the bytes alone. */
  static final String PRODUCER = "baysheet";

  private static final DateTimeFormatter PDF_DATE =
      DateTimeFormatter.ofPattern("'D:'uuuuMMddHHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

  private static final byte[] PROFILE = Streams.smallest(GrayProfile.bytes());

  /** What the catalog says for the whole document. */
  void describe(COSDictionary catalog) {
    catalog.setString(COSName.LANG, info.language());
    catalog.setItem(COSName.MARK_INFO, flag("Marked"));
    catalog.setItem(COSName.VIEWER_PREFERENCES, flag("DisplayDocTitle"));
    catalog.setItem(COSName.METADATA, metadata());
    catalog.setItem(COSName.OUTPUT_INTENTS, outputIntents());
  }

  /** The document information, which says again what the metadata say. */
  COSDictionary facts() {
    COSDictionary facts = new COSDictionary();
    facts.setString(COSName.TITLE, info.title());
    facts.setString(COSName.AUTHOR, info.author());
    facts.setString(COSName.SUBJECT, info.subject());
    facts.setString(COSName.KEYWORDS, String.join(", ", info.keywords()));
    facts.setString(COSName.CREATOR, PRODUCER);
    facts.setString(COSName.PRODUCER, PRODUCER);
    facts.setString(COSName.CREATION_DATE, date(info.date()));
    facts.setString(COSName.MOD_DATE, date(info.date()));
    return facts;
  }

  static String date(Instant date) {
    return PDF_DATE.format(date);
  }

  private HeldStream metadata() {
    HeldStream stream = Streams.plain(Xmp.packet(info, PRODUCER, claim));
    stream.setItem(COSName.TYPE, COSName.METADATA);
    stream.setItem(COSName.SUBTYPE, COSName.getPDFName("XML"));
    return stream;
  }

  private COSArray outputIntents() {
    COSDictionary intent = DirectObjects.dictionary();
    intent.setItem(COSName.TYPE, COSName.getPDFName("OutputIntent"));
    intent.setItem(COSName.S, COSName.getPDFName("GTS_PDFA1"));
    intent.setString(COSName.OUTPUT_CONDITION_IDENTIFIER, "Custom");
    intent.setString(COSName.INFO, "Grey, gamma 2.2");
    intent.setItem(COSName.DEST_OUTPUT_PROFILE, profile());
    return DirectObjects.array(intent);
  }

  /** What grey is. */
  static HeldStream profile() {
    HeldStream profile = Streams.packed(PROFILE);
    profile.setInt(COSName.N, 1);
    return profile;
  }

  private static COSDictionary flag(String name) {
    COSDictionary dictionary = DirectObjects.dictionary();
    dictionary.setBoolean(COSName.getPDFName(name), true);
    return dictionary;
  }

  /** FNV-1a, 64 bits: any seed gives a number, and always the same one. */
  byte[] id() {
    long hash = 0xCBF29CE484222325L;
    for (byte b : info.seed().getBytes(StandardCharsets.UTF_8)) {
      hash = (hash ^ b & 0xFF) * 0x100000001B3L;
    }
    return ByteBuffer.allocate(Long.BYTES).putLong(hash).array();
  }
}
