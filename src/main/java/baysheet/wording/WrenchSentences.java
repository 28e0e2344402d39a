package baysheet.wording;

import baysheet.sheet.TorqueLine;
import baysheet.torque.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A row of the torque table at a step: its number and what to set on the wrench for it. */
final class WrenchSentences {
  /** Where a wrench has to be borrowed. */
  private static final String NO_SETTING = "";

  private final Language language;

  /** Of rows of other sheets the number of that sheet. */
  private final Map<Integer, Integer> sheets;

  WrenchSentences(Language language, Map<Integer, Integer> sheets) {
    this.language = language;
    this.sheets = Map.copyOf(sheets);
  }

  /**
   * The row and what to set on the wrench for it: what the book says may be another figure, for
   * another unit or with a crow-foot between.
   */
  String figure(TorqueLine line, boolean torque) {
    if (line.inDoubt() || line.kind() == TorqueLine.Kind.UNKNOWN) {
      return language.own(Phrase.ASK_FIRST, number(line));
    } else if (line.kind() == TorqueLine.Kind.SNUG) {
      return language.own(Phrase.SNUG, number(line));
    }
    List<String> actions = line.method().rounds().isEmpty() ? stages(line) : rounds(line);
    if (actions.contains(NO_SETTING)) {
      return language.own(Phrase.BORROW_FIRST, number(line), torques(line));
    }
    String settings = String.join(language.own(Phrase.THEN), actions);
    String row =
        line.method()
            .drawing()
            .map(order -> language.own(Phrase.ROW_IN, number(line), order.letter(), settings))
            .orElseGet(() -> language.own(Phrase.ROW, number(line), settings));
    return torque ? language.own(Phrase.TORQUE, row) : row;
  }

  /** What the borrowed wrench is to reach. */
  private String torques(TorqueLine line) {
    List<String> actions = new ArrayList<>();
    for (TorqueLine.StageLine stage : line.method().stages()) {
      if (stage instanceof TorqueLine.StageLine.Torque torque) {
        actions.add(language.own(Phrase.NEXT_SET, torque.target().print()));
      } else if (stage instanceof TorqueLine.StageLine.Angle angle) {
        actions.add(language.own(Phrase.TURN, angle.angle().print()));
      } else {
        actions.add(language.own(Phrase.LOOSEN));
      }
    }
    return String.join(language.own(Phrase.THEN), actions);
  }

  private List<String> stages(TorqueLine line) {
    List<String> actions = new ArrayList<>();
    String wrench = "";
    for (TorqueLine.StageLine stage : line.method().stages()) {
      if (stage instanceof TorqueLine.StageLine.Torque torque) {
        String next = torque.wrench().orElse("");
        actions.add(set(wrench, next, torque.setting()));
        wrench = next;
      } else if (stage instanceof TorqueLine.StageLine.Angle angle) {
        actions.add(language.own(Phrase.TURN, angle.angle().print()));
      } else {
        actions.add(language.own(Phrase.LOOSEN));
      }
    }
    return actions;
  }

  /** The last round is the full torque; further turns come behind it. */
  private List<String> rounds(TorqueLine line) {
    List<String> actions = new ArrayList<>();
    String wrench = "";
    for (TorqueLine.Round round : line.method().rounds()) {
      String next =
          round.wrench().orElse("") + round.with().map(with -> " with " + with).orElse("");
      // An early round that no wrench reaches is made by hand: only the last needs one.
      boolean byHand = round.setting().isEmpty() && !isLast(line, round);
      actions.add(
          byHand
              ? language.own(Phrase.EARLY_ROUND, RoundWords.about(round))
              : set(wrench, next, round.setting()));
      wrench = next;
    }
    if (line.method().passes().checkRound()) {
      actions.add(language.own(Phrase.ONCE_MORE));
    }
    line.method().stages().stream()
        .filter(TorqueLine.StageLine.Angle.class::isInstance)
        .forEach(
            stage ->
                actions.add(
                    language.own(
                        Phrase.TURN, ((TorqueLine.StageLine.Angle) stage).angle().print())));
    return actions;
  }

  private static boolean isLast(TorqueLine line, TorqueLine.Round round) {
    return line.method().rounds().indexOf(round) == line.method().rounds().size() - 1;
  }

  /** The wrench is named where it changes. */
  private String set(String before, String wrench, Optional<Quantity> setting) {
    if (setting.isEmpty()) {
      return NO_SETTING;
    }
    return wrench.equals(before)
        ? language.own(Phrase.NEXT_SET, setting.get().print())
        : language.own(Phrase.SET, wrench, setting.get().print());
  }

  /** {@code 4}, or {@code 4 on sheet 2} where the row is not on this one. */
  String number(TorqueLine line) {
    Integer sheet = sheets.get(line.n());
    return sheet == null
        ? String.valueOf(line.n())
        : language.own(Phrase.ON_SHEET, line.n(), sheet);
  }
}
