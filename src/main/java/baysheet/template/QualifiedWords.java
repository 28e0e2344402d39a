package baysheet.template;

import baysheet.sheet.QualifiedWork;
import java.util.stream.Collectors;

/** Who may do the steps that need a certificate, in words. */
final class QualifiedWords {
  private QualifiedWords() {}

  /** {@code High voltage, steps 3–7: only I. Quillow (T1), certificate …. Hold point 7: …}. */
  static String sentence(QualifiedWork work) {
    String hands =
        "%s, %s: only %s."
            .formatted(
                Phrases.capital(work.words()),
                Phrases.counted("step", work.steps()),
                holder(work.by()));
    return work.holds().isEmpty()
        ? hands
        : "%s Hold point%s%s%s: %s."
            .formatted(
                hands,
                work.holds().size() == 1 ? "" : "s",
                Phrases.NBSP,
                Phrases.ranges(work.holds()),
                work.second().stream()
                    .map(QualifiedWords::holder)
                    .collect(Collectors.joining(" or ")));
  }

  private static String holder(QualifiedWork.Holder holder) {
    return "%s (%s), certificate%s%s%s"
        .formatted(
            holder.name(),
            holder.person(),
            Phrases.NBSP,
            holder.certificate(),
            holder.until().map(last -> " valid until " + last).orElse(""));
  }
}
