package baysheet.scan;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * A file from a scanner: a PDF, a TIFF of one page or many, a PNG or a JPEG. One page at a time is
 * in memory, and none that is larger than a scan of a sheet can be.
 */
public final class ScanFile {
  /** A sheet of A4 at 600 dots an inch has 35 million pixels. */
  static final long MOST_PIXELS = 40_000_000;

  /** A year's sheets; more is no stack that anybody fed. */
  static final int MOST_PAGES = 2_000;

  /** What is drawn and no picture is drawn as finely as a scanner would see it. */
  private static final int DRAWN_DPI = 200;

  /** Forms in forms in forms: no scanner writes even one. */
  private static final int DEEPEST = 4;

  private final Path file;
  private final Pages pages;

  /** What the taker of the pages threw; no fault of the file. */
  private RuntimeException thrown;

  /** Takes pages as they are read. */
  public interface Pages {
    /** How many pages the file has, before the first of them. */
    default void count(int pages) {}

    /**
     * A page.
     *
     * @param number from 1
     */
    void page(int number, Grey picture);

    /**
     * A page of a form that was filled in on a screen.
     *
     * @param picture the page as drawn, with what was filled in
     */
    default void form(int number, Grey picture, FilledForm form) {
      page(number, picture);
    }

    /**
     * A page, or the rest of the file, that cannot be read.
     *
     * @param number from 1; 0 for the file as a whole
     * @param reason as a clause
     */
    void unread(int number, String reason);
  }

  private ScanFile(Path file, Pages pages) {
    this.file = file;
    this.pages = pages;
  }

  /** Reads all pages of a file; whatever is wrong with it is said to {@code pages}. */
  public static void read(Path file, Pages pages) {
    ScanFile scan = new ScanFile(file, pages);
    try {
      scan.read();
    } catch (InvalidPasswordException e) {
      pages.unread(0, "the file cannot be read: it is encrypted, and needs a password");
    } catch (IOException | RuntimeException | OutOfMemoryError | StackOverflowError e) {
      // The libraries throw all sorts of things at a file that is broken; none may stop the rest.
      if (e == scan.thrown) {
        throw scan.thrown;
      }
      pages.unread(0, "the file cannot be read: " + said(e));
    }
  }

  /** What the libraries say of a broken file is for programmers. */
  private static String said(Throwable e) {
    if (e instanceof OutOfMemoryError || e instanceof StackOverflowError) {
      return "it needs more memory than there is";
    }
    return e instanceof Unfit ? e.getMessage() : "it is damaged, or not a PDF, TIFF, PNG or JPEG";
  }

  /** What we found out ourselves, as a clause. */
  private static final class Unfit extends IOException {
    private static final long serialVersionUID = 1;

    Unfit(String why) {
      super(why);
    }
  }

  private void read() throws IOException {
    if (Files.isDirectory(file)) {
      throw new Unfit("it is a folder");
    }
    if (!Files.exists(file)) {
      throw new Unfit("there is no such file");
    }
    // Reading a pipe or a device may never end.
    if (!Files.isRegularFile(file)) {
      throw new Unfit("it is neither a file nor a folder");
    }
    if (!Files.isReadable(file)) {
      throw new Unfit("the permission to read it is missing");
    }
    try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
      if (in == null) {
        throw new Unfit("it cannot be opened");
      }
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (readers.hasNext()) {
        images(readers.next(), in);
        return;
      }
    }
    document();
  }

  private void images(ImageReader reader, ImageInputStream in) throws IOException {
    try {
      reader.setInput(in, false, true);
      int count = reader.getNumImages(true);
      count(count);
      for (int i = 0; i < count; i++) {
        int index = i;
        page(
            i + 1,
            () -> {
              bound(reader.getWidth(index), reader.getHeight(index));
              return reader.read(index);
            });
      }
    } finally {
      reader.dispose();
    }
  }

  private void document() throws IOException {
    try (PDDocument document =
        Loader.loadPDF(file.toFile(), IOUtils.createTempFileOnlyStreamCache())) {
      PDFRenderer renderer = new PDFRenderer(document);
      renderer.setSubsamplingAllowed(true);
      count(document.getNumberOfPages());
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        int index = i;
        FilledForm form = FilledForm.of(document, document.getPage(index));
        page(
            i + 1,
            () -> picture(document.getPage(index), renderer, index),
            form.fields().isEmpty()
                ? pages::page
                : (number, picture) -> pages.form(number, picture, form));
      }
    }
  }

  private void count(int count) throws IOException {
    if (count < 1) {
      throw new Unfit("it has no page");
    }
    pages.count(count);
  }

  /** A picture that may fail to be read. */
  private interface Picture {
    BufferedImage read() throws IOException;
  }

  private void page(int number, Picture picture) {
    page(number, picture, pages::page);
  }

  private void page(int number, Picture picture, BiConsumer<Integer, Grey> taker) {
    if (number > MOST_PAGES) {
      if (number == MOST_PAGES + 1) {
        pages.unread(number, "a file may have " + MOST_PAGES + " pages, this one has more");
      }
      return;
    }
    Optional<Grey> grey = Optional.empty();
    try {
      grey = Optional.of(Grey.of(picture.read()));
    } catch (IOException | RuntimeException | OutOfMemoryError | StackOverflowError e) {
      pages.unread(number, "the page cannot be read: " + said(e));
    }
    try {
      grey.ifPresent(it -> taker.accept(number, it));
    } catch (RuntimeException e) {
      thrown = e;
      throw e;
    }
  }

  /** The one picture that a page consists of, as it was scanned, or else the page as drawn. */
  private static BufferedImage picture(PDPage page, PDFRenderer renderer, int index)
      throws IOException {
    List<PDImageXObject> images = new ArrayList<>();
    boolean forms = collect(page.getResources(), images, DEEPEST);
    for (PDImageXObject image : images) {
      bound(image.getWidth(), image.getHeight());
    }
    boolean words =
        page.getResources() != null && page.getResources().getFontNames().iterator().hasNext();
    if (images.size() == 1 && !forms && !words) {
      return images.get(0).getImage();
    }
    double inches = 72.0;
    bound(
        Math.round(page.getCropBox().getWidth() / inches * DRAWN_DPI),
        Math.round(page.getCropBox().getHeight() / inches * DRAWN_DPI));
    return renderer.renderImageWithDPI(index, DRAWN_DPI, ImageType.GRAY);
  }

  /** Gathers pictures, also those in forms; whether there are forms. */
  private static boolean collect(PDResources resources, List<PDImageXObject> images, int deep)
      throws IOException {
    boolean forms = false;
    if (resources == null || deep == 0) {
      return false;
    }
    for (COSName name : resources.getXObjectNames()) {
      PDXObject object = resources.getXObject(name);
      if (object instanceof PDImageXObject image) {
        images.add(image);
      } else if (object instanceof PDFormXObject form) {
        forms = true;
        collect(form.getResources(), images, deep - 1);
      }
    }
    return forms;
  }

  private static void bound(long width, long height) throws IOException {
    if (width < 1 || height < 1 || width > MOST_PIXELS || width * height > MOST_PIXELS) {
      String most = ", where at most " + MOST_PIXELS / 1_000_000 + " million are read";
      throw new Unfit(width + " by " + height + " pixels" + most);
    }
  }
}
