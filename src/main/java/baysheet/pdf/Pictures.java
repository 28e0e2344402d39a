package baysheet.pdf;

import baysheet.layout.Item;
import baysheet.layout.Page;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/** The pictures of a page, as its resources. */
final class Pictures {
  private static final int BITS = 8;

  private Pictures() {}

  /** What a picture is called in its page's content, by its number on the page. */
  static String name(int number) {
    return "I" + number;
  }

  /**
   * The resources of a page: those that all pages share, and its own pictures.
   *
   * @param space the grey that pictures are in
   */
  static COSDictionary resources(Page page, COSDictionary shared, HeldStream space) {
    List<Item.Picture> pictures =
        page.items().stream()
            .filter(Item.Picture.class::isInstance)
            .map(Item.Picture.class::cast)
            .toList();
    if (pictures.isEmpty()) {
      return shared;
    }
    COSDictionary objects = DirectObjects.dictionary();
    for (int i = 0; i < pictures.size(); i++) {
      objects.setItem(COSName.getPDFName(name(i)), picture(pictures.get(i), space));
    }
    COSDictionary own = new COSDictionary(shared);
    own.setItem(COSName.XOBJECT, objects);
    // The page can be taken into a file in which nothing else says what grey is.
    COSDictionary spaces = DirectObjects.dictionary();
    spaces.setItem(COSName.getPDFName("DefaultGray"), DirectObjects.array(COSName.ICCBASED, space));
    own.setItem(COSName.COLORSPACE, spaces);
    return own;
  }

  private static HeldStream picture(Item.Picture picture, HeldStream space) {
    HeldStream stream = Streams.plain(picture.jpeg());
    stream.setItem(COSName.TYPE, COSName.XOBJECT);
    stream.setItem(COSName.SUBTYPE, COSName.IMAGE);
    stream.setItem(COSName.FILTER, COSName.DCT_DECODE);
    stream.setInt(COSName.WIDTH, picture.wide());
    stream.setInt(COSName.HEIGHT, picture.high());
    stream.setInt(COSName.BITS_PER_COMPONENT, BITS);
    stream.setItem(COSName.COLORSPACE, DirectObjects.array(COSName.ICCBASED, space));
    return stream;
  }
}
