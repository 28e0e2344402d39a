package baysheet.wording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a sentence of a sheet may not do. Modelled on published rules for simplified technical
 * English (ASD-STE100: one instruction a sentence, at most 20 words, one meaning a word); the words
 * themselves are common practice, no source.
 */
final class SentenceRules {
  static final int MOST_WORDS = 20;

  /** Two verbs that one movement does. */
  private static final Set<String> ONE_MOVEMENT =
      Set.of("remove and discard", "turn and pull", "push and turn", "press and hold");

  /** Words that stand for two things on one sheet, with what must stand before or after them. */
  private static final List<Qualified> QUALIFIED =
      List.of(
          new Qualified("pads?", "lift|brake", "clips?"),
          new Qualified("fluids?", "brake|transmission|of what|under", "syringe|level"),
          new Qualified("marks?", "witness|index|MAX|MIN|timing", ""),
          new Qualified("bars?", "breaker|pry|holding|anti-roll|sway", ""),
          new Qualified(
              "plugs?",
              "drain|filler|spark|sealing|slot|sump|service|glow|NO|or|new|old|each|own",
              "socket"),
          new Qualified("carriers?", "caliper|hub", ""));

  /** In America the pipes of brakes and fuel are lines. */
  private static final Qualified LINE =
      new Qualified("lines?", "brake|fuel|fuel feed|refrigerant", "flare nuts?|and lead");

  /** Words that nobody has to guess at: each with what is written in its place. */
  private static final Map<String, String> BANNED =
      Map.ofEntries(
          Map.entry("carry|carries|carried", "support"),
          Map.entry("again", "a second time"),
          Map.entry("in (the )?(drawn )?order", "in the sequence"),
          Map.entry("order a", "sequence A"),
          Map.entry("tally", "removed and refitted"),
          Map.entry("used up", "consumables"),
          Map.entry("(take|takes|taken) apart", "removal"),
          Map.entry("(put|puts) together", "refitting"),
          Map.entry("low", "the height"),
          Map.entry("draw|draws|drawn", "pull, as the diagram shows"),
          Map.entry("swing|swings|swung", "move"),
          Map.entry("a hair", "a length"),
          Map.entry("hand's (breadth|length|gap)", "a length"),
          Map.entry("home", "fully seated"),
          Map.entry("locking compound", "threadlock"),
          Map.entry("as delivered", "as supplied"),
          Map.entry("dizzies", "causes dizziness"),
          Map.entry("somebody|anybody", "a person"),
          Map.entry("up on locks|onto locks", "set the lift on its locks"),
          Map.entry("penetrating fluid", "penetrating oil"),
          Map.entry("dial gauge", "DTI"),
          Map.entry("long (lever )?bar", "breaker bar, pry bar"));

  private static final Map<String, String> BRITISH = Map.of("lines?", "brake pipe, row");

  /** What nobody says in America; from a trade list of part names, common practice, no source. */
  private static final Map<String, String> AMERICAN =
      Map.ofEntries(
          Map.entry("tyres?", "tire"),
          Map.entry("spanners?", "wrench"),
          Map.entry("axle stands?", "jack stands"),
          Map.entry("guide (pins?|bolts?)", "slide pin"),
          Map.entry("(caliper|disc) carriers?", "caliper bracket"),
          Map.entry("brake discs?|(?<!clutch )discs?", "rotor"),
          Map.entry("track rods?( ends?)?", "tie rod end"),
          Map.entry("anti-roll bars?|drop links?", "sway bar link"),
          Map.entry("suspension arms?|lower arms?", "control arm"),
          Map.entry("hub carriers?", "knuckle"),
          Map.entry("hub nuts?", "axle nut"),
          Map.entry("drive shafts?", "axle shaft"),
          Map.entry("dampers?", "shock absorber"),
          Map.entry("bush|bushes", "bushing"),
          Map.entry("bleed screws?", "bleeder screw"),
          Map.entry("brake pipes?|fuel (feed )?pipes?", "brake line, fuel line"),
          Map.entry("handbrake", "parking brake"),
          Map.entry("undertray", "splash shield"),
          Map.entry("gearbox", "transmission"),
          Map.entry("sump", "oil pan"),
          Map.entry("bonnet", "hood"),
          Map.entry("wings?", "fender"),
          Map.entry("windscreen", "windshield"),
          Map.entry("petrol", "gasoline"),
          Map.entry("earth", "ground"),
          Map.entry("circlips?", "snap ring"),
          Map.entry("split pins?", "cotter pin"),
          Map.entry("slacken(ed|s)?", "loosen"),
          Map.entry("refit(ted|ting|s)?", "reinstall"),
          Map.entry("renew(ed|s)?", "replace"),
          Map.entry("fit|fitted|fits|fitting", "install"),
          Map.entry("tick(ed|s)?", "check off"),
          Map.entry("kerb", "curb"),
          Map.entry(
              "centre[ds]?|colour|grey|litres?|millimetres?|metres?|vapour|spoilt", "spelling"),
          Map.entry("swarf", "metal chips"),
          Map.entry("wheel nuts?", "lug nut"),
          Map.entry("alternators? lug|auxiliary belts?", "serpentine belt"),
          Map.entry("camshaft covers?", "valve cover"),
          Map.entry("clutch plates?", "clutch disc"),
          Map.entry("threadlock", "threadlocker"),
          Map.entry("smelt", "smelled"));

  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}.'’/·°-]*");
  private static final Pattern END = Pattern.compile("(?<=[.:!?])\\s+");
  private static final Pattern CONDITION =
      Pattern.compile("(?:If|With|On|From|In|At|After|Before|Where|While|When)\\b[^,]*, ");
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<![\\p{L}\\p{N}-])(?<!(?:row|step)s?\u00a0)\\d+(?:[.,]\\d+)?(?<after>[^\\d].{0,12}|$)");
  private static final Pattern UNIT =
      Pattern.compile(
          "\u00a0?["
              + " -]?(?:mm|cm|m|s|min|minutes?|km|mi|miles|L|V|N·m|lbf·ft|ft-lb|in-lb|°|%|kPa|bar|kg|turns?"
              + "|points?|parts)(?!\\p{L}).*");

  /** One hand holds, counts or turns while the other works: that is one movement. */
  private static final Pattern MEANWHILE =
      Pattern.compile("\\bwhile you (?!hold|count|turn|watch)\\p{L}+");

  private final Map<String, String> banned = new LinkedHashMap<>(BANNED);
  private final List<Qualified> qualified = new ArrayList<>(QUALIFIED);
  private final Set<String> verbs;
  private final Pattern second;
  private final Pattern later;

  /** Rules for British sentences, of which an instruction begins with one of these verbs. */
  static SentenceRules british(Set<String> verbs) {
    SentenceRules rules = new SentenceRules(verbs);
    rules.banned.putAll(BRITISH);
    return rules;
  }

  /** The same for American sentences. */
  static SentenceRules american(Set<String> verbs) {
    SentenceRules rules = new SentenceRules(verbs);
    rules.banned.putAll(AMERICAN);
    rules.qualified.add(LINE);
    return rules;
  }

  private SentenceRules(Set<String> verbs) {
    this.verbs = verbs.stream().map(it -> it.toLowerCase(Locale.ROOT)).collect(Collectors.toSet());
    String any =
        this.verbs.stream()
            .sorted((one, other) -> other.length() - one.length())
            .collect(Collectors.joining("|"));
    this.second =
        Pattern.compile(
            "(?:(?<first>\\p{L}+) (?:and|then)|,(?: and| then)?| or) (?<second>"
                + any
                + ") (?!by\\b|of\\b)",
            Pattern.CASE_INSENSITIVE);
    this.later =
        Pattern.compile(
            "\\b(?:before|after|once) you (?:" + any + ")\\b", Pattern.CASE_INSENSITIVE);
  }

  /** What is wrong with an instruction: a step, its wording for refitting, a way out, a check. */
  List<String> instruction(String text) {
    List<String> faults = new ArrayList<>(sentence(text));
    String[] sentences = END.split(text);
    if (!begins(sentences[0])) {
      faults.add("begins with no verb of the list");
    }
    if (text.contains(";")) {
      faults.add("two clauses at a semicolon");
    }
    for (int i = 1; i < sentences.length; i++) {
      boolean condition = CONDITION.matcher(sentences[i]).lookingAt();
      if (!condition && begins(capital(sentences[i]))) {
        faults.add("a second action: \"" + sentences[i] + "\"");
      }
    }
    for (String each : sentences) {
      Matcher two = second.matcher(CONDITION.matcher(each).replaceFirst(""));
      while (two.find()) {
        String pair = (two.group("first") + " and " + two.group("second")).toLowerCase(Locale.ROOT);
        if (!ONE_MOVEMENT.contains(pair)) {
          faults.add("two actions: \"" + two.group() + "\"");
        }
      }
    }
    for (Pattern hidden : List.of(MEANWHILE, later)) {
      hidden
          .matcher(text)
          .results()
          .forEach(it -> faults.add("two actions: \"" + it.group() + "\""));
    }
    return faults;
  }

  /** What is wrong with any sentence: a reason, what is good, a hazard, a consequence, a title. */
  List<String> sentence(String text) {
    List<String> faults = new ArrayList<>();
    // A list behind a colon counts by itself, as in the standard.
    for (String each : END.split(text)) {
      long words = WORD.matcher(each).results().count();
      if (words > MOST_WORDS) {
        faults.add(words + " words");
      }
    }
    banned.forEach(
        (word, instead) -> {
          Matcher found = whole(word).matcher(text);
          if (found.find()) {
            faults.add("\"" + found.group() + "\": write " + instead);
          }
        });
    qualified.forEach(it -> it.faults(text, faults));
    Matcher number = NUMBER.matcher(text);
    while (number.find()) {
      if (!UNIT.matcher(number.group("after")).matches()) {
        faults.add("a number without its unit: \"" + number.group() + "\"");
      }
    }
    return faults;
  }

  private boolean begins(String text) {
    String rest = CONDITION.matcher(text).replaceFirst("").toLowerCase(Locale.ROOT);
    return verbs.stream().anyMatch(verb -> rest.startsWith(verb + " ") || rest.equals(verb + "."));
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static Pattern whole(String word) {
    return Pattern.compile(
        "(?<![\\p{L}-])(?:" + word + ")(?![\\p{L}-])",
        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  /** A word with several meanings, and the words that say which. */
  private record Qualified(String word, String before, String after) {
    void faults(String text, List<String> faults) {
      Matcher found = whole(word).matcher(text);
      while (found.find()) {
        // A verb at the beginning has no second meaning: Mark, Plug.
        boolean verb = found.start() == 0 && Character.isUpperCase(text.charAt(0));
        String ahead = text.substring(0, found.start()).stripTrailing();
        String behind = text.substring(found.end()).stripLeading();
        boolean told =
            Arrays.stream(before.split("\\|"))
                    .anyMatch(
                        it ->
                            ahead
                                .toLowerCase(Locale.ROOT)
                                .matches("(?s).*\\b" + it.toLowerCase(Locale.ROOT)))
                || !after.isEmpty() && behind.matches("(?si)(?:" + after + ")\\b.*");
        if (!verb && !told) {
          faults.add("\"" + found.group() + "\": which?");
        }
      }
    }
  }
}
