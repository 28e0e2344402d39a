package baysheet.report;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/** Finds the known name that somebody most likely meant. */
public final class Nearest {
  /** Twice the longest name in use; comparing takes the product of two lengths. */
  private static final int LONGEST_NAME = 80;

  private Nearest() {}

  /**
   * The known name most like what was written; of equals the one that comes first. Empty when
   * nothing is near enough to be worth saying.
   */
  public static Optional<String> of(String written, Collection<String> known) {
    return within(farthest(plain(written)), written, known, (plain, name) -> true);
  }

  /**
   * The known name of which this is a slip of the pen: one slip, or two in a word of nine
   * characters and more. For words that may be free, where a wrong suggestion would be in the way:
   * a name of several words is another one where a word of it is, so rail-bolt is no coil-bolt.
   */
  public static Optional<String> slip(String written, Collection<String> known) {
    int length = plain(written).length();
    return length < 4
        ? Optional.empty()
        : within(slips(length), written, known, Nearest::isSlipInEachWord);
  }

  private static int slips(int length) {
    return length < 9 ? 1 : 2;
  }

  private static boolean isSlipInEachWord(String written, String known) {
    String[] these = written.split("-");
    String[] those = known.split("-");
    return these.length != those.length
        || IntStream.range(0, these.length)
            .allMatch(
                i -> {
                  int most = slips(these[i].length());
                  return distance(these[i], those[i], most + 1) <= most;
                });
  }

  private static Optional<String> within(
      int farthest,
      String written,
      Collection<String> known,
      BiPredicate<String, String> acceptable) {
    if (written.length() > LONGEST_NAME) {
      return Optional.empty();
    }
    String plain = plain(written);
    Optional<String> best = Optional.empty();
    int bestDistance = farthest + 1;
    for (String name : known) {
      int distance = distance(plain, plain(name), bestDistance);
      if (distance < bestDistance && acceptable.test(plain, plain(name))) {
        best = Optional.of(name);
        bestDistance = distance;
      }
    }
    return best;
  }

  /** Case and the kind of joint between words are slips of habit, not of spelling: they weigh 0. */
  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]++", "-");
  }

  /**
   * One slip in a word of up to five characters, and one more for every three further: a third of
   * the word, beyond which a suggestion is more often wrong than right.
   */
  private static int farthest(String plain) {
    return plain.length() < 3 ? 0 : Math.max(1, plain.length() / 3);
  }

  /**
   * Edit distance with insertions, deletions, substitutions and swaps of neighbours, each of weight
   * 1 (optimal string alignment). Gives {@code enough} as soon as it is certain not to be smaller.
   */
  private static int distance(String a, String b, int enough) {
    if (Math.abs(a.length() - b.length()) >= enough) {
      return enough;
    }
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = row(a, b, i, beforeLast, last);
      beforeLast = last;
      last = row;
    }
    return Math.min(enough, last[b.length()]);
  }

  private static int[] row(String a, String b, int i, int[] beforeLast, int[] last) {
    int[] row = new int[b.length() + 1];
    row[0] = i;
    for (int j = 1; j <= b.length(); j++) {
      int substitute = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
      row[j] = Math.min(substitute, 1 + Math.min(last[j], row[j - 1]));
      if (swapped(a, b, i, j)) {
        row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
      }
    }
    return row;
  }

  private static boolean swapped(String a, String b, int i, int j) {
    return i > 1
        && j > 1
        && a.charAt(i - 1) == b.charAt(j - 2)
        && a.charAt(i - 2) == b.charAt(j - 1);
  }
}
