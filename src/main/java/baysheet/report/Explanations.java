package baysheet.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Pattern;

/** The page about a kind of problem: what it means, what it looks like, how to put it right. */
public final class Explanations {
  private static final Pattern CODE = Pattern.compile("[a-z0-9]++(?:-[a-z0-9]++)*+");

  private Explanations() {}

  /** The page of a code, as Markdown; empty when there is no such code. */
  public static Optional<String> of(String code) {
    if (!CODE.matcher(code).matches()) {
      return Optional.empty();
    }
    String resource = "/baysheet/explain/" + code + ".md";
    try (InputStream page = Explanations.class.getResourceAsStream(resource)) {
      return page == null
          ? Optional.empty()
          : Optional.of(new String(page.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + resource + " out of the jar", e);
    }
  }
}
