package baysheet.wording;

import baysheet.sheet.QualifiedWork;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Who may do the steps that need a certificate, in words. */
final class QualifiedWords {
  private QualifiedWords() {}

  /** {@code High voltage, steps 3–7: only I. Quillow (T1), certificate …. Hold point 7: …}. */
  static String sentence(QualifiedWork work, Language language) {
    String hands =
        "%s, %s%s: only %s."
            .formatted(
                Phrases.capital(language.text(work.words())),
                Phrases.counted("step", work.steps()),
                work.checks().isEmpty() ? "" : " and " + checks(work, language),
                holder(work.by()));
    return work.second().isEmpty() ? hands : hands + " " + seen(work) + ": " + second(work) + ".";
  }

  private static String checks(QualifiedWork work, Language language) {
    return (work.checks().size() == 1 ? "the check " : "the checks ")
        + language.statements(work.checks()).stream()
            .map(text -> "“" + text + "”")
            .collect(Collectors.joining(" and "));
  }

  private static String seen(QualifiedWork work) {
    int holds = work.holds().size();
    return holds == 0
        ? "Second person at these checks"
        : "Hold point%s%s%s"
            .formatted(holds == 1 ? "" : "s", Phrases.NBSP, Phrases.ranges(work.holds()));
  }

  /** Who looks at certain held work that a certificate is needed for; nothing of any other. */
  static String looker(List<QualifiedWork> works, Predicate<QualifiedWork> certain) {
    return works.stream()
        .filter(certain)
        .flatMap(work -> work.second().stream())
        .map(it -> "%s (%s)".formatted(it.name(), it.person()))
        .distinct()
        .collect(Collectors.joining(" or "));
  }

  private static String second(QualifiedWork work) {
    return work.second().stream().map(QualifiedWords::holder).collect(Collectors.joining(" or "));
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
