package baysheet.files;

import baysheet.pdf.PdfWriter;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Function;

/** Writers of PDF files, one for each thread that writes at one time. */
public final class Writers {
  private final Queue<PdfWriter> free = new ConcurrentLinkedQueue<>();

  /** Makes one ahead of the first file. */
  public void prepare() {
    free.add(new PdfWriter());
  }

  /** Lets one write; nobody else has it meanwhile. */
  public byte[] write(Function<PdfWriter, byte[]> file) {
    PdfWriter known = free.poll();
    PdfWriter writer = known == null ? new PdfWriter() : known;
    byte[] bytes = file.apply(writer);
    free.add(writer);
    return bytes;
  }
}
