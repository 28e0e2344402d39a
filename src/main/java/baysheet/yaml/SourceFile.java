package baysheet.yaml;

import baysheet.report.Problems;
import baysheet.report.Source;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads a file's text, strictly and with a bound.
 *
 * <p>What a person can put right in the file is a problem; a file that is not there or cannot be
 * read is an exception with the path in it, for it stops more than this file.
 */
public final class SourceFile {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private SourceFile() {}

  /**
   * The file's text; empty when a problem was added because it is too large or not UTF-8. A byte
   * order mark is left out. Never reads more than {@link YamlFile#MAX_BYTES} and one byte.
   *
   * @param shownName the name to print before line and column
   * @throws UncheckedIOException naming the path, when there is no such file or it cannot be read
   */
  public static Optional<Source> read(Path path, String shownName, Problems problems) {
    // Reading a pipe or a device may never end.
    if (Files.exists(path) && !Files.isRegularFile(path)) {
      problems.add(FileSentences.notAFile(new Source(shownName, ""), Files.isDirectory(path)));
      return Optional.empty();
    }
    byte[] bytes = start(path);
    if (bytes.length > YamlFile.MAX_BYTES) {
      problems.add(FileSentences.tooLarge(new Source(shownName, "")));
      return Optional.empty();
    }
    return decode(bytes, shownName, problems);
  }

  private static byte[] start(Path path) {
    try (InputStream in = Files.newInputStream(path)) {
      return in.readNBytes(YamlFile.MAX_BYTES + 1);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + path, e);
    }
  }

  private static Optional<Source> decode(byte[] bytes, String shownName, Problems problems) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult result =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT)
            .decode(in, out, true);
    String text = out.flip().toString();
    if (result.isError()) {
      tellNotUtf8(bytes, in.position(), text, shownName, problems);
      return Optional.empty();
    }
    return Optional.of(new Source(shownName, withoutMark(text)));
  }

  private static String withoutMark(String text) {
    return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
  }

  /** The excerpt shows the whole text with each stray byte as the replacement character. */
  private static void tellNotUtf8(
      byte[] bytes, int at, String before, String shownName, Problems problems) {
    Source shown = new Source(shownName, withoutMark(new String(bytes, StandardCharsets.UTF_8)));
    if (isUtf16(bytes)) {
      Source name = new Source(shownName, "");
      problems.add(FileSentences.notUtf8(name.whole(), FileSentences.looksLikeUtf16()));
      return;
    }
    String good = withoutMark(before);
    int line = (int) (good + "|").lines().count();
    int lastBreak = Math.max(good.lastIndexOf('\n'), good.lastIndexOf('\r'));
    int column = good.codePointCount(lastBreak + 1, good.length()) + 1;
    String why = FileSentences.strayByte(bytes[at] & 0xFF);
    problems.add(FileSentences.notUtf8(shown.at(line, column), why));
  }

  /** UTF-16 begins with its byte order mark, FE FF or FF FE (RFC 2781, 3.2). */
  private static boolean isUtf16(byte[] bytes) {
    int first = bytes.length < 2 ? 0 : (bytes[0] & 0xFF) << 8 | (bytes[1] & 0xFF);
    return first == 0xFEFF || first == 0xFFFE;
  }
}
