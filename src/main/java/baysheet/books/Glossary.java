package baysheet.books;

import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What things are called in America, by their British words. Only whole words are replaced, the
 * longest that fits first; a plural in s, capital letters and a or an before it follow. Neither
 * side holds a figure, so that no figure can change.
 */
public final class Glossary {
  /** Letters, with single spaces, hyphens or apostrophes between them. */
  static final Pattern TERM = Pattern.compile("\\p{L}++(?:[ '-]\\p{L}++)*+");

  private static final Pattern VOWEL = Pattern.compile("[aeiou].*", Pattern.CASE_INSENSITIVE);

  private final Map<String, String> american;
  private final Pattern british;

  /** Terms that are letters, as DTI: their capitals say nothing about what stands for them. */
  private final Set<String> abbreviations;

  private Glossary(Map<String, String> american, Set<String> abbreviations) {
    this.american = Collections.unmodifiableMap(american);
    this.abbreviations = Set.copyOf(abbreviations);
    String any =
        american.keySet().stream()
            .sorted(Comparator.comparing(String::length).reversed())
            .map(term -> term.replace(" ", "[ \u00a0]"))
            .collect(Collectors.joining("|"));
    // A hyphen ties words into one, as in names: gearbox-oil is no gearbox.
    this.british =
        Pattern.compile(
            "(?<![\\p{L}\\p{N}-])(?:(an?)([ \u00a0]))?(" + any + ")(s?)(?![\\p{L}\\p{N}-])",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  /**
   * A glossary of these words.
   *
   * @throws IllegalArgumentException when one is no term
   */
  public static Glossary of(Map<String, String> american) {
    Map<String, String> small = new LinkedHashMap<>();
    Set<String> abbreviations = new HashSet<>();
    american.forEach(
        (from, to) -> {
          String term = checked(from).toLowerCase(Locale.ROOT);
          small.put(term, checked(to));
          if (isCapital(from)) {
            abbreviations.add(term);
          }
        });
    return new Glossary(small, abbreviations);
  }

  private static String checked(String term) {
    if (!TERM.matcher(term).matches()) {
      throw new IllegalArgumentException("no term: \"" + term + "\"");
    }
    return term;
  }

  /** The American words by the British ones, in small letters. */
  public Map<String, String> american() {
    return american;
  }

  /** The text in American words. */
  public String translate(String text) {
    return american.isEmpty() ? text : british.matcher(text).replaceAll(this::replacement);
  }

  private String replacement(MatchResult found) {
    String from = found.group(3);
    String term = from.replace('\u00a0', ' ').toLowerCase(Locale.ROOT);
    String to = american.get(term);
    String word = (abbreviations.contains(term) ? to : like(from, to)) + found.group(4);
    return found.group(1) == null ? word : article(found.group(1), to) + found.group(2) + word;
  }

  /** With capitals where the other has them: all of it, or the first letter. */
  private static String like(String from, String to) {
    if (isCapital(from)) {
      return to.toUpperCase(Locale.ROOT);
    }
    return Character.isUpperCase(from.charAt(0))
        ? to.substring(0, 1).toUpperCase(Locale.ROOT) + to.substring(1)
        : to;
  }

  private static boolean isCapital(String word) {
    return word.length() > 1 && word.equals(word.toUpperCase(Locale.ROOT));
  }

  /** By the letter that follows; the words of the trade have no silent h. */
  private static String article(String written, String next) {
    return written.charAt(0) + (VOWEL.matcher(next).matches() ? "n" : "");
  }
}
