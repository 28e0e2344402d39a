package baysheet.output;

import baysheet.ledger.Disk;
import baysheet.ledger.FolderEntries;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Writes files whole or not at all: beside their place first, forced to the device, then moved. A
 * run that fails or is killed leaves the files that were there.
 */
public final class OutFiles {
  /** A file that is being written: {@code .501.pdf.4711.part}, with the number of the process. */
  private static final Pattern PART = Pattern.compile("\\..+\\.[0-9]+\\.part");

  private final Disk disk;

  public OutFiles(Disk disk) {
    this.disk = disk;
  }

  /** Whether a file is what an interrupted run left. */
  public static boolean isPart(Path file) {
    return PART.matcher(file.getFileName().toString()).matches();
  }

  /**
   * What interrupted runs left in a folder.
   *
   * @throws UncheckedIOException naming the folder, when it cannot be listed
   */
  public static List<Path> parts(Path folder) {
    return FolderEntries.of(folder).stream().filter(OutFiles::isPart).toList();
  }

  /** Whether a file is what an interrupted run left of another one. */
  static boolean isPartOf(Path target, Path file) {
    return isPart(file)
        && file.getFileName().toString().startsWith("." + target.getFileName() + ".");
  }

  /**
   * Writes one file.
   *
   * @throws UncheckedIOException naming the path; the file that was there is then unchanged
   */
  public void write(Path target, byte[] content) {
    Path part = part(target);
    try {
      prepare(part, target, content);
      disk.move(part, target);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + target, e);
    } finally {
      discard(part);
    }
  }

  /**
   * Writes a sheet and its record so that at no moment a record stands beside a sheet that says
   * something else: the old record is taken away before the sheet is replaced, and the new one
   * comes after it.
   *
   * @return what could not be written although the sheet was: its record
   * @throws UncheckedIOException naming the path; sheet and record are then unchanged, or the
   *     message says otherwise
   */
  public Optional<UncheckedIOException> write(Path sheet, byte[] pdf, Path record, byte[] json) {
    Path sheetPart = part(sheet);
    Path recordPart = part(record);
    Path oldRecord = asideOf(record);
    try {
      prepare(sheetPart, sheet, pdf);
      prepare(recordPart, record, json);
      boolean hadRecord = Files.exists(record);
      if (hadRecord) {
        disk.move(record, oldRecord);
      }
      replace(sheetPart, sheet, oldRecord, record, hadRecord);
    } catch (IOException e) {
      discard(recordPart);
      throw new UncheckedIOException("cannot write " + sheet, e);
    } finally {
      discard(sheetPart);
    }
    return moveRecord(recordPart, record, oldRecord);
  }

  /** Replaces the sheet; when that fails the old record goes back to its place. */
  private void replace(Path from, Path sheet, Path oldRecord, Path record, boolean hadRecord)
      throws IOException {
    try {
      disk.move(from, sheet);
    } catch (IOException e) {
      if (hadRecord) {
        putBack(oldRecord, record, sheet, e);
      }
      throw e;
    }
  }

  private void putBack(Path oldRecord, Path record, Path sheet, IOException why) {
    try {
      disk.move(oldRecord, record);
    } catch (IOException e) {
      throw new UncheckedIOException(
          "cannot write " + sheet + "; its record " + record + " is now " + oldRecord, why);
    }
  }

  private Optional<UncheckedIOException> moveRecord(Path from, Path record, Path oldRecord) {
    try {
      disk.move(from, record);
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(
          new UncheckedIOException(
              "the sheet was written, but its record cannot be, and there is none now: " + record,
              e));
    } finally {
      discard(from);
      discard(oldRecord);
    }
  }

  /**
   * All of a file.
   *
   * @throws UncheckedIOException naming the file, when it cannot be read
   */
  public static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  /** Whether a file holds exactly this. */
  public static boolean holds(Path file, byte[] content) {
    try {
      return Files.isRegularFile(file)
          && Files.size(file) == content.length
          && Arrays.equals(Files.readAllBytes(file), content);
    } catch (IOException e) {
      // What cannot be read is written anew.
      return false;
    }
  }

  /**
   * Moves a file.
   *
   * @throws UncheckedIOException naming the path
   */
  public void move(Path from, Path to) {
    try {
      disk.createFolders(to.toAbsolutePath().getParent());
      disk.move(from, to);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot move " + from + " to " + to, e);
    }
  }

  /**
   * Moves a file out of the way, to where it counts as what an interrupted run left.
   *
   * @return where it is now
   * @throws UncheckedIOException naming the path
   */
  Path setAside(Path file) {
    Path aside = asideOf(file);
    try {
      disk.move(file, aside);
      return aside;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot remove " + file, e);
    }
  }

  /**
   * Takes away a file that would no longer be true.
   *
   * @throws UncheckedIOException naming the path
   */
  public void remove(Path target) {
    try {
      disk.delete(target);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot remove " + target, e);
    }
  }

  private void prepare(Path part, Path target, byte[] content) throws IOException {
    if (Files.isDirectory(target)) {
      // A move would take an empty folder's place, and a folder is not ours to take away.
      throw new IOException("a folder stands at " + target);
    }
    disk.createFolders(target.toAbsolutePath().getParent());
    disk.write(part, content);
    disk.force(part);
  }

  /** What cannot be removed now is removed by the next run. */
  void discard(Path part) {
    try {
      disk.delete(part);
    } catch (IOException e) {
      // The fault that matters is on its way already.
    }
  }

  /** The name of an old file while the new one is being put in its place. */
  private static Path asideOf(Path file) {
    return part(file.resolveSibling(file.getFileName() + ".old"));
  }

  /** Of this run alone. A temporary file proper could be read by nobody else, as a printer must. */
  private static Path part(Path target) {
    return target
        .toAbsolutePath()
        .resolveSibling("." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
  }
}
