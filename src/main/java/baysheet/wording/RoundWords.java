package baysheet.wording;

import baysheet.sheet.TorqueLine;
import baysheet.torque.Rounding;
import java.math.BigDecimal;
import java.util.stream.Collectors;

/** The rounds in which a set of fasteners is tightened. */
final class RoundWords {
  private static final BigDecimal FULL = new BigDecimal(100);

  private RoundWords() {}

  /** {@code rounds: 50 % (W3: 55 N·m), 100 %, check round}; nothing for a single one. */
  static String of(TorqueLine line, Language language) {
    if (line.method().rounds().isEmpty()) {
      return "";
    }
    String rounds =
        line.method().rounds().stream()
            .map(round -> line.inDoubt() ? share(round) : round(round))
            .collect(Collectors.joining(", "));
    return language.own(Phrase.ROUNDS, rounds)
        + (line.method().passes().checkRound()
            ? language.own(Phrase.THEN) + language.own(Phrase.ONCE_MORE)
            : "");
  }

  /** A share with the mark it comes to; the full torque stands above already. */
  private static String round(TorqueLine.Round round) {
    String share = share(round);
    return round.percent().compareTo(FULL) == 0 ? share : share + " (" + mark(round) + ")";
  }

  private static String share(TorqueLine.Round round) {
    return round.percent().stripTrailingZeros().toPlainString() + Phrases.NBSP + "%";
  }

  private static String mark(TorqueLine.Round round) {
    return round
        .setting()
        .map(set -> wrench(round) + ": " + set.print())
        .orElseGet(() -> about(round));
  }

  /** What a round without a wrench comes to. */
  static String about(TorqueLine.Round round) {
    return "about " + Rounding.plain(round.torque(), round.torque().unit()).print();
  }

  private static String wrench(TorqueLine.Round round) {
    String name = round.wrench().orElse("");
    return round.with().map(with -> name + " with " + with).orElse(name);
  }
}
